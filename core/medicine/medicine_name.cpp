#include "core/medicine/medicine_name.h"

#include <utf8proc.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <memory>

#include "core/number/ascii.h"
#include "core/number/characters.h"

namespace wardchalk {

namespace {

struct Range {
  char32_t first;
  char32_t last;
};

/// Where the letters of Latin, Greek and Cyrillic stand. The library knows no scripts. Source: the blocks of
/// these names in Unicode's Blocks.txt, from memory; Coptic letters within the Greek block are left out.
constexpr auto accentedScripts = std::to_array<Range>({
    {U'A', U'Z'},       {U'a', U'z'},        // Basic Latin
    {0x00AA, 0x00AA},   {0x00BA, 0x00BA},    // ordinal signs
    {0x00C0, 0x024F},   {0x0250, 0x02AF},    // Latin-1, Extended-A and -B, phonetic
    {0x0370, 0x03E1},   {0x03F0, 0x03FF},    // Greek
    {0x0400, 0x052F},   {0x1C80, 0x1C8F},    // Cyrillic
    {0x1D00, 0x1DBF},   {0x1E00, 0x1FFF},    // phonetic; Latin and Greek Extended
    {0x2C60, 0x2C7F},   {0xA640, 0xA69F},    // Latin Extended-C, Cyrillic Extended-B
    {0xA720, 0xA7FF},   {0xAB30, 0xAB6F},    // Latin Extended-D and -E
    {0xFB00, 0xFB06},   {0xFF21, 0xFF5A},    // ligatures, full width
    {0x10780, 0x107BF}, {0x1DF00, 0x1DFFF},  // Latin Extended-F and -G
});

bool dropsAccents(char32_t letter) {
  return std::ranges::any_of(
      accentedScripts, [&](const Range& range) { return letter >= range.first && letter <= range.last; });
}

bool isMark(char32_t character) {
  const utf8proc_category_t category = utf8proc_category(static_cast<utf8proc_int32_t>(character));
  return category == UTF8PROC_CATEGORY_MN || category == UTF8PROC_CATEGORY_MC ||
         category == UTF8PROC_CATEGORY_ME;
}

bool isBlank(char32_t character) {
  return (character >= U'\t' && character <= U'\r') ||
         utf8proc_category(static_cast<utf8proc_int32_t>(character)) == UTF8PROC_CATEGORY_ZS;
}

struct Release {
  void operator()(utf8proc_uint8_t* text) const {
    std::free(text);
  }  // NOLINT: the library hands out malloc's
};

std::string mapped(std::string_view text, int options) {
  utf8proc_uint8_t* made = nullptr;
  const utf8proc_ssize_t size = utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                                             static_cast<utf8proc_ssize_t>(text.size()), &made,
                                             static_cast<utf8proc_option_t>(options));
  const std::unique_ptr<utf8proc_uint8_t, Release> owner(made);
  if (size < 0) return {};
  return {reinterpret_cast<const char*>(made), static_cast<std::size_t>(size)};
}

/// Accents and letters apart (NFD), without what is ignored.
std::string decomposed(std::string_view text) {
  return mapped(text, UTF8PROC_STABLE | UTF8PROC_DECOMPOSE | UTF8PROC_IGNORE);
}

/// Small letters. A compatible form is not taken apart: full case folding would make "fi" of the ligature.
std::string inSmallLetters(std::string_view character, char32_t code) {
  const utf8proc_property_t* property = utf8proc_get_property(static_cast<utf8proc_int32_t>(code));
  if (property->decomp_type == 0)
    return mapped(character, UTF8PROC_STABLE | UTF8PROC_DECOMPOSE | UTF8PROC_CASEFOLD);
  std::array<utf8proc_uint8_t, 4> bytes{};
  const utf8proc_ssize_t size =
      utf8proc_encode_char(utf8proc_tolower(static_cast<utf8proc_int32_t>(code)), bytes.data());
  return {reinterpret_cast<const char*>(bytes.data()), static_cast<std::size_t>(size)};
}

bool isOfAscii(char c) { return c >= ' ' && c <= '~'; }

/// The key of most names, which have neither accents nor marks.
std::string keyOfAscii(std::string_view name) {
  std::string key;
  key.reserve(name.size());
  bool afterBlank = false;
  for (const char c : name) {
    if (c != ' ') {
      if (afterBlank && !key.empty()) key.push_back(' ');
      key.push_back(lowered(c));
    }
    afterBlank = c == ' ';
  }
  return key;
}

std::string_view withoutBlanksAround(std::string_view text) {
  const auto start = text.find_first_not_of(' ');
  if (start == std::string_view::npos) return {};
  return text.substr(start, text.find_last_not_of(' ') - start + 1);
}

}  // namespace

std::string medicineKey(std::string_view name) {
  if (std::ranges::all_of(name, isOfAscii)) return keyOfAscii(name);
  const std::string apart = decomposed(name);
  std::string key;
  bool onAccented = false;  // whether the letter before takes accents that do not count
  bool afterBlank = false;
  for (std::string_view rest = apart; !rest.empty();) {
    const Character next = firstCharacter(rest);
    rest.remove_prefix(next.bytes.size());
    if (isBlank(next.code)) {
      afterBlank = true;
      onAccented = false;
      continue;
    }
    if (isMark(next.code) && onAccented) continue;
    if (!isMark(next.code)) onAccented = dropsAccents(next.code);
    if (afterBlank && !key.empty()) key.push_back(' ');
    afterBlank = false;
    key.append(inSmallLetters(next.bytes, next.code));
  }
  return key;
}

bool isSameMedicine(std::string_view one, std::string_view other) {
  const std::string key = medicineKey(one);
  return !key.empty() && key == medicineKey(other);
}

bool namesMedicine(std::string_view text) { return !medicineKey(text).empty(); }

std::vector<std::string> medicineNames(std::string_view text) {
  std::vector<std::string> names;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(';'), text.size());
    const std::string_view name = withoutBlanksAround(text.substr(0, end));
    if (namesMedicine(name)) names.emplace_back(name);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return names;
}

std::string_view medicineOf(const Reference& reference) {
  if (namesMedicine(reference.medicine) || reference.alsoCalled.empty()) return reference.medicine;
  return reference.alsoCalled.front();
}

bool isFor(const Reference& reference, std::string_view medicine) {
  return isSameMedicine(reference.medicine, medicine) ||
         std::ranges::any_of(reference.alsoCalled,
                             [&](const std::string& name) { return isSameMedicine(name, medicine); });
}

}  // namespace wardchalk
