#include "core/practice/marking/nothing_measured.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "core/number/ascii.h"
#include "core/number/entry_text.h"
#include "core/practice/marking/verdict_answer.h"

namespace wardchalk {

namespace {

template <typename List>
bool holds(const List& list, std::string_view word) {
  return std::ranges::find(list, word) != list.end();
}

/// Words that deny, and those that stop or ask. Common practice, no source.
constexpr auto denying = std::to_array<std::string_view>(
    {"not", "dont", "no", "none", "nothing", "never", "wont", "wouldnt", "cannot", "cant"});
constexpr auto stopping =
    std::to_array<std::string_view>({"hold", "holding", "held", "withhold", "withholding", "withheld", "stop",
                                     "call", "phone", "ring", "ask", "clarify", "query", "contact"});
/// What is denied where a refusal is meant: "no dose", "would not give". Behind a denial anything else may be
/// meant.
constexpr auto refused = std::to_array<std::string_view>(
    {"give", "given", "giving",  "measure", "measured", "measuring", "prepare",  "prepared", "preparing",
     "draw", "drawn", "drawing", "dose",    "amount",   "medicine",  "anything", "be",       "to",
     "yet",  "go",    "run",     "start",   "mix",      "mixed",     "mixing"});
/// Words by which the refusal would hang on something, or be taken back.
constexpr auto takingBack = std::to_array<std::string_view>(
    {"two",     "three",   "four",     "five",    "six",  "eight",     "ten",  "quarter", "tablet",
     "tablets", "capsule", "capsules", "left",    "or",   "unless",    "if",   "perhaps", "maybe",
     "might",   "wrong",   "reason",   "problem", "need", "safe",      "ok",   "fine",    "sure",
     "too",     "but",     "except",   "only",    "then", "otherwise", "half", "less",    "more"});

/// "none", "nothing", "not" say it alone.
bool saysAlone(std::string_view word) { return word == "none" || word == "nothing"; }

class NothingGiven {
 public:
  explicit NothingGiven(std::string_view text) : words_(plainWords(text)), list_(wordsOf(words_)) {}

  [[nodiscard]] bool isSaid() const {
    bool said = false;
    for (std::size_t i = 0; i < list_.size(); ++i) {
      const std::string_view word = list_[i];
      if (holds(takingBack, word) || std::ranges::any_of(word, isDigit)) return false;
      if (holds(denying, word)) {
        if (isTakenBack(i)) return false;
        said = said || isRefused(i);
      }
      said = said || holds(stopping, word);
    }
    return said;
  }

 private:
  [[nodiscard]] std::string_view next(std::size_t i) const {
    return i + 1 < list_.size() ? list_[i + 1] : "";
  }
  /// "do not hold", "no need to ask".
  [[nodiscard]] bool isTakenBack(std::size_t i) const {
    return !saysAlone(list_[i]) && (holds(stopping, next(i)) || holds(denying, next(i)));
  }
  [[nodiscard]] bool isRefused(std::size_t i) const { return saysAlone(list_[i]) || holds(refused, next(i)); }

  std::string words_;
  std::vector<std::string_view> list_;
};

}  // namespace

bool saysNothingMeasured(std::string_view text) { return NothingGiven(text).isSaid(); }

}  // namespace wardchalk
