#include "core/entry/detail/amount.h"

#include <algorithm>
#include <array>

#include "core/number/ascii.h"
#include "core/number/decimal_text.h"

namespace wardchalk::entry {

namespace {

constexpr std::size_t longestEntry = 200;

struct TypedUnit {
  Unit unit;
  Number times;
};

/// The unit's name that begins here, as it is looked up, and how many pieces it has.
struct UnitName {
  std::string name;
  std::size_t pieces;
};

std::optional<UnitName> squaredName(const Cursor& cursor) {
  if (!cursor.isWord("m")) return std::nullopt;
  const std::string letter(cursor.peek()->text);
  const auto isTwo = [&](std::size_t at) {
    return cursor.isNumber(at) && cursor.isJoined(at) && cursor.peek(at)->text == "2";
  };
  if (isTwo(1)) return UnitName{letter + "2", 2};
  if (cursor.isSign("²", 1) && cursor.isJoined(1)) return UnitName{letter + "²", 2};
  if (cursor.isSign("^", 1) && cursor.isJoined(1) && isTwo(2)) return UnitName{letter + "^2", 3};
  return std::nullopt;
}

std::optional<UnitName> pairedName(const Cursor& cursor, SpelledIn where) {
  if (!cursor.isWord() || !cursor.isWord(1)) return std::nullopt;
  std::string pair = lowered(cursor.peek()->text).append(" ").append(lowered(cursor.peek(1)->text));
  if (!spelledUnit(pair, where)) return std::nullopt;
  return UnitName{std::move(pair), 2};
}

UnitName nameAt(const Cursor& cursor, SpelledIn where) {
  if (auto squared = squaredName(cursor)) return *squared;
  if (auto pair = pairedName(cursor, where)) return *pair;
  return {std::string(cursor.peek()->text), 1};
}

/// "2×40", "1_000", "0x10": what stands directly behind the number is no unit and belongs to it.
bool isPartOfNumber(const Cursor& cursor) {
  const bool behindNumber = cursor.place() > 0 && cursor.isJoined() &&
                            cursor.tokens()[cursor.place() - 1].kind == TokenKind::number;
  return behindNumber && (!cursor.isWord() || (cursor.isNumber(1) && cursor.isJoined(1)));
}

Refusal unknownUnit(const Cursor& cursor, std::string_view name) {
  const std::string low = lowered(name);
  if (low == "d") return refusalOf(RefusalCode::perUnclear, name);
  if (isCourseWord(low)) return refusalOf(RefusalCode::courseTotal, name);
  if (cursor.isSign("/")) return refusalOf(RefusalCode::unitMissing, cursor.text());
  if (isPartOfNumber(cursor))
    return refusalOf(RefusalCode::notANumber, cursor.joinedFrom(cursor.place() - 1));
  return refusalOf(RefusalCode::unitUnknown, cursor.joinedFrom(cursor.place()));
}

Result<TypedUnit> readUnitName(Cursor& cursor, Findings& findings, SpelledIn where) {
  if (cursor.atEnd()) return refusalOf(RefusalCode::unitMissing, cursor.text());
  const UnitName name = nameAt(cursor, where);
  const auto spelled = spelledUnit(name.name, where);
  if (!spelled) return unknownUnit(cursor, name.name);
  const std::size_t from = cursor.place();
  for (std::size_t i = 0; i < name.pieces; ++i) cursor.take();
  const std::string_view typed = cursor.typedFrom(from);
  if (spelled->how == SpellingUse::never) return refusalOf(RefusalCode::unitAmbiguous, typed);
  if (spelled->how == SpellingUse::unsafe) findings.object(RefusalCode::unitUnsafe, typed);
  if (spelled->how == SpellingUse::other) findings.object(RefusalCode::unitUnknown, typed);
  return TypedUnit{spelled->unit, spelled->times};
}

Result<TypedPart> readPartFrom(TypedNumber number, Cursor& cursor, Findings& findings, SpelledIn where) {
  const std::size_t million = cursor.place();
  if (cursor.takeWord("million")) {
    number.value = number.value * Number(1000000);
    number.digits = exactText(number.value);
    findings.object(RefusalCode::numberInWords, cursor.typedFrom(million));
  }
  const Result<TypedUnit> unit = readUnitName(cursor, findings, where);
  if (!unit) return unit.refusal();
  const Number value = number.value * unit->times;
  const bool ours = unit->times == Number(1);
  return TypedPart{{value, unit->unit}, ours ? number.digits : exactText(value), unit->times};
}

/// "240 mg a day": no stroke of ours, and of one meaning.
bool takeWordedStroke(Cursor& cursor, Findings& findings) {
  const bool small = cursor.isWord("a") || cursor.isWord("each");
  const bool unit = cursor.isWord("day", 1) || cursor.isWord("dose", 1) || cursor.isWord("hour", 1) ||
                    cursor.isWord("minute", 1) || cursor.isWord("week", 1);
  if (!small || !unit) return false;
  findings.object(RefusalCode::wordTooMany, cursor.take().text);
  return true;
}

/// A stroke, "per", or "in" before a number: "120 mg in 5 mL", "4 g in 24 h". "In 3 divided doses" is none.
bool takeStroke(Cursor& cursor, Findings& findings) {
  if (cursor.takeSign("/") || cursor.takeWord("per")) return true;
  const bool divided = cursor.isWord("divided", 2) || cursor.isWord("to", 2) || cursor.isSign("-", 2);
  if (cursor.isWord("in") && cursor.isNumber(1) && !divided) return cursor.takeWord("in");
  return takeWordedStroke(cursor, findings);
}

Result<TypedPer> readPer(Cursor& cursor, Findings& findings) {
  std::optional<TypedNumber> number;
  if (cursor.isNumber()) {
    Result<TypedNumber> read = readTypedNumber(cursor, findings);
    if (!read) return read.refusal();
    number = *read;
  }
  if (cursor.isSign("-") || cursor.isSign("+")) return refusedNumber(cursor);
  const Result<TypedUnit> unit = readUnitName(cursor, findings, SpelledIn::stroke);
  if (!unit) return unit.refusal();
  if (number && number->value.isZero()) return refusalOf(RefusalCode::zero, cursor.text());
  if (number && number->value == Number(24) && unit->unit == Unit::h)
    return TypedPer{std::nullopt, Unit::day};
  if (unit->times == Number(1)) return TypedPer{number, unit->unit};
  const Number value = (number ? number->value : Number(1)) * unit->times;
  return TypedPer{TypedNumber{value, exactText(value), {}}, unit->unit};
}

}  // namespace

Result<TypedAmount> readTypedAmountFrom(TypedNumber first, Cursor& cursor, Findings& findings,
                                        SpelledIn where) {
  Result<TypedPart> part = readPartFrom(std::move(first), cursor, findings, where);
  if (!part) return part.refusal();
  TypedAmount amount;
  amount.parts.push_back(*std::move(part));
  while (cursor.isNumber() && amount.per.empty()) {
    Result<TypedNumber> number = readTypedNumber(cursor, findings);
    if (!number) return number.refusal();
    Result<TypedPart> more = readPartFrom(*std::move(number), cursor, findings, where);
    if (!more) return more.refusal();
    amount.parts.push_back(*std::move(more));
  }
  while (takeStroke(cursor, findings)) {
    Result<TypedPer> per = readPer(cursor, findings);
    if (!per) return per.refusal();
    amount.per.push_back(*std::move(per));
  }
  return amount;
}

Result<TypedAmount> readTypedAmount(Cursor& cursor, Findings& findings, SpelledIn where, Zeros zeros) {
  Result<TypedNumber> first = readTypedNumber(cursor, findings, zeros);
  if (!first) return first.refusal();
  return readTypedAmountFrom(*std::move(first), cursor, findings, where);
}

std::optional<Refusal> refusedRest(Cursor& cursor, Findings& findings) {
  if (cursor.atEnd()) return std::nullopt;
  const bool stop = cursor.isSign(".") && cursor.isJoined() && !cursor.peek(1);
  if (stop) {
    const std::size_t unit = cursor.place() - 1;
    cursor.take();
    findings.object(RefusalCode::unitUnknown, cursor.typedFrom(unit));
    return std::nullopt;
  }
  const std::string_view rest = cursor.rest();
  const bool course =
      cursor.isWord("over") || (cursor.isWord() && isCourseWord(lowered(cursor.peek()->text)));
  return refusalOf(course ? RefusalCode::courseTotal : RefusalCode::trailingText, rest);
}

std::optional<Refusal> refusedLength(std::string_view text) {
  return text.size() > longestEntry ? std::optional(refusalOf(RefusalCode::tooLong, text)) : std::nullopt;
}

std::optional<Refusal> refusedText(const Cursor& cursor) {
  if (cursor.atEnd()) return refusalOf(RefusalCode::empty, cursor.text());
  for (const Token& token : cursor.tokens()) {
    if (token.kind == TokenKind::unseen) return refusalOf(RefusalCode::unseenCharacter, token.text);
    if (token.kind == TokenKind::foreign) return refusalOf(RefusalCode::otherDigits, token.text);
    if (token.kind == TokenKind::damaged) return refusalOf(RefusalCode::damagedCharacter, token.text);
  }
  return std::nullopt;
}

}  // namespace wardchalk::entry
