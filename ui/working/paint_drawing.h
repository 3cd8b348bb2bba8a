#pragma once

#include <QString>
#include <climits>

#include "ui/theme/board_palette.h"
#include "ui/working/drawing.h"

class QPainter;

namespace wardchalk::ui {

/// How much of a drawing is painted and what is lit in it.
struct PaintWish {
  QString family;  ///< of the letters, as it was laid out
  int upToStage = INT_MAX;
  double strokeShare = 1;  ///< how far the strokes of that stage are drawn in, 0 to 1
  QString litOrigin;       ///< every number that comes from here has lit ground; empty: none
  int markedHit = -1;      ///< the number that the keyboard stands on, by its place in `hits`; -1: none
};

/// Paints a drawing in its own units; the painter is scaled for paper.
void paintDrawing(QPainter& painter, const Drawing& drawing, const BoardPalette& palette,
                  const PaintWish& wish);

}  // namespace wardchalk::ui
