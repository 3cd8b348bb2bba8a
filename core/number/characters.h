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

/// The first character of a text that is not empty.
[[nodiscard]] Character firstCharacter(std::string_view text);

/// "U+00AD": four digits at least, as Unicode writes it.
[[nodiscard]] std::string unicodeNumber(char32_t character);

}  // namespace wardchalk
