#include "core/number/characters.h"

#include <utf8proc.h>

namespace wardchalk {

Character firstCharacterOfAny(std::string_view text) {
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

std::string_view beginningOf(std::string_view text, std::size_t most) {
  if (text.size() <= most) return text;
  std::size_t letters = 0;     // where the last letter ends that is there whole
  std::size_t characters = 0;  // the same of characters
  utf8proc_int32_t before = 0;
  utf8proc_int32_t state = 0;
  while (characters <= most) {
    const Character next = firstCharacter(text.substr(characters));
    const auto code = static_cast<utf8proc_int32_t>(next.code);
    const bool begins = characters == 0 || utf8proc_grapheme_break_stateful(before, code, &state);
    if (begins || !next.isWhole) letters = characters;
    if (!next.isWhole || characters + next.bytes.size() > most) break;
    characters += next.bytes.size();
    before = code;
  }
  return text.substr(0, letters == 0 ? characters : letters);
}

}  // namespace wardchalk
