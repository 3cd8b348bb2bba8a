#pragma once

#include <QPushButton>

namespace wardchalk::ui {

/// A button at least `height` high, with room beside its words, that Enter in a field does not press by
/// itself.
inline QPushButton* roomyButton(const char* name, const QString& text, int height, QWidget* parent) {
  constexpr int beside = 12;  // px at each side
  auto* button = new QPushButton(text, parent);
  button->setObjectName(QLatin1String(name));
  button->setMinimumSize(button->sizeHint().width() + 2 * beside, height);
  button->setAutoDefault(false);
  return button;
}

}  // namespace wardchalk::ui
