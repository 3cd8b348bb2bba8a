#pragma once

#include <string>
#include <string_view>

namespace wardchalk {

/// What a UTF-8 text begins with.
struct Character {
  char32_t code = 0xFFFD;  ///< U+FFFD as well for a byte that is part of no character
  std::string_view bytes;  ///< where it stands in the text: one byte at least
  bool isWhole = false;    ///< false: a byte that is part of no character
};

/// The same of any text, by the tables of UTF-8.
[[nodiscard]] Character firstCharacterOfAny(std::string_view text);

/// The first character of a text that is not empty. Nearly every one is of ASCII, and is seen at once.
[[nodiscard]] inline Character firstCharacter(std::string_view text) {
  const auto byte = static_cast<unsigned char>(text.front());
  if (byte < 0x80) return {byte, text.substr(0, 1), true};
  return firstCharacterOfAny(text);
}

/// "U+00AD": four digits at least, as Unicode writes it.
[[nodiscard]] std::string unicodeNumber(char32_t character);

/// The beginning of a text, of `most` bytes at most, cut between two letters as a reader sees them: an accent
/// stays with its letter, and an emoji of several characters stays whole. A letter that is longer than all of
/// `most` is cut between its characters. A longer text ends before its first byte that is part of no
/// character.
[[nodiscard]] std::string_view beginningOf(std::string_view text, std::size_t most);

}  // namespace wardchalk
