#include "core/practice/lines/syringe_answer.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "core/number/ascii.h"
#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

/// An amount in mL, and where what follows it begins.
struct Amount {
  Number value;
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

/// Every number with mL (or cc) behind it, in small letters: "10 ml", "10-ml", "10ml".
std::vector<Amount> amountsIn(std::string_view text) {
  std::vector<Amount> amounts;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (!isDigit(text[at])) continue;
    const std::size_t end = pastNumber(text, at);
    const auto value = readDecimal(text.substr(at, end - at));
    const std::size_t unit = pass(text, end, " -");
    const std::string_view rest = text.substr(unit);
    if (value && (rest.starts_with("ml") || rest.starts_with("cc"))) amounts.push_back({*value, unit + 2});
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

}  // namespace

std::optional<SyringeAnswer> readSyringeAnswer(std::string_view text) {
  const std::string small = lowered(text);
  if (small.find("syringe") == std::string::npos) return std::nullopt;
  SyringeAnswer answer;
  answer.fillsMore = small.find("twice") != std::string::npos || small.find("times") != std::string::npos;
  for (const Amount& amount : amountsIn(small)) {
    const bool syringe = namesSyringe(std::string_view(small).substr(amount.end));
    std::optional<Number>& said = syringe ? answer.holds : answer.drawnUp;
    if (!said) said = amount.value;
  }
  if (!answer.holds) return std::nullopt;
  return answer;
}

}  // namespace wardchalk
