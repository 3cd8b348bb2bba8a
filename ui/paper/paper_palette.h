#pragma once

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

/// Black ink on white paper, so that any printer or copier keeps everything. "false" stands white on black.
[[nodiscard]] const BoardPalette& paperPalette();

}  // namespace wardchalk::ui
