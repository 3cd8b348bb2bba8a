#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace wardchalk {

/// Writes JSON straight into a string, without a tree in between. Keys and values must come in an order that
/// JSON allows; that is the caller's business.
class JsonWriter {
 public:
  explicit JsonWriter(std::string& out) : out_(out) {}

  JsonWriter& openObject() { return open('{'); }
  JsonWriter& closeObject() { return close('}'); }
  JsonWriter& openList() { return open('['); }
  JsonWriter& closeList() { return close(']'); }
  /// A name of ours: letters and signs of ASCII, nothing in which is written otherwise.
  JsonWriter& key(std::string_view name);
  JsonWriter& text(std::string_view value);
  /// A bare number, flag or null, already in JSON's spelling.
  JsonWriter& bare(std::string_view value);
  JsonWriter& number(long value) { return bare(std::to_string(value)); }

  /// key and text; nothing at all when the value is empty.
  JsonWriter& member(std::string_view name, std::string_view value);

 private:
  void separate();
  JsonWriter& open(char bracket);
  JsonWriter& close(char bracket);

  std::string& out_;
  std::uint64_t hasItems_ = 0;  ///< a bit for each object or list that is open, the innermost lowest
  int depth_ = 0;
  bool afterKey_ = false;
};

}  // namespace wardchalk
