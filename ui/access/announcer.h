#pragma once

#include <QObject>
#include <QPointer>
#include <QString>
#include <QTimer>

class QWidget;

namespace wardchalk::ui {

/// Has a running screen reader say what changed, wherever the keyboard is; the keyboard does not move. Each
/// window has its own, and only the one in front is heard. Of several texts that follow one another closely
/// the last is said.
class Announcer : public QObject {
  Q_OBJECT

 public:
  /// How long a text waits: until what a reader says of the keyboard's new place is under way; until nobody
  /// types any more; or not at all.
  enum class Wait : std::uint8_t { untilSettled, whileTyping, none };

  /// The one of the window that the widget is in; it is made when it is first wanted.
  static Announcer& of(QWidget& widget);

  void say(const QString& text, Wait wait = Wait::untilSettled);
  /// Nothing that was said, or was about to be, is true any more: it is neither said nor kept.
  void forget();
  /// Says the last text once more; nothing where it was forgotten.
  void again();
  /// What `again` would say.
  [[nodiscard]] const QString& last() const { return last_; }

 private:
  explicit Announcer(QWidget& window);
  void speak();
  void takeAway();

  QWidget* bar_;  ///< below it a reader says a message without calling it one
  QTimer wait_;
  QString last_;
};

/// Says it in the window of the widget.
void announce(QWidget& in, const QString& text);

}  // namespace wardchalk::ui
