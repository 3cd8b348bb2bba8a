#pragma once

#include <QPointer>
#include <QWidget>

namespace wardchalk::ui {

/// A ring of 2 px round the box of `ground` that has the keyboard, whatever the desktop's style draws itself.
/// What is scrolled out of sight takes its ring with it.
class FocusRing : public QWidget {
  Q_OBJECT

 public:
  explicit FocusRing(QWidget* ground);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void follow(QWidget* focused);
  void place();

  QPointer<QWidget> target_;
};

}  // namespace wardchalk::ui
