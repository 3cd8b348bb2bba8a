#include "ui/form/button_flow.h"

#include <QEvent>
#include <algorithm>

namespace wardchalk::ui {

namespace {

constexpr int buttonGap = 10;

QSize sizeOf(const QWidget* widget) { return widget->sizeHint().expandedTo(widget->minimumSize()); }

}  // namespace

ButtonFlow::ButtonFlow(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void ButtonFlow::add(QWidget* widget) {
  widget->setParent(this);
  widgets_.push_back(widget);
}

/// The room that this one asks for in a row, with the one that it is tied to where a row can hold both.
int ButtonFlow::wantedFrom(std::size_t first, int width) const {
  const int alone = sizeOf(widgets_[first]).width();
  if (first != tied_ || first + 1 >= widgets_.size()) return alone;
  const int both = alone + buttonGap + sizeOf(widgets_[first + 1]).width();
  return both <= width ? both : alone;
}

/// Rows are filled greedily; on each, what belongs to the right is moved there.
std::vector<ButtonFlow::Placed> ButtonFlow::placedIn(int width) const {
  std::vector<Placed> placed;
  std::size_t rowBegin = 0, rightInRow = 0;
  int x = 0, y = 0, rowHeight = 0;
  const auto endRow = [&] {
    const int shift = std::max(0, width - (x - buttonGap));
    for (std::size_t i = rowBegin; i < placed.size(); ++i) {
      QRect& rect = placed[i].rect;
      rect.moveTop(y + (rowHeight - rect.height()) / 2);
      if (i >= rightInRow) rect.translate(shift, 0);
    }
    y += rowHeight + buttonGap;
    x = rowHeight = 0;
    rowBegin = placed.size();
    rightInRow = static_cast<std::size_t>(-1);
  };
  rightInRow = static_cast<std::size_t>(-1);
  for (std::size_t i = 0; i < widgets_.size(); ++i) {
    if (widgets_[i]->isHidden()) continue;
    const QSize size = sizeOf(widgets_[i]);
    if (x > 0 && x + wantedFrom(i, width) > width) endRow();
    if (i >= right_) rightInRow = std::min(rightInRow, placed.size());
    placed.push_back({widgets_[i], QRect(QPoint(x, y), size)});
    x += size.width() + buttonGap;
    rowHeight = std::max(rowHeight, size.height());
  }
  if (placed.size() > rowBegin) endRow();
  return placed;
}

int ButtonFlow::heightForWidth(int width) const {
  int height = 0;
  for (const Placed& one : placedIn(width)) height = std::max(height, one.rect.bottom() + 1);
  return height;
}

QSize ButtonFlow::sizeHint() const {
  int width = 0, height = 0;
  for (const QWidget* widget : widgets_) {
    if (widget->isHidden()) continue;
    width += sizeOf(widget).width() + buttonGap;
    height = std::max(height, sizeOf(widget).height());
  }
  return {std::max(0, width - buttonGap), height};
}

QSize ButtonFlow::minimumSizeHint() const {
  QSize least(0, 0);
  for (const QWidget* widget : widgets_)
    if (!widget->isHidden()) least = least.expandedTo(sizeOf(widget));
  return least;
}

void ButtonFlow::place() {
  for (const Placed& one : placedIn(width())) one.widget->setGeometry(one.rect);
}

bool ButtonFlow::event(QEvent* event) {
  if (event->type() == QEvent::LayoutRequest) {
    updateGeometry();
    place();
  }
  return QWidget::event(event);
}

void ButtonFlow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place();
}

}  // namespace wardchalk::ui
