#pragma once

#include <vector>

#include "ui/working/drawing.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui {

/// A drawing with a baseline: its origin is the left end of the baseline, y grows downwards.
struct Box {
  double width = 0;
  double above = 0;  ///< height over the baseline
  double below = 0;  ///< depth under the baseline
  Drawing drawing;

  [[nodiscard]] double height() const { return above + below; }
  [[nodiscard]] QRectF rect() const { return {0, -above, width, above + below}; }
};

[[nodiscard]] Box textBox(const QString& text, Type type, Ink ink, const Metrics& metrics);
[[nodiscard]] Box textBox(const QString& text, FontRole role, Ink ink, const Metrics& metrics);

/// Boxes beside one another on one baseline.
[[nodiscard]] Box row(std::vector<Box> boxes, double gap);

/// Boxes under one another, left edges together; the baseline is the first one's.
[[nodiscard]] Box column(std::vector<Box> boxes, double gap);

/// Boxes in reading order, broken into lines no wider than `width`; each stands whole.
[[nodiscard]] Box wrapped(std::vector<Box> boxes, double gap, double lineGap, double width);

/// Words of a sentence, broken between words. No-break spaces hold a number and its unit together.
[[nodiscard]] Box paragraph(const QString& text, FontRole role, Ink ink, const Metrics& metrics,
                            double width);

/// One over the other with a bar between, which spans both.
[[nodiscard]] Box fraction(Box over, Box under, const Metrics& metrics);

/// The square root of what is inside.
[[nodiscard]] Box rooted(Box inside, const Metrics& metrics);

}  // namespace wardchalk::ui
