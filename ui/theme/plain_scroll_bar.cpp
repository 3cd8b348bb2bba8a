#include "ui/theme/plain_scroll_bar.h"

#include <QPainter>
#include <QPolygonF>
#include <QStyle>
#include <QStyleOptionSlider>
#include <utility>

#include "ui/theme/board_palette.h"
#include "ui/theme/edges.h"

namespace wardchalk::ui {

namespace {

/// Points away from the middle, towards the end of the bar that it stands at.
void paintArrow(QPainter& painter, const QRect& box, Qt::Orientation orientation, bool atEnd) {
  constexpr double half = 3.5;
  const QPointF middle = QRectF(box).center();
  const double to = atEnd ? half / 2 : -half / 2;
  const auto at = [&](double across, double along) {
    return middle + (orientation == Qt::Vertical ? QPointF(across, along) : QPointF(along, across));
  };
  painter.drawPolygon(QPolygonF({at(-half, -to), at(half, -to), at(0, to)}));
}

}  // namespace

PlainScrollBar::PlainScrollBar(Qt::Orientation orientation, QWidget* parent)
    : QScrollBar(orientation, parent) {
  setAttribute(Qt::WA_Hover);
  setAttribute(Qt::WA_OpaquePaintEvent);
}

void PlainScrollBar::paintEvent(QPaintEvent* event) {
  if (style()->name() != QLatin1String("fusion")) return QScrollBar::paintEvent(event);
  QStyleOptionSlider option;
  initStyleOption(&option);
  const auto partAt = [&](QStyle::SubControl part) {
    return style()->subControlRect(QStyle::CC_ScrollBar, &option, part, this);
  };
  const BoardPalette& inks = boardPalette(schemeFor(palette()));
  QPainter painter(this);
  painter.fillRect(rect(), inks[Ink::board]);
  const int aside = isSliderDown() || underMouse() ? 3 : 5;  // narrow until it is wanted
  const QRect slider = partAt(QStyle::SC_ScrollBarSlider);
  const QRect thumb = orientation() == Qt::Vertical ? slider.adjusted(aside, 1, -aside, -1)
                                                    : slider.adjusted(1, aside, -1, -aside);
  paintRoundBox(painter, thumb, 2, inks[Ink::quiet], inks[Ink::quiet]);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  for (const auto& [part, atEnd] :
       {std::pair(QStyle::SC_ScrollBarSubLine, false), std::pair(QStyle::SC_ScrollBarAddLine, true)}) {
    const bool goesOn = atEnd ? value() < maximum() : value() > minimum();
    painter.setBrush(inks[goesOn ? Ink::quiet : Ink::edge]);
    paintArrow(painter, partAt(part), orientation(), atEnd);
  }
}

}  // namespace wardchalk::ui
