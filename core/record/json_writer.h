#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace wardchalk {

/// Writes JSON straight into a string, without a tree in between. Keys and values must come in an order that
/// JSON allows; that is the caller's business.
class JsonWriter {
 public:
  explicit JsonWriter(std::string& out) : out_(out) {}

  JsonWriter& openObject();
  JsonWriter& closeObject();
  JsonWriter& openList();
  JsonWriter& closeList();
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

  std::string& out_;
  std::vector<bool> hasItems_;
  bool afterKey_ = false;
};

}  // namespace wardchalk
