#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/number/refusal.h"

namespace wardchalk {

/// What kind of character it is that nobody sees. Most of them can end a line, give a terminal orders or turn
/// the figures beside them round.
enum class Unseen : std::uint8_t {
  tab,
  lineBreak,
  control,      ///< U+0000 to 001F and 007F to 009F, but for the two above
  hyphen,       ///< U+00AD, shown at the end of a line alone
  space,        ///< U+200B, without width
  direction,    ///< marks, embeddings, overrides and isolates of the writing direction
  byteOrder,    ///< U+FEFF
  noCharacter,  ///< a number that Unicode keeps free of characters
  joiner,       ///< U+200C, U+200D of Persian and Indic writing, and U+2060
  deprecated,   ///< U+206A to 206F, which Unicode wants no one to use
  tag,          ///< U+E0000 to E007F
};

/// Where an unseen character counts: not each of them does everywhere.
enum class UnseenIn : std::uint8_t {
  freeText,   ///< is refused in a name or a title. The last three kinds are not: names and emoji hold them
  shownText,  ///< a terminal or a file shows it by number. All but the joiners
  entry,  ///< is read as a space. Only marks that take no room; the spaces that do are no part of the list
};

/// Whether the character is an unseen one that counts there.
[[nodiscard]] bool isUnseen(char32_t character, UnseenIn where);

/// Which kind of unseen character it is; nothing for a character that may stand in a free text.
[[nodiscard]] std::optional<Unseen> unseenKind(char32_t character);

/// What may stand in a text: one line, or several parted by plain line feeds.
enum class TextLines : std::uint8_t { one, several };

/// An unseen character in a text.
struct UnseenCharacter {
  Unseen kind;
  std::string_view bytes;  ///< where it stands in the text
  std::string number;      ///< "U+202E": it can be named so and not be shown
};

/// The first unseen character of a text, if there is one.
[[nodiscard]] std::optional<UnseenCharacter> firstUnseen(std::string_view text,
                                                         TextLines lines = TextLines::one);

/// The refusal of a text for its first unseen character, which is its `typed`; empty where there is none. The
/// one check of free text, wherever it comes from.
[[nodiscard]] std::optional<Refusal> refusedUnseen(std::string_view text, TextLines lines = TextLines::one);

/// The text with each unseen character written as its number in brackets, "[U+202E]": a text that was
/// refused, fit to be shown.
[[nodiscard]] std::string withUnseenNamed(std::string_view text);

}  // namespace wardchalk
