#include "ui/form/column_grid.h"

#include <QWidget>
#include <algorithm>

namespace wardchalk::ui {

namespace {

constexpr int columnGap = 8;
constexpr int rowGap = 2;

int leftOf(int column, int width) {
  return qRound(column * (width + columnGap) / static_cast<double>(ColumnGrid::columns));
}

int heightOf(const QLayoutItem& item, int width) {
  const int wanted = item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
  return std::max(wanted, item.minimumSize().height());
}

}  // namespace

ColumnGrid::~ColumnGrid() {
  for (const Cell& cell : cells_) delete cell.item;
}

void ColumnGrid::place(QWidget* widget, int row, int column, int span) {
  addChildWidget(widget);
  cells_.push_back({new QWidgetItem(widget), row, column, span});
  invalidate();
}

void ColumnGrid::clear() {
  for (const Cell& cell : std::exchange(cells_, {})) delete cell.item;
  invalidate();
}

/// A whole row for what says nothing of its place.
void ColumnGrid::addItem(QLayoutItem* item) {
  const int row = cells_.empty() ? 0 : cells_.back().row + 1;
  cells_.push_back({item, row, 0, columns});
}

QLayoutItem* ColumnGrid::itemAt(int index) const {
  return index >= 0 && index < count() ? cells_[static_cast<std::size_t>(index)].item : nullptr;
}

QLayoutItem* ColumnGrid::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item) cells_.erase(cells_.begin() + index);
  return item;
}

/// In the order of the cells; what is hidden has no place.
std::vector<QRect> ColumnGrid::placedIn(int width) const {
  std::vector<QRect> placed(cells_.size());
  int y = 0;
  for (std::size_t first = 0; first < cells_.size();) {
    std::size_t end = first;
    int high = 0;
    for (; end < cells_.size() && cells_[end].row == cells_[first].row; ++end) {
      const Cell& cell = cells_[end];
      if (cell.item->isEmpty()) continue;
      const int left = leftOf(cell.column, width);
      const int wide = leftOf(cell.column + cell.span, width) - columnGap - left;
      high = std::max(high, heightOf(*cell.item, wide));
      placed[end] = {left, y, wide, 0};
    }
    for (std::size_t i = first; i < end; ++i) placed[i].setHeight(cells_[i].item->isEmpty() ? 0 : high);
    if (high > 0) y += high + rowGap;
    first = end;
  }
  return placed;
}

int ColumnGrid::heightForWidth(int width) const {
  int high = 0;
  for (const QRect& rect : placedIn(width)) high = std::max(high, rect.bottom() + 1);
  return high;
}

/// Columns alone say how wide a cell is; what takes a whole row may ask for more.
QSize ColumnGrid::minimumSize() const {
  int wide = 0;
  for (const Cell& cell : cells_)
    if (cell.span == columns && !cell.item->isEmpty())
      wide = std::max(wide, cell.item->minimumSize().width());
  return {wide, 0};
}

QSize ColumnGrid::sizeHint() const {
  int wide = minimumSize().width();
  return {wide, heightForWidth(std::max(wide, geometry().width()))};
}

void ColumnGrid::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  const std::vector<QRect> placed = placedIn(rect.width());
  for (std::size_t i = 0; i < cells_.size(); ++i)
    if (!cells_[i].item->isEmpty()) cells_[i].item->setGeometry(placed[i].translated(rect.topLeft()));
}

}  // namespace wardchalk::ui
