#include "tests/ui/shell/nurse.h"

#include <QApplication>
#include <QFile>
#include <QTest>

#include "ui/form/field_edit.h"

namespace wardchalk::ui {

bool hasKeyboard(const QWidget* window) {
  return QTest::qWaitFor([window] { return QApplication::activeWindow() == window; });
}

Nurse::Nurse(const QByteArray& settings) {
  if (QFile file(settingsFile()); !settings.isEmpty() && file.open(QIODevice::WriteOnly))
    file.write(settings);
  settings_ = std::make_unique<Settings>(settingsFile());
  window_ = std::make_unique<MainWindow>(exactRules(), *settings_, dialogs_);
  window_->show();
  if (!QTest::qWaitForWindowActive(window_.get())) qFatal("the window does not become active");
}

void Nurse::type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }

void Nurse::press(Qt::Key key, Qt::KeyboardModifiers with) {
  QTest::keyClick(QApplication::focusWidget(), key, with);
}

void Nurse::fill(const QStringList& fields) {
  for (const QString& text : fields) {
    type(text);
    enter();
  }
}

bool Nurse::walkTo(const QString& path) {
  for (int steps = 0; steps < 80 && !focused().startsWith(path + QLatin1Char(':')); ++steps) enter();
  return focused().startsWith(path + QLatin1Char(':'));
}

QString Nurse::focused() const {
  const QWidget* at = QApplication::focusWidget();
  return at ? at->objectName() : QString();
}

QString Nurse::line(const QString& path) const {
  const auto* field = window_->findChild<FieldEdit*>(path);
  return field ? field->line() : QString();
}

bool Nurse::goBack() {
  // A window manager passes over a wish that comes while it still deals with another window.
  constexpr int wishes = 3;
  for (int i = 0; i < wishes; ++i) {
    window_->activateWindow();
    if (hasKeyboard(window_.get())) return true;
  }
  return false;
}

QByteArray Nurse::settingsLeft() {
  window_.reset();
  settings_.reset();
  QFile file(settingsFile());
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace wardchalk::ui
