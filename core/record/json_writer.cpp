#include "core/record/json_writer.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstring>

#include "core/number/characters.h"
#include "core/number/unseen_text.h"

namespace wardchalk {

namespace {

constexpr std::size_t longestSpelling = 6;  ///< \u and four digits, for a byte or more

char* copy(std::string_view from, char* to) { return std::copy(from.begin(), from.end(), to); }

char* writeByNumber(char32_t code, char* to) {
  constexpr std::string_view hex = "0123456789abcdef";
  to = copy("\\u", to);
  for (const unsigned shift : {12U, 8U, 4U, 0U}) *to++ = hex[code >> shift & 15U];
  return to;
}

char* writeEscaped(char c, char* to) {
  switch (c) {
    case '"':
      return copy("\\\"", to);
    case '\\':
      return copy("\\\\", to);
    case '\n':
      return copy("\\n", to);
    case '\r':
      return copy("\\r", to);
    case '\t':
      return copy("\\t", to);
    default:
      return writeByNumber(static_cast<unsigned char>(c), to);
  }
}

/// Whether a terminal may obey the character or not show it: DEL, and others of two and three bytes, which
/// \u has room for. Isolates stand in our own sentences around a name and are no more than that.
bool isEscaped(const Character& character) {
  constexpr std::size_t longest = 3;  // bytes of U+FFFF
  constexpr char32_t isolateBegins = 0x2068;
  constexpr char32_t isolateEnds = 0x2069;
  return character.isWhole && character.bytes.size() <= longest && character.code != isolateBegins &&
         character.code != isolateEnds && isUnseen(character.code, UnseenIn::shownText);
}

/// Which bytes stand as they are: what can be seen of ASCII, but quotation mark and backslash.
constexpr auto plainBytes = [] {
  std::array<bool, 256> plain{};
  for (std::size_t byte = 0x20; byte < 0x7F; ++byte) plain[byte] = byte != '"' && byte != '\\';
  return plain;
}();

bool isPlain(char c) { return plainBytes[static_cast<unsigned char>(c)]; }

/// Whether eight bytes are all plain, asked of all at once. What one byte carries over to the next can make a
/// plain one look otherwise, and then each is looked at; none that is not plain looks so.
bool arePlain(const char* eight) {
  constexpr std::uint64_t ones = 0x0101010101010101U;
  constexpr std::uint64_t tops = ones * 0x80U;
  std::uint64_t bytes = 0;
  std::memcpy(&bytes, eight, sizeof bytes);
  const auto below = [bytes](std::uint64_t least) { return (bytes - ones * least) & ~bytes; };
  const auto is = [bytes](unsigned char one) {
    const std::uint64_t others = bytes ^ (ones * one);
    return (others - ones) & ~others;
  };
  return ((bytes | (bytes + ones) | below(0x20) | is('"') | is('\\')) & tops) == 0;
}

/// Copies the value up to its first byte that is not plain; says how many bytes those are.
std::size_t copyPlain(std::string_view value, char* to) {
  std::size_t i = 0;
  for (; i + sizeof(std::uint64_t) <= value.size() && arePlain(value.data() + i); i += sizeof(std::uint64_t))
    std::memcpy(to + i, value.data() + i, sizeof(std::uint64_t));
  for (; i < value.size() && isPlain(value[i]); ++i) to[i] = value[i];
  return i;
}

/// Writes the character that the text begins with, and takes it away.
char* writeFirst(std::string_view& text, char* to) {
  const Character first = firstCharacter(text);
  text.remove_prefix(first.bytes.size());
  if (static_cast<unsigned char>(first.bytes.front()) < 0x7F) return writeEscaped(first.bytes.front(), to);
  return isEscaped(first) ? writeByNumber(first.code, to) : copy(first.bytes, to);
}

char* writeText(std::string_view text, char* to) {
  while (true) {
    const std::size_t plain = copyPlain(text, to);
    to += plain;
    text.remove_prefix(plain);
    if (text.empty()) return to;
    to = writeFirst(text, to);
  }
}

}  // namespace

void JsonWriter::makeRoom(std::size_t size) {
  constexpr std::size_t ahead = 4096;  // half of a common worksheet
  out_.resize(written_ + size + ahead);
}

JsonWriter& JsonWriter::open(char bracket) {
  char* at = separated(room(signsAround));
  *at++ = bracket;
  hasItems_ <<= 1U;
  ++depth_;
  assert(depth_ < 64);  // bits of hasItems_
  return wrote(at);
}

JsonWriter& JsonWriter::close(char bracket) {
  char* at = room(signsAround);
  *at++ = bracket;
  hasItems_ >>= 1U;
  --depth_;
  return wrote(at);
}

JsonWriter& JsonWriter::key(std::string_view name) {
  assert(std::ranges::all_of(name, isPlain));
  char* at = separated(room(name.size() + signsAround));
  *at++ = '"';
  return endKey(copy(name, at));
}

JsonWriter& JsonWriter::text(std::string_view value) {
  char* at = separated(room(longestSpelling * value.size() + signsAround));
  *at++ = '"';
  at = writeText(value, at);
  *at++ = '"';
  return wrote(at);
}

JsonWriter& JsonWriter::bare(std::string_view value) {
  char* at = separated(room(value.size() + signsAround));
  return wrote(copy(value, at));
}

}  // namespace wardchalk
