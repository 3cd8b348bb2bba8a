#pragma once

#include "ui/working/box.h"
#include "ui/working/step_view.h"

namespace wardchalk::ui::detail {

/// What stands below a step's question, and the stage at which its last part appears.
struct Body {
  Box box;
  int lastStage = 0;
};

/// A chain with the sums that went before it.
[[nodiscard]] Body solvedBody(const StepView& view, const Solved& solved, const Metrics& metrics,
                              double width);

/// A published formula with powers: factor × (103 cm) raised × (17.2 kg) raised ≈ area.
[[nodiscard]] Body formulaBody(const StepView& view, const SurfaceByFormula& formula, const Metrics& metrics,
                               double width);

/// The inequality in large type with "true" or "false", the chains its sides were found by, and a number
/// line.
[[nodiscard]] Body comparisonBody(const StepView& view, const Comparison& comparison, const Metrics& metrics,
                                  double width);

/// What can be measured: the drawing of the device, and the sentence that says the same.
[[nodiscard]] Body measuringBody(const StepView& view, const Measuring& measuring, const Metrics& metrics,
                                 double width);

}  // namespace wardchalk::ui::detail
