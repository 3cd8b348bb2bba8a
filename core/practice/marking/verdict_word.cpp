#include <algorithm>
#include <array>

#include "core/number/ascii.h"
#include "core/practice/marking/marking.h"

namespace wardchalk {

namespace {

/// Letters and single spaces alone, small.
std::string plain(std::string_view text) {
  std::string words;
  for (const char c : text) {
    if (isLetter(c))
      words += lowered(c);
    else if (!words.empty() && words.back() != ' ')
      words += ' ';
  }
  while (!words.empty() && words.back() == ' ') words.pop_back();
  return words;
}

struct VerdictSpelling {
  std::string_view text;
  VerdictWord word;
};

constexpr std::array spellings = {
    VerdictSpelling{"safe", VerdictWord::safe},
    VerdictSpelling{"within", VerdictWord::safe},
    VerdictSpelling{"unsafe", VerdictWord::unsafe},
    VerdictSpelling{"not safe", VerdictWord::unsafe},
    VerdictSpelling{"too high", VerdictWord::unsafe},
    VerdictSpelling{"too much", VerdictWord::unsafe},
    VerdictSpelling{"ask", VerdictWord::ask},
    VerdictSpelling{"ask first", VerdictWord::ask},
    VerdictSpelling{"ask before giving", VerdictWord::ask},
    VerdictSpelling{"hold and ask", VerdictWord::ask},
    VerdictSpelling{"too low", VerdictWord::ask},
    VerdictSpelling{"too little", VerdictWord::ask},
    VerdictSpelling{"does not fit", VerdictWord::doesNotFit},
    VerdictSpelling{"not covered", VerdictWord::doesNotFit},
};

constexpr std::array<std::string_view, 5> nothingMeasured = {"do not measure", "do not give", "nothing",
                                                             "hold", "hold and ask"};

}  // namespace

std::optional<VerdictWord> readVerdictWord(std::string_view text) {
  const auto found = std::ranges::find(spellings, plain(text), &VerdictSpelling::text);
  if (found == spellings.end()) return std::nullopt;
  return found->word;
}

bool saysNothingMeasured(std::string_view text) {
  return std::ranges::find(nothingMeasured, plain(text)) != nothingMeasured.end();
}

}  // namespace wardchalk
