#pragma once

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

#include "core/child/likely_size.h"

namespace wardchalk {

/// A known way to get a weight or a height wrong; the list is in size_slips.def.
enum class SizeSlip : std::uint8_t {
#define WARDCHALK_SIZE_SLIP(name, id) name,
#include "core/child/size_slips.def"
#undef WARDCHALK_SIZE_SLIP
};

inline constexpr std::array sizeSlipIds = {
#define WARDCHALK_SIZE_SLIP(name, id) std::string_view(id),
#include "core/child/size_slips.def"
#undef WARDCHALK_SIZE_SLIP
};

[[nodiscard]] constexpr std::string_view idOf(SizeSlip slip) {
  return sizeSlipIds[static_cast<std::size_t>(slip)];
}

/// The size that was meant if `slip` was made; none when it cannot have been made with what was entered.
[[nodiscard]] std::optional<BodySize> undone(SizeSlip slip, const Child& child);

/// The slips without which an unlikely size would be likely, at most two: of more, those that leave the most
/// ordinary child. In the order of the list, none preferred. They are questions to raise and never
/// corrections: an unlikely size that is true looks like a slip as well.
[[nodiscard]] std::vector<SizeSlip> slipsThatExplain(const Child& child);

}  // namespace wardchalk
