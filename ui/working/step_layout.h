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
  /// How many stages there are, as stagesOf() names them; everything of stage n or less is shown.
  int stages = 1;
};

/// Lays a step out no wider than `metrics.width`. What does not fit beside goes below; a chain breaks between
/// factors; a single factor that would not fit is set smaller. Nothing is cut off.
[[nodiscard]] StepLayout layOut(const StepView& view, const Metrics& metrics);

/// The same without number, question and reason: what stands below the question. Its size is what it covers.
[[nodiscard]] StepLayout layOutBody(const StepView& view, const Metrics& metrics);

}  // namespace wardchalk::ui
