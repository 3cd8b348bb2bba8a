#pragma once

#include <string_view>

#include "core/entry/detail/amount.h"
#include "core/entry/detail/unit_list.h"

namespace wardchalk::entry {

/// The parts of an amount put together as one quantity of falling parts in the units that fit; grams are the
/// child's where those are. A stone and its pounds come to pounds. Refuses what stands behind strokes.
[[nodiscard]] Result<MixedQuantity> partsOf(TypedAmount amount, UnitList fitting, std::string_view text);

/// All parts in one unit.
[[nodiscard]] Quantity totalIn(Unit unit, const MixedQuantity& mixed);

/// The refusal of a range where one figure belongs; nothing if no range goes on here.
[[nodiscard]] std::optional<Refusal> refusedRange(Cursor cursor, RefusalCode code);

}  // namespace wardchalk::entry
