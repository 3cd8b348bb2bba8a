#include "ui/paper/page_setter.h"

#include <span>
#include <utility>

namespace wardchalk::ui {

namespace {

void putOn(SheetPage& page, SheetBlock block, QPointF at) {
  page.drawing.add(std::move(block.drawing), at);
  for (const PlacedSign& sign : block.signs)
    page.signs.push_back({sign.verdict, sign.rect.translated(at), sign.onBlack});
}

class PageSetter {
 public:
  PageSetter(const PageFrame& frame, const QRectF& paper)
      : frame_(frame), paper_(paper), bottom_(paper.height() - frame.foot(99, 99).height - frame.aboveFoot) {
    turnTo(frame.firstHead);
  }

  void put(std::span<SheetBlock> together) {
    double height = 0;
    for (const SheetBlock& block : together) height += block.gapBefore + block.height;
    if (!fits(height)) turnTo(frame_.head);
    for (SheetBlock& block : together) putOne(std::move(block));
  }

  std::vector<SheetPage> pages() {
    const int count = static_cast<int>(pages_.size());
    for (int page = 1; page <= count; ++page) {
      SheetBlock foot = frame_.foot(page, count);
      const double top = paper_.bottom() - foot.height;
      putOn(pages_[static_cast<std::size_t>(page - 1)], std::move(foot), {paper_.left(), top});
    }
    return std::move(pages_);
  }

 private:
  [[nodiscard]] bool isFresh() const { return y_ <= top_; }
  [[nodiscard]] bool fits(double height) const { return isFresh() || y_ + height <= bottom_; }

  void putOne(SheetBlock block) {
    if (!fits(block.gapBefore + block.height)) turnTo(frame_.head);
    if (!isFresh()) y_ += block.gapBefore;
    const double height = block.height;
    putOn(pages_.back(), std::move(block), paper_.topLeft() + QPointF(0, y_));
    y_ += height;
  }

  void turnTo(const SheetBlock& head) {
    pages_.emplace_back();
    putOn(pages_.back(), head, paper_.topLeft());
    y_ = top_ = head.height;
  }

  const PageFrame& frame_;
  QRectF paper_;
  double bottom_;
  std::vector<SheetPage> pages_;
  double top_ = 0;  ///< below the head of the page
  double y_ = 0;
};

}  // namespace

std::vector<SheetPage> setOnPages(std::vector<SheetBlock> blocks, const PageFrame& frame,
                                  const PaperFormat& format) {
  PageSetter setter(frame, format.content());
  for (auto first = blocks.begin(); first != blocks.end();) {
    auto end = first;
    while (end->staysWithNext && end + 1 != blocks.end()) ++end;
    ++end;
    setter.put({first, end});
    first = end;
  }
  return setter.pages();
}

}  // namespace wardchalk::ui
