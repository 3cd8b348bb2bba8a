#include "ui/theme/plain_message.h"

#include <QKeyEvent>

namespace wardchalk::ui {

namespace {

bool isTyping(const QKeyEvent& event) {
  const bool bare = (event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
  return bare && !event.text().isEmpty() && event.text().at(0).isPrint();
}

}  // namespace

PlainMessage::PlainMessage(Icon icon, const QString& title, const QString& text, QWidget* parent)
    : QMessageBox(parent) {
  setTextFormat(Qt::PlainText);
  setIcon(icon);
  setWindowTitle(title);
  setText(text);
}

void PlainMessage::keyPressEvent(QKeyEvent* event) {
  if (!isTyping(*event)) QMessageBox::keyPressEvent(event);
}

}  // namespace wardchalk::ui
