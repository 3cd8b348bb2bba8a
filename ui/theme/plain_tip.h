#pragma once

#include <QString>

class QModelIndex;

namespace wardchalk::ui {

/// A text as a tool tip that shows it as it is. Tool tips have no format: one whose first line looks like
/// markup would be drawn as such, with the files that it names. Long lines are broken, or they would leave
/// the screen.
[[nodiscard]] QString plainTip(const QString& text);

/// The lines of such a tip, for who draws plain text.
[[nodiscard]] QString textOfTip(const QString& tip);
/// The same of a row of a list or table.
[[nodiscard]] QString textOfTip(const QModelIndex& row);

}  // namespace wardchalk::ui
