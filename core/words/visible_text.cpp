#include "core/words/visible_text.h"

#include <utf8proc.h>

#include <vector>

namespace wardchalk {

namespace {

constexpr char32_t isolateBegins = 0x2068;
constexpr char32_t isolateEnds = 0x2069;

struct Scanned {
  char32_t character;
  std::string_view bytes;
  bool isWhole;  ///< false: a byte that is not UTF-8
};

Scanned scanned(std::string_view text) {
  utf8proc_int32_t character = 0;
  const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
  const utf8proc_ssize_t size =
      utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(text.size()), &character);
  if (size <= 0) return {static_cast<unsigned char>(text.front()), text.substr(0, 1), false};
  return {static_cast<char32_t>(character), text.substr(0, static_cast<std::size_t>(size)), true};
}

std::string byNumber(char sort, char32_t code) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string hex;
  for (; code != 0 || hex.size() < 2; code >>= 4U) hex.insert(hex.begin(), digits[code & 15U]);
  return std::string("\\") + sort + "{" + hex + "}";
}

/// Writes a text anew, character by character.
class Shower {
 public:
  explicit Shower(bool keepsLines) : keepsLines_(keepsLines) {}

  std::string show(std::string_view text) {
    while (!text.empty()) {
      const Scanned next = scanned(text);
      text.remove_prefix(next.bytes.size());
      take(next, text);
    }
    breakIsolates();
    return std::move(out_);
  }

 private:
  void take(const Scanned& next, std::string_view rest) {
    if (!next.isWhole) {
      out_ += byNumber('x', next.character);
    } else if (keepsLines_ && isLineOrTab(next.character, rest)) {
      if (next.character != U'\t') breakIsolates();
      out_ += next.bytes;
    } else if (next.character == isolateBegins) {
      open_.push_back(out_.size());
      out_ += next.bytes;
    } else if (next.character == isolateEnds && !open_.empty()) {
      open_.pop_back();
      out_ += next.bytes;
    } else {
      out_ += isUnseen(next.character) ? byNumber('u', next.character) : std::string(next.bytes);
    }
  }

  static bool isLineOrTab(char32_t character, std::string_view rest) {
    return character == U'\n' || character == U'\t' || (character == U'\r' && rest.starts_with('\n'));
  }

  /// An isolate that its line did not close would reach on.
  void breakIsolates() {
    constexpr std::size_t length = 3;  // of the mark, in bytes
    for (; !open_.empty(); open_.pop_back()) out_.replace(open_.back(), length, byNumber('u', isolateBegins));
  }

  bool keepsLines_;
  std::string out_;
  std::vector<std::size_t> open_;  // where isolates begin
};

}  // namespace

/// The list of the free texts that a case may hold none of, and NUL.
bool isUnseen(char32_t character) {
  if (character < 0x20 || (character >= 0x7F && character <= 0x9F)) return true;
  if (character == 0xAD || character == 0x061C || character == 0xFEFF) return true;
  if (character == 0x200B || character == 0x200E || character == 0x200F)
    return true;  // not what joins letters
  if (character >= 0x2028 && character <= 0x202E) return true;
  if (character >= 0x2066 && character <= 0x206F) return true;
  if (character >= 0xFDD0 && character <= 0xFDEF) return true;
  if (character >= 0xE0000 && character <= 0xE007F) return true;
  return (character & 0xFFFEU) == 0xFFFEU;
}

std::string visibleText(std::string_view text) { return Shower(true).show(text); }

std::string visibleLine(std::string_view text) { return Shower(false).show(text); }

}  // namespace wardchalk
