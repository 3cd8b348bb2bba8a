#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>

#include "core/number/refusal.h"
#include "core/unit/unit.h"

namespace wardchalk::entry {

using UnitList = std::span<const Unit>;

/// The units that a medicine is measured in.
inline constexpr std::array drugUnits = {Unit::mcg, Unit::mg, Unit::g, Unit::units, Unit::mmol, Unit::mEq};

[[nodiscard]] bool contains(UnitList units, Unit unit);
/// "kg, g, lb, oz": the units that fit, as files write them.
[[nodiscard]] std::string listOf(UnitList units);

/// The refusal of a quantity whose unit does not fit the field: named as what it is, with the units that fit.
[[nodiscard]] Refusal unfit(Unit typed, std::string_view text, UnitList fitting);

}  // namespace wardchalk::entry
