#include "core/number/refusal.h"

#include "core/number/characters.h"

namespace wardchalk {

namespace {

constexpr std::size_t mostTyped = 60;  // bytes

}  // namespace

std::string shortened(std::string_view typed) { return std::string(beginningOf(typed, mostTyped)); }

Refusal refusalOf(RefusalCode code, std::string_view typed, std::string_view suggestion) {
  return {code, shortened(typed), std::string(suggestion), {}};
}

Refusal hintedRefusal(RefusalCode code, std::string_view typed, std::string hint) {
  Refusal refusal = refusalOf(code, typed);
  refusal.hint = std::move(hint);
  return refusal;
}

}  // namespace wardchalk
