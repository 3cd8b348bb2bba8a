#pragma once

#include <QPalette>
#include <QString>
#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

/// Which colours the whole program is drawn in: the desktop's, or a scheme that the user chose for it.
enum class Colours : std::uint8_t { desktop, light, dark, contrastLight, contrastDark };

inline constexpr std::array allColours = {Colours::desktop, Colours::light, Colours::dark,
                                          Colours::contrastLight, Colours::contrastDark};

/// A word that is stable, for files.
[[nodiscard]] std::string_view nameOf(Colours colours);
/// Nothing for another word.
[[nodiscard]] std::optional<Colours> coloursNamed(const QString& name);

/// Draws every window of the program in these from now on. With the desktop's, what the desktop changes is
/// followed, as if nothing had ever been chosen.
void useColours(Colours colours);

/// What a desktop asks of every program, beside the colours that it gives to those that can take them.
struct DesktopWish {
  enum class Ground : std::uint8_t { any, light, dark };
  Ground ground = Ground::any;
  bool highContrast = false;

  [[nodiscard]] bool operator==(const DesktopWish&) const = default;
};

/// Draws every window as the desktop wishes from now on, unless the user chose colours. Where the desktop's
/// own colours are as it wishes, they are taken.
void followDesktop(const DesktopWish& wish);

/// The scheme that is wished of a desktop whose own colours, as they were read at the start, are of `given`.
/// They are taken for what was wished first: where that was dark and nothing is wished any more, dark is
/// over.
[[nodiscard]] Scheme schemeWished(Scheme given, const DesktopWish& first, const DesktopWish& now);

/// Whether others than the desktop's were chosen. A theme that the desktop names in the environment counts no
/// more then.
[[nodiscard]] bool areColoursOwn();

/// The colours of windows, fields and buttons in one scheme, where not the desktop gives them.
[[nodiscard]] QPalette ownPalette(Scheme scheme);

}  // namespace wardchalk::ui
