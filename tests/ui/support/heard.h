#pragma once

#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QStringList>
#include <QWidget>

namespace wardchalk::ui::test {

/// Listens as a screen reader does: every text of a notification below a status bar, in the order in which
/// they show.
class Listener : public QObject {
 public:
  Listener() { qApp->installEventFilter(this); }

  [[nodiscard]] const QStringList& heard() const { return heard_; }
  [[nodiscard]] QString last() const { return heard_.isEmpty() ? QString() : heard_.last(); }
  void clear() { heard_.clear(); }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    auto* widget = event->type() == QEvent::Show ? qobject_cast<QWidget*>(watched) : nullptr;
    QAccessibleInterface* one = widget && widget->objectName() == QStringLiteral("announcement")
                                    ? QAccessible::queryAccessibleInterface(widget)
                                    : nullptr;
    if (one && one->role() == QAccessible::Notification && one->parent()->role() == QAccessible::StatusBar &&
        one->childCount() == 1)
      heard_ << one->child(0)->text(QAccessible::Name);
    return QObject::eventFilter(watched, event);
  }

 private:
  QStringList heard_;
};

/// What a reader could still find of what was said, in any window.
inline QStringList stillThere() {
  QStringList texts;
  for (const QWidget* widget : QApplication::allWidgets())
    if (widget->objectName() == QStringLiteral("announcement"))
      for (const QLabel* text : widget->findChildren<QLabel*>())
        if (!text->text().isEmpty()) texts << text->text();
  return texts;
}

}  // namespace wardchalk::ui::test
