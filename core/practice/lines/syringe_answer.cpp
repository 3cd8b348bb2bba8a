#include "core/practice/lines/syringe_answer.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "core/number/ascii.h"
#include "core/number/decimal_text.h"
#include "core/practice/lines/detail/surroundings.h"

namespace wardchalk {

namespace {

/// An amount in mL, and where what follows it begins.
struct Amount {
  Number value;
  int decimals;
  std::size_t begin;
  std::size_t end;
};

std::size_t pass(std::string_view text, std::size_t at, std::string_view signs) {
  while (at < text.size() && signs.find(text[at]) != std::string_view::npos) ++at;
  return at;
}

std::size_t pastNumber(std::string_view text, std::size_t at) {
  while (at < text.size() &&
         (isDigit(text[at]) || (text[at] == '.' && at + 1 < text.size() && isDigit(text[at + 1]))))
    ++at;
  return at;
}

int decimalsOf(std::string_view number) {
  const std::size_t point = number.find('.');
  return point == std::string_view::npos ? 0 : static_cast<int>(number.size() - point - 1);
}

/// Every number with mL (or cc) behind it, in small letters: "10 ml", "10-ml", "10ml".
std::vector<Amount> amountsIn(std::string_view text) {
  std::vector<Amount> amounts;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (!isDigit(text[at])) continue;
    const std::size_t end = pastNumber(text, at);
    const auto value = readDecimal(text.substr(at, end - at));
    const std::size_t unit = pass(text, end, " -");
    const std::string_view rest = text.substr(unit);
    if (value && (rest.starts_with("ml") || rest.starts_with("cc")))
      amounts.push_back({*value, decimalsOf(text.substr(at, end - at)), at, unit + 2});
    at = end;
  }
  return amounts;
}

/// Whether "syringe" follows, perhaps with its kind before it.
bool namesSyringe(std::string_view rest) {
  static constexpr std::array<std::string_view, 6> kinds = {"oral", "enteral", "injection",
                                                            "iv",   "luer",    "hypodermic"};
  for (std::size_t at = pass(rest, 0, " -");;) {
    const std::string_view here = rest.substr(at);
    if (here.starts_with("syringe")) return true;
    const auto kind =
        std::ranges::find_if(kinds, [&](std::string_view word) { return here.starts_with(word); });
    if (kind == kinds.end()) return false;
    at = pass(rest, at + kind->size(), " -");
  }
}

/// "marks 0.2 mL", "0.2 mL apart", "between 6.2 mL and 6.4 mL", "not 6 mL": told of the scale, or denied.
bool isTold(std::string_view text, const Amount& amount) {
  std::string_view before = text.substr(0, amount.begin);
  while (before.ends_with(' ') || before.ends_with('(')) before.remove_suffix(1);
  const std::string_view behind = text.substr(pass(text, amount.end, " "));
  if (behind.starts_with("apart") || behind.starts_with("marks")) return true;
  for (const std::string_view word : {"marks", "marked", "mark every", "steps of", "between", "not", "under",
                                      "over", "than", "below", "above", "least", "most"})
    if (before.ends_with(word)) return true;
  const std::size_t between = before.rfind("between");
  return between != std::string_view::npos && before.ends_with("and") &&
         before.find("and", between) == before.size() - 3;
}

}  // namespace

std::optional<SyringeAnswer> readSyringeAnswer(std::string_view text) {
  const std::string small = lowered(practice::withPlainSigns(text));
  if (small.find("syringe") == std::string::npos) return std::nullopt;
  SyringeAnswer answer;
  answer.fillsMore = small.find("twice") != std::string::npos || small.find("times") != std::string::npos;
  for (const Amount& amount : amountsIn(small)) {
    if (namesSyringe(std::string_view(small).substr(amount.end))) {
      if (!answer.holds) answer.holds = amount.value;
    } else if (!isTold(small, amount)) {
      answer.drawnUp = amount.value;  // what is said last counts: "8.33 mL, so 8.4 mL"
      answer.decimals = amount.decimals;
    }
  }
  if (!answer.holds) return std::nullopt;
  return answer;
}

}  // namespace wardchalk
