#include "ui/shell/idle_watch.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QEvent>
#include <algorithm>

namespace wardchalk::ui {

namespace {

constexpr qint64 second = 1000;
constexpr qint64 minute = 60 * second;

/// Time to answer a warning: a minute, or half of the whole when that is less.
constexpr qint64 warningTime(qint64 limit) { return std::min(minute, limit / 2); }

bool isTouch(QEvent::Type type) {
  switch (type) {
    case QEvent::KeyPress:
    case QEvent::ShortcutOverride:
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::TouchBegin:
    case QEvent::TabletPress:
    case QEvent::InputMethod:
      return true;
    default:
      return false;
  }
}

}  // namespace

IdleWatch::IdleWatch(QObject* parent)
    : QObject(parent), clock_(&QDateTime::currentMSecsSinceEpoch), limit_(5 * minute) {
  timer_.setSingleShot(true);
  timer_.setTimerType(Qt::CoarseTimer);
  connect(&timer_, &QTimer::timeout, this, &IdleWatch::look);
}

void IdleWatch::setClock(Clock clock) {
  clock_ = std::move(clock);
  last_ = clock_();
}

void IdleWatch::setMinutes(int minutes) {
  limit_ = minutes * minute;
  if (watching_) look();
}

void IdleWatch::setWatching(bool watching) {
  if (watching == watching_) return;
  watching_ = watching;
  if (!watching) {
    timer_.stop();
    QCoreApplication::instance()->removeEventFilter(this);
    if (std::exchange(warned_, false)) Q_EMIT kept();
    return;
  }
  QCoreApplication::instance()->installEventFilter(this);
  last_ = clock_();
  look();
}

void IdleWatch::look() {
  if (!watching_) return;
  const qint64 now = clock_();
  last_ = std::min(last_, now);  // a clock that was set back
  const qint64 left = limit_ - (now - last_);
  const qint64 warning = warningTime(limit_);
  if (left <= 0) {
    warned_ = false;
    setWatching(false);
    Q_EMIT idle();
  } else if (left <= warning) {
    warned_ = true;
    const qint64 seconds = (left + second - 1) / second;
    timer_.start(static_cast<int>(left - (seconds - 1) * second));
    Q_EMIT warned(static_cast<int>(seconds));
  } else {
    timer_.start(static_cast<int>(left - warning));
  }
}

void IdleWatch::touch() {
  last_ = clock_();
  if (!warned_) return;  // the timer looks again by itself
  warned_ = false;
  look();
  Q_EMIT kept();
}

bool IdleWatch::eventFilter(QObject* watched, QEvent* event) {
  if (isTouch(event->type())) touch();
  return QObject::eventFilter(watched, event);
}

}  // namespace wardchalk::ui
