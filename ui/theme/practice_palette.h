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

/// What boxes, fields and buttons are outlined in, and how one looks that cannot be used now.
struct ControlColours {
  QColor edge;     ///< 3:1 and more against card and board, so that an empty box is seen
  QColor offEdge;  ///< of what cannot be used
  QColor offText;
};
[[nodiscard]] ControlColours controlColours(Scheme scheme);

/// The desktop's colours with the grounds of practice, for ordinary fields and buttons. Grounds and words of
/// high contrast are left as the desktop has them.
[[nodiscard]] QPalette practiceWidgets(const QPalette& desktop);

}  // namespace wardchalk::ui
