#include <algorithm>
#include <array>

#include "core/entry/read_schedule.h"
#include "core/entry/unit_spelling.h"
#include "core/number/decimal_text.h"
#include "core/practice/lines/detail/scanner.h"

namespace wardchalk::practice {

namespace {

struct Word {
  std::string_view typed;
  TokenKind kind;
};
/// Words that stand for a sign.
constexpr std::array words = {
    Word{"x", TokenKind::times},     Word{"X", TokenKind::times},    Word{"times", TokenKind::times},
    Word{"per", TokenKind::slash},   Word{"over", TokenKind::slash}, Word{"plus", TokenKind::plus},
    Word{"minus", TokenKind::minus}, Word{"sqrt", TokenKind::root},  Word{"equals", TokenKind::relation}};

/// Read at the bedside without a word, and answered with the safe form in practice, where writing it is
/// learned.
constexpr std::array<std::string_view, 2> answeredSpellings = {"hr", "hrs"};

struct Power {
  std::string_view sign;
  int power;
};
constexpr std::array powers = {Power{"¹", 1}, Power{"²", 2}, Power{"³", 3}, Power{"⁴", 4}, Power{"⁵", 5},
                               Power{"⁶", 6}, Power{"⁷", 7}, Power{"⁸", 8}, Power{"⁹", 9}};

/// Characters beside letters that name a unit, each a word of its own but the micro signs.
constexpr std::array<std::string_view, 7> unitSigns = {"#", "\"", "'", "″", "′", "’", "”"};

std::size_t signLength(std::string_view text) {
  for (const std::string_view sign : unitSigns)
    if (text.starts_with(sign)) return sign.size();
  return 0;
}

std::size_t letterLength(std::string_view text) {
  if (text.empty()) return 0;
  if (isLetter(text[0])) return 1;
  return text.starts_with("µ") || text.starts_with("μ") ? 2 : 0;
}

std::size_t wordEnd(const Scanner& scanner) {
  if (const std::size_t length = signLength(scanner.rest())) return scanner.at + length;
  std::size_t end = scanner.at;
  while (const std::size_t length = letterLength(scanner.line.substr(end))) end += length;
  if (scanner.line.substr(scanner.at).starts_with("I.U.")) end = scanner.at + 4;
  return end;
}

std::string_view between(const Scanner& scanner, std::size_t begin, std::size_t end) {
  return scanner.line.substr(begin, end - begin);
}

/// The power of a unit written after it at `at`, of which `end` becomes the end; 1 when none is.
int powerAt(const Scanner& scanner, std::size_t at, std::size_t& end) {
  end = at;
  for (const Power& power : powers)
    if (scanner.line.substr(at).starts_with(power.sign)) {
      end = at + power.sign.size();
      return power.power;
    }
  const bool caret = scanner.charAt(at) == '^';
  const std::size_t first = caret ? at + 1 : at;
  if (!isDigit(scanner.charAt(first)) || scanner.charAt(first) == '0') return 1;
  end = first + 1;
  const int power = scanner.charAt(first) - '0';
  if (!caret || !isDigit(scanner.charAt(end))) return power;
  // m^8 by m^4 is m^12. What would be more is a number that was written too near.
  constexpr int most = 18;
  const int longer = 10 * power + (scanner.charAt(end) - '0');
  if (longer > most) return power;
  ++end;
  return longer;
}

/// A unit multiplied by itself: m² is a unit of its own here, so m⁴ is two of it.
UnitProduct raised(Unit unit, int power) {
  UnitProduct units;
  const bool area = unit == Unit::m;
  for (int i = 0; i < (area ? power / 2 : power); ++i) units.push_back(area ? Unit::m2 : unit);
  if (area && power % 2 == 1) units.push_back(Unit::m);
  return units;
}

/// How a unit is written in a line: "drops", "units", "m²".
std::string written(Unit unit) {
  return std::string(unit == Unit::drop || unit == Unit::units ? infoOf(unit).many : infoOf(unit).one);
}

struct Spelled {
  Unit unit;
  std::optional<LineRemarkCode> remark;
};

/// The unit that a word names, also by another spelling, and what is to be said of it.
std::optional<Spelled> spelled(std::string_view typed) {
  const auto unit = spelledUnit(typed, SpelledIn::line);
  if (!unit || unit->how == SpellingUse::never || unit->times != Number(1)) return std::nullopt;
  if (unit->how == SpellingUse::unsafe) return Spelled{unit->unit, LineRemarkCode::unsafeSpelling};
  const bool answered = std::find(answeredSpellings.begin(), answeredSpellings.end(), lowered(typed)) !=
                        answeredSpellings.end();
  if (unit->how == SpellingUse::other || answered) return Spelled{unit->unit, LineRemarkCode::otherSpelling};
  return Spelled{unit->unit, std::nullopt};
}

/// A word that is no unit and no sign.
LineFault unknown(const Scanner& scanner, Span at) {
  const std::string_view typed = between(scanner, at.begin, at.end);
  const auto unit = spelledUnit(typed, SpelledIn::line);
  if (unit && unit->how == SpellingUse::never) return scanner.fault(LineFaultCode::unitUnsafe, at);
  if (unit)
    return scanner.fault(LineFaultCode::unitOtherSize, at,
                         show(unit->times, Grouping::commas).text + " " + written(unit->unit));
  if (typed == "d" || typed == "D") return scanner.fault(LineFaultCode::perUnclear, at);
  const EntryAnswer schedule = answerOf(readOrderSchedule(typed));
  if (schedule.isRead) return scanner.fault(LineFaultCode::scheduleHere, at, schedule.safe);
  const bool misread = schedule.refusal->code == RefusalCode::scheduleUnsafe ||
                       schedule.refusal->code == RefusalCode::scheduleLookAlike;
  return scanner.fault(misread ? LineFaultCode::scheduleHere : LineFaultCode::wordUnknown, at);
}

/// A point after an abbreviation, "hr."; at the end of the line it ends the sentence.
void passPoint(Scanner& scanner) {
  if (scanner.charAt(scanner.at) == '.' && !isDigit(scanner.charAt(scanner.at + 1))) ++scanner.at;
}

std::optional<LineFault> addUnit(Scanner& scanner, Span word, const Spelled& unit) {
  std::size_t end = word.end;
  const int power = powerAt(scanner, word.end, end);
  const Span at{word.begin, end};
  const bool bareDigit = end == word.end + 1 && isDigit(scanner.charAt(word.end));
  const bool goesOn = isDigit(scanner.charAt(end)) || scanner.charAt(end) == '^';
  if (goesOn || (bareDigit && unit.unit != Unit::m))
    return scanner.fault(LineFaultCode::powerUnknown, {word.begin, goesOn ? end + 1 : end});
  if (unit.remark) scanner.remark(*unit.remark, word, written(unit.unit));
  if (scanner.charAt(word.end) == '^')
    scanner.remark(LineRemarkCode::otherSpelling, at, written(raised(unit.unit, power).front()));
  scanner.at = word.begin;
  scanner.add(TokenKind::unit, end).units = raised(unit.unit, power);
  passPoint(scanner);
  return std::nullopt;
}

/// "sq m", "square metres": the word "square" and what follows it. False when it is not that.
bool addSquare(Scanner& scanner, std::size_t end) {
  const std::size_t begin = scanner.at;
  Scanner ahead{scanner.line, end, {}};
  if (ahead.charAt(end) == '.') ++ahead.at;
  ahead.skipSpaces();
  const std::size_t metreEnd = wordEnd(ahead);
  const auto metre = spelled(between(ahead, ahead.at, metreEnd));
  if (!metre || metre->unit != Unit::m) return false;
  const bool writtenOut = isLetter(scanner.charAt(begin + 2));  // not "sq"
  scanner.add(TokenKind::unit, metreEnd).units = {Unit::m2};
  if (!writtenOut) scanner.remark(LineRemarkCode::otherSpelling, {begin, metreEnd}, "m²");
  passPoint(scanner);
  return true;
}

/// "450 mg in 24 h": a day, by the taught wording. With a stroke it is a quotient of 24 hours.
bool addDay(Scanner& scanner, std::size_t end) {
  Scanner ahead{scanner.line, end, {}};
  ahead.skipSpaces();
  if (!ahead.startsWith("24") || isDigit(ahead.charAt(ahead.at + 2)) || ahead.charAt(ahead.at + 2) == '.')
    return false;
  ahead.at += 2;
  ahead.skipSpaces();
  const std::size_t hourEnd = wordEnd(ahead);
  const auto hour = spelled(between(ahead, ahead.at, hourEnd));
  if (!hour || hour->unit != Unit::h) return false;
  scanner.add(TokenKind::slash, end);
  scanner.add(TokenKind::unit, hourEnd).units = {Unit::day};
  passPoint(scanner);
  return true;
}

/// "divided by", "square root of", and the small words that say nothing of their own: "per one dose", "in
/// each dose".
bool addPhrase(Scanner& scanner, std::string_view word, std::size_t end) {
  const auto followedBy = [&](std::string_view more, TokenKind kind) {
    if (!scanner.line.substr(end).starts_with(more)) return false;
    scanner.add(kind, end + more.size());
    return true;
  };
  if (word == "divided") return followedBy(" by", TokenKind::divide);
  if (word == "square")
    return followedBy(" root of", TokenKind::root) || followedBy(" root", TokenKind::root);
  const bool small = word == "one" || word == "each" || word == "a" || word == "an";
  if (small && scanner.lastIs(TokenKind::slash)) {
    scanner.at = end;
    return true;
  }
  if (word == "in" && scanner.lastIs(TokenKind::unit) && addDay(scanner, end)) return true;
  if ((word == "each" || word == "in" || word == "a") && scanner.lastIs(TokenKind::unit)) {
    scanner.add(TokenKind::slash, end);
    return true;
  }
  return false;
}

bool addSign(Scanner& scanner, std::string_view word, std::size_t end) {
  for (const Word& known : words)
    if (known.typed == word) {
      scanner.add(known.kind, end);
      return true;
    }
  return false;
}

bool allLetters(std::string_view text) {
  return std::all_of(text.begin(), text.end(),
                     [](char c) { return isLetter(c) || c == ' ' || c == '-' || c == '.'; });
}

/// Whether one of the words is not a unit; "dose" names an answer as well.
bool namesSomething(std::string_view text) {
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, end);
    if (!word.empty() && (word == "dose" || !spelled(word))) return true;
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return false;
}

}  // namespace

