#include <algorithm>
#include <array>

#include "core/practice/marking/marking.h"

namespace wardchalk {

namespace {

/// Letters and single spaces alone, small.
std::string plain(std::string_view text) {
  std::string words;
  for (const char c : text) {
    const char small = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (small >= 'a' && small <= 'z')
      words += small;
    else if (!words.empty() && words.back() != ' ')
      words += ' ';
  }
  while (!words.empty() && words.back() == ' ') words.pop_back();
  return words;
}

struct Spelling {
  std::string_view text;
  VerdictWord word;
};

constexpr std::array spellings = {
    Spelling{"safe", VerdictWord::safe},
    Spelling{"within", VerdictWord::safe},
    Spelling{"unsafe", VerdictWord::unsafe},
    Spelling{"not safe", VerdictWord::unsafe},
    Spelling{"too high", VerdictWord::unsafe},
    Spelling{"too much", VerdictWord::unsafe},
    Spelling{"ask", VerdictWord::ask},
    Spelling{"ask first", VerdictWord::ask},
    Spelling{"ask before giving", VerdictWord::ask},
    Spelling{"hold and ask", VerdictWord::ask},
    Spelling{"too low", VerdictWord::ask},
    Spelling{"too little", VerdictWord::ask},
    Spelling{"does not fit", VerdictWord::doesNotFit},
    Spelling{"not covered", VerdictWord::doesNotFit},
};

constexpr std::array<std::string_view, 5> nothingMeasured = {"do not measure", "do not give", "nothing",
                                                             "hold", "hold and ask"};

}  // namespace

std::optional<VerdictWord> readVerdictWord(std::string_view text) {
  const auto found = std::ranges::find(spellings, plain(text), &Spelling::text);
  if (found == spellings.end()) return std::nullopt;
  return found->word;
}

bool saysNothingMeasured(std::string_view text) {
  return std::ranges::find(nothingMeasured, plain(text)) != nothingMeasured.end();
}

}  // namespace wardchalk
