#pragma once

#include <string>
#include <string_view>

namespace wardchalk {

// Digits and letters of ASCII, the same in every locale. A byte of any other character is neither.

[[nodiscard]] constexpr bool isDigit(char c) { return c >= '0' && c <= '9'; }
[[nodiscard]] constexpr bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// Whether nothing but blanks and tabs stands in the text.
[[nodiscard]] constexpr bool isBlank(std::string_view text) {
  return text.find_first_not_of(" \t") == std::string_view::npos;
}

/// The small letter of a capital; any other byte as it is.
[[nodiscard]] constexpr char lowered(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Whether the text in small letters is this one, which is in small letters.
[[nodiscard]] constexpr bool isInSmallLetters(std::string_view text, std::string_view low) {
  if (text.size() != low.size()) return false;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (lowered(text[i]) != low[i]) return false;
  return true;
}

/// The text in small letters; what is not ASCII stays as it is.
[[nodiscard]] std::string lowered(std::string_view text);

}  // namespace wardchalk
