#include "core/practice/lines/detail/surroundings.h"

#include <algorithm>
#include <array>

#include "core/entry/read_schedule.h"
#include "core/entry/unit_spelling.h"
#include "core/number/ascii.h"
#include "core/number/entry_text.h"
#include "core/practice/lines/changing_words.h"
#include "core/practice/lines/detail/plain_words.h"
#include "core/practice/lines/detail/said_words.h"
#include "core/practice/lines/detail/scanner.h"

namespace wardchalk::practice {

namespace {

constexpr auto none = std::string_view::npos;

void overwrite(std::string& text, std::size_t at, std::size_t length, std::string_view by = {}) {
  for (std::size_t i = 0; i < length; ++i) text[at + i] = i < by.size() ? by[i] : ' ';
}

std::size_t letterRun(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size()) {
    if (isLetter(text[end]))
      ++end;
    else if (text.substr(end).starts_with("µ") || text.substr(end).starts_with("μ"))
      end += 2;
    else
      break;
  }
  return end;
}

/// A digit that does not belong to the power of a unit.
bool isFigure(std::string_view text, std::size_t at) {
  if (!isDigit(text[at])) return false;
  return at == 0 || !(isLetter(text[at - 1]) || text[at - 1] == '^');
}

bool isFractionSign(std::string_view text, std::size_t at) {
  static constexpr std::array<std::string_view, 5> fractions = {"½", "¼", "¾", "⅓", "⅔"};
  return std::ranges::any_of(fractions,
                             [&](std::string_view sign) { return text.substr(at).starts_with(sign); });
}

/// Where the sum begins: its first number, root or parenthesis; `none` without one.
std::size_t sumBegin(std::string_view text) {
  for (std::size_t at = 0; at < text.size(); ++at) {
    const std::string_view rest = text.substr(at);
    const bool naked = rest[0] == '.' && rest.size() > 1 && isDigit(rest[1]);
    const bool root = rest.starts_with("√") || rest.starts_with("sqrt") || rest.starts_with("square root");
    if (isFigure(text, at) || isFractionSign(text, at) || naked || root || rest[0] == '(') return at;
  }
  return none;
}

/// Behind the number that begins here.
std::size_t numberEnd(std::string_view text, std::size_t at) {
  const auto goesOn = [&](std::size_t place) {
    if (place >= text.size()) return false;
    const bool mark = text[place] == '.' || text[place] == ',';
    return isDigit(text[place]) || (mark && place + 1 < text.size() && isDigit(text[place + 1]));
  };
  while (goesOn(at)) ++at;
  return at;
}

/// Behind the last number; `none` without one.
std::size_t lastNumberEnd(std::string_view text) {
  std::size_t end = none;
  for (std::size_t at = 0; at < text.size();) {
    if (isFractionSign(text, at))
      end = at += characterLength(text.substr(at));
    else if (isFigure(text, at))
      end = at = numberEnd(text, at);
    else
      ++at;
  }
  return end;
}

bool isUnitWord(std::string_view word) {
  return word == "sq" || word == "square" || spelledUnit(word, SpelledIn::line).has_value();
}

template <typename Judge>
bool anyWord(std::string_view text, Judge judge) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = letterRun(text, at);
    if (end > at && judge(text.substr(at, end - at), end)) return true;
    at = std::max(end, at + 1);
  }
  return false;
}

/// A schedule by letters that have been misread: "QD".
bool isMisread(std::string_view word) {
  if (word == "on") return false;  // in small letters a word like others
  const EntryAnswer schedule = answerOf(readOrderSchedule(word));
  return !schedule.isRead && schedule.refusal &&
         (schedule.refusal->code == RefusalCode::scheduleUnsafe ||
          schedule.refusal->code == RefusalCode::scheduleLookAlike);
}

