#include "core/record/json_writer.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstring>

#include "core/number/characters.h"
#include "core/number/unseen_text.h"

namespace wardchalk {

namespace {

void appendEscaped(std::string& out, char c) {
  constexpr std::string_view hex = "0123456789abcdef";
  switch (c) {
    case '"':
      out.append("\\\"");
      return;
    case '\\':
      out.append("\\\\");
      return;
    case '\n':
      out.append("\\n");
      return;
    case '\r':
      out.append("\\r");
      return;
    case '\t':
      out.append("\\t");
      return;
    default:
      break;  // the other control characters by number
  }
  const auto code = static_cast<unsigned char>(c);
  out.append("\\u00").append(1, hex[code >> 4U]).append(1, hex[code & 15U]);
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

void appendByNumber(std::string& out, char32_t code) {
  constexpr std::string_view hex = "0123456789abcdef";
  out.append("\\u");
  for (const unsigned shift : {12U, 8U, 4U, 0U}) out.push_back(hex[code >> shift & 15U]);
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

/// How many bytes from `from` on are plain, at least.
std::size_t plainFrom(std::string_view value, std::size_t from) {
  std::size_t end = from;
  while (end + sizeof(std::uint64_t) <= value.size() && arePlain(value.data() + end))
    end += sizeof(std::uint64_t);
  return end - from;
}

void appendText(std::string& out, std::string_view value) {
  out.push_back('"');
  std::size_t from = 0;
  for (std::size_t i = plainFrom(value, 0); i < value.size(); ++i) {
    if (isPlain(value[i])) continue;
    const auto byte = static_cast<unsigned char>(value[i]);
    const Character character = firstCharacter(value.substr(i));
    if (byte >= 0x7F && !isEscaped(character)) continue;
    out.append(value.substr(from, i - from));
    if (byte < 0x7F)
      appendEscaped(out, value[i]);
    else
      appendByNumber(out, character.code);
    i += character.bytes.size() - 1;
    from = i + 1;
    i += plainFrom(value, from);
  }
  out.append(value.substr(from));
  out.push_back('"');
}

}  // namespace

void JsonWriter::separate() {
  if (afterKey_) {
    afterKey_ = false;
    return;
  }
  if (depth_ == 0) return;
  if ((hasItems_ & 1U) != 0) out_.push_back(',');
  hasItems_ |= 1U;
}

JsonWriter& JsonWriter::open(char bracket) {
  separate();
  out_.push_back(bracket);
  hasItems_ <<= 1U;
  ++depth_;
  assert(depth_ < 64);  // bits of hasItems_
  return *this;
}

JsonWriter& JsonWriter::close(char bracket) {
  out_.push_back(bracket);
  hasItems_ >>= 1U;
  --depth_;
  return *this;
}

JsonWriter& JsonWriter::key(std::string_view name) {
  assert(std::ranges::all_of(name, isPlain));
  separate();
  out_.push_back('"');
  out_.append(name);
  out_.append("\":");
  afterKey_ = true;
  return *this;
}

JsonWriter& JsonWriter::text(std::string_view value) {
  separate();
  appendText(out_, value);
  return *this;
}

JsonWriter& JsonWriter::bare(std::string_view value) {
  separate();
  out_.append(value);
  return *this;
}

JsonWriter& JsonWriter::member(std::string_view name, std::string_view value) {
  if (value.empty()) return *this;
  return key(name).text(value);
}

}  // namespace wardchalk
