#pragma once

#include <QRectF>
#include <QStringList>
#include <vector>

#include "core/words/case_facts.h"
#include "ui/board/board_sizes.h"
#include "ui/working/drawing.h"

namespace wardchalk::ui {

/// Everything on a board round the working, in words already chosen.
struct BoardFrameText {
  std::vector<Fact> facts;
  QString foundLabel;
  QStringList found;     ///< what has been found so far
  QStringList foundAll;  ///< all that will be found, so that room is kept for it; never shown
  QString heading;       ///< "Step 2 of 9"
  int pages = 1;
  int page = 0;
  QString question;
  QString lookingFor;
  QString caption;
  QStringList captions;  ///< every caption of this page, so that room is kept; never shown
  QString caution;
  QString status;  ///< at the right of the caution: the hint of keys, or what is being typed
};

/// The frame set out on a screen, and the room it leaves for the working.
struct BoardFrame {
  Drawing drawing;
  double strip = 0;  ///< height of the band of facts at the top
  QRectF room;
};

[[nodiscard]] BoardFrame layOutFrame(const BoardFrameText& text, const BoardSizes& sizes);

}  // namespace wardchalk::ui