/// Whether a word counts or has been misread, so that it is not passed over: "two", and a "one" that counts
/// no dose, day or time.
bool mustStand(std::string_view text) {
  const std::string small = lowered(text);
  return anyWord(small, [&](std::string_view word, std::size_t end) {
    if (word != "one") return counts(word) || isMisread(text.substr(end - word.size(), word.size()));
    const std::string_view rest = std::string_view(small).substr(end);
    return !(rest.starts_with(" dose") || rest.starts_with(" day") || rest.starts_with(" time"));
  });
}

/// Signs that belong to a sum, wherever they stand.
bool hasSign(std::string_view text) {
  static constexpr auto joined =
      std::to_array<std::string_view>({"=", "≈", "×", "÷", "*", "/", "+", "<", ">", "≤", "≥", "√", "%", "~"});
  return std::ranges::any_of(joined, [&](std::string_view sign) { return text.find(sign) != none; });
}

/// What stands before the first number: up to a sign that belongs to it.
void blankBefore(std::string& text, std::size_t begin) {
  const std::string_view before = std::string_view(text).substr(0, begin);
  if (mustStand(before)) return;
  std::size_t last = begin;
  while (last > 0 && (text[last - 1] == ' ' || text[last - 1] == '=')) --last;
  const bool signBefore = last > 0 && !isLetter(text[last - 1]) && text[last - 1] != ':' &&
                          text[last - 1] != ',' && text[last - 1] != '.' && text[last - 1] != ')' &&
                          text[last - 1] != '>';
  const bool hasWord = anyWord(before, [](std::string_view, std::size_t) { return true; });
  if (signBefore) return;
  if (!hasWord && before.find_first_not_of(" =,:") != none) return;
  overwrite(text, 0, begin);
}

/// Walks over the units behind the last number; what stands behind them may be passed over.
class Behind {
 public:
  Behind(std::string_view text, std::size_t at) : text_(text), at_(at) {}

  /// Where what may be passed over begins; `none` where nothing may.
  std::size_t run() {
    while (at_ < text_.size()) {
      const std::size_t end = letterRun(text_, at_);
      if (end > at_ ? !passWord(end) : !passSign()) break;
    }
    if (misspelled_) return none;
    return at_;
  }

 private:
  bool passWord(std::size_t end) {
    const std::string word = lowered(text_.substr(at_, end - at_));
    // behind a unit "in" is no inch
    const bool unit = isUnitWord(text_.substr(at_, end - at_)) && !(word == "in" && unitSeen_);
    if (!unit && !joinsUnit(word, end)) {
      static constexpr std::array<std::string_view, 4> spoken = {"i", "done", "final", "ok"};
      misspelled_ = !unitSeen_ && std::ranges::find(spoken, word) == spoken.end();
      return false;
    }
    unitSeen_ = unitSeen_ || unit;
    at_ = end;
    while (at_ < text_.size() && (isDigit(text_[at_]) || text_[at_] == '^')) ++at_;
    return true;
  }

  /// "per", "in", "a" before a unit.
  [[nodiscard]] bool joinsUnit(std::string_view word, std::size_t end) const {
    static constexpr std::array<std::string_view, 7> joins = {"per", "over", "a", "an", "each", "in", "one"};
    if (std::ranges::find(joins, word) == joins.end()) return false;
    std::size_t next = end;
    while (next < text_.size() && text_[next] == ' ') ++next;
    const std::size_t nextEnd = letterRun(text_, next);
    if (nextEnd == next) return false;
    const std::string following = lowered(text_.substr(next, nextEnd - next));
    if (following == "each" || following == "one" || following == "a") return joinsUnit(following, nextEnd);
    return isUnitWord(text_.substr(next, nextEnd - next));
  }

  bool passSign() {
    static constexpr auto kept = std::to_array<std::string_view>(
        {" ", ")", "]", "/", "·", "⋅", "²", "³", "⁴", "″", "′", "\"", "'", "#"});
    for (const std::string_view sign : kept)
      if (text_.substr(at_).starts_with(sign)) {
        unitSeen_ = unitSeen_ || sign == ")" || sign == "#" || sign == "\"" || sign == "″";
        at_ += sign.size();
        return true;
      }
    return false;
  }

