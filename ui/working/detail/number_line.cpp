#include "ui/working/detail/number_line.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "ui/working/detail/scale.h"

namespace wardchalk::ui::detail {

namespace {

using Kind = Landmark::Kind;

/// Least room left over beyond the furthest mark, as a multiple of it.
constexpr double least = 1.1;

/// A label longer than this share of the line gets no room of its own beside its mark.
constexpr double mostLabel = 0.55;

/// Rows of labels that are looked through before one is put over all others.
constexpr int mostRows = 4;

/// A line narrower than this, at 100 %, has no room for its labels: it is drawn smaller instead.
constexpr double narrowestNumberLine = 280;

class LineSetter {
 public:
  LineSetter(const std::vector<Landmark>& landmarks, const QString& unit, const Metrics& metrics,
             double width, Ink allowed)
      : landmarks_(landmarks), unit_(unit), metrics_(metrics), allowed_(allowed) {
    end_ = textBox(unit, FontRole::figure, Ink::quiet, metrics);
    start_ = metrics.px(8);
    length_ = width - start_ - metrics.px(8) - end_.width - metrics.px(4);
    const int fit = std::max(1, static_cast<int>(length_ / metrics.px(64)));
    figures_ = figuresTo(mostToShow(), std::min(6, fit));
    // half of the last figure, where the unit follows it, stands beyond the end of the scale
    const double last = textBox(figureText(figures_.end), FontRole::figure, Ink::quiet, metrics).width / 2;
    length_ -= std::max(0.0, last - metrics.px(8));
    box_.width = width;
  }

  Box box() {
    drawStretches();
    drawAxis();
    for (const Kind kind : {Kind::limit, Kind::low, Kind::maximum, Kind::ordered}) placeMarks(kind);
    return std::move(box_);
  }

 private:
  struct Placed {
    QRectF label;
    int row;
    Kind kind;
  };

  /// So much that the label of a limit has room beside it.
  double mostToShow() const {
    double most = 0;
    for (const Landmark& landmark : landmarks_) {
      const double label =
          textBox(landmark.label, FontRole::mark, Ink::quiet, metrics_).width + metrics_.px(8);
      const bool beside = landmark.kind == Kind::limit || landmark.kind == Kind::maximum;
      const double times = beside && label < length_ * mostLabel ? length_ / (length_ - label) : least;
      most = std::max(most, onScale(landmark.value) * std::max(times, least));
    }
    return most;
  }

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
    if (top && low.value_or(0) < *top) addArea(low.value_or(0), *top, half, Area::Fill::solid, allowed_);
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
      Box figure = textBox(figureText(value), FontRole::figure, Ink::quiet, metrics_);
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

  double rowHeight() const {
    return textBox(QStringLiteral("x"), FontRole::mark, Ink::text, metrics_).height() + metrics_.px(1);
  }
  double rowBottom(int row) const { return -metrics_.px(13) - row * rowHeight(); }

  /// Finds room for the label in the lowest row that is free; the ordered amount stands over all others.
  void place(const Landmark& landmark) {
    const bool ordered = landmark.kind == Kind::ordered;
    const double x = xOf(onScale(landmark.value));
    const Box label = textBox(landmark.label, FontRole::mark, Ink::text, metrics_);
    const double left = x - metrics_.px(4) - label.width;
    const double right = x + metrics_.px(4);
    const double across = std::clamp(x - label.width / 2, 0.0, std::max(0.0, box_.width - label.width));
    const std::vector<double> wishes = ordered                      ? std::vector{across, left, right}
                                       : landmark.kind == Kind::low ? std::vector{left, right, across}
                                                                    : std::vector{right, left, across};
    const auto rectAt = [&](double wish, int row) {
      return QRectF(wish, rowBottom(row) - label.height(), label.width, label.height());
    };
    for (int row = ordered ? rows_ : 0; row < mostRows; ++row)
      for (const double wish : wishes)
        if (isFree(rectAt(wish, row), x, row)) return put(landmark, rectAt(wish, row), row);
    put(landmark, rectAt(across, rows_), rows_);
  }

