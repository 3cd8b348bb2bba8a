#pragma once

#include <array>
#include <string_view>

namespace wardchalk {

/// Reasons for refusing an entry; the list with their stable ids is in refusal_codes.def.
enum class RefusalCode {
#define WARDCHALK_REFUSAL(name, id) name,
#include "core/number/refusal_codes.def"
#undef WARDCHALK_REFUSAL
};

inline constexpr std::array refusalIds = {
#define WARDCHALK_REFUSAL(name, id) std::string_view(id),
#include "core/number/refusal_codes.def"
#undef WARDCHALK_REFUSAL
};

/// The stable id that stands in files: "leading-zero".
[[nodiscard]] constexpr std::string_view idOf(RefusalCode code) {
  return refusalIds[static_cast<std::size_t>(code)];
}

}  // namespace wardchalk
