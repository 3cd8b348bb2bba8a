#pragma once

#include <vector>

#include "core/words/case_facts.h"
#include "ui/board/board_sizes.h"
#include "ui/working/box.h"

namespace wardchalk::ui {

/// What was entered, paper by paper, above every page of the board: each with its label, none broken over two
/// lines. Where it takes fewer lines a paper goes on in the next one, after one of its commas: what stands
/// here takes room from the working.
[[nodiscard]] Box factStrip(const std::vector<Fact>& facts, const Metrics& letters, const BoardSizes& sizes,
                            double width);

}  // namespace wardchalk::ui
