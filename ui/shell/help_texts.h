#pragma once

#include <QString>

namespace wardchalk::ui {

/// How to use the program, on one screen.
[[nodiscard]] QString shortHelpText();

/// What the program is, its version, and the cautions it is used under (T62).
[[nodiscard]] QString aboutText();

}  // namespace wardchalk::ui
