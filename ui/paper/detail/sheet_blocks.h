#pragma once

#include <vector>

#include "ui/paper/sheet_content.h"
#include "ui/paper/sheet_layout.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui::detail {

/// A part of the sheet that no page break cuts, drawn from its upper left corner.
struct Block {
  double height = 0;
  Drawing drawing;
  std::vector<PlacedSign> signs;
  double gapBefore = 0;        ///< left out at the top of a page
  bool staysWithNext = false;  ///< a heading is never the last on its page
};

/// Title, order and time, room for the ward's own label, and the facts in columns with the papers they come
/// from.
[[nodiscard]] Block headBlock(const SheetContent& content, const Metrics& metrics);
/// The verdict in a frame: white on black where nothing may be prepared.
[[nodiscard]] Block flagBlock(const SheetContent& content, const Metrics& metrics);
/// Each question with a box to tick, a line for the answer or of whom it was asked.
[[nodiscard]] std::vector<Block> questionBlocks(const SheetContent& content, const Metrics& metrics);
/// What to measure, or that nothing may be prepared and why.
[[nodiscard]] Block amountBlock(const SheetContent& content, const Metrics& metrics);
[[nodiscard]] std::vector<Block> findingBlocks(const SheetContent& content, const Metrics& metrics);
/// Checks made and not made and the house rules; beside them two places to sign.
[[nodiscard]] Block endBlock(const SheetContent& content, const Metrics& metrics);

/// Stands on every page but the first: whose sheet this is, and its verdict.
[[nodiscard]] Block runningHead(const SheetContent& content, const Metrics& metrics);
/// Stands at the bottom of every page: the cautions, the program, the page.
[[nodiscard]] Block footBlock(const SheetContent& content, const Metrics& metrics, int page, int pages);

}  // namespace wardchalk::ui::detail
