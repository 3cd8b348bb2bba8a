#include "ui/working/spoken_widget.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <cmath>

#include "ui/access/answers.h"
#include "ui/theme/retire.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

SpokenWidget::SpokenWidget(QWidget* parent, QAccessible::Role role) : QWidget(parent) {
  giveRole(this, role);
  setFocusPolicy(Qt::StrongFocus);
}

void SpokenWidget::end() {
  setSpoken({});
  retire(this);
}

void SpokenWidget::setScale(double scale) {
  if (scale == scale_) return;
  scale_ = scale;
  forget();
}

void SpokenWidget::setScheme(Scheme scheme) {
  if (scheme == scheme_) return;
  scheme_ = scheme;
  update();
}

int SpokenWidget::heightAt(int width) {
  if (laidOutFor_ != width) {
    height_ = static_cast<int>(std::ceil(layOutAt(width)));
    laidOutFor_ = width;
  }
  return height_;
}

void SpokenWidget::setSpoken(const QString& shown) {
  const QString text = loosed(shown);
  if (text != spoken()) setAccessibleName(text);
}

/// What is laid out for a width is only remembered.
int SpokenWidget::heightForWidth(int width) const {
  return hasHeightForWidth() ? const_cast<SpokenWidget*>(this)->heightAt(width) : -1;
}

void SpokenWidget::followWidth() {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void SpokenWidget::setOrigin(const QString& path) {
  origin_ = path;
  setCursor(path.isEmpty() ? Qt::ArrowCursor : Qt::PointingHandCursor);
}

void SpokenWidget::forget() {
  laidOutFor_ = -1;
  update();
}

void SpokenWidget::paintFocusRing(QPainter& painter, const QColor& colour, double inside) const {
  if (!hasFocus()) return;
  constexpr double thick = 2.5;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colour, thick));
  painter.setBrush(Qt::NoBrush);
  const double in = inside + thick / 2;
  painter.drawRoundedRect(QRectF(rect()).adjusted(in, in, -in, -in), 5, 5);
}

/// Whoever did not ask for the height before sees it laid out when it is painted.
bool SpokenWidget::event(QEvent* event) {
  if (event->type() == QEvent::Paint) heightAt(width());
  return QWidget::event(event);
}

/// On its way to the screen a widget first has some size that nobody meant; nothing is laid out for that one.
void SpokenWidget::resizeEvent(QResizeEvent* event) {
  if (isVisible()) heightAt(width());
  QWidget::resizeEvent(event);
}

void SpokenWidget::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void SpokenWidget::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

void SpokenWidget::mouseReleaseEvent(QMouseEvent* event) {
  if (origin_.isEmpty()) return QWidget::mouseReleaseEvent(event);
  if (event->button() == Qt::LeftButton) Q_EMIT originActivated(origin_);
}

void SpokenWidget::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && !origin_.isEmpty())
    Q_EMIT originActivated(origin_);
  else
    QWidget::keyPressEvent(event);
}

}  // namespace wardchalk::ui
