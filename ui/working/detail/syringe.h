#pragma once

#include "core/working/step.h"
#include "ui/working/box.h"

namespace wardchalk::ui::detail {

/// Whether a syringe is drawn for it, or a pair.
[[nodiscard]] bool drawsSyringe(const Measuring& measuring);

/// A syringe drawn to scale, its scale from 0 at the tip, filled to the measured amount with an arrow at the
/// plunger's edge; beside or below it the stretch round that mark enlarged, from one numbered mark to the
/// next. Of a pair the full one stands above.
[[nodiscard]] Box syringeBox(const Measuring& measuring, const Metrics& metrics, double width);

}  // namespace wardchalk::ui::detail
