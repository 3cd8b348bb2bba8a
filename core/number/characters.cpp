#include "core/number/characters.h"

#include <utf8proc.h>

namespace wardchalk {

Character firstCharacter(std::string_view text) {
  utf8proc_int32_t code = 0;
  const utf8proc_ssize_t size = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                                                 static_cast<utf8proc_ssize_t>(text.size()), &code);
  if (size <= 0) return {0xFFFD, text.substr(0, 1), false};
  return {static_cast<char32_t>(code), text.substr(0, static_cast<std::size_t>(size)), true};
}

std::string unicodeNumber(char32_t character) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  constexpr std::size_t fewest = 4;
  std::string text;
  for (; character != 0 || text.size() < fewest; character >>= 4U)
    text.insert(text.begin(), digits[character & 0xFU]);
  return "U+" + text;
}

}  // namespace wardchalk
