#include "ui/theme/plain_message.h"

namespace wardchalk::ui {

PlainMessage::PlainMessage(Icon icon, const QString& title, const QString& text, QWidget* parent)
    : QMessageBox(parent) {
  setTextFormat(Qt::PlainText);
  setIcon(icon);
  setWindowTitle(title);
  setText(text);
}

}  // namespace wardchalk::ui
