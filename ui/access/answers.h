#pragma once

#include <QAccessible>

class QWidget;

namespace wardchalk::ui {

/// From now on lines, boxes with a number and boxes to choose from answer assistive technology as this room
/// has it, and not as Qt does. Every window calls it before it has any of them; it does its work once.
void answerReaders();

/// What a widget without a meaning of its own is: a group, a page, a window. Its name is its accessible name.
/// It counts from now on, so it is said where the widget is made, before anybody keeps its interface.
void giveRole(QWidget* widget, QAccessible::Role role);

/// The same with the name: "Reference".
void giveRole(QWidget* widget, QAccessible::Role role, const QString& name);

}  // namespace wardchalk::ui
