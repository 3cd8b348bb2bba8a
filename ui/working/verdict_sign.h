#pragma once

#include <QRectF>
#include <optional>

#include "core/check/worksheet.h"
#include "ui/theme/board_palette.h"

class QPainter;

namespace wardchalk::ui {

/// The sign of a verdict, which says what it is without colour: a square with a tick (safe), a triangle with
/// an exclamation mark (ask), a circle with a bar (unsafe, not covered), three dots in a dashed frame
/// (undecided).
void paintVerdictSign(QPainter& painter, VerdictKind verdict, const QRectF& rect, const FlagColours& colours);

/// The verdict that a finding of this severity forces, whose sign it carries; a note carries none.
[[nodiscard]] std::optional<VerdictKind> verdictOf(Severity severity);

/// The dashed frame of a flag that says nothing yet.
void paintDashedOutline(QPainter& painter, const QRectF& rect, const QColor& ink);

}  // namespace wardchalk::ui
