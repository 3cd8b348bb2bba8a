#pragma once

class QWidget;

namespace wardchalk::ui {

/// Takes a widget out of its window at once, with its names, and deletes it when no event of its own can be
/// under way. A click on it may be what took it away: leaving a line judges the line, which may end what was
/// clicked on.
void retire(QWidget* widget);

}  // namespace wardchalk::ui
