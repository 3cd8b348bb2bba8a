#include "ui/theme/edges.h"

#include <QPainter>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

void paintEdge(QPainter& painter, const QRect& box, const QPalette& ground) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(boardPalette(schemeFor(ground))[Ink::quiet]);
  painter.drawRoundedRect(QRectF(box).adjusted(-0.5, -0.5, 0.5, 0.5), 3, 3);
}

void paintBox(QPainter& painter, const QRect& box, const QColor& fill, const QPalette& ground) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(boardPalette(schemeFor(ground))[Ink::quiet]);
  painter.setBrush(fill);
  painter.drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
  painter.restore();
}

void paintFaintRule(QPainter& painter, int y, int width, const QPalette& ground) {
  painter.save();
  painter.setPen(boardPalette(schemeFor(ground))[Ink::line]);
  painter.setOpacity(0.35);
  painter.drawLine(0, y, width, y);
  painter.restore();
}

}  // namespace wardchalk::ui
