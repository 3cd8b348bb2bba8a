#include "ui/practice/chain_canvas.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "core/words/spoken.h"
#include "ui/board/turned_view.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/text.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

namespace {

constexpr double chainPad = 12;
/// Letters of a chain as a share of a step's.
constexpr double chainShare = 1.25;
/// From a factor to the edge of its lit box, so that the bar of a fraction stays within; for letters of 100
/// %.
constexpr double litAside = 6;
constexpr double litAbove = 4;
constexpr int leastHeight = 120;

/// The chain as a step of which nothing is known but what is looked for.
StepView viewOf(const ChainWork& work) {
  StepView view;
  view.step.id = StepId{};  // none of the working's: its name is shown nowhere
  view.step.lookingFor = work.wanted;
  view.step.body = Solved{work.chain, cancel(work.chain), Number(), -1};
  return turnedView(view, {});
}

}  // namespace

QString leftOverOf(const ChainWork& work) {
  return work.chain.factors.empty() ? QString() : leftOverSentence(viewOf(work));
}

ChainCanvas::ChainCanvas(QWidget* parent) : SpokenWidget(parent) {
  setObjectName(QStringLiteral("chain"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setMinimumHeight(leastHeight);
  setSpoken(tr("The chain is empty. Choose a fact."));
}

void ChainCanvas::show(const ChainWork& work, int chosen) {
  work_ = work;
  chosen_ = qMin(chosen, static_cast<int>(work.chain.factors.size()) - 1);
  setSpoken(toldOf(work));
  forget();
  setMinimumHeight(qMax(leastHeight, heightAt(qMax(width(), 200))));
}

QString ChainCanvas::toldOf(const ChainWork& work) const {
  if (work.chain.factors.empty()) return tr("The chain is empty. Choose a fact.");
  QStringList told;
  for (std::size_t i = 0; i < work.chain.factors.size(); ++i) {
    const QString factor = fromCore(spokenFactor(work.chain.factors[i]));
    told << (static_cast<int>(i) == chosen_ ? tr("%1 (chosen)").arg(factor) : factor);
  }
  const QString chain = told.join(tr(" times "));
  const QString left = leftOverSpoken(viewOf(work));
  return (work.chain.rooted ? tr("the square root of %1").arg(chain) : chain) + QStringLiteral(". ") + left;
}

double ChainCanvas::layOutAt(int width) {
  if (work_.chain.factors.empty()) {
    layout_ = {};
    return leastHeight;
  }
  Metrics metrics = metricsAt(width);
  metrics.width -= 2 * chainPad;
  metrics.scale *= chainShare;
  layout_ = layOutBody(viewOf(work_), metrics);
  layout_.drawing.moveBy({chainPad, chainPad});
  return layout_.size.height() + 2 * chainPad;
}

QRectF ChainCanvas::factorRect(int factor) const {
  QRectF rect;
  for (const HitArea& hit : layout_.drawing.hits)
    if (hit.factor == factor) rect |= hit.rect;
  return rect;
}

int ChainCanvas::factorAt(const QPointF& at) const {
  for (int i = 0; i < static_cast<int>(work_.chain.factors.size()); ++i)
    if (factorRect(i).adjusted(-6, -6, 6, 6).contains(at)) return i;
  return -1;
}

void ChainCanvas::paintEvent(QPaintEvent*) {
  const BoardPalette& inks = practicePalette(practiceScheme());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(inks[Ink::edge], 1));
  painter.setBrush(inks[Ink::card]);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 8, 8);
  if (work_.chain.factors.empty()) {
    painter.setPen(inks[Ink::quiet]);
    painter.drawText(rect(), Qt::AlignCenter, tr("Choose a fact to begin with."));
  }
  const QRectF chosen = factorRect(chosen_);
  if (!chosen.isEmpty()) {
    painter.setPen(QPen(inks[Ink::accent], 1.5, Qt::DashLine));
    painter.setBrush(inks[Ink::lit]);
    const double aside = metricsAt(width()).px(litAside * chainShare);
    const double above = metricsAt(width()).px(litAbove);
    painter.drawRoundedRect(chosen.adjusted(-aside, -above, aside, above), 5, 5);
  }
  paintDrawing(painter, layout_.drawing, inks, {});
  paintFocusRing(painter, inks[Ink::focus]);
}

void ChainCanvas::walk(int direction) {
  const int count = static_cast<int>(work_.chain.factors.size());
  if (count == 0) return;
  const int to = qBound(0, chosen_ + direction, count - 1);
  if (to == chosen_) return;
  show(work_, to);
  Q_EMIT chosenChanged(to);
}

void ChainCanvas::mousePressEvent(QMouseEvent* event) {
  const int factor = factorAt(event->position());
  setFocus(Qt::MouseFocusReason);
  if (factor < 0) return;
  show(work_, factor);
  Q_EMIT chosenChanged(factor);
}

void ChainCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
  if (factorAt(event->position()) >= 0) Q_EMIT turnWanted();
}

void ChainCanvas::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Left) return walk(-1);
  if (event->key() == Qt::Key_Right) return walk(+1);
  SpokenWidget::keyPressEvent(event);
}

}  // namespace wardchalk::ui
