#include "ui/paper/sheet_pages.h"

#include <QPainter>
#include <QPalette>
#include <utility>

#include "ui/paper/paint_sheet.h"

namespace wardchalk::ui {

namespace {

constexpr double air = 12;

}  // namespace

void SheetPages::show(SheetLayout sheet, const QString& spoken) {
  sheet_ = std::move(sheet);
  setSpoken(spoken);
  fit();
}

void SheetPages::setZoom(double zoom) {
  zoom_ = zoom;
  fit();
}

void SheetPages::fit() {
  forget();
  const double width = sheet_.format.size.width() * zoom_ + 2 * air;
  QWidget::resize(qRound(width), qRound(layOutAt(qRound(width))));
  update();
}

double SheetPages::layOutAt(int) {
  return air + static_cast<double>(sheet_.pages.size()) * (sheet_.format.size.height() * zoom_ + air);
}

void SheetPages::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), QWidget::palette().color(QPalette::Mid));
  painter.save();
  painter.translate(air, air);
  painter.scale(zoom_, zoom_);
  for (const SheetPage& page : sheet_.pages) {
    painter.fillRect(QRectF(QPointF(), sheet_.format.size), Qt::white);
    paintPage(painter, page);
    painter.translate(0, sheet_.format.size.height() + air / zoom_);
  }
  painter.restore();
  paintFocusRing(painter, palette()[Ink::focus]);
}

}  // namespace wardchalk::ui
