#include "ui/practice/practice_page.h"

#include <QVBoxLayout>
#include "ui/access/answers.h"

namespace wardchalk::ui {

PracticePage::PracticePage(const char* name, QWidget* parent)
    : QScrollArea(parent), inside_(new QWidget), column_(new QVBoxLayout(inside_)) {
  setObjectName(QLatin1String(name));
  giveRole(this, QAccessible::Grouping);
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setFocusPolicy(Qt::NoFocus);
  column_->setContentsMargins(32, 20, 32, 20);
  column_->setSpacing(14);
  setWidget(inside_);
}

void PracticePage::resizeEvent(QResizeEvent* event) {
  const QMargins margins = column_->contentsMargins();
  arrange(viewport()->width() - margins.left() - margins.right());
  QScrollArea::resizeEvent(event);
}

QVBoxLayout* columnOn(QWidget* card) {
  auto* column = new QVBoxLayout(card);
  column->setContentsMargins(20, 16, 20, 16);
  column->setSpacing(8);
  return column;
}

void empty(QLayout* layout) {
  while (QLayoutItem* item = layout->takeAt(0)) {
    delete item->widget();
    delete item;
  }
}

}  // namespace wardchalk::ui
