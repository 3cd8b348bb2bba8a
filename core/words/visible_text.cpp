#include "core/words/visible_text.h"

#include <vector>

#include "core/number/characters.h"
#include "core/number/unseen_text.h"

namespace wardchalk {

namespace {

constexpr char32_t isolateBegins = 0x2068;
constexpr char32_t isolateEnds = 0x2069;

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
      const Character next = firstCharacter(text);
      text.remove_prefix(next.bytes.size());
      take(next, text);
    }
    breakIsolates();
    return std::move(out_);
  }

 private:
  void take(const Character& next, std::string_view rest) {
    if (!next.isWhole) {
      out_ += byNumber('x', static_cast<unsigned char>(next.bytes.front()));
    } else if (keepsLines_ && isLineOrTab(next.code, rest)) {
      if (next.code != U'\t') breakIsolates();
      out_ += next.bytes;
    } else if (next.code == isolateBegins) {
      open_.push_back(out_.size());
      out_ += next.bytes;
    } else if (next.code == isolateEnds && !open_.empty()) {
      open_.pop_back();
      out_ += next.bytes;
    } else {
      out_ += isUnseen(next.code, UnseenIn::shownText) ? byNumber('u', next.code) : std::string(next.bytes);
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

std::string visibleText(std::string_view text) { return Shower(true).show(text); }

std::string visibleLine(std::string_view text) { return Shower(false).show(text); }

}  // namespace wardchalk