  /// Whether the label covers no other, stands in no other's leader, and its own leader crosses no label
  /// below it.
  bool isFree(const QRectF& rect, double x, int row) const {
    if (rect.left() < 0 || rect.right() > box_.width) return false;
    const double air = metrics_.px(3);
    for (const Placed& placed : placed_) {
      if (placed.row == row && placed.label.left() - 2 * air < rect.right() &&
          rect.left() < placed.label.right() + 2 * air)
        return false;
      if (placed.row < row && placed.label.left() - air < x && x < placed.label.right() + air) return false;
    }
    for (const Landmark& other : landmarks_) {
      const double column = xOf(onScale(other.value));
      const bool ends = std::any_of(placed_.begin(), placed_.end(), [&](const Placed& placed) {
        return placed.kind == other.kind && placed.row < row;
      });
      // the leader of a close neighbour runs beside the label, not through it
      const bool own = std::abs(column - x) < metrics_.px(4);
      if (!ends && !own && rect.left() - air < column && column < rect.right() + air) return false;
    }
    return true;
  }

  /// Where a label could not but stand in its way, the leader is broken: a figure never looks struck.
  void leader(double x, double top, double foot, double thick, Ink ink) {
    std::vector<Placed> crossed;
    for (const Placed& placed : placed_)
      if (placed.label.left() < x && x < placed.label.right()) crossed.push_back(placed);
    std::sort(crossed.begin(), crossed.end(),
              [](const Placed& a, const Placed& b) { return a.label.top() < b.label.top(); });
    for (const Placed& placed : crossed) {
      if (top < placed.label.top()) rule({x, top}, {x, placed.label.top()}, thick, ink);
      top = std::max(top, placed.label.bottom());
    }
    if (top < foot) rule({x, top}, {x, foot}, thick, ink);
  }

  void put(const Landmark& landmark, const QRectF& rect, int row) {
    const bool ordered = landmark.kind == Kind::ordered;
    const double x = xOf(onScale(landmark.value));
    const bool crosses = rect.left() < x && rect.right() > x;
    const double top = crosses ? rect.bottom() : rect.center().y();
    const double foot = ordered ? -metrics_.px(5) : metrics_.px(5);
    const double thick = metrics_.px(ordered ? 1.2 : landmark.kind == Kind::low ? 1.4 : 2);
    leader(x, top, foot, thick, ordered ? Ink::text : Ink::line);
    if (ordered) addArrow(x);
    placed_.push_back({rect, row, landmark.kind});
    rows_ = std::max(rows_, row + 1);
    Box label = textBox(landmark.label, FontRole::mark, ordered ? Ink::text : Ink::quiet, metrics_);
    box_.drawing.add(std::move(label.drawing), {rect.left(), rect.top() + label.above});
    box_.above = std::max(box_.above, -rect.top());
  }

  void addArrow(double x) {
    const double half = metrics_.px(5);
    const QPolygonF outline(
        {{x - half, -metrics_.px(12)}, {x + half, -metrics_.px(12)}, {x, -metrics_.px(4)}});
    box_.drawing.areas.push_back({outline, 0, Area::Fill::solid, Ink::text, 0, Ink::line, 0});
  }

  const std::vector<Landmark>& landmarks_;
  const QString& unit_;
  const Metrics& metrics_;
  Box end_;
  Box box_;
  Figures figures_;
  double start_ = 0;
  double length_ = 0;
  Ink allowed_;
  std::vector<Placed> placed_;
  int rows_ = 0;  ///< rows of labels that are taken
};

}  // namespace

Box numberLine(const std::vector<Landmark>& landmarks, const QString& unit, const Metrics& metrics,
               double width, Ink allowed) {
  Metrics fitting = metrics;
  fitting.scale = std::min(metrics.scale, width / narrowestNumberLine);
  return LineSetter(landmarks, unit, fitting, width, allowed).box();
}

}  // namespace wardchalk::ui::detail
