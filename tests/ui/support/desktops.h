#pragma once

#include <QPalette>
#include <array>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

/// The colours of a desktop that the window may meet.
struct Desktop {
  const char* name;
  Scheme scheme;
  QRgb ground;
  QRgb base;
  QRgb button;
  QRgb text;
};
inline constexpr std::array desktops = {
    Desktop{"light", Scheme::light, 0xffefefef, 0xffffffff, 0xffe6e6e6, 0xff000000},
    Desktop{"dark", Scheme::dark, 0xff2d2d2d, 0xff1f1f1f, 0xff3a3a3a, 0xffeeeeee},
    Desktop{"contrast-light", Scheme::contrastLight, 0xffffffff, 0xffffffff, 0xffffffff, 0xff000000},
    Desktop{"contrast-dark", Scheme::contrastDark, 0xff000000, 0xff000000, 0xff000000, 0xffffffff},
};

inline QPalette paletteOf(const Desktop& desktop) {
  QPalette palette(QColor(desktop.button), QColor(desktop.ground));
  palette.setColor(QPalette::Base, QColor(desktop.base));
  for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(role, QColor(desktop.text));
  return palette;
}

}  // namespace wardchalk::ui
