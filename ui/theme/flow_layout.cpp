#include "ui/theme/flow_layout.h"

#include <algorithm>
#include <utility>

namespace wardchalk::ui {

namespace {

constexpr int flowGap = 10;

}  // namespace

FlowLayout::FlowLayout(QWidget* parent) : QLayout(parent) {
  setContentsMargins(0, 0, 0, 0);
  setSpacing(flowGap);
}

FlowLayout::~FlowLayout() {
  for (const Entry& entry : entries_) delete entry.item;
}

void FlowLayout::addItem(QLayoutItem* item) {
  entries_.push_back({item, right_, std::exchange(tied_, false)});
}

QLayoutItem* FlowLayout::itemAt(int index) const {
  return index >= 0 && index < count() ? entries_[static_cast<std::size_t>(index)].item : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item) entries_.erase(entries_.begin() + index);
  return item;
}

/// The room that this one asks for in a row, with the one that it is tied to where a row can hold both.
int FlowLayout::wantedFrom(std::size_t first, int width) const {
  const int alone = entries_[first].item->sizeHint().width();
  if (!entries_[first].tied || first + 1 >= entries_.size()) return alone;
  const int both = alone + spacing() + entries_[first + 1].item->sizeHint().width();
  return both <= width ? both : alone;
}

/// Rows are filled greedily; on each, what belongs to the right is moved there.
std::vector<FlowLayout::Placed> FlowLayout::placedIn(int width) const {
  std::vector<Placed> placed;
  constexpr auto none = static_cast<std::size_t>(-1);
  std::size_t rowBegin = 0, rightInRow = none;
  int x = 0, y = 0, rowHeight = 0;
  const auto endRow = [&] {
    const int shift = std::max(0, width - (x - spacing()));
    for (std::size_t i = rowBegin; i < placed.size(); ++i) {
      QRect& rect = placed[i].rect;
      rect.moveTop(y + (rowHeight - rect.height()) / 2);
      if (i >= rightInRow) rect.translate(shift, 0);
    }
    y += rowHeight + spacing();
    x = rowHeight = 0;
    rowBegin = placed.size();
    rightInRow = none;
  };
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    const Entry& entry = entries_[i];
    if (entry.item->isEmpty()) continue;  // hidden
    const QSize size = entry.item->sizeHint();
    if (x > 0 && x + wantedFrom(i, width) > width) endRow();
    if (entry.right) rightInRow = std::min(rightInRow, placed.size());
    placed.push_back({entry.item, QRect(QPoint(x, y), size)});
    x += size.width() + spacing();
    rowHeight = std::max(rowHeight, size.height());
  }
  if (placed.size() > rowBegin) endRow();
  return placed;
}

int FlowLayout::heightForWidth(int width) const {
  int height = 0;
  for (const Placed& one : placedIn(width)) height = std::max(height, one.rect.bottom() + 1);
  return height;
}

/// One row of all.
QSize FlowLayout::sizeHint() const {
  int width = -spacing(), height = 0;
  for (const Entry& entry : entries_) {
    if (entry.item->isEmpty()) continue;
    width += entry.item->sizeHint().width() + spacing();
    height = std::max(height, entry.item->sizeHint().height());
  }
  return {std::max(0, width), height};
}

/// As wide as the widest.
QSize FlowLayout::minimumSize() const {
  QSize least(0, 0);
  for (const Entry& entry : entries_)
    if (!entry.item->isEmpty()) least = least.expandedTo(entry.item->sizeHint());
  return least;
}

void FlowLayout::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  for (const Placed& one : placedIn(rect.width())) one.item->setGeometry(one.rect.translated(rect.topLeft()));
}

}  // namespace wardchalk::ui
