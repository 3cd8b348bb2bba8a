#include "core/number/unseen_text.h"

#include <utf8proc.h>

#include <algorithm>
#include <array>

namespace wardchalk {

namespace {

struct UnseenRange {
  char32_t first;
  char32_t last;
  Unseen kind;
};

/// Source: Unicode character database, categories Cc, Cf, Zl and Zp, property Bidi_Control.
constexpr std::array unseenRanges = {
    UnseenRange{0x09, 0x09, Unseen::tab},           UnseenRange{0x0A, 0x0D, Unseen::lineBreak},
    UnseenRange{0x85, 0x85, Unseen::lineBreak},     UnseenRange{0x2028, 0x2029, Unseen::lineBreak},
    UnseenRange{0x00, 0x1F, Unseen::control},       UnseenRange{0x7F, 0x9F, Unseen::control},
    UnseenRange{0xAD, 0xAD, Unseen::hyphen},        UnseenRange{0x200B, 0x200B, Unseen::space},
    UnseenRange{0x061C, 0x061C, Unseen::direction}, UnseenRange{0x200E, 0x200F, Unseen::direction},
    UnseenRange{0x202A, 0x202E, Unseen::direction}, UnseenRange{0x2066, 0x2069, Unseen::direction},
    UnseenRange{0xFEFF, 0xFEFF, Unseen::byteOrder}, UnseenRange{0xFDD0, 0xFDEF, Unseen::noCharacter},
};

/// The first character and its bytes. A byte that is no UTF-8 has no kind: readers of files refuse it.
struct Scalar {
  char32_t code = 0xFFFD;
  std::size_t bytes = 1;
};

Scalar firstScalar(std::string_view text) {
  utf8proc_int32_t code = 0;
  const utf8proc_ssize_t size = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                                                 static_cast<utf8proc_ssize_t>(text.size()), &code);
  if (size <= 0) return {};
  return {static_cast<char32_t>(code), static_cast<std::size_t>(size)};
}

/// "U+00AD": four digits at least, as Unicode writes it.
std::string numberOf(char32_t character) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  constexpr std::size_t fewest = 4;
  std::string text;
  for (; character != 0 || text.size() < fewest; character >>= 4U)
    text.insert(text.begin(), digits[character & 0xFU]);
  return "U+" + text;
}

}  // namespace

std::optional<Unseen> unseenKind(char32_t character) {
  constexpr char32_t lastTwo = 0xFFFE;  // of each of the 17 planes
  if ((character & lastTwo) == lastTwo) return Unseen::noCharacter;
  const auto* found = std::find_if(
      unseenRanges.begin(), unseenRanges.end(),
      [character](const UnseenRange& range) { return character >= range.first && character <= range.last; });
  return found == unseenRanges.end() ? std::nullopt : std::optional(found->kind);
}

std::optional<UnseenCharacter> firstUnseen(std::string_view text, TextLines lines) {
  while (!text.empty()) {
    const Scalar character = firstScalar(text);
    const auto kind = unseenKind(character.code);
    const bool parts = lines == TextLines::several && character.code == U'\n';
    if (kind && !parts)
      return UnseenCharacter{*kind, text.substr(0, character.bytes), numberOf(character.code)};
    text.remove_prefix(character.bytes);
  }
  return std::nullopt;
}

std::optional<Refusal> refusedUnseen(std::string_view text, TextLines lines) {
  const auto unseen = firstUnseen(text, lines);
  return unseen ? std::optional(refusalOf(RefusalCode::unseenCharacter, unseen->bytes)) : std::nullopt;
}

std::string withUnseenNamed(std::string_view text) {
  std::string shown;
  while (!text.empty()) {
    const Scalar character = firstScalar(text);
    if (unseenKind(character.code))
      shown.append("[").append(numberOf(character.code)).append("]");
    else
      shown.append(text.substr(0, character.bytes));
    text.remove_prefix(character.bytes);
  }
  return shown;
}

}  // namespace wardchalk
