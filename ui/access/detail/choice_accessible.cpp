#include "ui/access/detail/choice_accessible.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <algorithm>

namespace wardchalk::ui::detail {

ChoiceAccessible::ChoiceAccessible(QComboBox* box) : QAccessibleWidget(box, QAccessible::ComboBox) {}

QComboBox& ChoiceAccessible::box() const { return *static_cast<QComboBox*>(widget()); }

/// The list that it opens.
QAccessibleInterface* ChoiceAccessible::child(int index) const {
  return index == 0 ? QAccessible::queryAccessibleInterface(box().view()) : nullptr;
}

int ChoiceAccessible::indexOfChild(const QAccessibleInterface* child) const {
  return child && child->object() == box().view() ? 0 : -1;
}

QString ChoiceAccessible::text(QAccessible::Text kind) const {
  return kind == QAccessible::Value ? box().currentText() : QAccessibleWidget::text(kind);
}

QAccessible::State ChoiceAccessible::state() const {
  QAccessible::State state = QAccessibleWidget::state();
  state.expandable = true;
  state.expanded = box().view()->isVisible();
  state.collapsed = !state.expanded;
  return state;
}

void* ChoiceAccessible::interface_cast(QAccessible::InterfaceType type) {
  if (type == QAccessible::TextInterface) return static_cast<QAccessibleTextInterface*>(this);
  return QAccessibleWidget::interface_cast(type);
}

QStringList ChoiceAccessible::actionNames() const { return {showMenuAction(), pressAction()}; }

void ChoiceAccessible::doAction(const QString& name) {
  if (!box().isEnabled() || !actionNames().contains(name)) return;
  if (box().view()->isVisible())
    box().hidePopup();
  else
    box().showPopup();
}

QString ChoiceAccessible::text(int start, int end) const {
  const int count = characterCount();
  const int from = std::clamp(start, 0, count);
  return box().currentText().mid(from, (end < 0 ? count : std::clamp(end, from, count)) - from);
}

int ChoiceAccessible::characterCount() const { return static_cast<int>(box().currentText().size()); }

QString ChoiceAccessible::attributes(int, int* start, int* end) const {
  *start = 0;
  *end = characterCount();
  return {};
}

}  // namespace wardchalk::ui::detail
