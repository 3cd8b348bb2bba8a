#include "core/record/json_writer.h"

namespace wardchalk {

namespace {

void appendEscaped(std::string& out, char c) {
  constexpr std::string_view hex = "0123456789abcdef";
  switch (c) {
    case '"': out.append("\\\""); return;
    case '\\': out.append("\\\\"); return;
    case '\n': out.append("\\n"); return;
    case '\r': out.append("\\r"); return;
    case '\t': out.append("\\t"); return;
    default: break;  // the other control characters by number
  }
  const auto code = static_cast<unsigned char>(c);
  out.append("\\u00").append(1, hex[code >> 4U]).append(1, hex[code & 15U]);
}

void appendText(std::string& out, std::string_view value) {
  out.push_back('"');
  std::size_t from = 0;
  for (std::size_t i = 0; i < value.size(); ++i) {
    const char c = value[i];
    if (static_cast<unsigned char>(c) >= 0x20 && c != '"' && c != '\\') continue;
    out.append(value.substr(from, i - from));
    appendEscaped(out, c);
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
