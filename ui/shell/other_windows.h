#pragma once

#include <QList>
#include <QPointer>
#include <QWidget>
#include <cstdint>

namespace wardchalk::ui {

/// Windows that wait out of sight for their return.
using WindowsAway = QList<QPointer<QWidget>>;

/// What becomes of a window that is only put away when a new child is begun: one that shows cases goes.
enum class NewChildThen : std::uint8_t { returns, goes };

/// This window is put away and not closed: somebody works in it, at more than the case in the form.
void keepWhenCovered(QWidget* window, NewChildThen then);

/// Closes dialogs, the board and whatever else shows something of the case, or waits for an answer about it,
/// and hides those that are kept. Practice stays: it knows of no case.
[[nodiscard]] WindowsAway putOtherWindowsAway(QWidget* window);

/// Shows them again as they were.
void bringBack(WindowsAway& away);
/// The same for a new child: those that show cases are closed.
void bringBackForNewChild(WindowsAway& away);

}  // namespace wardchalk::ui
