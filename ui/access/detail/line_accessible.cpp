#include "ui/access/detail/line_accessible.h"

#include <QLineEdit>
#include <QSpinBox>
#include <QValidator>

namespace wardchalk::ui::detail {

namespace {

/// Every box with a number has one line in it; nobody else may ask it for that line.
QLineEdit& lineIn(const QSpinBox& box) { return *box.findChild<QLineEdit*>(); }

}  // namespace

LineAccessible::LineAccessible(QLineEdit* line)
    : QAccessibleWidget(line, QAccessible::EditableText), LineText(*line) {}

QLineEdit& LineAccessible::line() const { return *static_cast<QLineEdit*>(widget()); }

/// The value is the text; stars for each letter of what is not to be seen.
QString LineAccessible::text(QAccessible::Text kind) const {
  if (kind == QAccessible::Value) return line().displayText();
  const QString said = QAccessibleWidget::text(kind);
  return said.isEmpty() && kind == QAccessible::Description ? line().placeholderText() : said;
}

void LineAccessible::setText(QAccessible::Text kind, const QString& text) {
  if (kind != QAccessible::Value) return QAccessibleWidget::setText(kind, text);
  QString wanted = text;
  int caret = 0;
  const QValidator* validator = line().validator();
  if (!validator || validator->validate(wanted, caret) == QValidator::Acceptable)
    replaceText(0, characterCount(), wanted);
}

QAccessible::State LineAccessible::state() const {
  QAccessible::State state = QAccessibleWidget::state();
  state.readOnly = line().isReadOnly();
  state.editable = !line().isReadOnly();
  state.passwordEdit = line().echoMode() != QLineEdit::Normal;
  state.selectableText = true;
  return state;
}

void* LineAccessible::interface_cast(QAccessible::InterfaceType type) {
  if (type == QAccessible::TextInterface) return static_cast<QAccessibleTextInterface*>(this);
  if (type == QAccessible::EditableTextInterface) return static_cast<QAccessibleEditableTextInterface*>(this);
  return QAccessibleWidget::interface_cast(type);
}

NumberAccessible::NumberAccessible(QSpinBox* box)
    : QAccessibleWidget(box, QAccessible::SpinBox), LineText(lineIn(*box)) {}

QSpinBox& NumberAccessible::box() const { return *static_cast<QSpinBox*>(widget()); }

QString NumberAccessible::text(QAccessible::Text kind) const {
  return kind == QAccessible::Value ? box().text() : QAccessibleWidget::text(kind);
}

QAccessible::State NumberAccessible::state() const {
  QAccessible::State state = QAccessibleWidget::state();
  state.readOnly = box().isReadOnly();
  state.editable = !box().isReadOnly();
  state.selectableText = true;
  return state;
}

void* NumberAccessible::interface_cast(QAccessible::InterfaceType type) {
  if (type == QAccessible::TextInterface) return static_cast<QAccessibleTextInterface*>(this);
  if (type == QAccessible::EditableTextInterface) return static_cast<QAccessibleEditableTextInterface*>(this);
  if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
  return QAccessibleWidget::interface_cast(type);
}

QVariant NumberAccessible::currentValue() const { return box().value(); }
void NumberAccessible::setCurrentValue(const QVariant& value) { box().setValue(value.toInt()); }
QVariant NumberAccessible::maximumValue() const { return box().maximum(); }
QVariant NumberAccessible::minimumValue() const { return box().minimum(); }
QVariant NumberAccessible::minimumStepSize() const { return box().singleStep(); }

}  // namespace wardchalk::ui::detail
