#pragma once

#include <vector>

#include "ui/paper/page_setter.h"
#include "ui/paper/sheet_content.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui::detail {

/// Title, order and time, room for the ward's own label, and the facts in columns with the papers they come
/// from.
[[nodiscard]] SheetBlock headBlock(const SheetContent& content, const Metrics& metrics);
/// The verdict in a frame: white on black where nothing may be prepared.
[[nodiscard]] SheetBlock flagBlock(const SheetContent& content, const Metrics& metrics);
/// Each question with a box to tick, a line for the answer or how it was settled.
[[nodiscard]] std::vector<SheetBlock> questionBlocks(const SheetContent& content, const Metrics& metrics);
/// What to measure, or that nothing may be prepared and why.
[[nodiscard]] SheetBlock amountBlock(const SheetContent& content, const Metrics& metrics);
[[nodiscard]] std::vector<SheetBlock> findingBlocks(const SheetContent& content, const Metrics& metrics);
/// Checks made and not made and the house rules; beside them two places to sign.
[[nodiscard]] SheetBlock endBlock(const SheetContent& content, const Metrics& metrics);

/// Stands on every page but the first: whose sheet this is, its verdict and what to measure, so that whoever
/// signs on that page sees there what is signed.
[[nodiscard]] SheetBlock runningHead(const SheetContent& content, const Metrics& metrics);
/// Stands at the bottom of every page: the cautions, the program, the page.
[[nodiscard]] SheetBlock footBlock(const SheetContent& content, const Metrics& metrics, int page, int pages);

}  // namespace wardchalk::ui::detail
