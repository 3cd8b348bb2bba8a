#include "ui/theme/reveal.h"

#include <QScrollArea>

namespace wardchalk::ui {

void reveal(QWidget* widget) {
  constexpr int air = 8;
  for (QWidget* one = widget->parentWidget(); one && !widget->isWindow(); one = one->parentWidget())
    if (auto* area = qobject_cast<QScrollArea*>(one)) area->ensureWidgetVisible(widget, 0, air);
}

}  // namespace wardchalk::ui
