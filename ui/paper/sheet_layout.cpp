#include "ui/paper/sheet_layout.h"

#include <array>
#include <iterator>
#include <utility>

#include "ui/paper/detail/sheet_blocks.h"
#include "ui/paper/detail/working_blocks.h"

namespace wardchalk::ui {

namespace {

/// Sizes of letters that are tried for one page, smallest first: from words under numbers of 6 points up
/// to 8.
constexpr std::array onePageScales = {0.64, 0.66, 0.69, 0.72, 0.75, 0.78, 0.82, 0.86};
/// The size on sheets that need more than one page.
constexpr double longSheetScale = 0.78;

void append(std::vector<SheetBlock>& to, std::vector<SheetBlock> from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

std::vector<SheetBlock> blocksOf(const SheetContent& content, const Metrics& metrics) {
  std::vector<SheetBlock> blocks;
  blocks.push_back(detail::headBlock(content, metrics));
  blocks.push_back(detail::flagBlock(content, metrics));
  append(blocks, detail::questionBlocks(content, metrics));
  blocks.push_back(detail::amountBlock(content, metrics));
  append(blocks, detail::findingBlocks(content, metrics));
  append(blocks, detail::workingBlocks(content, metrics));
  blocks.back().staysWithNext = true;  // the places to sign are never alone on a page
  blocks.push_back(detail::endBlock(content, metrics));
  return blocks;
}

std::vector<SheetPage> pagesAt(double scale, const SheetContent& content, const PaperFormat& format) {
  const Metrics metrics{format.content().width(), scale, {}, 1};
  PageFrame frame;
  frame.head = detail::runningHead(content, metrics);
  frame.foot = [&](int page, int pages) { return detail::footBlock(content, metrics, page, pages); };
  frame.aboveFoot = metrics.px(6);
  return setOnPages(blocksOf(content, metrics), frame, format);
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
