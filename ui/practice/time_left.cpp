#include "ui/practice/time_left.h"

#include <utility>

namespace wardchalk::ui {

namespace {

constexpr qint64 minuteMs = 60 * 1000;
constexpr int lookMs = 5000;

}  // namespace

TimeLeft::TimeLeft(QWidget* parent) : PlainLabel(parent) {
  setObjectName(QStringLiteral("time-left"));
  timer_.setInterval(lookMs);
  connect(&timer_, &QTimer::timeout, this, &TimeLeft::tell);
  hide();
}

void TimeLeft::begin(std::optional<int> minutes, std::function<qint64()> clock) {
  clock_ = std::move(clock);
  minutes_ = minutes.value_or(0);
  up_ = false;
  if (!minutes) return end();
  show();
  begun_ = clock_();
  timer_.start();
  tell();
}

void TimeLeft::end() {
  timer_.stop();
  hide();
}

void TimeLeft::tell() {
  const qint64 spent = clock_() - begun_;
  setText(timeLeftWords(spent, minutes_));
  if (spent < minutes_ * minuteMs || std::exchange(up_, true)) return;
  timer_.stop();
  Q_EMIT isUp();
}

QString timeLeftWords(qint64 spentMs, int minutes) {
  const qint64 left = minutes * minuteMs - spentMs;
  if (left <= 0) return TimeLeft::tr("Time is up");
  return TimeLeft::tr("%1 of %2 minutes left").arg((left + minuteMs - 1) / minuteMs).arg(minutes);
}

}  // namespace wardchalk::ui
