#pragma once

#include <QMessageBox>

namespace wardchalk::ui {

/// A message box that shows its text as it is: it is set after the format, or markup in it would be looked at
/// before. It may come up while somebody types: a bare letter, which a message box takes for a button,
/// answers nothing here. With Alt it does, as do Enter, Escape and Space.
class PlainMessage : public QMessageBox {
 public:
  PlainMessage(Icon icon, const QString& title, const QString& text, QWidget* parent);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
};

}  // namespace wardchalk::ui
