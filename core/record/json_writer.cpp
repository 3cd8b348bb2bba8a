#include "core/record/json_writer.h"

#include "core/words/visible_text.h"

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

/// The character that begins with this byte, of those that a terminal may obey or not show: DEL, and others
/// of two and three bytes. Isolates stand in our own sentences around a name and are no more than that.
struct Wide {
  char32_t code = 0;
  std::size_t bytes = 1;
};

Wide wideAt(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const auto follows = [&](std::size_t i) { return i < text.size() && (byte(i) & 0xC0U) == 0x80; };
  if (byte(0) == 0x7F) return {0x7F, 1};
  if ((byte(0) & 0xE0U) == 0xC0 && follows(1)) return {(byte(0) & 0x1FU) << 6U | (byte(1) & 0x3FU), 2};
  if ((byte(0) & 0xF0U) == 0xE0 && follows(1) && follows(2))
    return {(byte(0) & 0x0FU) << 12U | (byte(1) & 0x3FU) << 6U | (byte(2) & 0x3FU), 3};
  return {};
}

bool isEscaped(char32_t code) {
  constexpr char32_t isolateBegins = 0x2068;
  constexpr char32_t isolateEnds = 0x2069;
  return code >= 0x7F && code != isolateBegins && code != isolateEnds && isUnseen(code);
}

void appendByNumber(std::string& out, char32_t code) {
  constexpr std::string_view hex = "0123456789abcdef";
  out.append("\\u");
  for (const unsigned shift : {12U, 8U, 4U, 0U}) out.push_back(hex[code >> shift & 15U]);
}

void appendText(std::string& out, std::string_view value) {
  out.push_back('"');
  std::size_t from = 0;
  for (std::size_t i = 0; i < value.size(); ++i) {
    const auto byte = static_cast<unsigned char>(value[i]);
    if (byte >= 0x20 && byte < 0x7F && byte != '"' && byte != '\\') continue;
    const Wide wide = byte < 0x7F ? Wide{} : wideAt(value.substr(i));
    if (byte >= 0x7F && !isEscaped(wide.code)) continue;
    out.append(value.substr(from, i - from));
    if (byte < 0x7F)
      appendEscaped(out, value[i]);
    else
      appendByNumber(out, wide.code);
    i += wide.bytes - 1;
    from = i + 1;
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
  if (hasItems_.empty()) return;
  if (hasItems_.back()) out_.push_back(',');
  hasItems_.back() = true;
}

JsonWriter& JsonWriter::openObject() {
  separate();
  out_.push_back('{');
  hasItems_.push_back(false);
  return *this;
}

JsonWriter& JsonWriter::closeObject() {
  out_.push_back('}');
  hasItems_.pop_back();
  return *this;
}

JsonWriter& JsonWriter::openList() {
  separate();
  out_.push_back('[');
  hasItems_.push_back(false);
  return *this;
}

JsonWriter& JsonWriter::closeList() {
  out_.push_back(']');
  hasItems_.pop_back();
  return *this;
}

JsonWriter& JsonWriter::key(std::string_view name) {
  separate();
  appendText(out_, name);
  out_.push_back(':');
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
