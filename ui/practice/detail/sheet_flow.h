#pragma once

#include <functional>
#include <vector>

#include "ui/paper/sheet_layout.h"
#include "ui/working/drawing.h"

namespace wardchalk::ui::detail {

/// A part of a practice sheet that no page break cuts, drawn from its upper left corner.
struct SheetPart {
  double height = 0;
  Drawing drawing;
  double gapBefore = 0;        ///< left out at the top of a page
  bool staysWithNext = false;  ///< a question is never the last on its page
};

/// Sets parts on as many pages as they need, each with this head and its own foot.
[[nodiscard]] SheetLayout setOnPages(std::vector<SheetPart> parts, const SheetPart& head,
                                     const std::function<SheetPart(int page, int pages)>& foot,
                                     const PaperFormat& format);

}  // namespace wardchalk::ui::detail
