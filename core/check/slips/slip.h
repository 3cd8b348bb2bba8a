#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <variant>

#include "core/medicine/case.h"
#include "core/medicine/paths.h"
#include "core/unit/conversion.h"

namespace wardchalk {

/// A known way to get an ordered dose, or what it is held against, wrong; the catalogue is in slips.def.
enum class Slip : std::uint8_t {
#define WARDCHALK_SLIP(name, id, field, errors, undoing) name,
#include "core/check/slips/slips.def"
#undef WARDCHALK_SLIP
};

struct SlipInfo {
  std::string_view id;      ///< stable; stands in files
  StaticText field;         ///< path of the entry that the question is about
  std::string_view errors;  ///< the same mistakes in a student's line: "E20 E35"; may be empty
};

inline constexpr std::array slipTable = {
#define WARDCHALK_SLIP(name, id, field, errors, undoing) SlipInfo{id, path::field, errors},
#include "core/check/slips/slips.def"
#undef WARDCHALK_SLIP
};

[[nodiscard]] constexpr const SlipInfo& infoOf(Slip slip) {
  return slipTable[static_cast<std::size_t>(slip)];
}
[[nodiscard]] constexpr std::string_view idOf(Slip slip) { return infoOf(slip).id; }
/// Whether the slip is one of the order, and not of another paper.
[[nodiscard]] constexpr bool isOfOrder(Slip slip) { return infoOf(slip).field.view().starts_with("order."); }

/// What the undoing of slips starts from.
struct SlipGround {
  const Case& given;
  Pounds pounds = Pounds::exact;
  std::optional<Number> kg;         ///< the child's weight as it is used
  std::optional<Number> m2;         ///< the child's surface as it is used
  std::optional<Number> dosesADay;  ///< the most that the order gives
};

/// Had the slip not been made, the dose would be so many times the ordered one, or the case another. Empty
/// when the slip cannot have been made in this case, or would have changed nothing.
using Undoing = std::variant<std::monostate, Number, Case>;

[[nodiscard]] Undoing undone(Slip slip, const SlipGround& ground);

}  // namespace wardchalk
