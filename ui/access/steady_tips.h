#pragma once

#include <QBasicTimer>
#include <QObject>
#include <QPointer>
#include <QRect>

class QHelpEvent;
class QLabel;
class QWidget;

namespace wardchalk::ui {

/// Tool tips of the whole program that stay as long as they are looked at: the pointer may move onto one, no
/// time takes it away, and Escape does, and nothing else with it. Qt's own (6.4) go when the pointer leaves
/// what they are about, and Escape closes the dialog below them.
///
/// Source: WCAG 2.2, 1.4.13.
class SteadyTips : public QObject {
  Q_OBJECT

 public:
  /// Every window calls it before it has any; it does its work once.
  static void install();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void timerEvent(QTimerEvent* event) override;

 private:
  using QObject::QObject;

  bool show(QWidget& about, const QHelpEvent& event);
  void place(const QPoint& pointer);
  void hide();
  bool takesEscape(QEvent& event);
  void followPointer(const QObject* watched, const QEvent& event);

  QPointer<QLabel> tip_;
  QPointer<QWidget> about_;
  QRect area_;  ///< the part of it that the tip is about: a row of a list, or all
  QBasicTimer away_;
};

}  // namespace wardchalk::ui
