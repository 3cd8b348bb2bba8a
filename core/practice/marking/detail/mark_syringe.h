#pragma once

#include "core/practice/lines/syringe_answer.h"
#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/replay.h"
#include "core/working/step.h"

namespace wardchalk::detail {

/// Marks which syringe is taken, and what is drawn up in it, each apart: the key's syringe, and the amount on
/// its marks, the student's own amount where one was worked out before. An amount that is not said is not
/// missed.
[[nodiscard]] LineMark markSyringe(const Measuring& measuring, const Replay& carried,
                                   const SyringeAnswer& said);

}  // namespace wardchalk::detail
