#pragma once

#include <QFont>

class QWidget;

namespace wardchalk::ui {

/// Letters of the whole program, in percent of the desktop's. Boxes and labels are never set smaller than the
/// desktop asks for; less than 100 is for what sets its own type.
void setTextSize(int percent);

/// The desktop's own letters, whatever size the program is set to.
[[nodiscard]] QFont desktopFont();

/// How much larger the letters on the screen are than those that a form of the usual width is made for. Also
/// a desktop with very large letters counts.
[[nodiscard]] double textScale();

/// The font in a share of its size.
[[nodiscard]] QFont sharedFont(const QFont& base, double share, bool bold);

/// Gives the widget letters that are a share of the program's and stay so when the text size changes.
void shareLetters(QWidget* widget, double share, bool bold = false);

}  // namespace wardchalk::ui
