#include "ui/theme/buttons.h"

namespace wardchalk::ui {

QPushButton* plainButton(const QString& text, const char* name, QWidget* parent, int height) {
  auto* button = new QPushButton(text, parent);
  button->setObjectName(QLatin1String(name));
  button->setMinimumHeight(height);
  button->setAutoDefault(false);
  return button;
}

QPushButton* roomyButton(const QString& text, const char* name, QWidget* parent, int height) {
  constexpr int beside = 12;  // px at each side
  auto* button = plainButton(text, name, parent, height);
  button->setMinimumWidth(button->sizeHint().width() + 2 * beside);
  return button;
}

}  // namespace wardchalk::ui
