#pragma once

#include <QStringList>

namespace wardchalk::ui::test {

/// Every text that any widget, action, item of a list or accessible object of the program holds, shown or
/// not, and what the clipboard offers.
[[nodiscard]] QStringList everythingSaid();

/// The first of `wanted` that stands in one of the texts, with that text; empty when none does.
[[nodiscard]] QString firstFound(const QStringList& texts, const QStringList& wanted);

/// Where a text from outside could be drawn as markup, or an ampersand in it name a key: labels, message
/// boxes, tool tips of widgets, actions and items, buttons. `mark` is a part of that text which begins with
/// "&". Empty when nothing could.
[[nodiscard]] QStringList markupFaults(const QString& mark);

}  // namespace wardchalk::ui::test
