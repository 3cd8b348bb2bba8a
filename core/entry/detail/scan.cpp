#include "core/entry/detail/scan.h"

#include <algorithm>

#include "core/number/ascii.h"
#include "core/number/characters.h"
#include "core/number/entry_text.h"
#include "core/number/unseen_text.h"

namespace wardchalk::entry {

namespace {

/// What parts pieces and is no piece: plain, no-break, narrow and wide spaces, and tabs. Unicode 14.0,
/// category Zs.
bool isBlankCharacter(char32_t c) {
  return c == U' ' || c == U'\t' || c == 0xA0 || c == 0x1680 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F ||
         c == 0x205F || c == 0x3000;
}

bool isMicro(char32_t c) { return c == 0xB5 || c == 0x3BC; }

/// A letter of a word: of ASCII, or a micro sign. Letters of other scripts, and look-alikes among them, are
/// signs.
std::size_t letterLength(std::string_view text) {
  if (text.empty()) return 0;
  if (isLetter(text.front())) return 1;
  const Character c = firstCharacter(text);
  return isMicro(c.code) ? c.bytes.size() : 0;
}

bool isPointOrComma(char c) { return c == '.' || c == ','; }

std::size_t numberRun(std::string_view text) {
  if (text.empty()) return 0;
  const bool pointed = isPointOrComma(text.front()) && text.size() > 1 && isDigit(text[1]);
  if (!isDigit(text.front()) && !pointed) return 0;
  std::size_t end = 0;
  while (end < text.size() && (isDigit(text[end]) || isPointOrComma(text[end]))) ++end;
  return end;
}

/// "b.i.d.": single letters with a point behind each.
std::size_t dottedRun(std::string_view text) {
  std::size_t end = 0;
  while (end + 1 < text.size() && isLetter(text[end]) && text[end + 1] == '.') end += 2;
  if (end < text.size() && end > 0 && isLetter(text[end])) ++end;
  const bool goesOn = end < text.size() && isLetter(text[end]);
  return end < 3 || goesOn ? 0 : end;
}

std::size_t wordRun(std::string_view text) {
  if (const std::size_t dotted = dottedRun(text)) return dotted;
  std::size_t end = 0;
  while (const std::size_t length = letterLength(text.substr(end))) end += length;
  return end;
}

bool breaksLine(char32_t c) { return (c >= 0x0A && c <= 0x0D) || c == 0x85 || c == 0x2028 || c == 0x2029; }

Token pieceOf(std::string_view rest, std::size_t at, bool spaced) {
  const Character c = firstCharacter(rest);
  if (!c.isWhole) return {TokenKind::damaged, c.bytes, at, spaced};
  if (const std::size_t length = numberRun(rest))
    return {TokenKind::number, rest.substr(0, length), at, spaced};
  if (const std::size_t length = wordRun(rest)) return {TokenKind::word, rest.substr(0, length), at, spaced};
  if (breaksLine(c.code) || unseenKind(c.code)) return {TokenKind::unseen, c.bytes, at, spaced};
  const bool digit = hasOtherDigits(c.bytes);
  return {digit ? TokenKind::foreign : TokenKind::sign, c.bytes, at, spaced};
}

/// Without the blanks and the ends of lines on either side: a copied cell brings its line end along.
std::string_view withoutEnds(std::string_view text) {
  const auto isOuter = [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; };
  while (!text.empty() && isOuter(text.back())) text.remove_suffix(1);
  return text;
}

}  // namespace

Tokens scan(std::string_view text) {
  Tokens tokens;
  const std::string_view whole = withoutEnds(text);
  std::size_t at = whole.find_first_not_of("\r\n\t ");
  at = std::min(at, whole.size());
  bool spaced = false;
  while (at < whole.size()) {
    const Character c = firstCharacter(whole.substr(at));
    if (c.isWhole && isBlankCharacter(c.code)) {
      spaced = true;
      at += c.bytes.size();
      continue;
    }
    tokens.push_back(pieceOf(whole.substr(at), at, spaced && !tokens.empty()));
    at += tokens.back().text.size();
    spaced = false;
  }
  return tokens;
}

bool Cursor::isWord(std::string_view low, std::size_t further) const {
  return isWord(further) && isInSmallLetters(peek(further)->text, low);
}

bool Cursor::isSign(std::string_view sign, std::size_t further) const {
  return isKind(TokenKind::sign, further) && peek(further)->text == sign;
}

bool Cursor::isJoined(std::size_t further) const {
  const Token* token = peek(further);
  return token && !token->spaced;
}

bool Cursor::takeWord(std::string_view low) {
  if (!isWord(low)) return false;
  ++at_;
  return true;
}

bool Cursor::takeSign(std::string_view sign) {
  if (!isSign(sign)) return false;
  ++at_;
  return true;
}

std::string_view Cursor::typedFrom(std::size_t place) const {
  if (place >= at_) return {};
  const std::size_t begin = tokens_[place].at;
  const Token& last = tokens_[at_ - 1];
  return text_.substr(begin, last.at + last.text.size() - begin);
}

std::string_view Cursor::joinedFrom(std::size_t place) const {
  Cursor other = *this;
  other.goTo(place);
  if (other.atEnd()) return {};
  other.take();
  while (other.isJoined()) other.take();
  return other.typedFrom(place);
}

std::string_view Cursor::rest() const {
  if (atEnd()) return {};
  const std::size_t begin = tokens_[at_].at;
  const Token& last = tokens_.back();
  return text_.substr(begin, last.at + last.text.size() - begin);
}

std::string plainText(const Cursor& cursor) {
  std::string plain;
  plain.reserve(cursor.text().size());
  for (const Token& token : cursor.tokens()) {
    if (token.spaced) plain.push_back(' ');
    for (const char c : token.text) plain.push_back(lowered(c));
  }
  return plain;
}

bool takeRangeWord(Cursor& cursor) {
  // a hyphen, an en dash, a hyphen that no line is broken at
  return cursor.takeSign("-") || cursor.takeSign("–") || cursor.takeSign("‑") || cursor.takeWord("to");
}

}  // namespace wardchalk::entry
