#pragma once

class QWidget;

namespace wardchalk::ui {

/// Scrolls every area that the widget lies in, so that it is seen.
void reveal(QWidget* widget);

}  // namespace wardchalk::ui
