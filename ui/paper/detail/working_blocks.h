#pragma once

#include "ui/paper/detail/sheet_blocks.h"

namespace wardchalk::ui::detail {

/// The working: a heading with its legend, then the steps in rows of one to three, whichever takes least
/// paper.
[[nodiscard]] std::vector<SheetBlock> workingBlocks(const SheetContent& content, const Metrics& metrics);

}  // namespace wardchalk::ui::detail
