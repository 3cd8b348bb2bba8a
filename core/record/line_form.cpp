#include "core/record/line_form.h"

#include <algorithm>
#include <array>

namespace wardchalk {

namespace {

/// Units that are words, and so have a plural.
constexpr std::array<std::string_view, 9> countedWords = {"year", "month",  "week",    "day",    "dose",
                                                          "drop", "tablet", "capsule", "drop/mL"};

bool isNumber(std::string_view word) {
  return !word.empty() && word.find_first_not_of("0123456789.") == std::string_view::npos;
}

std::string inPlural(std::string_view word) {
  std::string plural(word);
  plural.insert(std::min(plural.find('/'), plural.size()), 1, 's');
  return plural;
}

std::string withSquares(std::string text) {
  for (std::size_t at = text.find("m2"); at != std::string::npos; at = text.find("m2", at))
    text.replace(at, 2, "m²");
  return text;
}

}  // namespace

std::string lineForm(std::string_view entry) {
  std::string line;
  std::string_view before;
  while (!entry.empty()) {
    const std::size_t end = std::min(entry.find(' '), entry.size());
    const std::string_view word = entry.substr(0, end);
    const bool counted =
        isNumber(before) && before != "1" && std::ranges::find(countedWords, word) != countedWords.end();
    if (!line.empty()) line += ' ';
    line += counted ? inPlural(word) : withSquares(std::string(word));
    before = word;
    entry.remove_prefix(std::min(end + 1, entry.size()));
  }
  return line;
}

}  // namespace wardchalk
