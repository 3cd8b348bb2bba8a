#include "ui/access/announcer.h"

#include <QAccessible>
#include <QVariant>
#include <QWidget>

#include "ui/access/answers.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// After Return a reader first says what has the keyboard now; a text that comes sooner is cut off by it.
constexpr int settledMs = 250;
/// Every key press ends what a reader says.
constexpr int typedMs = 600;
/// A reader fetches a text up to 50 ms after it was told of it (measured with Orca 43); what is gone by then
/// is not said. Nothing is kept for longer than it is read.
constexpr int keptMs = 5000;

/// A widget without a place on the screen, which only a reader finds.
QWidget* unseen(QWidget* parent, const char* name, QAccessible::Role role) {
  auto* widget = new QWidget(parent);
  giveRole(widget, role);
  widget->setObjectName(QLatin1String(name));
  widget->setFocusPolicy(Qt::NoFocus);
  widget->setAttribute(Qt::WA_TransparentForMouseEvents);
  widget->setFixedSize(0, 0);
  return widget;
}

}  // namespace

Announcer& Announcer::of(QWidget& widget) {
  QWidget& window = *widget.window();
  auto* known = window.findChild<Announcer*>(QString(), Qt::FindDirectChildrenOnly);
  return known ? *known : *new Announcer(window);
}

Announcer::Announcer(QWidget& window)
    : QObject(&window), bar_(unseen(&window, "announced", QAccessible::StatusBar)) {
  bar_->show();
  wait_.setSingleShot(true);
  connect(&wait_, &QTimer::timeout, this, &Announcer::speak);
}

void Announcer::say(const QString& text, Wait wait) {
  last_ = loosed(text);
  if (text.isEmpty()) return wait_.stop();
  if (wait != Wait::none) return wait_.start(wait == Wait::whileTyping ? typedMs : settledMs);
  wait_.stop();
  speak();
}

void Announcer::forget() {
  wait_.stop();
  last_.clear();
  takeAway();
}

void Announcer::again() {
  if (!last_.isEmpty()) speak();
}

void Announcer::takeAway() {
  for (QWidget* note : bar_->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
    for (QLabel* text : note->findChildren<QLabel*>()) text->clear();
    note->hide();
    note->deleteLater();
  }
}

/// A new object for each text: that it shows is what a reader is told of. The text is a label of its own, so
/// that Braille and a reader's list of messages have it too.
void Announcer::speak() {
  if (!bar_->window()->isActiveWindow()) return;
#if QT_VERSION >= QT_VERSION_CHECK(6, 8, 0)
  QAccessibleAnnouncementEvent event(bar_->window(), last_);
  QAccessible::updateAccessibility(&event);
#else
  takeAway();
  QWidget* note = unseen(bar_, "announcement", QAccessible::Notification);
  new PlainLabel(last_, note);
  note->show();
  QTimer::singleShot(keptMs, note, [note] { note->deleteLater(); });
#endif
}

void announce(QWidget& in, const QString& text) { Announcer::of(in).say(text); }

}  // namespace wardchalk::ui
