#include "core/practice/lines/detail/plain_words.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/entry/read_schedule.h"
#include "core/number/ascii.h"

namespace wardchalk::practice {

namespace {

/// What is said around an answer, in small letters; of those that begin alike the longest counts. None denies
/// anything: "not" alone is no such word.
constexpr auto phrases = std::to_array<std::string_view>({"not less than",
                                                          "no dose may be more than",
                                                          "no day may be more than",
                                                          "must hold",
                                                          "each time",
                                                          "no less than",
                                                          "not more than",
                                                          "no more than",
                                                          "not over",
                                                          "not under",
                                                          "at least",
                                                          "at the least",
                                                          "at most",
                                                          "at the most",
                                                          "up to",
                                                          "the most is",
                                                          "the least is",
                                                          "the most",
                                                          "the least",
                                                          "least",
                                                          "most",
                                                          "minimum",
                                                          "maximum",
                                                          "max.",
                                                          "max",
                                                          "by mouth",
                                                          "orally",
                                                          "po",
                                                          "p.o.",
                                                          "iv",
                                                          "i.v.",
                                                          "im",
                                                          "i.m.",
                                                          "intravenously",
                                                          "intramuscularly",
                                                          "sc",
                                                          "subcut",
                                                          "through the tube",
                                                          "give",
                                                          "gives",
                                                          "i would give",
                                                          "i give",
                                                          "we give",
                                                          "take",
                                                          "measure",
                                                          "draw up",
                                                          "draw to",
                                                          "draw",
                                                          "dilute in",
                                                          "dilute to",
                                                          "dilute with",
                                                          "dilute",
                                                          "run at",
                                                          "run",
                                                          "runs at",
                                                          "set the pump to",
                                                          "set the pump at",
                                                          "set pump to",
                                                          "set to",
                                                          "set at",
                                                          "set",
                                                          "count",
                                                          "should be",
                                                          "answer is",
                                                          "answer",
                                                          "it is",
                                                          "that is",
                                                          "is",
                                                          "are",
                                                          "so",
                                                          "about",
                                                          "the child is",
                                                          "the child weighs",
                                                          "child weighs",
                                                          "child is",
                                                          "he weighs",
                                                          "she weighs",
                                                          "he is",
                                                          "she is",
                                                          "weighs",
                                                          "tall",
                                                          "high",
                                                          "weight",
                                                          "height",
                                                          "each vial holds",
                                                          "the vial holds",
                                                          "vial holds",
                                                          "after mixing",
                                                          "safe",
                                                          "safe dose",
                                                          "dose is",
                                                          "the dose is",
                                                          "if the prescriber agrees",
                                                          "once clarified",
                                                          "after asking",
                                                          "the answer is",
                                                          "strength is"});

struct NumberWord {
  std::string_view word;
  std::string_view figure;
};
/// Numbers that are written in words, with the parts of a tablet; those that begin alike, the longest first.
constexpr std::array numbers = {NumberWord{"one and a half", "1 1/2"},
                                NumberWord{"two and a half", "2 1/2"},
                                NumberWord{"three and a half", "3 1/2"},
                                NumberWord{"four and a half", "4 1/2"},
                                NumberWord{"one and a quarter", "1 1/4"},
                                NumberWord{"two and a quarter", "2 1/4"},
                                NumberWord{"three and a quarter", "3 1/4"},
                                NumberWord{"one half", "1/2"},
                                NumberWord{"half of a", "1/2"},
                                NumberWord{"half a", "1/2"},
                                NumberWord{"a half", "1/2"},
                                NumberWord{"a quarter of a", "1/4"},
                                NumberWord{"a quarter", "1/4"},
                                NumberWord{"quarter of a", "1/4"},
                                NumberWord{"one", "1"},
                                NumberWord{"two", "2"},
                                NumberWord{"three", "3"},
                                NumberWord{"four", "4"},
                                NumberWord{"five", "5"},
                                NumberWord{"six", "6"},
                                NumberWord{"eight", "8"},
                                NumberWord{"ten", "10"}};

bool isWordPart(char c) { return isLetter(c) || isDigit(c) || static_cast<unsigned char>(c) >= 0x80; }

class Words {
 public:
  explicit Words(std::string_view text) : text_(text), small_(lowered(text)) {}

  std::string run() {
    for (at_ = 0; at_ < text_.size();) {
      const bool begins = isLetter(small_[at_]) && (at_ == 0 || !isWordPart(small_[at_ - 1]));
      if (!begins || !(number() || schedule() || phrase() || medicine())) ++at_;
    }
    passColon();
    return std::move(text_);
  }

 private:
  [[nodiscard]] bool standsHere(std::string_view phrase) const {
    if (small_.compare(at_, phrase.size(), phrase) != 0) return false;
    const std::size_t end = at_ + phrase.size();
    return end == small_.size() || !isWordPart(small_[end]);
  }

  void replace(std::size_t length, std::string_view by = {}) {
    for (std::size_t i = 0; i < length; ++i) text_[at_ + i] = i < by.size() ? by[i] : ' ';
    at_ += length;
  }

  bool phrase() {
    std::size_t longest = 0;
    for (const std::string_view known : phrases)
      if (known.size() > longest && standsHere(known)) longest = known.size();
    if (longest == 0 && standsHere("min") && isFirst())
      longest = 3;  // "min 12 mg": the least, and no minutes
    if (longest > 0) replace(longest);
    return longest > 0;
  }

  [[nodiscard]] bool isFirst() const {
    return text_.find_first_not_of(' ') >= at_;  // what stood before is blank by now
  }

  bool number() {
    for (const NumberWord& known : numbers)
      if (standsHere(known.word)) {
        replace(known.word.size(), known.figure);
        return true;
      }
    return false;
  }

  /// "of Teal": the medicine by its name.
  bool medicine() {
    if (!standsHere("of")) return false;
    std::size_t end = at_ + 3;
    if (end >= text_.size() || !(text_[end] >= 'A' && text_[end] <= 'Z')) return false;
    while (end < text_.size() && isLetter(text_[end])) ++end;
    replace(end - at_);
    return true;
  }

  /// "q8h", "every 8 h", "TID", "twice a day" behind an amount. What has been misread stays, to be refused.
  bool schedule() {
    for (std::size_t end = text_.size(); end > at_; --end) {
      if (end < text_.size() && isWordPart(small_[end])) continue;
      if (isWordPart(small_[end - 1]) && saysHowOften(std::string_view(text_).substr(at_, end - at_))) {
        replace(end - at_);
        return true;
      }
    }
    return false;
  }

  [[nodiscard]] bool saysHowOften(std::string_view words) const {
    return at_ > 0 && words.size() <= 20 && answerOf(readOrderSchedule(words)).isRead;
  }

  /// A colon behind words that are blank by now: "once clarified: 4.4 mL".
  void passColon() {
    const std::size_t first = text_.find_first_not_of(' ');
    if (first != std::string::npos && first > 0 && text_[first] == ':') text_[first] = ' ';
    for (std::size_t i = 0; i < text_.size(); ++i)
      if (text_[i] == ',' && (i + 1 == text_.size() || text_[i + 1] == ' ')) text_[i] = ' ';
  }

  std::string text_;
  std::string small_;
  std::size_t at_ = 0;
};

}  // namespace

std::string withoutWords(std::string_view text) { return Words(std::string_view(text)).run(); }

}  // namespace wardchalk::practice
