#include "ui/working/detail/number_line.h"

#include <QLocale>
#include <algorithm>
#include <optional>

#include "ui/working/detail/scale.h"

namespace wardchalk::ui::detail {

namespace {

using Kind = Landmark::Kind;

/// Room left over beyond the furthest mark, as a share of it.
constexpr double beyond = 1.15;

class LineSetter {
 public:
  LineSetter(const std::vector<Landmark>& landmarks, const QString& unit, const Metrics& metrics,
             double width)
      : landmarks_(landmarks), unit_(unit), metrics_(metrics) {
    double most = 0;
    for (const Landmark& landmark : landmarks) most = std::max(most, onScale(landmark.value));
    end_ = textBox(unit, FontRole::figure, Ink::quiet, metrics);
    start_ = metrics.px(8);
    length_ = width - start_ - metrics.px(8) - end_.width - metrics.px(4);
    const int fit = std::max(1, static_cast<int>(length_ / metrics.px(64)));
    figures_ = figuresTo(most * beyond, std::min(6, fit));
    box_.width = width;
  }

  Box box() {
    drawStretches();
    drawAxis();
    for (const Kind kind : {Kind::limit, Kind::maximum, Kind::low, Kind::ordered}) placeMarks(kind);
    return std::move(box_);
  }

 private:
  double xOf(double value) const { return start_ + length_ * value / figures_.end; }

  std::optional<double> lowest(std::initializer_list<Kind> kinds) const {
    std::optional<double> found;
    for (const Landmark& landmark : landmarks_)
      if (std::find(kinds.begin(), kinds.end(), landmark.kind) != kinds.end())
        found = std::min(found.value_or(onScale(landmark.value)), onScale(landmark.value));
    return found;
  }

  void drawStretches() {
    const double half = metrics_.px(4);
    const auto top = lowest({Kind::limit, Kind::maximum});
    const auto low = lowest({Kind::low});
    if (low) addArea(0, *low, half, Area::Fill::hatched, Ink::quiet);
    if (top && low.value_or(0) < *top) addArea(low.value_or(0), *top, half, Area::Fill::solid, Ink::holds);
  }

  void addArea(double from, double to, double half, Area::Fill fill, Ink ink) {
    const QRectF rect(QPointF(xOf(from), -half), QPointF(xOf(to), half));
    box_.drawing.areas.push_back({corners(rect), 0, fill, ink, 0, Ink::line, 0});
  }

  void drawAxis() {
    const double thick = std::max(1.0, metrics_.px(1.2));
    rule({xOf(0), 0}, {xOf(figures_.end) + metrics_.px(8), 0}, thick, Ink::line);
    const int count = static_cast<int>(figures_.end / figures_.step + 0.5);
    double deepest = 0;
    for (int i = 0; i <= count; ++i) {
      const double value = i * figures_.step;
      rule({xOf(value), -metrics_.px(4)}, {xOf(value), metrics_.px(4)}, thick, Ink::line);
      Box figure = textBox(QLocale::c().toString(value, 'f', figures_.decimals), FontRole::figure, Ink::quiet,
                           metrics_);
      const double base = metrics_.px(5) + figure.above;
      deepest = base + figure.below;
      const double left = std::max(0.0, xOf(value) - figure.width / 2);
      if (i == count) {
        Box unit = end_;
        box_.drawing.add(std::move(unit.drawing), {left + figure.width + metrics_.px(4), base});
      }
      box_.drawing.add(std::move(figure.drawing), {left, base});
    }
    box_.below = deepest;
    box_.above = metrics_.px(8);
  }

  void rule(QPointF from, QPointF to, double thick, Ink ink) {
    box_.drawing.bars.push_back({Bar::Kind::rule, from, to, thick, ink, 0});
  }

  void placeMarks(Kind kind) {
    for (const Landmark& landmark : landmarks_)
      if (landmark.kind == kind) place(landmark);
  }

  /// Finds room for the label over its place: beside the leader or across it, in the lowest row that is free.
  void place(const Landmark& landmark) {
    const double x = xOf(onScale(landmark.value));
    Box label = textBox(landmark.label, FontRole::mark,
                        landmark.kind == Kind::ordered ? Ink::text : Ink::quiet, metrics_);
    const double high = label.height();
    for (int row = 0; row < 6; ++row) {
      const double bottom = -metrics_.px(12) - row * (high + metrics_.px(1));
      for (const double left : {x - label.width / 2, x + metrics_.px(4), x - metrics_.px(4) - label.width}) {
        const QRectF rect(left, bottom - high, label.width, high);
        if (!isFree(rect, x)) continue;
        return put(landmark, std::move(label), rect, x);
      }
    }
    const double bottom = -metrics_.px(12) - 6 * high;
    put(landmark, std::move(label), {std::max(0.0, x - label.width), bottom - high, label.width, high}, x);
  }

  bool isFree(const QRectF& rect, double x) const {
    if (rect.left() < 0 || rect.right() > box_.width) return false;
    const QRectF leader(x - 1, rect.center().y(), 2, -rect.center().y());
    const double air = metrics_.px(4);
    for (const Placed& placed : placed_) {
      if (placed.label.adjusted(-air, 0, air, 0).intersects(rect)) return false;
      if (placed.label.adjusted(-1, 0, 1, 0).intersects(leader) || placed.leader.intersects(rect))
        return false;
    }
    return true;
  }

  void put(const Landmark& landmark, Box label, const QRectF& rect, double x) {
    const bool ordered = landmark.kind == Kind::ordered;
    const bool crosses = rect.left() < x && rect.right() > x;
    const double top = crosses ? rect.bottom() : rect.center().y();
    const double foot = ordered ? -metrics_.px(5) : metrics_.px(5);
    const double thick = landmark.kind == Kind::low ? metrics_.px(1.4) : metrics_.px(2);
    rule({x, top}, {x, foot}, ordered ? metrics_.px(1.2) : thick, ordered ? Ink::text : Ink::line);
    if (ordered) addArrow(x);
    placed_.push_back({rect, {x - 1, top, 2, -top}});
    box_.drawing.add(std::move(label.drawing), {rect.left(), rect.top() + label.above});
    box_.above = std::max(box_.above, -rect.top());
  }

  void addArrow(double x) {
    const double half = metrics_.px(5);
    const QPolygonF outline(
        {{x - half, -metrics_.px(12)}, {x + half, -metrics_.px(12)}, {x, -metrics_.px(4)}});
    box_.drawing.areas.push_back({outline, 0, Area::Fill::solid, Ink::text, 0, Ink::line, 0});
  }

  struct Placed {
    QRectF label;
    QRectF leader;
  };

  const std::vector<Landmark>& landmarks_;
  const QString& unit_;
  const Metrics& metrics_;
  Box end_;
  Box box_;
  Figures figures_;
  double start_ = 0;
  double length_ = 0;
  std::vector<Placed> placed_;
};

}  // namespace

Box numberLine(const std::vector<Landmark>& landmarks, const QString& unit, const Metrics& metrics,
               double width) {
  return LineSetter(landmarks, unit, metrics, width).box();
}

}  // namespace wardchalk::ui::detail
