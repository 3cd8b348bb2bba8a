#pragma once

#include <QFontMetricsF>
#include <QRectF>
#include <QString>

#include "ui/working/drawing.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui::test {

/// The ink that letters really cover, as against the height of their line.
inline QRectF inkOf(const Run& run) {
  return QFontMetricsF(fontOf(run.type, {})).tightBoundingRect(run.text).translated(run.at);
}

/// A rectangle for the message of a test.
inline QString described(const QRectF& rect) {
  return QStringLiteral("(%1, %2) to (%3, %4)")
      .arg(rect.left())
      .arg(rect.top())
      .arg(rect.right())
      .arg(rect.bottom());
}

}  // namespace wardchalk::ui::test
