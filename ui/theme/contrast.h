#pragma once

#include <QColor>

namespace wardchalk::ui {

/// How far apart two opaque colours are in lightness, 1 (alike) to 21 (black and white).
/// Source: WCAG 2.2, definitions of relative luminance and contrast ratio.
[[nodiscard]] double contrastRatio(const QColor& a, const QColor& b);

}  // namespace wardchalk::ui
