#include "ui/access/detail/focus_first.h"

#include <QAccessible>
#include <QFocusEvent>
#include <QLineEdit>

namespace wardchalk::ui::detail {

namespace {

/// The line that the keyboard is coming to, until its new place was told.
QObject*& arriving() {
  static QObject* line = nullptr;
  return line;
}

/// A line selects its text when the keyboard comes for one of these reasons.
bool selectsFor(Qt::FocusReason reason) {
  return reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason ||
         reason == Qt::ShortcutFocusReason;
}

bool isOfText(QAccessible::Event event) {
  return event == QAccessible::TextSelectionChanged || event == QAccessible::TextCaretMoved;
}

}  // namespace

FocusFirst::FocusFirst(QObject* parent) : QObject(parent) { QAccessible::installUpdateHandler(pass); }

FocusFirst::~FocusFirst() { QAccessible::installUpdateHandler(nullptr); }

bool FocusFirst::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn && qobject_cast<QLineEdit*>(watched) &&
      selectsFor(static_cast<QFocusEvent*>(event)->reason())) {
    arriving() = watched;
    QMetaObject::invokeMethod(
        this, [] { arriving() = nullptr; }, Qt::QueuedConnection);
  }
  return QObject::eventFilter(watched, event);
}

/// Qt has no other way to hand an event on than to be told of it again.
void FocusFirst::pass(QAccessibleEvent* event) {
  if (event->object() && event->object() == arriving()) {
    if (isOfText(event->type())) return;
    if (event->type() == QAccessible::Focus) arriving() = nullptr;
  }
  QAccessible::installUpdateHandler(nullptr);
  QAccessible::updateAccessibility(event);
  QAccessible::installUpdateHandler(pass);
}

}  // namespace wardchalk::ui::detail
