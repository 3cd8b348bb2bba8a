#include "ui/access/detail/focus_first.h"

#include <QAccessible>
#include <QEvent>
#include <QLineEdit>

namespace wardchalk::ui::detail {

bool FocusFirst::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn && qobject_cast<QLineEdit*>(watched)) {
    QAccessibleEvent here(watched, QAccessible::Focus);
    QAccessible::updateAccessibility(&here);
  }
  return QObject::eventFilter(watched, event);
}

}  // namespace wardchalk::ui::detail
