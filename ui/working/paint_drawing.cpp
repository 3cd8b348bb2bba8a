#include "ui/working/paint_drawing.h"

#include <QPainter>
#include <QPainterPath>
#include <QtMath>

#include "ui/theme/text.h"
#include "ui/working/type_measure.h"

namespace wardchalk::ui {

namespace {

class DrawingPainter {
 public:
  DrawingPainter(QPainter& painter, const BoardPalette& palette, const PaintWish& wish)
      : painter_(painter), palette_(palette), wish_(wish) {}

  void paint(const Drawing& drawing) {
    painter_.setRenderHint(QPainter::Antialiasing);
    for (const HitArea& hit : drawing.hits) light(hit);
    for (const Area& area : drawing.areas) paint(area);
    for (const Bar& bar : drawing.bars) paint(bar);
    for (const Run& run : drawing.runs) paint(run);
    for (const Stroke& stroke : drawing.strokes) paint(stroke);
    const auto marked = static_cast<std::size_t>(wish_.markedHit);
    if (wish_.markedHit >= 0 && marked < drawing.hits.size()) mark(drawing.hits[marked]);
  }

 private:
  bool shows(int stage) const { return stage <= wish_.upToStage; }

  void light(const HitArea& hit) {
    if (wish_.litOrigin.isEmpty() || hit.origin != wish_.litOrigin || !shows(hit.stage)) return;
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(palette_[Ink::lit]);
    painter_.drawRoundedRect(hit.rect.adjusted(-3, 0, 3, 0), 3, 3);
  }

  void mark(const HitArea& hit) {
    painter_.setPen(QPen(palette_[Ink::focus], 2));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawRoundedRect(hit.rect.adjusted(-3, 0, 3, 0), 3, 3);
  }

  void paint(const Area& area) {
    if (!shows(area.stage)) return;
    painter_.setPen(area.edgeWidth > 0 ? QPen(palette_[area.edge], area.edgeWidth) : QPen(Qt::NoPen));
    switch (area.fill) {
      case Area::Fill::none:
        painter_.setBrush(Qt::NoBrush);
        break;
      case Area::Fill::solid:
        painter_.setBrush(palette_[area.ink]);
        break;
      case Area::Fill::hatched:
        return hatch(area);
    }
    if (area.radius > 0)
      painter_.drawRoundedRect(area.outline.boundingRect(), area.radius, area.radius);
    else
      painter_.drawPolygon(area.outline);
  }

  /// Drawn line by line, so that it is as fine on paper as on screen.
  void hatch(const Area& area) {
    const QRectF rect = area.outline.boundingRect();
    painter_.save();
    painter_.setClipRect(rect, Qt::IntersectClip);
    painter_.setPen(QPen(palette_[area.ink], 1));
    const double every = rect.height() * 0.75;
    for (double x = rect.left() - rect.height(); x < rect.right(); x += every)
      painter_.drawLine(QPointF(x, rect.bottom()), QPointF(x + rect.height(), rect.top()));
    painter_.restore();
  }

  void paint(const Bar& bar) {
    if (!shows(bar.stage)) return;
    const bool joined = bar.kind == Bar::Kind::root;
    painter_.setPen(QPen(palette_[bar.ink], bar.width, Qt::SolidLine, joined ? Qt::RoundCap : Qt::FlatCap));
    painter_.drawLine(bar.from, bar.to);
  }

  void paint(const Run& run) {
    if (!shows(run.stage)) return;
    painter_.setPen(palette_[run.ink]);
    const TypeMeasure letters(run.type, wish_.family);
    QPointF at = run.at;
    for (const QString& piece : piecesByWriting(run.text)) {
      letters.write(painter_, at, piece);
      at.rx() += letters.width(piece);
    }
  }

  /// A little bowed, as a hand draws it; the first `share` of it.
  static QPainterPath curve(QPointF from, QPointF to, double share) {
    constexpr double bow = 0.07;
    const QPointF along = to - from;
    const QPointF across(-along.y(), along.x());
    const QPointF bend = (from + to) / 2 + across * bow;
    const QPointF first = from + (bend - from) * share;
    const QPointF second = bend + (to - bend) * share;
    QPainterPath path(from);
    path.quadTo(first, first + (second - first) * share);
    return path;
  }

  /// Whole dashes from end to end, three at least: a stroke over one letter would else be a dash and a dot.
  /// What they leave out they make up for by their width.
  static void makeDashed(QPen& pen, double length) {
    constexpr double dash = 3.2;
    constexpr double gap = 2.2;
    constexpr double wider = 1.25;
    pen.setWidthF(pen.widthF() * wider);
    pen.setCapStyle(Qt::FlatCap);
    const double room = length / pen.widthF();
    const int count = std::max(3, qRound((room + gap) / (dash + gap)));
    const double share = room / (count * dash + (count - 1) * gap);
    pen.setDashPattern({dash * share, gap * share});
  }

  void paint(const Stroke& stroke) {
    if (!shows(stroke.stage)) return;
    const double share = stroke.stage == wish_.upToStage ? wish_.strokeShare : 1;
    QPen pen(palette_[Ink::accent], stroke.width, Qt::SolidLine, Qt::RoundCap);
    const QPointF along = stroke.to - stroke.from;
    const double length = qSqrt(QPointF::dotProduct(along, along));
    if (stroke.pattern == 1) makeDashed(pen, length);
    if (stroke.pattern == 2) pen.setDashPattern({0.2, 2.4});
    painter_.setBrush(Qt::NoBrush);
    painter_.setPen(pen);
    if (stroke.pattern != 3) return painter_.drawPath(curve(stroke.from, stroke.to, share));
    const QPointF apart = QPointF(-along.y(), along.x()) / length * stroke.width * 1.3;
    pen.setWidthF(stroke.width * 0.8);
    painter_.setPen(pen);
    painter_.drawPath(curve(stroke.from + apart, stroke.to + apart, share));
    painter_.drawPath(curve(stroke.from - apart, stroke.to - apart, share));
  }

  QPainter& painter_;
  const BoardPalette& palette_;
  const PaintWish& wish_;
};

}  // namespace

void paintDrawing(QPainter& painter, const Drawing& drawing, const BoardPalette& palette,
                  const PaintWish& wish) {
  painter.save();
  // Else Qt takes the direction from the first letter of a run, and a name that runs from the right turns the
  // figures.
  painter.setLayoutDirection(Qt::LeftToRight);
  DrawingPainter(painter, palette, wish).paint(drawing);
  painter.restore();
}

}  // namespace wardchalk::ui
