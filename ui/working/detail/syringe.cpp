#include "ui/working/detail/syringe.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/number/decimal_text.h"
#include "ui/working/detail/scale.h"

namespace wardchalk::ui::detail {

namespace {

constexpr double longestBarrel = 340;
constexpr double longestEnlarged = 190;
/// A syringe narrower than this, at 100 %, is drawn smaller instead.
constexpr double narrowestSyringe = 260;

/// The scale is drawn at stage 0, and what is read on it a stage later.
constexpr int reading = 1;

/// The part of a syringe's scale from `from` to `to` mL, drawn `length` long.
struct Window {
  double from = 0;
  double to = 1;
  double length = 100;
  [[nodiscard]] double xOf(double value) const { return length * (value - from) / (to - from); }
};

/// Draws a stretch of a syringe's scale: marks, figures, liquid, the arrow where to read.
class ScaleSetter {
 public:
  ScaleSetter(const Measuring& measuring, const Metrics& metrics)
      : metrics_(metrics),
        marks_(onScale(measuring.syringe->marksMl)),
        holds_(onScale(measuring.syringe->holdsMl)),
        filled_(onScale(measuring.measured.value_or(measuring.exact.value))),
        reading_(QString::fromStdString(show(measuring.measured.value_or(measuring.exact.value)).text)) {}

  /// Distance of numbered marks: every fifth mark or more, as close as the figures allow.
  double numbered(double length) const {
    const double room = metrics_.px(30);
    const int fit = std::max(1, static_cast<int>(length / room));
    double step = figuresTo(holds_, std::min(fit, 12)).step;
    while (step < marks_ * 4.99) step = figuresTo(step * 1.5, 1).step;
    return step;
  }

  Box stretch(const Window& window, double numberedStep, bool enlarged) {
    Box box;
    const double half = metrics_.px(enlarged ? 17 : 13);
    const double end = window.xOf(std::min(filled_, window.to));
    addArea(box, {0, -half, end, 2 * half}, Ink::liquid, Ink::liquid, 0);
    box.drawing.setStage(reading);
    drawMarks(box, window, numberedStep, half, enlarged);
    addFrame(box, {0, -half, window.length, 2 * half});
    box.width = window.length;
    box.above = half;
    box.below = std::max(box.below, half);
    addReading(box, window, half, enlarged);
    return box;
  }

  [[nodiscard]] double holds() const { return holds_; }
  [[nodiscard]] double filled() const { return filled_; }

  void addArea(Box& box, const QRectF& rect, Ink fill, Ink edge, double edgeWidth) const {
    box.drawing.areas.push_back({corners(rect), 0, Area::Fill::solid, fill, edgeWidth, edge, 0});
  }

  void addRule(Box& box, QPointF from, QPointF to, double thick) const {
    box.drawing.bars.push_back({Bar::Kind::rule, from, to, thick, Ink::line, 0});
  }

 private:
  void addFrame(Box& box, const QRectF& rect) const {
    box.drawing.areas.push_back({corners(rect), metrics_.px(2), Area::Fill::none, Ink::card,
                                 std::max(1.0, metrics_.px(1.4)), Ink::line, 0});
  }

  void addReading(Box& box, const Window& window, double half, bool enlarged) const {
    Box read;
    drawPlunger(read, window, half, enlarged);
    drawArrow(read, window, half);
    read.drawing.setStage(reading);
    box.above = std::max(box.above, read.above);
    box.drawing.add(std::move(read.drawing));
  }

  void drawMarks(Box& box, const Window& window, double numberedStep, double half, bool enlarged) const {
    const int first = static_cast<int>(std::ceil(window.from / marks_ - 1e-6));
    const int last = static_cast<int>(std::floor(window.to / marks_ + 1e-6));
    const int every = std::max(1, static_cast<int>(std::lround(numberedStep / marks_)));
    for (int i = first; i <= last; ++i) {
      const double x = window.xOf(i * marks_);
      const bool isNumbered = i % every == 0;
      const bool isMiddle = every % 2 == 0 && i % (every / 2) == 0;
      const double length = half * (isNumbered ? 1.0 : isMiddle ? 0.75 : 0.5);
      addRule(box, {x, half - length}, {x, half},
              std::max(1.0, metrics_.px(isNumbered || enlarged ? 1.4 : 0.9)));
      if (isNumbered) addFigure(box, x, i * marks_, half);
    }
  }

  void addFigure(Box& box, double x, double value, double half) const {
    Box figure = textBox(figureText(value), FontRole::aside, Ink::text, metrics_);
    const double base = half + metrics_.px(2) + figure.above;
    box.below = std::max(box.below, base + figure.below);
    box.drawing.add(std::move(figure.drawing), {x - figure.width / 2, base});
  }

  void drawPlunger(Box& box, const Window& window, double half, bool enlarged) const {
    if (filled_ > window.to) return;
    const double x = window.xOf(filled_);
    const double thick = metrics_.px(enlarged ? 9 : 6);
    const double room = std::min(thick, window.length - x);
    if (room > 0) addArea(box, {x, -half, room, 2 * half}, Ink::line, Ink::line, 0);
  }

