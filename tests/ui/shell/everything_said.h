#pragma once

#include <QStringList>

namespace wardchalk::ui::test {

/// Every text that any widget, action, item of a list or accessible object of the program holds, shown or
/// not, and what the clipboard offers.
[[nodiscard]] QStringList everythingSaid();

/// The first of `wanted` that stands in one of the texts, with that text; empty when none does.
[[nodiscard]] QString firstFound(const QStringList& texts, const QStringList& wanted);

}  // namespace wardchalk::ui::test
