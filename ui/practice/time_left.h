#pragma once

#include <QTimer>
#include <functional>

#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

/// How much of the time that a set gives is left. When it is up that is said, once, and nothing is taken
/// away: the teacher says when it ends.
class TimeLeft : public PlainLabel {
  Q_OBJECT

 public:
  explicit TimeLeft(QWidget* parent);

  /// From now on, so many minutes by this clock in milliseconds; hidden, and without a timer, where there is
  /// no limit.
  void begin(std::optional<int> minutes, std::function<qint64()> clock);
  /// Nothing is shown any more, and no timer runs.
  void end();
  /// What the clock says now is shown.
  void tell();

 Q_SIGNALS:
  void isUp();

 private:
  std::function<qint64()> clock_;
  qint64 begun_ = 0;
  int minutes_ = 0;
  bool up_ = false;
  QTimer timer_;
};

/// "12 of 30 minutes left", counted up, and once it is over that time is up.
[[nodiscard]] QString timeLeftWords(qint64 spentMs, int minutes);

}  // namespace wardchalk::ui
