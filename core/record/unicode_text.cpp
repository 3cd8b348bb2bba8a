#include "core/record/unicode_text.h"

#include <utf8proc.h>

#include <cstdint>
#include <cstdlib>
#include <memory>

#include "core/number/characters.h"
#include "core/number/unseen_text.h"

namespace wardchalk {

namespace {

const utf8proc_uint8_t* bytesOf(std::string_view text) {
  return reinterpret_cast<const utf8proc_uint8_t*>(text.data());
}

struct Release {
  void operator()(utf8proc_uint8_t* text) const {
    std::free(text);
  }  // NOLINT: the library hands out malloc's
};

}  // namespace

bool isUtf8(std::string_view text) {
  while (!text.empty()) {
    const Character next = firstCharacter(text);
    if (!next.isWhole) return false;
    text.remove_prefix(next.bytes.size());
  }
  return true;
}

std::string nonCharacterIn(std::string_view text) {
  while (!text.empty()) {
    const auto first = static_cast<unsigned char>(text.front());
    if (first != 0 && first < 0xEF) {  // all of them but NUL begin with EF to F4
      text.remove_prefix(1);
      continue;
    }
    const Character next = firstCharacter(text);
    if (!next.isWhole) return {};
    if (next.code == 0 || unseenKind(next.code) == Unseen::noCharacter) return unicodeNumber(next.code);
    text.remove_prefix(next.bytes.size());
  }
  return {};
}

std::string folded(std::string_view text) {
  constexpr int options = UTF8PROC_STABLE | UTF8PROC_COMPAT | UTF8PROC_DECOMPOSE | UTF8PROC_CASEFOLD |
                          UTF8PROC_STRIPMARK | UTF8PROC_IGNORE;
  utf8proc_uint8_t* made = nullptr;
  const utf8proc_ssize_t size = utf8proc_map(bytesOf(text), static_cast<utf8proc_ssize_t>(text.size()), &made,
                                             static_cast<utf8proc_option_t>(options));
  const std::unique_ptr<utf8proc_uint8_t, Release> owner(made);
  if (size < 0) return std::string(text);
  return {reinterpret_cast<const char*>(made), static_cast<std::size_t>(size)};
}

}  // namespace wardchalk
