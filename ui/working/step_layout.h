#pragma once

#include <QSizeF>

#include "ui/working/drawing.h"
#include "ui/working/metrics.h"
#include "ui/working/step_view.h"

namespace wardchalk::ui {

/// A step laid out in 1/96 inch, ready to be painted on screen, board, paper or into a picture.
struct StepLayout {
  Drawing drawing;
  QSizeF size;
  /// How often a board can uncover something: stage 0 is the question, 1 the factors, then one struck pair
  /// each, the product, the rounding. Everything of stage n or less is shown.
  int stages = 1;
};

/// Lays a step out no wider than `metrics.width`. What does not fit beside goes below; a chain breaks between
/// factors; a single factor that would not fit is set smaller. Nothing is cut off.
[[nodiscard]] StepLayout layOut(const StepView& view, const Metrics& metrics);

}  // namespace wardchalk::ui
