#include "ui/paper/sheet_layout.h"

#include <array>
#include <iterator>
#include <utility>

#include "ui/paper/detail/sheet_blocks.h"
#include "ui/paper/detail/working_blocks.h"

namespace wardchalk::ui {

namespace {

using detail::Block;

/// Sizes of letters that are tried for one page, smallest first: from words under numbers of 6 points up
/// to 8.
constexpr std::array onePageScales = {0.64, 0.66, 0.69, 0.72, 0.75, 0.78, 0.82, 0.86};
/// The size on sheets that need more than one page.
constexpr double longSheetScale = 0.78;

void append(std::vector<Block>& to, std::vector<Block> from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

std::vector<Block> blocksOf(const SheetContent& content, const Metrics& metrics) {
  std::vector<Block> blocks;
  blocks.push_back(detail::headBlock(content, metrics));
  blocks.push_back(detail::flagBlock(content, metrics));
  append(blocks, detail::questionBlocks(content, metrics));
  blocks.push_back(detail::amountBlock(content, metrics));
  append(blocks, detail::findingBlocks(content, metrics));
  append(blocks, detail::workingBlocks(content, metrics));
  blocks.push_back(detail::endBlock(content, metrics));
  return blocks;
}

void putOn(SheetPage& page, Block block, QPointF at) {
  page.drawing.add(std::move(block.drawing), at);
  for (PlacedSign& sign : block.signs)
    page.signs.push_back({sign.verdict, sign.rect.translated(at), sign.onBlack});
}

/// Where each block goes: the page, and how far down its content.
struct Spot {
  int page;
  double y;
};

/// Sets blocks on pages of this height; what does not fit goes on below the running head.
class Breaker {
 public:
  Breaker(const std::vector<Block>& blocks, double height, double headHeight)
      : blocks_(blocks), height_(height), headHeight_(headHeight) {}

  std::vector<Spot> spots() {
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
      if (!fits(i)) turnPage();
      const double top = y_ + gapOf(i);
      spots_.push_back({page_, top});
      y_ = top + blocks_[i].height;
    }
    return std::move(spots_);
  }

  [[nodiscard]] int pages() const { return page_ + 1; }

 private:
  double gapOf(std::size_t i) const { return isFresh_() ? 0 : blocks_[i].gapBefore; }
  bool isFresh_() const { return y_ <= (page_ > 0 ? headHeight_ : 0); }

  /// A heading needs room for what it stands over.
  bool fits(std::size_t i) const {
    if (isFresh_()) return true;
    double bottom = y_ + blocks_[i].gapBefore + blocks_[i].height;
    for (; blocks_[i].staysWithNext && i + 1 < blocks_.size(); ++i)
      bottom += blocks_[i + 1].gapBefore + blocks_[i + 1].height;
    return bottom <= height_;
  }

  void turnPage() {
    ++page_;
    y_ = headHeight_;
  }

  const std::vector<Block>& blocks_;
  double height_;
  double headHeight_;
  std::vector<Spot> spots_;
  int page_ = 0;
  double y_ = 0;
};

std::vector<SheetPage> pagesAt(double scale, const SheetContent& content, const PaperFormat& format) {
  const QRectF paper = format.content();
  const Metrics metrics{paper.width(), scale, {}, 1};
  std::vector<Block> blocks = blocksOf(content, metrics);
  const Block head = detail::runningHead(content, metrics);
  const double footHeight = detail::footBlock(content, metrics, 99, 99).height;
  Breaker breaker(blocks, paper.height() - footHeight - metrics.px(6), head.height);
  const std::vector<Spot> spots = breaker.spots();
  std::vector<SheetPage> pages(static_cast<std::size_t>(breaker.pages()));
  for (std::size_t i = 1; i < pages.size(); ++i) putOn(pages[i], head, paper.topLeft());
  for (std::size_t i = 0; i < blocks.size(); ++i)
    putOn(pages[static_cast<std::size_t>(spots[i].page)], std::move(blocks[i]),
          paper.topLeft() + QPointF(0, spots[i].y));
  for (int page = 0; page < breaker.pages(); ++page) {
    Block foot = detail::footBlock(content, metrics, page + 1, breaker.pages());
    const double top = paper.bottom() - foot.height;
    putOn(pages[static_cast<std::size_t>(page)], std::move(foot), {paper.left(), top});
  }
  return pages;
}

}  // namespace

SheetLayout layOutSheet(const SheetContent& content, const PaperFormat& format) {
  SheetLayout best{format, {}};
  auto first = onePageScales.begin();
  for (auto last = onePageScales.end(); first != last;) {  // larger letters never take less paper
    const auto middle = first + (last - first) / 2;
    std::vector<SheetPage> pages = pagesAt(*middle, content, format);
    if (pages.size() > 1) {
      last = middle;
    } else {
      best.pages = std::move(pages);
      first = middle + 1;
    }
  }
  if (best.pages.empty()) best.pages = pagesAt(longSheetScale, content, format);
  return best;
}

}  // namespace wardchalk::ui
