#pragma once

#include <functional>
#include <vector>

#include "ui/paper/sheet_layout.h"

namespace wardchalk::ui {

/// A part of a sheet that no page break cuts, drawn from its upper left corner.
struct SheetBlock {
  double height = 0;
  Drawing drawing;
  std::vector<PlacedSign> signs;
  double gapBefore = 0;        ///< left out at the top of a page
  bool staysWithNext = false;  ///< a heading or a question is never the last on its page
};

/// What stands round the blocks of every page.
struct PageFrame {
  SheetBlock firstHead;  ///< of the first page; one without height leaves it to the blocks
  SheetBlock head;       ///< of the pages after it
  std::function<SheetBlock(int page, int pages)> foot;
  double aboveFoot = 0;  ///< what stays free over the foot
};

/// Sets blocks on as many pages as they need. Blocks that stay together go to the next page together; those
/// that are higher than a page are let go.
[[nodiscard]] std::vector<SheetPage> setOnPages(std::vector<SheetBlock> blocks, const PageFrame& frame,
                                                const PaperFormat& format);

}  // namespace wardchalk::ui
