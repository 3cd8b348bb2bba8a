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

/// Whether others than the desktop's were chosen. A theme that the desktop names in the environment counts no
/// more then.
[[nodiscard]] bool areColoursOwn();

/// The colours of windows, fields and buttons in one scheme, where not the desktop gives them.
[[nodiscard]] QPalette ownPalette(Scheme scheme);

}  // namespace wardchalk::ui
