#include "ui/theme/surface.h"

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

namespace {

struct Surface {
  QRgb ground;
  QRgb box;
  QRgb button;
  QRgb light;  ///< the three that styles shade edges with
  QRgb mid;
  QRgb dark;
};

constexpr Surface lightSurface = {0xF4F2ECu, 0xFFFFFFu, 0xFBFAF6u, 0xFFFFFFu, 0xC9C5B8u, 0xA6A294u};
constexpr Surface darkSurface = {0x1B2723u, 0x26352Fu, 0x2B3A34u, 0x3D5048u, 0x16201Cu, 0x101815u};

}  // namespace

QPalette surfacePalette(const QPalette& desktop) {
  const Scheme scheme = schemeFor(desktop);
  if (scheme == Scheme::contrastLight || scheme == Scheme::contrastDark) return desktop;
  const Surface& surface = scheme == Scheme::dark ? darkSurface : lightSurface;
  const QColor ink = boardPalette(scheme)[Ink::text];
  QPalette own = desktop;
  const auto set = [&own](QPalette::ColorRole role, const QColor& colour) {
    for (const QPalette::ColorGroup group : {QPalette::Active, QPalette::Inactive})
      own.setColor(group, role, colour);
  };
  set(QPalette::Window, QColor(surface.ground));
  set(QPalette::Base, QColor(surface.box));
  set(QPalette::AlternateBase, QColor(surface.ground));
  set(QPalette::Button, QColor(surface.button));
  set(QPalette::Light, QColor(surface.light));
  set(QPalette::Mid, QColor(surface.mid));
  set(QPalette::Dark, QColor(surface.dark));
  for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    set(role, ink);
  for (const QPalette::ColorRole role : {QPalette::Window, QPalette::Base, QPalette::Button})
    own.setColor(QPalette::Disabled, role, own.color(QPalette::Active, role));
  return own;
}

}  // namespace wardchalk::ui
