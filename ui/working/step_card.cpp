#include "ui/working/step_card.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "core/words/phrasebook.h"
#include "ui/theme/text.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

/// A text as all others: what AT-SPI has for an equation is a text that is written in, whose name and text
/// Orca both reads.
StepCard::StepCard(QWidget* parent) : SpokenWidget(parent) { setMouseTracking(true); }

bool StepCard::show(const StepView& view) {
  if (view == view_) return false;
  view_ = view;
  marked_ = hovered_ = -1;
  setSpoken(fromCore(say(PhraseId::spoken_step,
                         {{"n", std::to_string(view.number)}, {"sentence", view.sentence.toStdString()}})));
  setObjectName(QStringLiteral("step_") + fromCore(idOf(view.step.id)));
  forget();
  return true;
}

double StepCard::layOutAt(int width) {
  layout_ = layOut(view_, metricsAt(width));
  ++timesLaidOut_;
  return layout_.size.height();
}

void StepCard::light(const QString& origin) {
  if (origin == lit_) return;
  const auto isHere = [&](const QString& path) {
    return std::any_of(layout_.drawing.hits.begin(), layout_.drawing.hits.end(),
                       [&](const HitArea& hit) { return hit.origin == path; });
  };
  const bool changes = isHere(origin) || isHere(lit_);
  lit_ = origin;
  if (changes) update();
}

QString StepCard::ownOrigin() const { return QStringLiteral("step:") + fromCore(idOf(view_.step.id)); }

void StepCard::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(palette()[Ink::edge], 1));
  painter.setBrush(palette()[Ink::card]);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
  PaintWish wish;
  wish.litOrigin = lit_;
  wish.markedHit = hasFocus() ? marked_ : -1;
  paintDrawing(painter, layout_.drawing, palette(), wish);
  paintFocusRing(painter, palette()[Ink::focus]);
}

int StepCard::hitAt(const QPointF& at) const {
  const auto& hits = layout_.drawing.hits;
  for (std::size_t i = 0; i < hits.size(); ++i)
    if (hits[i].rect.adjusted(-2, -2, 2, 2).contains(at) && hits[i].origin != ownOrigin())
      return static_cast<int>(i);
  return -1;
}

void StepCard::mouseMoveEvent(QMouseEvent* event) {
  const int hit = hitAt(event->position());
  if (hit == hovered_) return;
  hovered_ = hit;
  setCursor(hit < 0 ? Qt::ArrowCursor : Qt::PointingHandCursor);
  Q_EMIT lit(hit < 0 ? QString() : layout_.drawing.hits[static_cast<std::size_t>(hit)].origin);
}

void StepCard::leaveEvent(QEvent*) {
  if (hovered_ < 0) return;
  hovered_ = -1;
  Q_EMIT lit(QString());
}

void StepCard::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate(hitAt(event->position()));
}

void StepCard::activate(int hit) {
  if (hit < 0 || static_cast<std::size_t>(hit) >= layout_.drawing.hits.size()) return;
  Q_EMIT originActivated(layout_.drawing.hits[static_cast<std::size_t>(hit)].origin);
}

void StepCard::walk(int direction) {
  const auto& hits = layout_.drawing.hits;
  for (int hit = marked_ + direction;; hit += direction) {
    if (hit < 0 && marked_ < 0) return;
    if (hit < 0 || hit >= static_cast<int>(hits.size())) return;
    const HitArea& area = hits[static_cast<std::size_t>(hit)];
    if (area.isNumber && !area.origin.isEmpty() && area.origin != ownOrigin()) return setMarked(hit);
  }
}

void StepCard::setMarked(int hit) {
  if (hit == marked_) return;
  marked_ = hit;
  const bool none = hit < 0;
  const HitArea area = none ? HitArea() : layout_.drawing.hits[static_cast<std::size_t>(hit)];
  const QString where = view_.tags.value(area.origin);
  setAccessibleDescription(none ? QString() : QStringLiteral("%1: %2").arg(area.text, where));
  Q_EMIT lit(area.origin);
  update();
}

bool StepCard::event(QEvent* event) {
  // Left and Right are the card's own; the scroll area must not take them for scrolling.
  if (event->type() == QEvent::ShortcutOverride) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Left || key == Qt::Key_Right) event->accept();
  }
  return SpokenWidget::event(event);
}

void StepCard::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Right:
      return walk(+1);
    case Qt::Key_Left:
      return walk(-1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (marked_ >= 0) return activate(marked_);
      break;
    default:
      break;
  }
  SpokenWidget::keyPressEvent(event);
}

void StepCard::focusOutEvent(QFocusEvent* event) {
  setMarked(-1);
  SpokenWidget::focusOutEvent(event);
}

}  // namespace wardchalk::ui