  std::string_view text_;
  std::size_t at_;
  bool unitSeen_ = false;
  bool misspelled_ = false;
};

/// "[not sure]", "(unsure)": how sure somebody is takes nothing from the number, and is blanked before words
/// that change a meaning are looked for. Square brackets are parentheses.
void blankDoubts(std::string& text) {
  static constexpr auto doubts = std::to_array<std::string_view>(
      {"not sure", "not quite sure", "not so sure", "unsure", "i think", "i am not sure"});
  for (char& c : text) c = c == '[' ? '(' : c == ']' ? ')' : c;
  for (std::size_t open = text.find('('); open != none; open = text.find('(', open + 1)) {
    const std::size_t close = text.find(')', open);
    if (close == none) return;
    const std::string inside = lowered(text.substr(open + 1, close - open - 1));
    if (std::ranges::find(doubts, inside) != doubts.end()) overwrite(text, open, close + 1 - open);
  }
}

}  // namespace

std::string withPlainSigns(std::string_view text) {
  struct Like {
    std::string_view sign;
    std::string_view plain;
  };
  static constexpr auto alike =
      std::to_array<Like>({{"→", "="}, {"⇒", "="}, {"->", "= "}, {"=>", "= "}, {"—", "-"}, {"–", "-"}});
  std::string plain(text);
  for (std::size_t at = 0; at < text.size();) {
    const auto like =
        std::ranges::find_if(alike, [&](const Like& one) { return text.substr(at).starts_with(one.sign); });
    if (like != alike.end()) {
      overwrite(plain, at, like->sign.size(), like->plain);
      at += like->sign.size();
      continue;
    }
    const std::size_t length = std::max<std::size_t>(characterLength(text.substr(at)), 1);
    if (text[at] != '\n' && hasAnySpace(text.substr(at, length))) overwrite(plain, at, length);
    at += length;
  }
  blankDoubts(plain);
  return plain;
}

bool saysOtherwise(std::string_view text) {
  std::string small = lowered(withoutWords(text));
  for (const std::string_view apostrophe : {"’", "'"})
    small = withReplaced(small, std::string("n") + std::string(apostrophe) + "t", "nt");
  if (small.find('?') != std::string::npos) return true;
  return anyWord(small, [](std::string_view word, std::size_t) { return changesMeaning(word); });
}

bool hasTalk(std::string_view text) {
  return anyWord(text, [&](std::string_view word, std::size_t) { return !isUnitWord(word); });
}

bool hasNumber(std::string_view text) {
  for (std::size_t at = 0; at < text.size(); ++at)
    if (isFigure(text, at) || isFractionSign(text, at)) return true;
  return false;
}

bool hasOperator(std::string_view text) {
  for (const std::string_view sign : {"×", "÷", "*", "+", "√", "·", "−", " x ", " X ", " - ", "sqrt",
                                      " times ", " divided by ", " over ", " plus ", " minus "})
    if (text.find(sign) != none) return true;
  for (std::size_t at = text.find('/'); at != none; at = text.find('/', at + 1)) {
    const std::size_t next = text.find_first_not_of(' ', at + 1);
    if (next != none && (isDigit(text[next]) || text[next] == '(')) return true;
  }
  return false;
}

std::string withoutSurroundings(std::string_view text) {
  std::string plain(text);
  const std::size_t begin = sumBegin(text);
  const std::size_t last = lastNumberEnd(text);
  if (begin == none || last == none) return plain;
  blankBefore(plain, begin);
  const std::size_t behind = Behind(text, last).run();
  if (behind == none || behind >= text.size()) return plain;
  const std::string_view rest = text.substr(behind);
  if (!hasSign(rest) && !mustStand(rest)) overwrite(plain, behind, rest.size());
  return plain;
}

}  // namespace wardchalk::practice
