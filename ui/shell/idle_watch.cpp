#include "ui/shell/idle_watch.h"

#include <QEvent>
#include <QGuiApplication>
#include <algorithm>
#include <utility>

#include "ui/shell/waking.h"

namespace wardchalk::ui {

namespace {

using namespace std::chrono_literals;
using std::chrono::milliseconds;

/// Time to answer a warning: a minute, or half of the whole when that is less.
milliseconds warningTime(milliseconds limit) { return std::min<milliseconds>(1min, limit / 2); }

/// What shows that somebody is there; a release only ends what was counted at its press.
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

/// Accepted, or Qt would try its shortcut, or make a click of a finger's touch. What is dropped is not taken.
bool keepFromAll(QEvent& event) {
  const bool dropped =
      event.type() == QEvent::DragEnter || event.type() == QEvent::DragMove || event.type() == QEvent::Drop;
  event.setAccepted(!dropped);
  return true;
}

}  // namespace

IdleWatch::IdleWatch(QObject* parent)
    : QObject(parent), clock_(&readClocks), waking_(new Waking(this)), limit_(5min) {
  timer_.setSingleShot(true);
  timer_.setTimerType(Qt::CoarseTimer);
  connect(&timer_, &QTimer::timeout, this, &IdleWatch::look);
  connect(waking_, &Waking::woken, this, &IdleWatch::look);
  // Where no one tells of waking: a window that is gone to again.
  connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, &IdleWatch::look);
}

IdleWatch::~IdleWatch() = default;

void IdleWatch::setClock(Clock clock) {
  clock_ = std::move(clock);
  last_ = clock_();
}

void IdleWatch::setMinutes(int minutes) {
  limit_ = std::chrono::minutes(minutes);
  if (watching_) look();
}

/// The filter stays while a press that covered is not over. It is not installed twice: that would put it in
/// front of itself while it is being asked.
void IdleWatch::hear() {
  const bool hears = watching_ || !coveringPress_.isOver();
  if (hears == std::exchange(hears_, hears)) return;
  QCoreApplication* all = QCoreApplication::instance();
  if (hears)
    all->installEventFilter(this);
  else
    all->removeEventFilter(this);
}

void IdleWatch::setWatching(bool watching) {
  if (watching == watching_) return;
  watching_ = watching;
  hear();
  if (!watching) {
    timer_.stop();
    if (std::exchange(warned_, false)) Q_EMIT kept();
    return;
  }
  waking_->listen();
  last_ = clock_();
  look();
}

milliseconds IdleWatch::left() const {
  const milliseconds away = timeAway(last_, clock_());
  return away >= limit_ ? 0ms : limit_ - away;
}

void IdleWatch::look() {
  if (!watching_) return;
  const milliseconds until = left();
  const milliseconds warning = warningTime(limit_);
  if (until == 0ms) {
    warned_ = false;
    setWatching(false);
    Q_EMIT idle();
  } else if (until <= warning) {
    warned_ = true;
    const auto seconds = std::chrono::ceil<std::chrono::seconds>(until);
    timer_.start(until - (seconds - 1s));
    Q_EMIT warned(static_cast<int>(seconds.count()));
  } else {
    timer_.start(until - warning);
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
  if (!OnePress::isInput(event->type()) && event->type() != QEvent::TouchCancel)
    return QObject::eventFilter(watched, event);
  if (!coveringPress_.isOver()) {
    const bool part = coveringPress_.takes(*event);
    hear();
    if (part) return keepFromAll(*event);
  }
  if (!watching_) return false;
  if (left() == 0ms) {
    coveringPress_.begin(*event);
    look();
    hear();
    return keepFromAll(*event);
  }
  if (isTouch(event->type())) touch();
  return false;
}

}  // namespace wardchalk::ui
