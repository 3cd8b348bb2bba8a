#include "ui/practice/practice_page.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/practice/practice_look.h"

namespace wardchalk::ui {

PracticePage::PracticePage(const char* name, QWidget* parent)
    : QScrollArea(parent), inside_(new QWidget), column_(new QVBoxLayout(inside_)) {
  setObjectName(QLatin1String(name));
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setFocusPolicy(Qt::NoFocus);
  column_->setContentsMargins(32, 20, 32, 20);
  column_->setSpacing(14);
  setWidget(inside_);
}

PracticeFoot::PracticeFoot(QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(10);
}

QPushButton* PracticeFoot::add(const QString& text, const char* name) {
  QPushButton* button = buttonIn(this, text, name);
  add(button);
  return button;
}

void PracticeFoot::add(QWidget* widget, int stretch) {
  static_cast<QBoxLayout*>(layout())->addWidget(widget, stretch);
}

void PracticeFoot::addStretch() { static_cast<QBoxLayout*>(layout())->addStretch(1); }

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
