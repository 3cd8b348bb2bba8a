#include "ui/access/steady_tips.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QScreen>
#include <QTimerEvent>

#include "ui/access/answers.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/plain_tip.h"

namespace wardchalk::ui {

namespace {

/// From what a tip is about to the tip, over what lies between them.
constexpr int wayMs = 500;
constexpr QPoint besidePointer(2, 16);

/// What a tip says, and of which part of the widget.
struct Told {
  QString text;
  QRect area;
};

Told toldAt(QWidget& about, const QPoint& at) {
  const auto* view = qobject_cast<QAbstractItemView*>(about.parentWidget());
  if (!view || view->viewport() != &about) return {textOfTip(about.toolTip()), about.rect()};
  const QModelIndex index = view->indexAt(at);
  return {textOfTip(index), view->visualRect(index)};
}

QLabel* labelFor(QWidget& window, const QString& text) {
  auto* tip = new PlainLabel(&window);
  tip->setWindowFlags(Qt::ToolTip);
  giveRole(tip, QAccessible::ToolTip, text);
  tip->setText(text);
  tip->setObjectName(QStringLiteral("tip"));
  tip->setAttribute(Qt::WA_ShowWithoutActivating);
  tip->setFont(QApplication::font());
  tip->setPalette(QApplication::palette());
  tip->setBackgroundRole(QPalette::ToolTipBase);
  tip->setForegroundRole(QPalette::ToolTipText);
  tip->setAutoFillBackground(true);
  tip->setFrameStyle(QFrame::Box | QFrame::Plain);
  tip->setMargin(3);
  return tip;
}

bool endsTips(QEvent::Type type) {
  return type == QEvent::MouseButtonPress || type == QEvent::Wheel || type == QEvent::WindowDeactivate ||
         type == QEvent::ApplicationFontChange || type == QEvent::ApplicationPaletteChange;
}

}  // namespace

void SteadyTips::install() {
  static const bool installed = [] {
    qApp->installEventFilter(new SteadyTips(qApp));
    return true;
  }();
  Q_UNUSED(installed)
}

bool SteadyTips::eventFilter(QObject* watched, QEvent* event) {
  auto* widget = qobject_cast<QWidget*>(watched);
  if (!widget) return false;
  if (event->type() == QEvent::ToolTip) return show(*widget, *static_cast<QHelpEvent*>(event));
  if (!tip_ || !tip_->isVisible()) return false;
  if (takesEscape(*event)) return true;
  const bool gone = event->type() == QEvent::Hide && (!about_ || !about_->isVisible());
  if (gone || (endsTips(event->type()) && widget != tip_))
    hide();
  else
    followPointer(watched, *event);
  return false;
}

/// Without a tip the event goes on to what the widget lies in.
bool SteadyTips::show(QWidget& about, const QHelpEvent& event) {
  if (&about == tip_) return true;
  const Told told = toldAt(about, event.pos());
  if (told.text.isEmpty()) return false;
  if (tip_ && tip_->isVisible() && about_ == &about && area_ == told.area) return true;
  hide();
  about_ = &about;
  area_ = told.area;
  tip_ = labelFor(*about.window(), told.text);
  connect(&about, &QObject::destroyed, tip_, [this] { hide(); });
  place(event.globalPos());
  tip_->show();
  return true;
}

void SteadyTips::place(const QPoint& pointer) {
  tip_->adjustSize();
  const QRect room = about_->screen()->availableGeometry();
  QRect place(pointer + besidePointer, tip_->size());
  if (place.right() > room.right()) place.moveRight(room.right());
  if (place.bottom() > room.bottom()) place.moveBottom(pointer.y() - 4);
  place.moveLeft(qMax(place.left(), room.left()));
  tip_->move(place.topLeft());
}

/// Nothing of it stays: it may have named a medicine.
void SteadyTips::hide() {
  away_.stop();
  if (!tip_) return;
  tip_->hide();
  tip_->clear();
  tip_->setAccessibleName({});
  tip_->deleteLater();
  tip_ = nullptr;
}

bool SteadyTips::takesEscape(QEvent& event) {
  const bool pressed = event.type() == QEvent::KeyPress;
  if (!pressed && event.type() != QEvent::ShortcutOverride) return false;
  if (static_cast<QKeyEvent&>(event).key() != Qt::Key_Escape) return false;
  event.accept();
  if (pressed) hide();
  return true;
}

void SteadyTips::followPointer(const QObject* watched, const QEvent& event) {
  const bool moves = event.type() == QEvent::MouseMove;
  if (!moves && event.type() != QEvent::Enter && event.type() != QEvent::Leave) return;
  const bool leaves = event.type() == QEvent::Leave;
  const bool within =
      watched == tip_ ||
      (watched == about_ && (!moves || area_.contains(static_cast<const QMouseEvent&>(event).pos())));
  if (within && !leaves) return away_.stop();
  if (!away_.isActive()) away_.start(wayMs, this);
}

void SteadyTips::timerEvent(QTimerEvent* event) {
  if (event->timerId() == away_.timerId()) hide();
}

}  // namespace wardchalk::ui
