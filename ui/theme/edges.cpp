#include "ui/theme/edges.h"

#include <QPainter>
#include <QPixmapCache>
#include <cmath>
#include <utility>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

namespace {

void paintSlowly(QPainter& painter, const QRectF& box, double radius, const QColor& fill,
                 const QColor& edge) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(edge, 1));
  painter.setBrush(fill);
  painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), radius, radius);
  painter.restore();
}

/// The smallest box that has all four corners, drawn once for each look and screen.
QPixmap fourCorners(int side, int radius, const QColor& fill, const QColor& edge, int ratio) {
  const QString key = QStringLiteral("corners %1 %2 %3 %4 %5")
                          .arg(side)
                          .arg(radius)
                          .arg(fill.name(QColor::HexArgb), edge.name(QColor::HexArgb))
                          .arg(ratio);
  QPixmap picture;
  if (QPixmapCache::find(key, &picture)) return picture;
  picture = QPixmap(QSize(side, side) * ratio);
  picture.setDevicePixelRatio(ratio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  paintSlowly(painter, QRectF(0, 0, side, side), radius, fill, edge);
  painter.end();
  QPixmapCache::insert(key, picture);
  return picture;
}

}  // namespace

void paintEdge(QPainter& painter, const QRect& box, const QPalette& ground) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(boardPalette(schemeFor(ground))[Ink::quiet]);
  painter.drawRoundedRect(QRectF(box).adjusted(-0.5, -0.5, 0.5, 0.5), 3, 3);
}

void paintRoundBox(QPainter& painter, const QRect& box, int radius, const QColor& fill, const QColor& edge) {
  const double ratio = painter.device()->devicePixelRatioF();
  const int corner = radius + 1;
  const bool isWhole =
      ratio == std::floor(ratio) && painter.worldTransform().type() <= QTransform::TxTranslate;
  // on a screen of one and a half points to the point, pieces would not meet
  if (!isWhole || box.width() < 2 * corner || box.height() < 2 * corner)
    return paintSlowly(painter, box, radius, fill, edge);
  const int whole = static_cast<int>(ratio);
  const QPixmap corners = fourCorners(2 * corner, radius, fill, edge, whole);
  const int right = box.left() + box.width() - corner;
  const int bottom = box.top() + box.height() - corner;
  const QSize one = QSize(corner, corner) * whole;
  for (const auto& [x, fromX] : {std::pair(box.left(), 0), std::pair(right, corner * whole)})
    for (const auto& [y, fromY] : {std::pair(box.top(), 0), std::pair(bottom, corner * whole)})
      painter.drawPixmap(QRect(x, y, corner, corner), corners, QRect(QPoint(fromX, fromY), one));
  const int wide = box.width() - 2 * corner;
  const int high = box.height() - 2 * corner;
  const int left = box.left() + corner;
  const int top = box.top() + corner;
  painter.fillRect(left, box.top() + 1, wide, box.height() - 2, fill);
  painter.fillRect(box.left() + 1, top, radius, high, fill);
  painter.fillRect(right, top, radius, high, fill);
  painter.fillRect(left, box.top(), wide, 1, edge);
  painter.fillRect(left, box.bottom(), wide, 1, edge);
  painter.fillRect(box.left(), top, 1, high, edge);
  painter.fillRect(box.right(), top, 1, high, edge);
}

void paintBox(QPainter& painter, const QRect& box, const QColor& fill, const QPalette& ground) {
  paintRoundBox(painter, box, 4, fill, boardPalette(schemeFor(ground))[Ink::quiet]);
}

void paintFaintRule(QPainter& painter, int y, int width, const QPalette& ground) {
  painter.save();
  painter.setPen(boardPalette(schemeFor(ground))[Ink::line]);
  painter.setOpacity(0.35);
  painter.drawLine(0, y, width, y);
  painter.restore();
}

}  // namespace wardchalk::ui
