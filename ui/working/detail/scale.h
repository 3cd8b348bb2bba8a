#pragma once

#include <QString>

namespace wardchalk::ui::detail {

/// Figures at even steps on a drawn scale.
struct Figures {
  double step = 1;
  double end = 1;  ///< the last figure, not below what must be shown
};

/// A figure as it stands on a scale: "0.5", "1,000".
[[nodiscard]] QString figureText(double value);

/// Steps of 1, 2 or 5 times a power of ten from 0 to at least `most`, at most `count` of them.
[[nodiscard]] Figures figuresTo(double most, int count);

}  // namespace wardchalk::ui::detail
