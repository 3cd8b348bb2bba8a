#pragma once

#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>

namespace wardchalk {

/// Writes JSON straight into a string, without a tree in between. Keys and values must come in an order that
/// JSON allows; that is the caller's business.
///
/// While an object or list is open the string is longer than what is written: room made for much at once
/// costs far less than asking at every sign. Nobody else may use the string until the outermost is closed.
class JsonWriter {
 public:
  explicit JsonWriter(std::string& out) : out_(out) {}
  ~JsonWriter() {
    if (depth_ > 0) out_.resize(written_);
  }
  JsonWriter(const JsonWriter&) = delete;
  JsonWriter& operator=(const JsonWriter&) = delete;

  JsonWriter& openObject() { return open('{'); }
  JsonWriter& closeObject() { return close('}'); }
  JsonWriter& openList() { return open('['); }
  JsonWriter& closeList() { return close(']'); }
  /// A name of ours: letters and signs of ASCII, nothing in which is written otherwise. Of a literal the
  /// compiler knows how long it is.
  template <std::size_t size>
  JsonWriter& key(const char (&literal)[size]) {
    char* at = separated(room(size + signsAround));
    *at++ = '"';
    std::memcpy(at, literal, size - 1);
    return endKey(at + size - 1);
  }
  JsonWriter& key(std::string_view name);
  JsonWriter& text(std::string_view value);
  /// A bare number, flag or null, already in JSON's spelling.
  JsonWriter& bare(std::string_view value);
  JsonWriter& number(long value) { return bare(std::to_string(value)); }

  /// key and text; nothing at all when the value is empty.
  template <typename Name>
  JsonWriter& member(const Name& name, std::string_view value) {
    return value.empty() ? *this : key(name).text(value);
  }

 private:
  static constexpr std::size_t signsAround = 4;  ///< a comma, two quotation marks, a colon

  /// Where to write at least `size` characters.
  char* room(std::size_t size) {
    if (depth_ == 0) written_ = out_.size();
    if (out_.size() - written_ < size) makeRoom(size);
    return out_.data() + written_;
  }
  JsonWriter& wrote(const char* end) {
    written_ = static_cast<std::size_t>(end - out_.data());
    if (depth_ == 0) out_.resize(written_);
    return *this;
  }
  void makeRoom(std::size_t size);
  char* separated(char* at) {
    if (afterKey_) {
      afterKey_ = false;
      return at;
    }
    if ((hasItems_ & 1U) != 0) *at++ = ',';
    if (depth_ > 0) hasItems_ |= 1U;
    return at;
  }
  JsonWriter& endKey(char* at) {
    *at++ = '"';
    *at++ = ':';
    afterKey_ = true;
    return wrote(at);
  }
  JsonWriter& open(char bracket);
  JsonWriter& close(char bracket);

  std::string& out_;
  std::size_t written_ = 0;     ///< how much of it is written; what follows is room
  std::uint64_t hasItems_ = 0;  ///< a bit for each object or list that is open, the innermost lowest
  int depth_ = 0;
  bool afterKey_ = false;
};

}  // namespace wardchalk
