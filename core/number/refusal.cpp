#include "core/number/refusal.h"

namespace wardchalk {

namespace {

constexpr std::size_t mostTyped = 60;

/// A byte that continues a UTF-8 character and does not begin one.
bool continuesCharacter(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U; }

std::string_view beginning(std::string_view text) {
  if (text.size() <= mostTyped) return text;
  std::size_t end = mostTyped;
  while (end > 0 && continuesCharacter(text[end])) --end;
  return text.substr(0, end);
}

}  // namespace

Refusal refusalOf(RefusalCode code, std::string_view typed, std::string_view suggestion) {
  return {code, std::string(beginning(typed)), std::string(suggestion), {}};
}

Refusal hintedRefusal(RefusalCode code, std::string_view typed, std::string hint) {
  Refusal refusal = refusalOf(code, typed);
  refusal.hint = std::move(hint);
  return refusal;
}

}  // namespace wardchalk
