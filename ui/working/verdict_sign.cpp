#include "ui/working/verdict_sign.h"

#include <QPainter>
#include <algorithm>
#include <tuple>

namespace wardchalk::ui {

namespace {

/// Scales a point of a 48 by 48 drawing into the rectangle.
class Pad {
 public:
  explicit Pad(const QRectF& rect) : rect_(rect) {}
  QPointF at(double x, double y) const {
    return {rect_.left() + rect_.width() * x / 48, rect_.top() + rect_.height() * y / 48};
  }
  QRectF box(double x, double y, double width, double height) const {
    return {at(x, y), at(x + width, y + height)};
  }
  double thick(double width) const { return rect_.width() * width / 48; }

 private:
  QRectF rect_;
};

QPen penOf(const QColor& ink, double width) {
  return {ink, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

void paintTick(QPainter& painter, const Pad& pad, const QColor& ink) {
  painter.setPen(penOf(ink, pad.thick(3)));
  painter.drawRoundedRect(pad.box(3, 3, 42, 42), pad.thick(3), pad.thick(3));
  painter.setPen(penOf(ink, pad.thick(5)));
  painter.drawPolyline(QPolygonF({pad.at(13, 25), pad.at(21, 33), pad.at(36, 15)}));
}

void paintTriangle(QPainter& painter, const Pad& pad, const QColor& ink) {
  painter.setPen(penOf(ink, pad.thick(3.4)));
  painter.drawPolygon(QPolygonF({pad.at(24, 4), pad.at(45, 43), pad.at(3, 43)}));
  painter.setPen(penOf(ink, pad.thick(4.6)));
  painter.drawLine(pad.at(24, 18), pad.at(24, 29));
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink);
  painter.drawEllipse(pad.box(21.2, 34, 5.6, 5.6));
}

void paintBarredCircle(QPainter& painter, const Pad& pad, const QColor& ink) {
  painter.setPen(penOf(ink, pad.thick(5)));
  painter.drawEllipse(pad.box(4.5, 4.5, 39, 39));
  painter.drawLine(pad.at(10.5, 10.5), pad.at(37.5, 37.5));
}

void paintDots(QPainter& painter, const Pad& pad, const QColor& ink) {
  QPen dashed = penOf(ink, pad.thick(2.4));
  dashed.setDashPattern({3, 2.6});
  painter.setPen(dashed);
  painter.drawRoundedRect(pad.box(3, 9, 42, 30), pad.thick(5), pad.thick(5));
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink);
  for (const double x : {12.0, 21.5, 31.0}) painter.drawEllipse(pad.box(x, 21.5, 5, 5));
}

}  // namespace

void paintVerdictSign(QPainter& painter, VerdictKind verdict, const QRectF& rect,
                      const FlagColours& colours) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  const Pad pad(rect);
  switch (verdict) {
    case VerdictKind::safe:
      paintTick(painter, pad, colours.ink);
      break;
    case VerdictKind::ask:
      paintTriangle(painter, pad, colours.ink);
      break;
    case VerdictKind::unsafe:
    case VerdictKind::notCovered:
      paintBarredCircle(painter, pad, colours.ink);
      break;
    case VerdictKind::undecided:
      paintDots(painter, pad, colours.ink);
      break;
  }
  painter.restore();
}

std::optional<VerdictKind> verdictOf(Severity severity) {
  switch (severity) {
    case Severity::undecided:
      return VerdictKind::undecided;
    case Severity::unsafe:
      return VerdictKind::unsafe;
    case Severity::notCovered:
      return VerdictKind::notCovered;
    case Severity::ask:
      return VerdictKind::ask;
    case Severity::note:
      break;
  }
  return std::nullopt;
}

namespace {

/// Whole dashes from end to end, as near to the wished length as they fit.
void paintDashes(QPainter& painter, const QRectF& line, bool isUpright, const QColor& ink) {
  constexpr double dash = 8;
  constexpr double gap = 6;
  const double length = isUpright ? line.height() : line.width();
  const int count = std::max(1, static_cast<int>((length - gap) / (dash + gap)));
  const double each = (length - count * dash) / (count + 1);
  for (int i = 0; i < count; ++i) {
    const double from = each + i * (dash + each);
    const QRectF one = isUpright ? QRectF(line.left(), line.top() + from, line.width(), dash)
                                 : QRectF(line.left() + from, line.top(), dash, line.height());
    painter.fillRect(one.toAlignedRect(), ink);
  }
}

}  // namespace

/// Dash by dash: a rounded rectangle with a dashed pen took more than half of the time of a flag.
void paintDashedOutline(QPainter& painter, const QRectF& rect, const QColor& ink) {
  constexpr double thick = 2;
  constexpr double radius = 6;
  painter.save();
  const QRectF box = rect.adjusted(2, 2, -2, -2);
  const QRectF inner = box.adjusted(radius, radius, -radius, -radius);
  painter.setRenderHint(QPainter::Antialiasing, false);
  for (const double y : {box.top(), box.bottom() - thick})
    paintDashes(painter, {inner.left(), y, inner.width(), thick}, false, ink);
  for (const double x : {box.left(), box.right() - thick})
    paintDashes(painter, {x, inner.top(), thick, inner.height()}, true, ink);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(ink, thick, Qt::SolidLine, Qt::FlatCap));
  const QRectF middle = box.adjusted(thick / 2, thick / 2, -thick / 2, -thick / 2);
  constexpr double across = 2 * radius - thick;
  const double right = middle.right() - across;
  const double bottom = middle.bottom() - across;
  for (const auto& [x, y, from] :
       {std::tuple(right, middle.top(), 0), std::tuple(middle.left(), middle.top(), 90),
        std::tuple(middle.left(), bottom, 180), std::tuple(right, bottom, 270)})
    painter.drawArc(QRectF(x, y, across, across), from * 16, 90 * 16);
  painter.restore();
}

}  // namespace wardchalk::ui
