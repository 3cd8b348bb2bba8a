#include "ui/working/detail/tablets.h"

#include <cmath>
#include <utility>

namespace wardchalk::ui::detail {

namespace {

constexpr double pi = 3.14159265358979323846;

/// A sector of a disc from the top clockwise, `share` of the whole.
QPolygonF sector(double radius, double share) {
  QPolygonF outline;
  const int points = 48;
  if (share < 1) outline << QPointF(0, 0);
  for (int i = 0; i <= points; ++i) {
    const double angle = -pi / 2 + 2 * pi * share * i / points;
    outline << QPointF(radius * std::cos(angle), radius * std::sin(angle));
  }
  return outline;
}

/// One tablet of which `share` is given; what is left over is drawn empty with a thin edge.
Box tabletBox(double share, int divides, const Metrics& metrics) {
  const double radius = metrics.px(17);
  Box box{2 * radius + metrics.px(2), radius + metrics.px(1), radius + metrics.px(1), {}};
  const QPointF middle(box.width / 2, 0);
  const auto add = [&](double part, Area::Fill fill, double edge) {
    box.drawing.areas.push_back(
        {sector(radius, part).translated(middle), 0, fill, Ink::liquid, metrics.px(edge), Ink::line, 0});
  };
  if (share < 1) add(1, Area::Fill::none, 0.8);
  add(share, Area::Fill::solid, 1.6);
  if (divides > 1)
    box.drawing.bars.push_back({Bar::Kind::rule, middle + QPointF(0, -radius), middle + QPointF(0, radius),
                                metrics.px(1), Ink::line, 0});
  return box;
}

Box capsuleBox(const Metrics& metrics) {
  const double half = metrics.px(8);
  const double length = metrics.px(38);
  Box box{length + metrics.px(2), half + metrics.px(1), half + metrics.px(1), {}};
  box.drawing.areas.push_back({corners({metrics.px(1), -half, length, 2 * half}), half, Area::Fill::solid,
                               Ink::liquid, metrics.px(1.6), Ink::line, 0});
  box.drawing.bars.push_back(
      {Bar::Kind::rule, {box.width / 2, -half}, {box.width / 2, half}, metrics.px(1.2), Ink::line, 0});
  return box;
}

}  // namespace

Box tabletsBox(const Measuring& measuring, const Metrics& metrics, double width) {
  if (!measuring.measured || *measuring.measured > Number(mostTablets)) return {};
  const double amount = onScale(*measuring.measured);
  const bool capsule = measuring.exact.unit == Unit::capsule;
  const int divides = static_cast<int>(std::lround(1 / onScale(measuring.step)));
  std::vector<Box> boxes;
  const int whole = static_cast<int>(std::floor(amount + 1e-9));
  for (int i = 0; i < whole; ++i)
    boxes.push_back(capsule ? capsuleBox(metrics) : tabletBox(1, divides, metrics));
  if (amount - whole > 1e-6) boxes.push_back(tabletBox(amount - whole, divides, metrics));
  return wrapped(std::move(boxes), metrics.px(8), metrics.px(6), width);
}

}  // namespace wardchalk::ui::detail
