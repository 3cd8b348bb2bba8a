#pragma once

#include "core/check/detail/notebook.h"

namespace wardchalk::detail {

struct Size;

/// Sorts what was told and what is wanting, and takes the verdict from it. The checks are on the sheet.
void decide(Worksheet& sheet, Notebook& notes);
/// Puts the steps in the order in which a nurse writes them, the deciding comparison first of its kind.
void arrange(Worksheet& sheet, Notebook& notes, const Size& size);

}  // namespace wardchalk::detail
