#include "core/practice/marking/verdict_answer.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "core/number/ascii.h"
#include "core/practice/lines/changing_words.h"

namespace wardchalk {

namespace {

using Relation = StatedComparison::Relation;
using Reason = VerdictReason;

/// What a phrase says.
enum class Says : std::uint8_t {
  nothing,
  safe,
  ask,
  unsafe,
  doNotGive,
  doesNotFit,
  reason,
  relation,
  route,
  every,
  upTo
};

struct Phrase {
  std::string_view words;
  Says says = Says::nothing;
  Reason reason = Reason::tooLow;
  Relation relation = Relation::below;
};

constexpr Phrase means(std::string_view words, Says says) { return {words, says, {}, {}}; }
constexpr Phrase because(std::string_view words, Reason reason) { return {words, Says::reason, reason, {}}; }
constexpr Phrase joins(std::string_view words, Relation relation) {
  return {words, Says::relation, {}, relation};
}

/// Every phrase that is understood; where several begin alike the longest counts. Common practice, no source.
constexpr auto phrases = std::to_array<Phrase>({means("safe", Says::safe),
                                                means("a safe dose", Says::safe),
                                                means("in range", Says::safe),
                                                means("in the range", Says::safe),
                                                means("in the safe range", Says::safe),
                                                means("within", Says::safe),
                                                means("within range", Says::safe),
                                                means("within the range", Says::safe),
                                                means("within the safe range", Says::safe),
                                                means("within limits", Says::safe),
                                                means("ok", Says::safe),
                                                means("okay", Says::safe),
                                                means("may be given", Says::safe),
                                                means("can be given", Says::safe),
                                                means("yes", Says::safe),
                                                means("fine", Says::safe),
                                                means("can give", Says::safe),
                                                means("unsafe", Says::unsafe),
                                                means("not safe", Says::unsafe),
                                                means("isnt safe", Says::unsafe),
                                                means("is not safe", Says::unsafe),
                                                means("may not be given", Says::unsafe),
                                                means("cannot be given", Says::unsafe),
                                                means("do not give", Says::doNotGive),
                                                means("dont give", Says::doNotGive),
                                                means("not to be given", Says::doNotGive),
                                                means("do not give as ordered", Says::doNotGive),
                                                means("do not prepare", Says::doNotGive),
                                                means("would not give", Says::doNotGive),
                                                means("wouldnt give", Says::doNotGive),
                                                means("will not give", Says::doNotGive),
                                                means("should not be given", Says::doNotGive),
                                                means("must not be given", Says::doNotGive),
                                                means("not giving", Says::doNotGive),
                                                means("does not fit", Says::doesNotFit),
                                                means("doesnt fit", Says::doesNotFit),
                                                means("does not fit this child", Says::doesNotFit),
                                                means("not covered", Says::doesNotFit),
                                                means("is not covered", Says::doesNotFit),
                                                means("does not cover", Says::doesNotFit),
                                                means("ask", Says::ask),
                                                means("ask first", Says::ask),
                                                means("check", Says::ask),
                                                means("clarify", Says::ask),
                                                means("call", Says::ask),
                                                means("phone", Says::ask),
                                                means("query", Says::ask),
                                                means("hold", Says::ask),
                                                means("withhold", Says::ask),
                                                means("ring", Says::ask),
                                                means("contact", Says::ask),
                                                means("speak to", Says::ask),
                                                because("too low", Reason::tooLow),
                                                because("too little", Reason::tooLow),
                                                because("too small", Reason::tooLow),
                                                because("low", Reason::tooLow),
                                                because("underdose", Reason::tooLow),
                                                because("not enough", Reason::tooLow),
                                                because("below the range", Reason::tooLow),
                                                because("below the safe range", Reason::tooLow),
                                                because("below range", Reason::tooLow),
                                                because("under the range", Reason::tooLow),
                                                because("under the safe range", Reason::tooLow),
                                                because("below the safe dose", Reason::tooLow),
                                                because("below the low end", Reason::tooLow),
                                                because("below the minimum", Reason::tooLow),
                                                because("under the minimum", Reason::tooLow),
                                                because("less than expected", Reason::tooLow),
                                                because("too high", Reason::tooHigh),
                                                because("too much", Reason::tooHigh),
                                                because("too large", Reason::tooHigh),
                                                because("high", Reason::tooHigh),
                                                because("overdose", Reason::tooHigh),
                                                because("above the limit", Reason::tooHigh),
                                                because("over the limit", Reason::tooHigh),
                                                because("above the range", Reason::tooHigh),
                                                because("over the range", Reason::tooHigh),
                                                because("above the safe range", Reason::tooHigh),
                                                because("above range", Reason::tooHigh),
                                                because("over the safe dose", Reason::tooHigh),
                                                because("above the safe dose", Reason::tooHigh),
                                                because("exceeds the limit", Reason::tooHigh),
                                                because("above the maximum", Reason::overMaximum),
                                                because("over the maximum", Reason::overMaximum),
                                                because("above the maximum dose", Reason::overMaximum),
                                                because("over the maximum dose", Reason::overMaximum),
                                                because("exceeds the maximum", Reason::overMaximum),
                                                because("more than the maximum", Reason::overMaximum),
                                                because("no dose may be more than", Reason::overMaximum),
                                                because("no day may be more than", Reason::overMaximum),
                                                because("wrong schedule", Reason::schedule),
                                                because("schedule is wrong", Reason::schedule),
                                                because("frequency is wrong", Reason::schedule),
                                                because("schedule does not match", Reason::schedule),
                                                because("schedule doesnt match", Reason::schedule),
                                                because("schedule does not fit", Reason::schedule),
                                                because("schedule is different", Reason::schedule),
                                                because("schedule mismatch", Reason::schedule),
                                                because("another schedule", Reason::schedule),
                                                because("not the same schedule", Reason::schedule),
                                                because("wrong frequency", Reason::schedule),
                                                because("not the same times a day", Reason::schedule),
                                                because("wrong interval", Reason::schedule),
                                                because("schedule differs", Reason::schedule),
                                                because("different schedule", Reason::schedule),
                                                because("frequency differs", Reason::schedule),
                                                because("too often", Reason::schedule),
                                                because("not often enough", Reason::schedule),
                                                because("too seldom", Reason::schedule),
                                                because("age", Reason::age),
                                                because("wrong age", Reason::age),
                                                because("another age", Reason::age),
                                                because("not for this age", Reason::age),
                                                because("too old", Reason::age),
                                                because("too young", Reason::age),
                                                because("route", Reason::route),
                                                because("wrong route", Reason::route),
                                                because("other route", Reason::route),
                                                because("route differs", Reason::route),
                                                because("another route", Reason::route),
                                                because("too concentrated", Reason::tooConcentrated),
                                                because("too strong", Reason::tooConcentrated),
                                                because("needs more fluid", Reason::tooConcentrated),
                                                because("more fluid", Reason::tooConcentrated),
                                                because("too fast", Reason::tooFast),
                                                because("runs too fast", Reason::tooFast),
                                                because("too quick", Reason::tooFast),
                                                because("runs too quickly", Reason::tooFast),
                                                because("too quickly", Reason::tooFast),
                                                joins("<", Relation::below),
                                                joins("is less than", Relation::below),
                                                joins("less than", Relation::below),
                                                joins("is under", Relation::below),
                                                joins("under", Relation::below),
                                                joins("is below", Relation::below),
                                                joins("below", Relation::below),
                                                joins("is lower than", Relation::below),
                                                joins("≤", Relation::atMost),
                                                joins("<=", Relation::atMost),
                                                joins("is not more than", Relation::atMost),
                                                joins("not more than", Relation::atMost),
                                                joins("is no more than", Relation::atMost),
                                                joins("is not over", Relation::atMost),
                                                joins("not over", Relation::atMost),
                                                joins("not above", Relation::atMost),
                                                joins("is not above", Relation::atMost),
                                                joins("does not exceed", Relation::atMost),
                                                joins("doesnt exceed", Relation::atMost),
                                                joins("does not reach", Relation::below),
                                                joins("doesnt reach", Relation::below),
                                                joins("is at most", Relation::atMost),
                                                joins(">", Relation::above),
                                                joins("is more than", Relation::above),
                                                joins("more than", Relation::above),
                                                joins("is over", Relation::above),
                                                joins("over", Relation::above),
                                                joins("is above", Relation::above),
                                                joins("above", Relation::above),
                                                joins("is higher than", Relation::above),
                                                joins("exceeds", Relation::above),
                                                joins("≥", Relation::atLeast),
                                                joins(">=", Relation::atLeast),
                                                joins("is not less than", Relation::atLeast),
                                                joins("not less than", Relation::atLeast),
                                                joins("is at least", Relation::atLeast),
                                                joins("is outside", Relation::outside),
                                                joins("outside", Relation::outside),
                                                joins("is not within", Relation::outside),
                                                joins("is not between", Relation::outside),
                                                joins("not between", Relation::outside),
                                                joins("lies outside", Relation::outside),
                                                joins("is between", Relation::within),
                                                joins("is inside", Relation::within),
                                                joins("lies between", Relation::within),
                                                joins("falls between", Relation::within),
                                                joins("between", Relation::within),
                                                means("intravenous", Says::route),
                                                means("iv", Says::route),
                                                means("oral", Says::route),
                                                means("po", Says::route),
                                                means("by mouth", Says::route),
                                                means("intramuscular", Says::route),
                                                means("im", Says::route),
                                                means("subcutaneous", Says::route),
                                                means("rectal", Says::route),
                                                means("continuous", Says::every),
                                                means("no problem", Says::nothing),
                                                means("i would say", Says::nothing),
                                                means("i would ask", Says::ask),
                                                means("would ask", Says::ask),
                                                means("to", Says::upTo),
                                                means("and", Says::upTo),
                                                means("the safe", Says::nothing),
                                                means("safe range", Says::nothing),
                                                means("the safe range", Says::nothing),
                                                means("the safe limit", Says::nothing),
                                                means("the", Says::nothing),
                                                means("a", Says::nothing),
                                                means("it", Says::nothing),
                                                means("is", Says::nothing),
                                                means("this", Says::nothing),
                                                means("that", Says::nothing),
                                                means("order", Says::nothing),
                                                means("ordered", Says::nothing),
                                                means("as", Says::nothing),
                                                means("dose", Says::nothing),
                                                means("dosage", Says::nothing),
                                                means("be", Says::nothing),
                                                means("with", Says::nothing),
                                                means("prescriber", Says::nothing),
                                                means("pharmacist", Says::nothing),
                                                means("doctor", Says::nothing),
                                                means("physician", Says::nothing),
                                                means("provider", Says::nothing),
                                                means("by", Says::nothing),
                                                means("reference", Says::nothing),
                                                means("says", Says::nothing),
                                                means("child", Says::nothing),
                                                means("before", Says::nothing),
                                                means("giving", Says::nothing),
                                                means("give", Says::nothing),
                                                means("given", Says::nothing),
                                                means("first", Says::nothing),
                                                means("for", Says::nothing),
                                                means("no", Says::nothing),
                                                means("runs", Says::nothing),
                                                means("in", Says::nothing),
                                                means("per", Says::nothing),
                                                means("each", Says::nothing),
                                                means("one", Says::nothing),
                                                means("day", Says::nothing),
                                                means("daily", Says::nothing),
                                                means("hours", Says::nothing),
                                                means("because", Says::nothing),
                                                means("so", Says::nothing),
                                                means("of", Says::nothing),
                                                means("maximum", Says::nothing),
                                                means("at", Says::nothing),
                                                means("an", Says::nothing)});

bool isWordPart(char c) { return isLetter(c) || isDigit(c) || static_cast<unsigned char>(c) >= 0x80; }

/// Words, figures with their points, and signs of comparison, small, with single spaces.
std::string tidied(std::string_view text) {
  std::string words;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '\'') continue;
    if (text.substr(i).starts_with("’")) {
      i += std::string_view("’").size() - 1;
      continue;
    }
    if (text.substr(i).starts_with("→") || text.substr(i).starts_with("⇒")) {
      i += std::string_view("→").size() - 1;
      if (!words.empty() && words.back() != ' ') words += ' ';
      continue;
    }
    const bool point = (c == '.' || c == ',') && i > 0 && isDigit(text[i - 1]) && i + 1 < text.size() &&
                       isDigit(text[i + 1]);
    if (point && c == ',') continue;  // thousands
    const bool kept = isWordPart(c) || point || c == '<' || c == '>' || c == '=' || c == '/' || c == '%';
    if (kept)
      words += lowered(c);
    else if (!words.empty() && words.back() != ' ')
      words += ' ';
  }
  while (!words.empty() && words.back() == ' ') words.pop_back();
  return words;
}

