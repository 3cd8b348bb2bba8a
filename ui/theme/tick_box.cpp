#include "ui/theme/tick_box.h"

#include <QPainter>
#include <QStyleOptionButton>

#include "ui/theme/edges.h"

namespace wardchalk::ui {

void TickBox::paintEvent(QPaintEvent* event) {
  QCheckBox::paintEvent(event);
  QStyleOptionButton option;
  initStyleOption(&option);
  const QRect tick = style()->subElementRect(QStyle::SE_CheckBoxIndicator, &option, this);
  QPainter painter(this);
  paintEdge(painter, tick.adjusted(1, 1, -1, -1), palette());
}

}  // namespace wardchalk::ui
