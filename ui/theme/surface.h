#pragma once

#include <QPalette>

namespace wardchalk::ui {

/// The colours of what lies round the board: the form, menus, notices, the caution. A warm surface beside the
/// board's, in light and dark; where the desktop asks for high contrast its own colours are kept.
[[nodiscard]] QPalette surfacePalette(const QPalette& desktop);

}  // namespace wardchalk::ui
