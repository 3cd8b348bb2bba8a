#pragma once

#include <QObject>
#include <QPointer>

#include "core/check/shown.h"
#include "ui/paper/copies.h"

class QPoint;
class QWidget;

namespace wardchalk::ui {

class Actions;
class StepCard;
class WorkingPane;

/// Puts the working, or the step that last had the keyboard or the menu, on the clipboard. Worksheet and
/// actions must outlive it.
class CopyDesk : public QObject {
  Q_OBJECT

 public:
  CopyDesk(WorkingPane& pane, Actions& actions, const Shown& shown, QObject* parent);

 private:
  void copyWorking(CopyAs as);
  void copyStep(CopyAs as);
  void showMenu(const QPoint& at);
  void follow(QWidget* focused);
  void enable();

  WorkingPane& pane_;
  Actions& actions_;
  const Shown& shown_;
  QPointer<StepCard> card_;
  QMetaObject::Connection gone_;
};

}  // namespace wardchalk::ui
