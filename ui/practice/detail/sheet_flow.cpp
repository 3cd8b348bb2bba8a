#include "ui/practice/detail/sheet_flow.h"

#include <algorithm>

namespace wardchalk::ui::detail {

namespace {

/// Parts that stay together: a part and what it stays with. One that is higher than a page is let go.
std::size_t endOfGroup(const std::vector<SheetPart>& parts, std::size_t first) {
  std::size_t last = first;
  while (parts[last].staysWithNext && last + 1 < parts.size()) ++last;
  return last + 1;
}

double heightOf(const std::vector<SheetPart>& parts, std::size_t first, std::size_t end) {
  double height = 0;
  for (std::size_t i = first; i < end; ++i) height += parts[i].height + (i > first ? parts[i].gapBefore : 0);
  return height;
}

class PageSetter {
 public:
  PageSetter(const SheetPart& head, const QRectF& paper, double room)
      : head_(head), paper_(paper), room_(room) {
    turn();
  }

  void put(std::vector<SheetPart>& parts, std::size_t first, std::size_t end) {
    const double gap = y_ > head_.height ? parts[first].gapBefore : 0;
    if (y_ > head_.height && y_ + gap + heightOf(parts, first, end) > room_) turn();
    for (std::size_t i = first; i < end; ++i) putOne(parts[i]);
  }

  std::vector<SheetPage> pages;

 private:
  void putOne(SheetPart& part) {
    if (y_ > head_.height && y_ + part.gapBefore + part.height > room_) turn();
    if (y_ > head_.height) y_ += part.gapBefore;
    pages.back().drawing.add(std::move(part.drawing), paper_.topLeft() + QPointF(0, y_));
    y_ += part.height;
  }

  void turn() {
    pages.emplace_back();
    pages.back().drawing.add(head_.drawing, paper_.topLeft());
    y_ = head_.height;
  }

  const SheetPart& head_;
  QRectF paper_;
  double room_;
  double y_ = 0;
};

}  // namespace

SheetLayout setOnPages(std::vector<SheetPart> parts, const SheetPart& head,
                       const std::function<SheetPart(int page, int pages)>& foot, const PaperFormat& format) {
  const QRectF paper = format.content();
  const double footHeight = foot(99, 99).height;
  PageSetter setter(head, paper, paper.height() - footHeight - 8);
  for (std::size_t first = 0; first < parts.size();) {
    const std::size_t end = endOfGroup(parts, first);
    setter.put(parts, first, end);
    first = end;
  }
  const int pages = static_cast<int>(setter.pages.size());
  for (int i = 0; i < pages; ++i) {
    SheetPart own = foot(i + 1, pages);
    setter.pages[static_cast<std::size_t>(i)].drawing.add(std::move(own.drawing),
                                                          {paper.left(), paper.bottom() - own.height});
  }
  return {format, std::move(setter.pages)};
}

}  // namespace wardchalk::ui::detail
