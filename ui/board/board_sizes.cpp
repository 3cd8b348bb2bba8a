#include "ui/board/board_sizes.h"

#include <algorithm>

namespace wardchalk::ui {

namespace {

constexpr double farthest = 6;  // screen heights
constexpr double minuteOfArc = 3.14159265358979323846 / 180 / 60;
constexpr double minutesToRead = 16;
constexpr double minutesToLookUp = 10;

double capitalOf(const QString& family) {
  constexpr int large = 100;
  return QFontMetricsF(fontOf({large, false}, family)).capHeight() / large;
}

int usualPixels(FontRole role) { return Metrics{0, 1, {}, 1}.type(role).pixels; }

}  // namespace

BoardSizes::BoardSizes(const QSizeF& screen, const QString& family, double larger)
    : screen_(screen), family_(family), larger_(larger), capital_(capitalOf(family)) {}

double BoardSizes::leastRead() const {
  return larger_ * screen_.height() * farthest * minutesToRead * minuteOfArc / capital_;
}

double BoardSizes::leastAside() const {
  return larger_ * screen_.height() * farthest * minutesToLookUp * minuteOfArc / capital_;
}

double BoardSizes::leastScale() const {
  return std::max(leastRead() / usualPixels(FontRole::number), leastAside() / usualPixels(FontRole::tag));
}

Metrics BoardSizes::sized(FontRole role, double pixels) const {
  return {screen_.width(), pixels / usualPixels(role), family_, 1};
}

}  // namespace wardchalk::ui