bool beginsWord(const Scanner& scanner) {
  return letterLength(scanner.rest()) + signLength(scanner.rest()) > 0;
}

std::optional<LineFault> scanWord(Scanner& scanner) {
  const std::size_t begin = scanner.at;
  const std::size_t end = wordEnd(scanner);
  const std::string_view word = between(scanner, begin, end);
  if (addPhrase(scanner, word, end) || addSign(scanner, word, end)) return std::nullopt;
  if ((word == "sq" || word == "Sq" || word == "square" || word == "Square") && addSquare(scanner, end))
    return std::nullopt;
  if (const auto unit = spelled(word)) return addUnit(scanner, {begin, end}, *unit);
  const std::string_view beforeX = word.substr(0, word.size() - 1);
  if (word.ends_with('x') && !beforeX.empty() && spelled(beforeX))  // "5 mgx2"
    return addUnit(scanner, {begin, end - 1}, *spelled(beforeX));
  return unknown(scanner, {begin, end});
}

bool unitFollows(const Scanner& scanner) {
  const std::string_view word = between(scanner, scanner.at, wordEnd(scanner));
  return spelled(word) || word == "sq" || word == "square";
}

std::string scanLabel(Scanner& scanner) {
  const std::size_t sign = scanner.line.find_first_of("=:");
  if (sign == std::string_view::npos) return {};
  scanner.skipSpaces();
  std::string_view label = sign < scanner.at ? "" : between(scanner, scanner.at, sign);
  while (label.ends_with(' ')) label.remove_suffix(1);
  if (label.empty() || label.size() > 60 || !allLetters(label) || !namesSomething(label)) {
    scanner.at = 0;
    return {};
  }
  scanner.at = sign + 1;
  return std::string(label);
}

}  // namespace wardchalk::practice
