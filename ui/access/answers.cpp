#include "ui/access/answers.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>

#include "ui/access/detail/choice_accessible.h"
#include "ui/access/detail/focus_first.h"
#include "ui/access/detail/line_accessible.h"
#include "ui/access/detail/role_accessible.h"

namespace wardchalk::ui {

namespace {

/// Qt asks once for each class that the object is of, from its own class up; the first answer counts.
QAccessibleInterface* makeAnswer(const QString&, QObject* object) {
  auto* widget = qobject_cast<QWidget*>(object);
  if (!widget) return nullptr;
  if (detail::roleOf(*widget)) return new detail::RoleAccessible(widget);
  if (auto* line = qobject_cast<QLineEdit*>(object)) return new detail::LineAccessible(line);
  if (auto* box = qobject_cast<QSpinBox*>(object)) return new detail::NumberAccessible(box);
  auto* choice = qobject_cast<QComboBox*>(object);
  return choice && !choice->isEditable() ? new detail::ChoiceAccessible(choice) : nullptr;
}

/// A label tells of its text where it is made, and a reader that listens has asked for its interface then: it
/// is made anew.
void forgetAnswer(QWidget& widget) {
  if (QAccessibleInterface* known = QAccessible::queryAccessibleInterface(&widget))
    QAccessible::deleteAccessibleInterface(QAccessible::uniqueId(known));
}

}  // namespace

void answerReaders() {
  static const bool installed = [] {
    QAccessible::installFactory(makeAnswer);
    qApp->installEventFilter(new detail::FocusFirst(qApp));
    return true;
  }();
  Q_UNUSED(installed)
}

void giveRole(QWidget* widget, QAccessible::Role role) {
  answerReaders();
  detail::keepRole(*widget, role);
  forgetAnswer(*widget);
}

void giveRole(QWidget* widget, QAccessible::Role role, const QString& name) {
  giveRole(widget, role);
  widget->setAccessibleName(name);
}

}  // namespace wardchalk::ui
