#pragma once

#include <QMessageBox>

namespace wardchalk::ui {

/// A message box that shows its text as it is: it is set after the format, or markup in it would be looked at
/// before.
class PlainMessage : public QMessageBox {
 public:
  PlainMessage(Icon icon, const QString& title, const QString& text, QWidget* parent);
};

}  // namespace wardchalk::ui
