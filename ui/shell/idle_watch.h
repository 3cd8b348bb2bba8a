#pragma once

#include <QObject>
#include <QTimer>
#include <functional>

namespace wardchalk::ui {

/// Notices that nobody has touched keys or pointer for some minutes, and says so some seconds before. While
/// there is nothing to hide it sleeps: no timer runs.
class IdleWatch : public QObject {
  Q_OBJECT

 public:
  /// Milliseconds of a clock that goes on while the machine sleeps.
  using Clock = std::function<qint64()>;

  explicit IdleWatch(QObject* parent);

  void setClock(Clock clock);
  void setMinutes(int minutes);
  /// Whether there is anything to hide. Beginning counts as a touch.
  void setWatching(bool watching);

  [[nodiscard]] bool isWatching() const { return watching_; }
  /// Whether a timer is set that would wake the program.
  [[nodiscard]] bool isTimed() const { return timer_.isActive(); }

  /// Looks at the clock now; the timer calls it, and so may a test.
  void look();

 Q_SIGNALS:
  void warned(int seconds);  ///< so long until it is idle, again each second
  void kept();               ///< touched after a warning
  void idle();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void touch();

  Clock clock_;
  QTimer timer_;
  qint64 limit_;
  qint64 last_ = 0;
  bool watching_ = false;
  bool warned_ = false;
};

}  // namespace wardchalk::ui
