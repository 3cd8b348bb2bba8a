#include "ui/theme/retire.h"

#include <QWidget>

namespace wardchalk::ui {

void retire(QWidget* widget) {
  if (!widget) return;
  widget->hide();
  widget->setAccessibleName({});
  widget->setAccessibleDescription({});
  widget->setParent(nullptr);
  widget->deleteLater();
}

}  // namespace wardchalk::ui
