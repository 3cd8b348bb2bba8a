#pragma once

#include <QDialog>
#include <QStringList>

namespace wardchalk::ui {

/// What is wrong with a dialog that is shown: a box without a label that leads to it or without a name, one
/// that Tab does not reach, one that is too low to hit, two mnemonics alike. Empty when nothing is.
[[nodiscard]] QStringList faultsOf(QDialog& dialog);

}  // namespace wardchalk::ui