/// Words that make a verdict hang on something, or doubt it.
constexpr auto doubting = std::to_array<std::string_view>(
    {"after", "could", "depends", "guess", "once", "only", "think", "until", "when", "would"});

class VerdictReader {
 public:
  explicit VerdictReader(std::string text) : text_(std::move(text)) {}

  std::optional<VerdictAnswer> run() {
    while (pass()) {
      if (!readNext()) return std::nullopt;
    }
    return answer();
  }

 private:
  bool pass() {
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
    return at_ < text_.size();
  }

  bool readNext() {
    std::string_view rest = std::string_view(text_).substr(at_);
    if (rest.starts_with("≈")) {
      at_ += std::string_view("≈").size();
      return true;
    }
    if (rest.starts_with("every ")) return readSchedule(6);
    if (isDigit(rest[0])) return readNumber();
    const Phrase* found = nullptr;
    for (const Phrase& phrase : phrases)
      if ((!found || phrase.words.size() > found->words.size()) && standsHere(rest, phrase.words))
        found = &phrase;
    if (!found) return passOver(rest);
    at_ += found->words.size();
    take(*found);
    return true;
  }

  /// A word that says nothing of the verdict: "looks safe to me".
  bool passOver(std::string_view rest) {
    const std::string_view word = rest.substr(0, rest.find(' '));
    if (word == "%") {
      at_ += word.size();
      return true;
    }
    const std::string_view behind = rest.substr(word.size());
    if (word == "only" && behind.size() > 1 && isDigit(behind[1])) {  // "only 42 mg"
      at_ += word.size();
      return true;
    }
    const bool plain = std::ranges::all_of(word, isLetter);
    if (!plain || changesMeaning(word) || std::ranges::find(doubting, word) != doubting.end()) return false;
    at_ += word.size();
    return true;
  }

