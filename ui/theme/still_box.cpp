#include "ui/theme/still_box.h"

#include <QKeyEvent>
#include <QListView>
#include <QWheelEvent>

namespace wardchalk::ui {

namespace {

/// A list in which letters look for nothing.
class StillList : public QListView {
 public:
  using QListView::QListView;
  void keyboardSearch(const QString&) override {}
};

bool opens(const QKeyEvent& event) {
  switch (event.key()) {
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_F4:
      return true;
    default:
      return false;
  }
}

}  // namespace

StillBox::StillBox(QWidget* parent) : QComboBox(parent) {
  setFocusPolicy(Qt::StrongFocus);  // not Qt::WheelFocus
  setView(new StillList(this));
}

void StillBox::keyPressEvent(QKeyEvent* event) {
  if (!opens(*event)) return event->ignore();
  showPopup();
  event->accept();
}

void StillBox::wheelEvent(QWheelEvent* event) { event->ignore(); }

}  // namespace wardchalk::ui
