#include "ui/form/button_rows.h"

#include <algorithm>

namespace wardchalk::ui {

namespace {

constexpr int between = 8;

QSize roomFor(const QWidget* button) { return button->sizeHint().expandedTo(button->minimumSize()); }

int widthOf(const std::vector<QWidget*>& row) {
  int width = -between;
  for (const QWidget* button : row) width += between + roomFor(button).width();
  return std::max(width, 0);
}

int heightOf(const std::vector<QWidget*>& row) {
  int height = 0;
  for (const QWidget* button : row) height = std::max(height, roomFor(button).height());
  return height;
}

}  // namespace

ButtonRows::ButtonRows(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void ButtonRows::add(QWidget* button) {
  button->setParent(this);
  buttons_.push_back(button);
}

std::vector<ButtonRows::Row> ButtonRows::rowsIn(int width) const {
  std::vector<Row> rows;
  for (QWidget* button : buttons_) {
    const bool fits = !rows.empty() && widthOf(rows.back()) + between + roomFor(button).width() <= width;
    if (!fits) rows.emplace_back();
    rows.back().push_back(button);
  }
  return rows;
}

int ButtonRows::heightForWidth(int width) const {
  int height = -between;
  for (const Row& row : rowsIn(width)) height += between + heightOf(row);
  return std::max(height, 0);
}

QSize ButtonRows::sizeHint() const { return {widthOf(buttons_), heightOf(buttons_)}; }

QSize ButtonRows::minimumSizeHint() const {
  QSize least(0, 0);
  for (const QWidget* button : buttons_) least = least.expandedTo(roomFor(button));
  return least;
}

void ButtonRows::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  int y = 0;
  for (const Row& row : rowsIn(width())) {
    int x = width() - widthOf(row);
    for (QWidget* button : row) {
      button->setGeometry(QRect(QPoint(x, y), roomFor(button)));
      x += roomFor(button).width() + between;
    }
    y += heightOf(row) + between;
  }
}

}  // namespace wardchalk::ui