  static bool standsHere(std::string_view rest, std::string_view words) {
    if (!rest.starts_with(words)) return false;
    return rest.size() == words.size() || !isLetter(words.back()) || !isWordPart(rest[words.size()]);
  }

  void take(const Phrase& phrase) {
    switch (phrase.says) {
      case Says::reason:
        if (!reason_) reason_ = phrase.reason;
        break;
      case Says::relation:
        relation_ = phrase.relation;
        break;
      case Says::route:
        if (++routes_ == 2) reason_ = Reason::route;
        break;
      case Says::every:
        if (++schedules_ == 2) reason_ = Reason::schedule;
        break;
      default:
        said_[static_cast<std::size_t>(phrase.says)] = true;
    }
  }

  [[nodiscard]] bool said(Says what) const { return said_[static_cast<std::size_t>(what)]; }

  std::string_view wordAt(std::size_t at) const {
    const std::size_t end = std::min(text_.find(' ', at), text_.size());
    return std::string_view(text_).substr(at, end - at);
  }

  /// "every 8 h", "every 8 hours".
  bool readSchedule(std::size_t length) {
    at_ += length;
    const std::string_view number = wordAt(at_);
    if (number.empty() || !isDigit(number[0])) return false;
    at_ += number.size();
    if (pass()) at_ += wordAt(at_).size();
    if (++schedules_ == 2) reason_ = Reason::schedule;
    return true;
  }

