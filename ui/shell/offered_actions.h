#pragma once

#include <QSet>
#include <cstdint>

#include "ui/shell/action_table.h"

namespace wardchalk::ui {

/// What the window is about just now.
enum class WindowStage : std::uint8_t { usual, secondEnters, comparing, covered };

/// The actions that a stage leaves in the menus and on the keys. While a second person enters, or a case is
/// covered, only those that are listed for it: a new action is not among them before somebody has thought
/// about it.
[[nodiscard]] QSet<ActionId> offeredActions(WindowStage stage);

}  // namespace wardchalk::ui
