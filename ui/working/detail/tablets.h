#pragma once

#include "core/working/step.h"
#include "ui/working/box.h"

namespace wardchalk::ui::detail {

/// Most tablets that are drawn; beyond it the words alone say how many.
inline constexpr int mostTablets = 6;

/// Tablets or capsules to give: whole ones, then the half or quarters of the last. No width when there are
/// too many; in rows where they are wider than `width`.
[[nodiscard]] Box tabletsBox(const Measuring& measuring, const Metrics& metrics, double width);

}  // namespace wardchalk::ui::detail
