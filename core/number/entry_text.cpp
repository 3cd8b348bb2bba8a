#include "core/number/entry_text.h"

#include <algorithm>
#include <array>
#include <cstddef>

#include "core/number/ascii.h"
#include "core/number/characters.h"
#include "core/number/unseen_text.h"

namespace wardchalk {

namespace {

/// Zeros of the scripts whose ten digits follow one another. Source: Unicode 14.0 character database,
/// category Nd.
constexpr std::array<char32_t, 38> otherZeros = {
    0x0660, 0x06F0, 0x07C0, 0x0966, 0x09E6, 0x0A66, 0x0AE6, 0x0B66, 0x0BE6, 0x0C66, 0x0CE6,  0x0D66, 0x0DE6,
    0x0E50, 0x0ED0, 0x0F20, 0x1040, 0x1090, 0x17E0, 0x1810, 0x1946, 0x19D0, 0x1A80, 0x1A90,  0x1B50, 0x1BB0,
    0x1C40, 0x1C50, 0xA620, 0xA8D0, 0xA900, 0xA9D0, 0xA9F0, 0xAA50, 0xABF0, 0xFF10, 0x1D7CE, 0x1D7F6};

bool isOtherDigit(char32_t c) {
  if (c < otherZeros.front()) return false;
  return std::any_of(otherZeros.begin(), otherZeros.end(),
                     [c](char32_t zero) { return c >= zero && c < zero + 10; });
}

bool isFraction(char32_t c) { return c == U'½' || c == U'¼' || c == U'¾' || c == U'⅓' || c == U'⅔'; }

/// Spaces that set off thousands in print, and look like nothing or like a plain space.
bool isNarrowSpace(char32_t c) { return c == 0xA0 || c == 0x2007 || c == 0x2009 || c == 0x202F; }

/// A space of any kind, a control character, or a mark that nobody sees.
bool isSpace(char32_t c) {
  if (c <= 0x7F) return c <= U' ' || c == 0x7F;
  return isNarrowSpace(c) || isUnseen(c, UnseenIn::entry) || (c >= 0x2000 && c <= 0x200A) || c == 0x3000;
}

bool isExponentAt(std::string_view text, std::size_t at) {
  if (text[at] != 'e' && text[at] != 'E') return false;
  if (at == 0 || at + 1 >= text.size()) return false;
  const char next = text[at + 1];
  return isDigit(next) || next == '-' || next == '+';
}

bool belongsToNumber(std::string_view text, std::size_t at, const Character& c) {
  if (isDigit(text[at]) || isOtherDigit(c.code) || isFraction(c.code)) return true;
  if (c.code == U'.' || c.code == U',' || c.code == U'-' || c.code == U'+' || c.code == U'−') return true;
  if (isExponentAt(text, at)) return true;
  const std::size_t next = at + c.bytes.size();
  const bool digitFollows = next < text.size() && isDigit(text[next]);
  return at > 0 && digitFollows && (c.code == U'/' || isNarrowSpace(c.code));
}

}  // namespace

std::size_t numberLength(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const Character c = firstCharacter(text.substr(at));
    if (!belongsToNumber(text, at, c)) break;
    at += c.bytes.size();
  }
  return at;
}

bool hasOtherDigits(std::string_view text) {
  while (!text.empty()) {
    const Character c = firstCharacter(text);
    if (isOtherDigit(c.code)) return true;
    text.remove_prefix(c.bytes.size());
  }
  return false;
}

bool hasAnySpace(std::string_view text) {
  while (!text.empty()) {
    const Character c = firstCharacter(text);
    if (isSpace(c.code)) return true;
    text.remove_prefix(c.bytes.size());
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
      plain.append(c.bytes);
    }
    text.remove_prefix(c.bytes.size());
  }
  return plain;
}

std::vector<std::string_view> wordsOf(std::string_view text) {
  std::vector<std::string_view> words;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    if (end > 0) words.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return words;
}

std::string withReplaced(std::string_view text, std::string_view from, std::string_view to) {
  std::string result(text);
  for (std::size_t at = result.find(from); at != std::string::npos; at = result.find(from, at + to.size()))
    result.replace(at, from.size(), to);
  return result;
}

}  // namespace wardchalk
