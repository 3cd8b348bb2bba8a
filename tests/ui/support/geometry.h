#pragma once

#include <QString>

class QWidget;

namespace wardchalk::ui::test {

/// What does not have the room for all of its text; empty when nothing is cut.
[[nodiscard]] QString cut(const QWidget& within);

/// What scrolls sideways, or reaches out of the area that it scrolls in; empty when nothing does.
[[nodiscard]] QString sideways(const QWidget& window);

/// What can be pressed or typed into and is under 24 logical pixels wide or high (source: WCAG 2.2, 2.5.8);
/// empty when nothing is.
[[nodiscard]] QString tooSmall(const QWidget& within);

}  // namespace wardchalk::ui::test
