#pragma once

#include <QObject>
#include <QTimer>
#include <chrono>
#include <functional>

#include "ui/shell/one_press.h"
#include "ui/shell/time_away.h"

namespace wardchalk::ui {

class Waking;

/// Notices that nobody has touched keys or pointer for some minutes, and says so some seconds before. While
/// there is nothing to hide it sleeps: no timer runs. The clocks are asked before a touch counts: the first
/// one after the machine slept covers the case, and does nothing else (H51).
class IdleWatch : public QObject {
  Q_OBJECT

 public:
  using Clock = std::function<ClockReading()>;

  explicit IdleWatch(QObject* parent);
  ~IdleWatch() override;

  void setClock(Clock clock);
  void setMinutes(int minutes);
  /// Whether there is anything to hide. Beginning counts as a touch.
  void setWatching(bool watching);

  [[nodiscard]] bool isWatching() const { return watching_; }
  /// Whether a timer is set that would wake the program.
  [[nodiscard]] bool isTimed() const { return timer_.isActive(); }

  /// Looks at the clocks now; the timer calls it, and waking, and so may a test.
  void look();

 Q_SIGNALS:
  void warned(int seconds);  ///< so long until it is idle, again each second
  void kept();               ///< touched after a warning
  void idle();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] std::chrono::milliseconds left() const;
  void touch();
  void hear();

  Clock clock_;
  QTimer timer_;
  Waking* waking_;
  std::chrono::milliseconds limit_;
  ClockReading last_{};
  OnePress coveringPress_;  ///< the rest of the press that covered
  bool watching_ = false;
  bool hears_ = false;
  bool warned_ = false;
};

}  // namespace wardchalk::ui
