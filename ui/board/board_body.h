#pragma once

#include <QRectF>
#include <vector>

#include "ui/board/board_sizes.h"
#include "ui/working/step_layout.h"

namespace wardchalk::ui {

/// A step's working set as large as its room on the board allows. It stands at its place.
struct BoardBody {
  Drawing drawing;
  QRectF rect;       ///< what it covers
  double scale = 1;  ///< of its letters, as in Metrics
};

/// Sets it on one line where the letters stay large on it, else in as many lines as it needs.
[[nodiscard]] BoardBody fitBody(const StepView& view, const QRectF& room, const BoardSizes& sizes);

/// Where a factor of a chain stands: one frame round both its terms, or one each where they stand apart under
/// a root.
[[nodiscard]] std::vector<QRectF> framesOf(const BoardBody& body, int factor);

/// Where the result will stand, in a size that tells nothing of it; empty for what is no chain.
[[nodiscard]] QRectF placeOfResult(const BoardBody& body, const StepView& view);

}  // namespace wardchalk::ui
