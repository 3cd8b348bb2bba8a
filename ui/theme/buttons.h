#pragma once

#include <QPushButton>

#include "ui/theme/target.h"

namespace wardchalk::ui {

/// A button with a name for tests, at least `height` high, so that it is hit, and not pressed by an Enter
/// elsewhere.
[[nodiscard]] QPushButton* plainButton(const QString& text, const char* name, QWidget* parent,
                                       int height = leastTarget);

/// Enter presses it as the space bar does, while it has the keyboard.
void pressByEnter(QAbstractButton* button);

/// The same with room beside its words.
[[nodiscard]] QPushButton* roomyButton(const QString& text, const char* name, QWidget* parent,
                                       int height = leastTarget);

}  // namespace wardchalk::ui
