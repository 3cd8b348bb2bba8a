#include "ui/practice/mark_badge.h"

#include <QPainter>

#include "ui/practice/practice_look.h"

namespace wardchalk::ui {

namespace {

void paintMarkTick(QPainter& painter, const QRectF& in) {
  painter.drawRoundedRect(in, 3, 3);
  const QPointF low(in.left() + in.width() * 0.42, in.top() + in.height() * 0.74);
  painter.drawPolyline(QPolygonF({{in.left() + in.width() * 0.2, in.top() + in.height() * 0.52},
                                  low,
                                  {in.left() + in.width() * 0.8, in.top() + in.height() * 0.28}}));
}

void paintMarkDots(QPainter& painter, const QRectF& in, const QColor& ink) {
  painter.drawEllipse(in);
  painter.setBrush(ink);
  painter.setPen(Qt::NoPen);
  const double dot = in.width() * 0.085;
  for (const double at : {0.28, 0.5, 0.72})
    painter.drawEllipse(QPointF(in.left() + in.width() * at, in.center().y()), dot, dot);
}

void paintMarkQuestion(QPainter& painter, const QRectF& in) {
  painter.drawPolygon(QPolygonF({{in.center().x(), in.top()},
                                 {in.right(), in.center().y()},
                                 {in.center().x(), in.bottom()},
                                 {in.left(), in.center().y()}}));
  painter.drawText(in, Qt::AlignCenter, QStringLiteral("?"));
}

}  // namespace

MarkBadge::MarkBadge(QWidget* parent) : PlainLabel(parent) {
  setLetters(this, 1.05, true);
  hide();
}

void MarkBadge::show(std::optional<Mark> mark, const QString& word) {
  mark_ = mark;
  setText(word);
  setVisible(mark.has_value());
  updateGeometry();
  update();
}

QSize MarkBadge::sizeHint() const {
  const int side = fontMetrics().height() + 4;
  return {side + 8 + fontMetrics().horizontalAdvance(text()) + 4, side + 4};
}

void MarkBadge::paintEvent(QPaintEvent*) {
  if (!mark_) return;
  const BoardPalette& inks = practicePalette(practiceScheme());
  const QColor ink = *mark_ == Mark::right ? inks[Ink::holds] : inks[Ink::accent];
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const int side = fontMetrics().height() + 2;
  const QRectF sign(1, (height() - side) / 2.0, side, side);
  painter.setPen(QPen(ink, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(*mark_ == Mark::right ? inks[Ink::holdsFill] : inks[Ink::card]);
  if (*mark_ == Mark::right) paintMarkTick(painter, sign);
  if (*mark_ == Mark::wrong) paintMarkDots(painter, sign, ink);
  if (*mark_ == Mark::unsure) paintMarkQuestion(painter, sign);
  painter.setPen(ink);
  painter.drawText(QRectF(sign.right() + 8, 0, width(), height()), Qt::AlignLeft | Qt::AlignVCenter, text());
}

}  // namespace wardchalk::ui