  /// Points at the plunger's edge from above, with the amount to read there.
  void drawArrow(Box& box, const Window& window, double half) const {
    const double x = window.xOf(filled_);
    const double wing = metrics_.px(5);
    const double foot = -half - metrics_.px(1);
    box.drawing.areas.push_back(
        {QPolygonF({{x - wing, foot - metrics_.px(8)}, {x + wing, foot - metrics_.px(8)}, {x, foot}}), 0,
         Area::Fill::solid, Ink::text, 0, Ink::line, 0});
    Box label = textBox(reading_, FontRole::mark, Ink::text, metrics_);
    const double base = foot - metrics_.px(9) - label.below;
    box.above = std::max(box.above, -base + label.above);
    box.drawing.add(std::move(label.drawing), {x - label.width / 2, base});
  }

  const Metrics& metrics_;
  double marks_;
  double holds_;
  double filled_;
  QString reading_;
};

/// Cone and needle end at the left, rod and thumb rest at the right of the barrel.
Box barrelBox(ScaleSetter& setter, SyringeKind kind, const Metrics& metrics, double room) {
  const double tip = metrics.px(18);
  const double tail = metrics.px(12);
  const double rod = metrics.px(26);
  const Window window{
      0,
      setter.holds(),
      std::min(room - tip - tail - rod, metrics.px(longestBarrel)),
  };
  Box barrel = setter.stretch(window, setter.numbered(window.length), /*enlarged=*/false);
  Box box{tip + window.length + rod + tail, barrel.above, barrel.below, {}};
  const double half = metrics.px(13);
  setter.addArea(box, {tip - metrics.px(6), -half * 0.45, metrics.px(6), half * 0.9}, Ink::line, Ink::line,
                 0);
  const bool needle = kind == SyringeKind::injection;  // an oral syringe ends blunt
  setter.addRule(box, {needle ? 0 : tip - metrics.px(14), 0}, {tip - metrics.px(6), 0},
                 metrics.px(needle ? 1.4 : 6));
  const double plunger = tip + window.xOf(setter.filled());
  const double end = tip + window.length + rod;
  setter.addRule(box, {plunger, 0}, {end, 0}, metrics.px(4));
  setter.addRule(box, {end, -half}, {end, half}, metrics.px(4));
  for (std::size_t i = box.drawing.bars.size() - 2; i < box.drawing.bars.size(); ++i)
    box.drawing.bars[i].stage = reading;
  setter.addRule(box, {tip + window.length, -half - metrics.px(3)},
                 {tip + window.length, half + metrics.px(3)}, metrics.px(3));
  box.drawing.add(std::move(barrel.drawing), {tip, 0});
  return box;
}

/// From the numbered mark at or below to the next one above; the whole of one on each side when it lies on
/// one.
Window enlargedWindow(const ScaleSetter& setter, double step, double length) {
  const double at = setter.filled() / step;
  const bool onNumber = std::abs(at - std::round(at)) < 1e-6;
  const double from = onNumber ? (std::round(at) - 1) * step : std::floor(at) * step;
  const double to = onNumber ? (std::round(at) + 1) * step : (std::floor(at) + 1) * step;
  return {std::max(0.0, from), std::min(to, setter.holds()), length};
}

Box enlargedBox(ScaleSetter& setter, const Metrics& metrics, double barrelLength, double room) {
  const double side = metrics.px(10);
  const double length = std::min(room - 2 * side, metrics.px(longestEnlarged));
  const double step = setter.numbered(barrelLength);
  Box inside = setter.stretch(enlargedWindow(setter, step, length), step, /*enlarged=*/true);
  Box box{length + 2 * side, inside.above, inside.below, {}};
  box.drawing = std::move(inside.drawing);
  box.drawing.moveBy({side, 0});
  box.drawing.setStage(reading);  // where it is enlarged tells the reading
  return box;
}

/// The one of a pair that is drawn full: where its plunger stands needs no enlarging.
Box fullBox(const Measuring& pair, const Metrics& metrics, double room) {
  Measuring full = pair;
  full.syringe = pair.full;
  full.measured = pair.full->holdsMl;
  ScaleSetter setter(full, metrics);
  return barrelBox(setter, pair.full->kind, metrics, room);
}

}  // namespace

bool drawsSyringe(const Measuring& measuring) {
  return measuring.exact.unit == Unit::mL && measuring.measured && measuring.syringe &&
         measuring.syringes == 1;
}

Box syringeBox(const Measuring& measuring, const Metrics& wanted, double width) {
  Metrics metrics = wanted;
  metrics.scale = std::min(wanted.scale, width / narrowestSyringe);
  const double air = metrics.px(24);
  const bool beside = width >= metrics.px(480);
  const double forBarrel = beside ? (width - air) * 0.62 : width;
  if (measuring.full) {
    Box full = fullBox(measuring, metrics, forBarrel);
    return column({std::move(full), syringeBox(restOf(measuring), wanted, width)}, metrics.px(4));
  }
  ScaleSetter setter(measuring, metrics);
  Box barrel = barrelBox(setter, measuring.syringe->kind, metrics, forBarrel);
  const double barrelLength = barrel.width - metrics.px(56);
  Box enlarged = enlargedBox(setter, metrics, barrelLength, beside ? width - air - barrel.width : width);
  if (beside) return row({std::move(barrel), std::move(enlarged)}, air);
  return column({std::move(barrel), std::move(enlarged)}, metrics.px(8));
}

}  // namespace wardchalk::ui::detail
