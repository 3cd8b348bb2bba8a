#include "core/words/isolated.h"

#include <utf8proc.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "core/number/characters.h"

namespace wardchalk {

namespace {

constexpr std::string_view isolateMark = "\u2068";
constexpr std::string_view isolateEnd = "\u2069";

/// How a character runs: letters one way or the other; marks that belong to the letter before them; anything
/// else, digits among it.
enum class Runs : std::uint8_t { fromLeft, fromRight, withBefore, either };

Runs runsOf(utf8proc_int32_t character) {
  switch (utf8proc_get_property(character)->bidi_class) {
    case UTF8PROC_BIDI_CLASS_L:
      return Runs::fromLeft;
    case UTF8PROC_BIDI_CLASS_R:
    case UTF8PROC_BIDI_CLASS_AL:
    case UTF8PROC_BIDI_CLASS_AN:  // Arabic digits: figures beside them would be set in their order
      return Runs::fromRight;
    case UTF8PROC_BIDI_CLASS_NSM:
    case UTF8PROC_BIDI_CLASS_BN:
      return Runs::withBefore;
    default:
      return Runs::either;
  }
}

/// A stretch of the text from its first to its last letter that runs from the right.
struct Stretch {
  std::size_t begin;
  std::size_t end;
};

struct Found {
  std::vector<Stretch> stretches;
  bool beginsFromLeft = false;
  long lettersFromLeft = 0;
  long lettersFromRight = 0;

  /// Whether the text as a whole runs from the right. One that begins so and has more of other letters is a
  /// line of ours about such a name: the source of a reference that was taken from a list.
  [[nodiscard]] bool runsFromRight() const { return !beginsFromLeft && lettersFromRight > lettersFromLeft; }
};

/// Finds the stretches outside the isolates that the text has already.
class StretchFinder {
 public:
  explicit StretchFinder(std::string_view text) : text_(text) {}

  Found find() {
    while (at_ < text_.size()) step();
    return std::move(found_);
  }

 private:
  void step() {
    const std::string_view rest = text_.substr(at_);
    const Character next = firstCharacter(rest);
    const std::size_t begin = at_;
    at_ += next.bytes.size();
    if (rest.starts_with(isolateMark))
      ++depth_;
    else if (rest.starts_with(isolateEnd))
      depth_ = std::max(0, depth_ - 1);
    else if (depth_ == 0 && next.isWhole)
      take(runsOf(static_cast<utf8proc_int32_t>(next.code)), begin);
  }

  void take(Runs runs, std::size_t begin) {
    const bool isLetter = runs == Runs::fromLeft || runs == Runs::fromRight;
    if (isLetter && !begun_) found_.beginsFromLeft = runs == Runs::fromLeft;
    begun_ = begun_ || isLetter;
    found_.lettersFromLeft += runs == Runs::fromLeft ? 1 : 0;
    found_.lettersFromRight += runs == Runs::fromRight ? 1 : 0;
    if (runs == Runs::fromLeft) open_ = false;
    if (runs == Runs::fromRight && !std::exchange(open_, true)) found_.stretches.push_back({begin, begin});
    const bool extends = runs == Runs::fromRight ||
                         (runs == Runs::withBefore && open_ && found_.stretches.back().end == begin);
    if (extends) found_.stretches.back().end = at_;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  int depth_ = 0;
  bool begun_ = false;
  bool open_ = false;
  Found found_;
};

/// No letter before U+0590, the first of Hebrew, runs from the right; from there on characters begin with a
/// byte of D6 or more. Of those that begin with E2, U+2000 to U+2FFF, where ≈ and ≤ are, only
/// a mark of U+200F does, which E2 80 begins. Nearly every text ends here.
bool mayRunFromRight(std::string_view text) {
  constexpr unsigned char firstByte = 0xD6;
  constexpr unsigned char signs = 0xE2;
  constexpr unsigned char marks = 0x80;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    const bool isSign =
        byte == signs && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) != marks;
    if (byte >= firstByte && !isSign) return true;
  }
  return false;
}

}  // namespace

void appendIsolated(std::string& whole, std::string_view text) {
  Found found = mayRunFromRight(text) ? StretchFinder(text).find() : Found{};
  if (found.runsFromRight()) found.stretches = {{0, text.size()}};
  std::size_t from = 0;
  for (const Stretch& stretch : found.stretches) {
    whole.append(text.substr(from, stretch.begin - from)).append(isolateMark);
    whole.append(text.substr(stretch.begin, stretch.end - stretch.begin)).append(isolateEnd);
    from = stretch.end;
  }
  whole.append(text.substr(from));
}

std::string isolated(std::string_view text) {
  std::string whole;
  appendIsolated(whole, text);
  return whole;
}

std::string IsolatesOfLines::next(std::string_view line) {
  std::string whole;
  for (int i = 0; i < open_; ++i) whole.append(isolateMark);
  whole.append(line);
  for (; !line.empty(); line.remove_prefix(1)) {
    if (line.starts_with(isolateMark)) ++open_;
    if (line.starts_with(isolateEnd)) open_ = std::max(0, open_ - 1);
  }
  for (int i = 0; i < open_; ++i) whole.append(isolateEnd);
  return whole;
}

bool hasIsolates(std::string_view text) {
  return text.find(isolateMark) != std::string_view::npos || text.find(isolateEnd) != std::string_view::npos;
}

std::string withoutIsolates(std::string_view text) {
  std::string plain;
  while (!text.empty()) {
    const bool mark = text.starts_with(isolateMark) || text.starts_with(isolateEnd);
    if (!mark) plain.push_back(text.front());
    text.remove_prefix(mark ? isolateMark.size() : 1);
  }
  return plain;
}

}  // namespace wardchalk
