#pragma once

#include <QSet>

#include "core/session/case_session.h"
#include "ui/shell/action_table.h"

namespace wardchalk::ui {

/// The actions that a state of the case leaves in the menus and on the keys. While a second person enters, or
/// a case is covered, only those that are listed for it: a new action is not among them before somebody has
/// thought about it.
[[nodiscard]] QSet<ActionId> offeredActions(SessionState state);

}  // namespace wardchalk::ui
