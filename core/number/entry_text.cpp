#include "core/number/entry_text.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace wardchalk {

namespace {

struct Character {
  char32_t code;
  std::size_t bytes;
};

/// The first character of UTF-8 text; a byte of a broken sequence counts as one character of no meaning.
Character firstCharacter(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) return {lead, 1};
  const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
  if (bytes == 1 || text.size() < bytes) return {0xFFFD, 1};
  char32_t code = lead & (0xFFU >> (bytes + 1));
  for (std::size_t i = 1; i < bytes; ++i) code = (code << 6U) | (byte(i) & 0x3FU);
  return {code, bytes};
}

bool isDigit(char32_t c) { return c >= U'0' && c <= U'9'; }

/// Zeros of the scripts whose ten digits follow one another. Source: Unicode 14.0 character database,
/// category Nd.
constexpr std::array<char32_t, 38> otherZeros = {
    0x0660, 0x06F0, 0x07C0, 0x0966, 0x09E6, 0x0A66, 0x0AE6, 0x0B66, 0x0BE6, 0x0C66, 0x0CE6,  0x0D66, 0x0DE6,
    0x0E50, 0x0ED0, 0x0F20, 0x1040, 0x1090, 0x17E0, 0x1810, 0x1946, 0x19D0, 0x1A80, 0x1A90,  0x1B50, 0x1BB0,
    0x1C40, 0x1C50, 0xA620, 0xA8D0, 0xA900, 0xA9D0, 0xA9F0, 0xAA50, 0xABF0, 0xFF10, 0x1D7CE, 0x1D7F6};

bool isOtherDigit(char32_t c) {
  return std::any_of(otherZeros.begin(), otherZeros.end(),
                     [c](char32_t zero) { return c >= zero && c < zero + 10; });
}

bool isFraction(char32_t c) { return c == U'½' || c == U'¼' || c == U'¾' || c == U'⅓' || c == U'⅔'; }

/// Spaces that set off thousands in print, and look like nothing or like a plain space.
bool isNarrowSpace(char32_t c) { return c == 0xA0 || c == 0x2007 || c == 0x2009 || c == 0x202F; }

/// Marks that take no room at all, so that nobody sees what is wrong with the text: zero-width spaces, marks
/// of the writing direction, soft hyphen, byte order mark.
bool isUnseen(char32_t c) { return (c >= 0x200B && c <= 0x200F) || c == 0x2060 || c == 0xFEFF || c == 0xAD; }

/// A space of any kind, a control character, or a mark that nobody sees.
bool isSpace(char32_t c) {
  return c <= U' ' || c == 0x7F || isNarrowSpace(c) || isUnseen(c) || (c >= 0x2000 && c <= 0x200A) ||
         c == 0x3000;
}

bool isExponentAt(std::string_view text, std::size_t at) {
  if (text[at] != 'e' && text[at] != 'E') return false;
  if (at == 0 || at + 1 >= text.size()) return false;
  const char next = text[at + 1];
  return (next >= '0' && next <= '9') || next == '-' || next == '+';
}

bool belongsToNumber(std::string_view text, std::size_t at, Character c) {
  if (isDigit(c.code) || isOtherDigit(c.code) || isFraction(c.code)) return true;
  if (c.code == U'.' || c.code == U',' || c.code == U'-' || c.code == U'+' || c.code == U'−') return true;
  if (isExponentAt(text, at)) return true;
  const std::size_t next = at + c.bytes;
  const bool digitFollows = next < text.size() && text[next] >= '0' && text[next] <= '9';
  return at > 0 && digitFollows && (c.code == U'/' || isNarrowSpace(c.code));
}

}  // namespace

std::size_t numberLength(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const Character c = firstCharacter(text.substr(at));
    if (!belongsToNumber(text, at, c)) break;
    at += c.bytes;
  }
  return at;
}

bool hasOtherDigits(std::string_view text) {
  while (!text.empty()) {
    const Character c = firstCharacter(text);
    if (isOtherDigit(c.code)) return true;
    text.remove_prefix(c.bytes);
  }
  return false;
}

bool hasAnySpace(std::string_view text) {
  while (!text.empty()) {
    const Character c = firstCharacter(text);
    if (isSpace(c.code)) return true;
    text.remove_prefix(c.bytes);
  }
  return false;
}

std::string withPlainSpaces(std::string_view text) {
  std::string plain;
  bool spaced = false;
  while (!text.empty()) {
    const Character c = firstCharacter(text);
    if (isSpace(c.code)) {
      spaced = !plain.empty();
    } else {
      if (spaced) plain.push_back(' ');
      spaced = false;
      plain.append(text.substr(0, c.bytes));
    }
    text.remove_prefix(c.bytes);
  }
  return plain;
}

std::string withReplaced(std::string_view text, std::string_view from, std::string_view to) {
  std::string result(text);
  for (std::size_t at = result.find(from); at != std::string::npos; at = result.find(from, at + to.size()))
    result.replace(at, from.size(), to);
  return result;
}

}  // namespace wardchalk
