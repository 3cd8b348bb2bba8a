#pragma once

#include <vector>

#include "ui/paper/paper_format.h"
#include "ui/paper/sheet_content.h"
#include "ui/working/drawing.h"

namespace wardchalk::ui {

/// The sign of a verdict somewhere on a page.
struct PlacedSign {
  VerdictKind verdict;
  QRectF rect;
  bool onBlack = false;  ///< white ink
};

/// One page, in 1/96 inch from the upper left corner of the paper.
struct SheetPage {
  Drawing drawing;
  std::vector<PlacedSign> signs;
};

/// A sheet set on pages. Letters are as large as one page allows, within limits that the eye sets; what does
/// not fit goes on, a step and a signature never cut, under a repeated heading.
struct SheetLayout {
  PaperFormat format;
  std::vector<SheetPage> pages;
};

[[nodiscard]] SheetLayout layOutSheet(const SheetContent& content, const PaperFormat& format);

}  // namespace wardchalk::ui