  /// An amount with its unit; "3 times a day" and "24 h" are no amounts.
  bool readNumber() {
    const std::string_view number = wordAt(at_);
    const std::size_t begin = at_;
    at_ += number.size();
    if (!pass()) return isAmount(begin, at_);
    const std::string_view unit = wordAt(at_);
    if (unit == "times") {
      at_ += unit.size();
      if (++schedules_ == 2) reason_ = Reason::schedule;
      return true;
    }
    at_ += unit.size();
    if (unit == "h" || unit == "hours" || unit == "years" || unit == "year" || unit == "months" ||
        unit == "min")
      return true;
    if (unit == "%") return true;  // no amount
    if (!isAmount(begin, at_)) {
      at_ = begin + number.size();  // "between 207 and 414"
      if (!isAmount(begin, at_)) return false;
    }
    return true;
  }

  bool isAmount(std::size_t begin, std::size_t end) {
    const ReadLine read = readStudentLine(std::string_view(text_).substr(begin, end - begin));
    const auto* line = std::get_if<StudentLine>(&read);
    if (!line || line->sides.size() != 1 || !line->sides.front().isAmount) return false;
    amounts_.push_back(line->sides.front());
    return true;
  }

  [[nodiscard]] std::optional<StatedComparison> compared() const {
    if (!relation_ || amounts_.size() < 2) return std::nullopt;
    StatedComparison comparison{amounts_[0], *relation_, amounts_[1], {}};
    if (amounts_.size() > 2) {
      comparison.upper = amounts_[2];
      // "between 308 and 500 mg": the unit behind both
      if (comparison.right.written == UnitsWritten::none) comparison.right.units = amounts_[2].units;
    }
    return comparison;
  }

