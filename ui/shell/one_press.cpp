#include "ui/shell/one_press.h"

#include <QKeyEvent>
#include <QMouseEvent>

namespace wardchalk::ui {

namespace {

bool isKeyEvent(QEvent::Type type) {
  return type == QEvent::ShortcutOverride || type == QEvent::KeyPress || type == QEvent::KeyRelease;
}

bool isMouseEvent(QEvent::Type type) {
  return type == QEvent::MouseButtonPress || type == QEvent::MouseButtonRelease ||
         type == QEvent::MouseButtonDblClick || type == QEvent::MouseMove;
}

/// What an event says of its modifiers while this key is held; none for a key that is no modifier.
Qt::KeyboardModifier modifierOf(int key) {
  switch (key) {
    case Qt::Key_Shift:
      return Qt::ShiftModifier;
    case Qt::Key_Control:
      return Qt::ControlModifier;
    case Qt::Key_Alt:
      return Qt::AltModifier;
    case Qt::Key_Meta:
      return Qt::MetaModifier;
    default:
      return Qt::NoModifier;
  }
}

}  // namespace

bool OnePress::isInput(QEvent::Type type) {
  switch (type) {
    case QEvent::Wheel:
    case QEvent::InputMethod:
    case QEvent::NativeGesture:
    case QEvent::ContextMenu:
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TabletPress:
    case QEvent::TabletMove:
    case QEvent::TabletRelease:
    case QEvent::DragEnter:
    case QEvent::DragMove:
    case QEvent::Drop:
      return true;
    default:
      return isKeyEvent(type) || isMouseEvent(type);
  }
}

void OnePress::begin(const QEvent& event) {
  kind_ = Kind::none;
  switch (event.type()) {
    case QEvent::ShortcutOverride:
    case QEvent::KeyPress:
      kind_ = Kind::key;
      key_ = static_cast<const QKeyEvent&>(event).key();
      pressSeen_ = event.type() == QEvent::KeyPress;
      break;
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick:
      kind_ = Kind::button;
      button_ = static_cast<const QMouseEvent&>(event).button();
      break;
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
      kind_ = Kind::finger;
      break;
    case QEvent::TabletPress:
      kind_ = Kind::pen;
      break;
    default:
      break;  // over as soon as it began: a movement, a turn of the wheel, a release
  }
}

/// A press that does not repeat itself, after the one that began, is another one: its release was heard
/// elsewhere.
bool OnePress::takesKey(const QKeyEvent& event) {
  const bool release = event.type() == QEvent::KeyRelease;
  if (event.key() != key_) {
    const Qt::KeyboardModifier held = modifierOf(key_);
    return held != Qt::NoModifier && event.modifiers().testFlag(held);
  }
  if (!release && pressSeen_ && !event.isAutoRepeat()) {
    kind_ = Kind::none;
    return false;
  }
  pressSeen_ = pressSeen_ || event.type() == QEvent::KeyPress;
  if (release && !event.isAutoRepeat()) kind_ = Kind::none;
  return true;
}

bool OnePress::takesMouse(const QMouseEvent& event) {
  const bool ofButton = event.button() == button_;
  if (event.type() == QEvent::MouseButtonRelease && ofButton) {
    kind_ = Kind::none;
    return true;
  }
  if (event.type() == QEvent::MouseMove && event.buttons().testFlag(button_)) return true;
  if (event.type() == QEvent::MouseMove || ofButton) kind_ = Kind::none;
  return false;
}

bool OnePress::takesUntil(const QEvent& event, QEvent::Type move, QEvent::Type end, QEvent::Type cancel) {
  if (event.type() == end || event.type() == cancel) {
    kind_ = Kind::none;
    return true;
  }
  return event.type() == move;
}

bool OnePress::takes(const QEvent& event) {
  switch (kind_) {
    case Kind::key:
      if (event.type() == QEvent::InputMethod) return true;  // what a method makes of the same key
      return isKeyEvent(event.type()) && takesKey(static_cast<const QKeyEvent&>(event));
    case Kind::button:
      if (event.type() == QEvent::ContextMenu) return true;
      return isMouseEvent(event.type()) && takesMouse(static_cast<const QMouseEvent&>(event));
    case Kind::finger:
      return takesUntil(event, QEvent::TouchUpdate, QEvent::TouchEnd, QEvent::TouchCancel);
    case Kind::pen:
      return takesUntil(event, QEvent::TabletMove, QEvent::TabletRelease, QEvent::TabletLeaveProximity);
    case Kind::none:
      break;
  }
  return false;
}

}  // namespace wardchalk::ui
