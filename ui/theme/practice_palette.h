#pragma once

#include <QPalette>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

/// The colours of the place where students practise: the inks of the board on another ground, so that nobody
/// takes the one for the other. High contrast leaves no room for a tint; there the band alone tells them
/// apart.
[[nodiscard]] const BoardPalette& practicePalette(Scheme scheme);

/// The striped band that runs across the top of that place.
struct BandColours {
  QColor ground;
  QColor stripe;
  QColor ink;
};
[[nodiscard]] BandColours bandColours(Scheme scheme);

/// The desktop's colours with the grounds of practice, for ordinary fields and buttons. High contrast is left
/// as the desktop has it.
[[nodiscard]] QPalette practiceWidgets(const QPalette& desktop);

}  // namespace wardchalk::ui
