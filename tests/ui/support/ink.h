#pragma once

#include <QFontMetricsF>
#include <QRectF>
#include <QString>
#include <algorithm>
#include <vector>

#include "ui/working/drawing.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui::test {

/// The ink that letters really cover, as against the height of their line.
inline QRectF inkOf(const Run& run) {
  return QFontMetricsF(fontOf(run.type, {})).tightBoundingRect(run.text).translated(run.at);
}

/// Says which two texts cover one another; empty when none do. Each ink is measured once.
inline QString overlapIn(const std::vector<Run>& runs) {
  std::vector<QRectF> inks(runs.size());
  std::transform(runs.begin(), runs.end(), inks.begin(), inkOf);
  for (std::size_t i = 0; i < inks.size(); ++i)
    for (std::size_t j = i + 1; j < inks.size(); ++j)
      if (inks[i].intersects(inks[j])) return runs[i].text + QStringLiteral(" over ") + runs[j].text;
  return {};
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
