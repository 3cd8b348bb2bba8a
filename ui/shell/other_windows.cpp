#include "ui/shell/other_windows.h"

#include <QApplication>
#include <QPointer>
#include <QWidget>

#include "ui/practice/practice_window.h"

namespace wardchalk::ui {

void closeOtherWindows(const QWidget* window) {
  if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
  QList<QPointer<QWidget>> others;  // closing one may delete another
  for (QWidget* one : QApplication::topLevelWidgets())
    if (one != window && one->isVisible() && !belongsToPractice(one)) others << one;
  for (const QPointer<QWidget>& one : std::as_const(others))
    if (one) one->close();
}

}  // namespace wardchalk::ui
