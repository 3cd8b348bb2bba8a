#include "core/entry/detail/typed_number.h"

#include <algorithm>
#include <array>

#include "core/entry/detail/number_words.h"
#include "core/number/decimal_text.h"

namespace wardchalk::entry {

namespace {

/// Letters that are taken for digits: "1O", "l0".
bool looksLikeDigits(std::string_view word) {
  return word.find_first_not_of("OoIlS") == std::string_view::npos;
}

bool isFractionSign(std::string_view sign) {
  constexpr std::array<std::string_view, 6> signs = {"½", "¼", "¾", "⅓", "⅔", "⅛"};
  return std::find(signs.begin(), signs.end(), sign) != signs.end();
}

bool isFractionSign(const Token* token) {
  return token && token->kind == TokenKind::sign && isFractionSign(token->text);
}

bool isExponentWord(const Cursor& cursor) {
  if (!cursor.isWord("e") || !cursor.isJoined()) return false;
  const bool signedToo = (cursor.isSign("-", 1) || cursor.isSign("+", 1)) && cursor.isNumber(2);
  return cursor.isNumber(1) || signedToo;
}

bool isLetterInside(const Cursor& cursor) {
  const Token* token = cursor.peek();
  return cursor.isWord() && cursor.isJoined() && looksLikeDigits(token->text) && cursor.peek(1);
}

/// Why the number that ends before the cursor is no number: what stands behind it belongs to it as well.
std::optional<Refusal> refusedTail(const Cursor& cursor, std::size_t from) {
  const auto refused = [&](RefusalCode code) { return refusalOf(code, cursor.joinedFrom(from)); };
  if (isExponentWord(cursor) || cursor.isSign("^")) return refused(RefusalCode::exponent);
  if (isLetterInside(cursor)) return refused(RefusalCode::letterInNumber);
  if (isFractionSign(cursor.peek())) return refused(RefusalCode::fraction);
  if (cursor.isSign("/") && cursor.isNumber(1)) return refused(RefusalCode::fraction);
  if (cursor.isNumber() && cursor.isSign("/", 1) && cursor.isNumber(2)) return refused(RefusalCode::fraction);
  if (cursor.isNumber()) {
    Cursor both = cursor;
    both.take();
    return refusalOf(RefusalCode::spaceInNumber, both.typedFrom(from));
  }
  return std::nullopt;
}

/// "ten": of one meaning, and read in schedules alone.
std::optional<TypedNumber> takeWorded(Cursor& cursor, Findings& findings) {
  const std::size_t from = cursor.place();
  const auto value = takeNumberWords(cursor);
  if (!value) return std::nullopt;
  findings.object(RefusalCode::numberInWords, cursor.typedFrom(from));
  return TypedNumber{*value, exactText(*value), cursor.typedFrom(from)};
}

bool endsInZero(std::string_view digits) {
  return digits.find('.') != std::string_view::npos && digits.back() == '0';
}

}  // namespace

Refusal refusedNumber(const Cursor& cursor) {
  const Token* token = cursor.peek();
  if (!token) return refusalOf(RefusalCode::numberMissing, cursor.text());
  const bool sign = cursor.isSign("-") || cursor.isSign("+") || cursor.isSign("−") || cursor.isSign("–");
  if (sign) return refusalOf(RefusalCode::sign, cursor.joinedFrom(cursor.place()));
  if (isFractionSign(token)) return refusalOf(RefusalCode::fraction, token->text);
  if (cursor.isSign(".") || cursor.isSign(",")) return refusalOf(RefusalCode::notANumber, token->text);
  const bool letter =
      cursor.isWord() && looksLikeDigits(token->text) && cursor.isNumber(1) && cursor.isJoined(1);
  if (letter) return refusalOf(RefusalCode::letterInNumber, cursor.joinedFrom(cursor.place()));
  return refusalOf(RefusalCode::numberMissing, cursor.rest());
}

Result<TypedNumber> readTypedNumber(Cursor& cursor, Findings& findings, Zeros zeros) {
  if (auto worded = takeWorded(cursor, findings)) return *worded;
  if (!cursor.isNumber()) return refusedNumber(cursor);
  const std::size_t from = cursor.place();
  const std::string_view typed = cursor.take().text;
  if (auto refusal = refusedTail(cursor, from)) return *refusal;
  std::string digits(typed);
  Result<Number> value = readDecimal(digits);
  // "3 ft.5 in": 0.5 in, or 5 in behind "ft."
  const bool behindWord =
      from > 0 && cursor.tokens()[from - 1].kind == TokenKind::word && !cursor.tokens()[from].spaced;
  if (!value && value.refusal().code == RefusalCode::barePoint && !behindWord) {
    findings.object(RefusalCode::barePoint, typed);
    digits.insert(0, "0");
    value = readDecimal(digits);
  }
  if (!value) return refusalOf(value.refusal().code, typed);
  if (zeros == Zeros::lost && endsInZero(digits)) findings.remark(EntryRemark::trailingZero);
  return TypedNumber{*value, std::move(digits), typed};
}

}  // namespace wardchalk::entry
