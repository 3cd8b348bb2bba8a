#pragma once

#include <QRectF>

#include "ui/theme/board_palette.h"

class QPainter;

namespace wardchalk::ui::detail {

/// The sign of a verdict, which says what it is without colour: a square with a tick (safe), a triangle with
/// an exclamation mark (ask), a circle with a bar (unsafe, not covered), three dots in a dashed frame
/// (undecided).
void paintVerdictSign(QPainter& painter, VerdictKind verdict, const QRectF& rect, const FlagColours& colours);

/// The dashed frame of a flag that says nothing yet.
void paintDashedOutline(QPainter& painter, const QRectF& rect, const QColor& ink);

}  // namespace wardchalk::ui::detail
