#include "ui/theme/focus_ring.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QEvent>
#include <QPainter>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

namespace {

constexpr int reach = 2;  // px outside the box, and the ring's width

/// The window through which a scrolled widget is seen; none where nothing scrolls.
const QWidget* viewportOf(const QWidget* widget) {
  for (const QWidget* one = widget; one; one = one->parentWidget()) {
    const auto* scroll = qobject_cast<const QAbstractScrollArea*>(one->parentWidget());
    if (scroll && scroll->viewport() == one) return one;
  }
  return nullptr;
}

}  // namespace

FocusRing::FocusRing(QWidget* ground) : QWidget(ground) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setFocusPolicy(Qt::NoFocus);
  hide();
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
}

void FocusRing::follow(QWidget* focused) {
  for (QWidget* one = target_; one && one != parentWidget(); one = one->parentWidget())
    one->removeEventFilter(this);
  target_ = focused && parentWidget()->isAncestorOf(focused) ? focused : nullptr;
  // the box moves with the field and the group that hold it
  for (QWidget* one = target_; one && one != parentWidget(); one = one->parentWidget())
    one->installEventFilter(this);
  place();
}

void FocusRing::place() {
  if (!target_ || !target_->isVisible()) return hide();
  const QRect box(target_->mapTo(parentWidget(), QPoint(0, 0)), target_->size());
  setGeometry(box.adjusted(-reach, -reach, reach, reach));
  raise();
  show();
}

bool FocusRing::eventFilter(QObject* watched, QEvent* event) {
  const QEvent::Type type = event->type();
  if (type == QEvent::Move || type == QEvent::Resize || type == QEvent::Show || type == QEvent::Hide) place();
  return QWidget::eventFilter(watched, event);
}

void FocusRing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (const QWidget* viewport = viewportOf(target_)) {
    const QRect seen(mapFromGlobal(viewport->mapToGlobal(QPoint(0, 0))), viewport->size());
    painter.setClipRect(seen.adjusted(-reach, -reach, reach, reach));
  }
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(boardPalette(schemeFor(palette()))[Ink::focus], reach));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

}  // namespace wardchalk::ui
