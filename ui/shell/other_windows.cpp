#include "ui/shell/other_windows.h"

#include <QApplication>
#include <QPointer>
#include <QWidget>

#include "ui/practice/practice_window.h"

namespace wardchalk::ui {

void closeOtherWindows(QWidget* window) {
  if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
  QList<QPointer<QWidget>> others;  // closing one may delete another
  for (QWidget* one : QApplication::topLevelWidgets())
    if (one != window && one->isVisible() && !belongsToPractice(one)) others << one;
  const QWidget* active = QApplication::activeWindow();
  const bool goesToAnother = active && active != window;
  for (const QPointer<QWidget>& one : std::as_const(others))
    if (one) one->close();
  if (goesToAnother) window->activateWindow();  // the keyboard was in one of ours, never in another program
}

}  // namespace wardchalk::ui
