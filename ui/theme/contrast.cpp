#include "ui/theme/contrast.h"

#include <algorithm>
#include <cmath>

namespace wardchalk::ui {

namespace {

double linear(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
  return 0.2126 * linear(static_cast<double>(colour.redF())) +
         0.7152 * linear(static_cast<double>(colour.greenF())) +
         0.0722 * linear(static_cast<double>(colour.blueF()));
}

}  // namespace

double contrastRatio(const QColor& a, const QColor& b) {
  const auto [darker, lighter] = std::minmax({luminance(a), luminance(b)});
  return (lighter + 0.05) / (darker + 0.05);
}

}  // namespace wardchalk::ui
