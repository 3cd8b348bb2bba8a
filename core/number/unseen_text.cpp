#include "core/number/unseen_text.h"

#include <algorithm>
#include <array>

#include "core/number/characters.h"

namespace wardchalk {

namespace {

constexpr unsigned inFreeText = 1U;
constexpr unsigned inShownText = 2U;
constexpr unsigned inEntry = 4U;
constexpr unsigned inTexts = inFreeText | inShownText;
constexpr unsigned everywhere = inTexts | inEntry;

struct UnseenRange {
  char32_t first;
  char32_t last;
  Unseen kind;
  unsigned where;  ///< in which texts it counts
};

/// The one list. Where a character does not count in all texts, the reason stands beside it. Of those up to
/// U+00A0 an entry reads the blank ones as spaces by itself (entry_text.cpp).
/// Source: Unicode character database, categories Cc, Cf, Zl and Zp, property Bidi_Control; The Unicode
/// Standard, chapter 23.
constexpr std::array unseenRanges = {
    UnseenRange{0x0009, 0x0009, Unseen::tab, inTexts},
    UnseenRange{0x000A, 0x000D, Unseen::lineBreak, inTexts},
    UnseenRange{0x0085, 0x0085, Unseen::lineBreak, inTexts},
    UnseenRange{0x2028, 0x2029, Unseen::lineBreak, inTexts},
    UnseenRange{0x0000, 0x001F, Unseen::control, inTexts},
    UnseenRange{0x007F, 0x009F, Unseen::control, inTexts},
    UnseenRange{0x00AD, 0x00AD, Unseen::hyphen, everywhere},
    UnseenRange{0x200B, 0x200B, Unseen::space, everywhere},
    UnseenRange{0x200E, 0x200F, Unseen::direction, everywhere},
    // In an entry these are no spaces: it is refused.
    UnseenRange{0x061C, 0x061C, Unseen::direction, inTexts},
    UnseenRange{0x202A, 0x202E, Unseen::direction, inTexts},
    UnseenRange{0x2066, 0x2069, Unseen::direction, inTexts},
    UnseenRange{0xFDD0, 0xFDEF, Unseen::noCharacter, inTexts},
    UnseenRange{0xFEFF, 0xFEFF, Unseen::byteOrder, everywhere},
    // Names need them; between figures and units they join nothing.
    UnseenRange{0x200C, 0x200D, Unseen::joiner, inEntry},
    UnseenRange{0x2060, 0x2060, Unseen::joiner, inEntry},
    // They turn no figure round and end no line, so that a text may hold them; a terminal need not show them.
    UnseenRange{0x206A, 0x206F, Unseen::deprecated, inShownText},
    UnseenRange{0xE0000, 0xE007F, Unseen::tag,
                inShownText},  // the flags of Scotland and Wales are made of them
};

unsigned bitOf(UnseenIn where) {
  switch (where) {
    case UnseenIn::freeText:
      return inFreeText;
    case UnseenIn::shownText:
      return inShownText;
    case UnseenIn::entry:
      break;
  }
  return inEntry;
}

std::optional<Unseen> kindIn(char32_t character, unsigned where) {
  if (character >= 0x20 && character < 0x7F) return std::nullopt;  // what is typed most
  constexpr char32_t lastTwo = 0xFFFE;                             // of each of the 17 planes
  if ((character & lastTwo) == lastTwo && (where & inTexts) != 0) return Unseen::noCharacter;
  const auto* found = std::find_if(unseenRanges.begin(), unseenRanges.end(), [=](const UnseenRange& range) {
    return character >= range.first && character <= range.last && (range.where & where) != 0;
  });
  return found == unseenRanges.end() ? std::nullopt : std::optional(found->kind);
}

}  // namespace

std::optional<Unseen> unseenKind(char32_t character) { return kindIn(character, inFreeText); }

bool isUnseen(char32_t character, UnseenIn where) { return kindIn(character, bitOf(where)).has_value(); }

std::optional<UnseenCharacter> firstUnseen(std::string_view text, TextLines lines) {
  while (!text.empty()) {
    const Character character = firstCharacter(text);
    const auto kind = unseenKind(character.code);
    const bool parts = lines == TextLines::several && character.code == U'\n';
    if (kind && !parts) return UnseenCharacter{*kind, character.bytes, unicodeNumber(character.code)};
    text.remove_prefix(character.bytes.size());
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
    const Character character = firstCharacter(text);
    if (unseenKind(character.code))
      shown.append("[").append(unicodeNumber(character.code)).append("]");
    else
      shown.append(character.bytes);
    text.remove_prefix(character.bytes.size());
  }
  return shown;
}

}  // namespace wardchalk