  static VerdictWord impliedBy(Reason reason) {
    switch (reason) {
      case Reason::tooLow:
      case Reason::schedule:
        return VerdictWord::ask;
      case Reason::age:
      case Reason::route:
        return VerdictWord::doesNotFit;
      default:
        return VerdictWord::unsafe;
    }
  }

  /// The word that was said; a wrong schedule "does not fit" in another sense, and "do not give, ask" asks.
  [[nodiscard]] std::optional<VerdictWord> word() const {
    const bool unsafe = said(Says::unsafe) || (said(Says::doNotGive) && !said(Says::ask));
    if (said(Says::doesNotFit) && reason_ != Reason::schedule) return VerdictWord::doesNotFit;
    if (said(Says::safe) && (unsafe || said(Says::ask))) return std::nullopt;
    if (unsafe) return VerdictWord::unsafe;
    if (said(Says::ask)) return VerdictWord::ask;
    if (said(Says::safe)) return VerdictWord::safe;
    return std::nullopt;
  }

  [[nodiscard]] std::optional<VerdictAnswer> answer() const {
    const bool both = said(Says::safe) && (said(Says::unsafe) || said(Says::doNotGive) || said(Says::ask));
    if (both) return std::nullopt;
    VerdictAnswer answer{VerdictWord::safe, true, reason_, compared()};
    if (const auto known = word())
      answer.word = *known;
    else if (reason_)
      answer = {impliedBy(*reason_), false, reason_, compared()};
    else if (answer.compared)
      answer = {impliedBy(*answer.compared), false, {}, answer.compared};
    else
      return std::nullopt;
    if (amounts_.size() == 1) answer.figure = amounts_.front();
    return answer;
  }

  /// What a comparison alone means: an ordered amount that is not more than another is safe.
  static VerdictWord impliedBy(const StatedComparison& compared) {
    switch (compared.relation) {
      case Relation::above:
      case Relation::outside:
        return VerdictWord::unsafe;
      default:
        return VerdictWord::safe;
    }
  }

  std::string text_;
  std::size_t at_ = 0;
  std::array<bool, 11> said_{};
  std::optional<Reason> reason_;
  std::optional<Relation> relation_;
  std::vector<LineSide> amounts_;
  int routes_ = 0;
  int schedules_ = 0;
};

/// "safe (I think)": said beside it, in brackets, it takes nothing back.
std::string withoutAside(std::string words, std::string_view text) {
  constexpr std::string_view aside = "i think";
  if (!text.ends_with("think)") || !words.ends_with(aside)) return words;
  words.resize(words.size() - aside.size());
  return words;
}

/// "4 × 380 = 1520 mg, more than 401 mg: unsafe": of a sum that stands before the comparison, what it comes
/// to.
std::string_view withoutSum(std::string_view text) {
  const std::size_t equals = text.find('=');
  if (equals == 0 || equals == std::string_view::npos || text[equals - 1] == '<' || text[equals - 1] == '>')
    return text;
  const std::string_view sum = text.substr(0, equals);
  const ReadLine read = readStudentLine(sum);
  const auto* line = std::get_if<StudentLine>(&read);
  const bool works = line && line->sides.size() == 1 && !line->sides.front().isAmount;
  return works ? text.substr(equals + 1) : text;
}

}  // namespace

std::string plainWords(std::string_view text) { return tidied(text); }

std::optional<VerdictAnswer> readVerdictAnswer(std::string_view text) {
  text = withoutSum(text);
  return VerdictReader(withoutAside(tidied(text), text)).run();
}

std::optional<VerdictWord> readVerdictWord(std::string_view text) {
  const auto answer = readVerdictAnswer(text);
  return answer ? std::optional(answer->word) : std::nullopt;
}

}  // namespace wardchalk
