#pragma once

class QWidget;

namespace wardchalk::ui {

/// Closes dialogs, the board and any list that was left open: they show something of the case, or wait for an
/// answer about it. Practice stays: it knows of no case.
void closeOtherWindows(QWidget* window);

}  // namespace wardchalk::ui
