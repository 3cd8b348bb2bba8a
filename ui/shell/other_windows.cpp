#include "ui/shell/other_windows.h"

#include <QApplication>
#include <QDialog>
#include <QVariant>
#include <utility>

#include "ui/practice/practice_window.h"

namespace wardchalk::ui {

namespace {

constexpr const char* keptProperty = "keptWhenCovered";
constexpr const char* modalProperty = "modalWhenCovered";

void putAway(QWidget* window) {
  window->setProperty(modalProperty, window->isModal());
  window->hide();
}

void show(QWidget* window) {
  auto* dialog = qobject_cast<QDialog*>(window);
  if (dialog && window->property(modalProperty).toBool()) return dialog->open();
  window->show();
}

}  // namespace

void keepWhenCovered(QWidget* window, NewChildThen then) {
  window->setProperty(keptProperty, static_cast<int>(then));
}

WindowsAway putOtherWindowsAway(QWidget* window) {
  if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
  WindowsAway others;  // closing one may delete another
  for (QWidget* one : QApplication::topLevelWidgets())
    if (one != window && one->isVisible() && !belongsToPractice(one)) others << one;
  const QWidget* active = QApplication::activeWindow();
  const bool goesToAnother = active && active != window;
  WindowsAway away;
  for (const QPointer<QWidget>& one : std::as_const(others)) {
    if (!one) continue;
    if (!one->property(keptProperty).isValid()) {
      one->close();
      continue;
    }
    putAway(one);
    away << one;
  }
  if (goesToAnother) window->activateWindow();  // the keyboard was in one of ours, never in another program
  return away;
}

void bringBack(WindowsAway& away) {
  for (const QPointer<QWidget>& one : std::exchange(away, {}))
    if (one) show(one);
}

void bringBackForNewChild(WindowsAway& away) {
  for (const QPointer<QWidget>& one : std::exchange(away, {})) {
    if (!one) continue;
    const auto then = static_cast<NewChildThen>(one->property(keptProperty).toInt());
    if (then == NewChildThen::goes)
      one->close();
    else
      show(one);
  }
}

}  // namespace wardchalk::ui
