#include "ui/working/step_card.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/words/phrasebook.h"
#include "ui/theme/edges.h"
#include "ui/theme/text.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

/// A text as all others: what AT-SPI has for an equation is a text that is written in, whose name and text
/// Orca both reads.
StepCard::StepCard(QWidget* parent) : SpokenWidget(parent) {
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);  // it paints its corners too
}

StepCard::~StepCard() { dropPicture(); }

bool StepCard::show(const StepView& view) {
  if (view == view_) return false;
  view_ = view;
  dropPicture();
  marked_ = hovered_ = -1;
  setSpoken(fromCore(say(PhraseId::spoken_step,
                         {{"n", std::to_string(view.number)}, {"sentence", view.sentence.toStdString()}})));
  setObjectName(QStringLiteral("step_") + fromCore(idOf(view.step.id)));
  forget();
  return true;
}

double StepCard::layOutAt(int width) {
  layout_ = layOut(view_, metricsAt(width));
  isLit_ = comesFrom(lit_);
  dropPicture();
  ++timesLaidOut_;
  return layout_.size.height();
}

bool StepCard::comesFrom(const QString& origin) const {
  return std::any_of(layout_.drawing.hits.begin(), layout_.drawing.hits.end(),
                     [&](const HitArea& hit) { return hit.origin == origin; });
}

void StepCard::light(const QString& origin) {
  if (origin == lit_) return;
  const bool wasLit = std::exchange(isLit_, comesFrom(origin));
  lit_ = origin;
  if (wasLit || isLit_) update();
}

QString StepCard::ownOrigin() const { return QStringLiteral("step:") + fromCore(idOf(view_.step.id)); }

void StepCard::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const bool isWhole = devicePixelRatioF() == std::floor(devicePixelRatioF());
  const bool isPaintedAgain = std::exchange(isPainted_, true);
  if (hasFocus() || isLit_ || !isWhole || !isPaintedAgain) return paintWhole(painter);
  paintFromPicture(painter);
}

void StepCard::paintFromPicture(QPainter& painter) {
  const double ratio = devicePixelRatioF();
  QPixmap picture;
  const bool isThere = QPixmapCache::find(picture_, &picture) && picturedIn_ == scheme() &&
                       picture.size() == size() * ratio && picture.devicePixelRatio() == ratio;
  if (!isThere) {
    QPixmapCache::remove(std::exchange(picture_, {}));
    picture = QPixmap(size() * ratio);
    picture.setDevicePixelRatio(ratio);
    QPainter inPicture(&picture);
    paintWhole(inPicture);
    inPicture.end();
    picture_ = QPixmapCache::insert(picture);
    picturedIn_ = scheme();
  }
  painter.drawPixmap(0, 0, picture);
}

void StepCard::paintWhole(QPainter& painter) const {
  constexpr int radius = 6;
  constexpr int corner = radius + 1;  // half a point of the edge's curve goes beyond
  for (const int x : {0, width() - corner})
    for (const int y : {0, height() - corner}) painter.fillRect(x, y, corner, corner, palette()[Ink::board]);
  paintRoundBox(painter, rect(), radius, palette()[Ink::card], palette()[Ink::edge]);
  PaintWish wish;
  wish.litOrigin = lit_;
  wish.markedHit = hasFocus() ? marked_ : -1;
  paintDrawing(painter, layout_.drawing, palette(), wish);
  paintFocusRing(painter, palette()[Ink::focus]);
}

void StepCard::dropPicture() {
  isPainted_ = false;
  QPixmapCache::remove(std::exchange(picture_, {}));
}

void StepCard::hideEvent(QHideEvent* event) {
  dropPicture();
  SpokenWidget::hideEvent(event);
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
