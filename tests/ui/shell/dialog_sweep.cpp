#include "tests/ui/shell/dialog_sweep.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSet>
#include <QTest>

#include "tests/ui/shell/nurse.h"

namespace wardchalk::ui {

namespace {

bool isWithin(const QWidget* widget, const QWidget& dialog) {
  return dialog.isAncestorOf(widget) && widget->window() == &dialog;
}

/// What a person types in, chooses from or presses.
QList<QWidget*> controlsOf(const QDialog& dialog) {
  QList<QWidget*> controls;
  for (QWidget* one : dialog.findChildren<QWidget*>()) {
    const bool control = qobject_cast<QAbstractButton*>(one) || qobject_cast<QLineEdit*>(one) ||
                         qobject_cast<QComboBox*>(one) || qobject_cast<QAbstractItemView*>(one);
    if (control && one->isVisible() && one->isEnabled() && isWithin(one, dialog) &&
        one->focusPolicy() != Qt::NoFocus)
      controls << one;
  }
  return controls;
}

QString nameOf(const QWidget* widget) {
  return QString::fromLatin1(widget->metaObject()->className()) + QLatin1Char(' ') + widget->objectName();
}

bool hasLabel(const QDialog& dialog, const QWidget* control) {
  for (const QLabel* label : dialog.findChildren<QLabel*>())
    if (label->buddy() == control && label->isVisible()) return true;
  return false;
}

QStringList mnemonicsTwice(const QDialog& dialog) {
  QStringList texts;
  for (const QAbstractButton* button : dialog.findChildren<QAbstractButton*>())
    if (button->isVisible() && isWithin(button, dialog)) texts << button->text();
  for (const QLabel* label : dialog.findChildren<QLabel*>())
    if (label->buddy() && label->isVisible() && isWithin(label, dialog)) texts << label->text();
  QStringList faults;
  QSet<QChar> seen;
  for (const QString& text : texts) {
    const qsizetype at = text.indexOf(QLatin1Char('&'));
    if (at < 0) continue;
    const QChar letter = text[at + 1].toLower();
    if (seen.contains(letter)) faults << QStringLiteral("two mnemonics: ") + text;
    seen << letter;
  }
  return faults;
}

}  // namespace

QStringList faultsOf(QDialog& dialog) {
  QStringList faults = mnemonicsTwice(dialog);
  const QList<QWidget*> controls = controlsOf(dialog);
  QSet<QWidget*> missed;
  for (QWidget* control : controls) {
    missed << control;
    const auto* button = qobject_cast<QAbstractButton*>(control);
    if (button && button->text().isEmpty()) faults << QStringLiteral("no text: ") + nameOf(control);
    if (!button && control->accessibleName().isEmpty())
      faults << QStringLiteral("no name: ") + nameOf(control);
    if (!button && !hasLabel(dialog, control)) faults << QStringLiteral("no label: ") + nameOf(control);
    if (control->height() < 32) faults << QStringLiteral("too low: ") + nameOf(control);
  }
  if (!hasKeyboard(&dialog)) faults << QStringLiteral("the keys do not go to it");
  for (qsizetype steps = 0; steps < controls.size() + 20 && !missed.isEmpty(); ++steps) {
    if (QApplication::focusWidget()) missed.remove(QApplication::focusWidget());
    QWidget* at = dialog.focusWidget();  // which may want the Tab for itself
    QTest::keyClick(at ? at : &dialog, Qt::Key_Tab);
  }
  for (const QWidget* one : std::as_const(missed))
    faults << QStringLiteral("Tab does not reach: ") + nameOf(one);
  return faults;
}

}  // namespace wardchalk::ui
