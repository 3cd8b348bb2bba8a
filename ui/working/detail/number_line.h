#pragma once

#include <vector>

#include "ui/working/box.h"
#include "ui/working/step_view.h"

namespace wardchalk::ui::detail {

/// A line to scale from 0 with the ordered amount, low end, limit and maximum marked on it: the allowed
/// stretch thick in the ink `allowed`, what lies below the low end hatched. Its width is `width`; the origin
/// lies on the axis.
[[nodiscard]] Box numberLine(const std::vector<Landmark>& landmarks, const QString& unit,
                             const Metrics& metrics, double width, Ink allowed = Ink::holds);

}  // namespace wardchalk::ui::detail
