#include "ui/working/working_pane.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QPointer>
#include <QScrollArea>
#include <QScrollBar>
#include <algorithm>
#include <utility>

#include "core/check/judgement.h"
#include "core/words/sentences.h"
#include "ui/access/answers.h"
#include "ui/theme/plain_scroll_bar.h"
#include "ui/theme/reveal.h"
#include "ui/theme/text.h"
#include "ui/working/amount_text.h"
#include "ui/working/amount_widget.h"
#include "ui/working/finding_row.h"
#include "ui/working/flag_widget.h"
#include "ui/working/start_page.h"
#include "ui/working/step_card.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui {

namespace {

/// Space round and between the cards, at 100 %.
constexpr double cardGap = 8;

/// When flag and amount would leave less than this share of the height to the working, the amount scrolls
/// with it.
constexpr double leastWorkingShare = 0.45;

/// In one column: what is pinned gets smaller letters beyond the one share of the height, and leaves the
/// other to what scrolls, or else the amount scrolls as well.
constexpr double mostPinnedShare = 0.5;
constexpr double leastScrolledShare = 0.35;
/// A card of this width, at 100 %, has room for a step beside its reason: two of them stand beside each
/// other.
constexpr double leastOfTwo = 640;

constexpr int leastPinned = 100;  // percent
constexpr int zoomStep = 10;

/// What takes the keyboard in it, in the order of Tab.
QList<QWidget*> stopsIn(const QWidget& guest) {
  QList<QWidget*> stops;
  for (QWidget* one = guest.nextInFocusChain(); one != &guest; one = one->nextInFocusChain())
    if (guest.isAncestorOf(one) && one->focusPolicy() != Qt::NoFocus) stops << one;
  return stops;
}

}  // namespace

WorkingPane::WorkingPane(QWidget* parent)
    : QWidget(parent),
      start_(new StartPage(this)),
      flag_(new FlagWidget(this)),
      amount_(new AmountWidget(this)),
      scroll_(new QScrollArea(this)),
      column_(new QWidget) {
  giveRole(column_, QAccessible::Grouping, tr("Working"));
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setVerticalScrollBar(new PlainScrollBar(Qt::Vertical));
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setVerticalScrollBarPolicy(
      Qt::ScrollBarAlwaysOn);  // so that its coming and going never lays out anew
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setWidget(column_);
  connectParts();
  applyScheme();
  showEmpty();
}

void WorkingPane::connectParts() {
  connect(start_, &StartPage::exampleRequested, this, &WorkingPane::exampleRequested);
  connect(flag_, &FlagWidget::originActivated, this, &WorkingPane::activate);
  flag_->installEventFilter(this);
  amount_->text()->installEventFilter(this);
}

void WorkingPane::showEmpty() {
  empty_ = true;
  amount_->show(Worksheet{});  // and nothing of what stood there is left in it
  for (FindingRow* row : std::exchange(findings_, {})) row->end();
  for (StepCard* card : std::exchange(cards_, {})) card->end();
  start_->setVisible(true);
  if (!guest_) showParts(false);
  arrange();
}

void WorkingPane::offerExample(bool offered) { start_->offerExample(offered); }

void WorkingPane::show(const Shown& shown) {
  empty_ = false;
  start_->hide();
  flag_->show(shown.sheet());
  amount_->show(shown);
  showFindings(shown);
  showSteps(stepViews(shown.sheet()));
  orderFocus();
  arrange();
}

void WorkingPane::showFindings(const Shown& shown) {
  std::size_t used = 0;
  for (const Finding* finding : findingsBeside(shown.sheet(), shown.asksFirst())) {
    if (used == findings_.size()) findings_.push_back(makeFinding());
    findings_[used++]->show(*finding);
  }
  while (findings_.size() > used) {
    findings_.back()->end();
    findings_.pop_back();
  }
}

FindingRow* WorkingPane::makeFinding() {
  auto* row = new FindingRow(column_);
  row->setScheme(scheme_);
  row->setScale(zoom_ / 100.0);
  connect(row, &FindingRow::originActivated, this, &WorkingPane::activate);
  row->installEventFilter(this);
  row->setVisible(true);
  return row;
}

/// A card stays with its step as long as the step is there.
void WorkingPane::showSteps(const std::vector<StepView>& views) {
  std::vector<StepCard*> before = std::exchange(cards_, {});
  for (const StepView& view : views) {
    const auto known = std::find_if(before.begin(), before.end(), [&](StepCard* card) {
      return card && card->view().step.id == view.step.id;
    });
    StepCard* card = known == before.end() ? makeCard() : std::exchange(*known, nullptr);
    card->show(view);
    card->setVisible(true);  // only now: a card without a step has nothing to lay out
    cards_.push_back(card);
  }
  for (StepCard* card : before)
    if (card) card->end();
}

/// Tab goes down the pane as the eye does, whatever was made first; and so does who walks through the tree.
void WorkingPane::orderFocus() {
  orderTree();
  QWidget* last = flag_;
  const auto next = [&](QWidget* widget) { setTabOrder(std::exchange(last, widget), widget); };
  for (QWidget* widget : amount_->focusOrder()) next(widget);
  const QList<QWidget*> between = guest_ ? stopsIn(*guest_) : QList<QWidget*>();
  if (!between.isEmpty()) last = between.last();
  for (FindingRow* row : findings_) next(row);
  for (StepCard* card : cards_) next(card);
}

/// Children stand in the tree as they lie on one another, so the last of them is raised last.
void WorkingPane::orderTree() {
  QList<QWidget*> wanted;
  if (guest_) wanted << guest_;
  for (FindingRow* row : findings_) wanted << row;
  for (StepCard* card : cards_) wanted << card;
  QList<QWidget*> now;
  for (QObject* child : column_->children())
    if (auto* widget = qobject_cast<QWidget*>(child); widget && wanted.contains(widget)) now << widget;
  if (now == wanted) return;
  for (QWidget* widget : std::as_const(wanted)) widget->raise();
}

/// What is read one after the other: flag, amount, findings, steps.
QList<SpokenWidget*> WorkingPane::parts() const {
  QList<SpokenWidget*> all{flag_, amount_->text()};
  for (FindingRow* row : findings_) all << row;
  for (StepCard* card : cards_) all << card;
  return all;
}

void WorkingPane::goTo(SpokenWidget* part, Qt::FocusReason reason) {
  part->setFocus(reason);
  reveal(part);
}

/// Arrows go to the neighbour, Home and End to the first and the last; a page is what is seen of the column.
bool WorkingPane::walk(const SpokenWidget* from, int key) {
  const QList<SpokenWidget*> all = parts();
  const qsizetype at = all.indexOf(from);
  QScrollBar* bar = scroll_->verticalScrollBar();
  switch (key) {
    case Qt::Key_Up:
      return at <= 0 || (goTo(all[at - 1], Qt::BacktabFocusReason), true);
    case Qt::Key_Down:
      return at + 1 >= all.size() || (goTo(all[at + 1], Qt::TabFocusReason), true);
    case Qt::Key_Home:
      return goTo(all.first(), Qt::OtherFocusReason), true;
    case Qt::Key_End:
      return goTo(all.last(), Qt::OtherFocusReason), true;
    case Qt::Key_PageUp:
      return bar->triggerAction(QScrollBar::SliderPageStepSub), true;
    case Qt::Key_PageDown:
      return bar->triggerAction(QScrollBar::SliderPageStepAdd), true;
    default:
      return false;
  }
}

StepCard* WorkingPane::makeCard() {
  auto* card = new StepCard(column_);
  card->setScheme(scheme_);
  card->setScale(zoom_ / 100.0);
  connect(card, &StepCard::originActivated, this, &WorkingPane::activate);
  connect(card, &StepCard::lit, this, [this](const QString& origin) {
    light(origin);
    Q_EMIT lit(origin);
  });
  card->installEventFilter(this);
  return card;
}

void WorkingPane::light(const QString& path) {
  for (StepCard* card : cards_) card->light(path);
}

/// A number that comes from an earlier step leads to that step's card; everything else is for the form.
void WorkingPane::activate(const QString& origin) {
  if (!origin.startsWith(QStringLiteral("step:"))) return Q_EMIT originActivated(origin);
  const QString id = origin.mid(5);
  for (StepCard* card : cards_) {
    if (fromCore(idOf(card->view().step.id)) != id) continue;
    card->setFocus(Qt::OtherFocusReason);
    reveal(card);
  }
}

/// The column's own scrolling comes after what its parts do with a key.
bool WorkingPane::eventFilter(QObject* watched, QEvent* event) {
  auto* part = qobject_cast<SpokenWidget*>(watched);
  if (part && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool plain = (key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (plain && walk(part, key->key())) return true;
  }
  return QWidget::eventFilter(watched, event);
}

/// The keyboard goes as the eye does: flag, amount, guest, findings, steps. When the guest leaves, the step
/// that was in view stays there: what was scrolled over the guest was no scrolling of the steps.
void WorkingPane::host(QWidget* guest) {
  QScrollBar* bar = scroll_->verticalScrollBar();
  const int ofSteps = guest_ ? std::max(0, bar->value() - guest_->height()) : bar->value();
  guest_ = guest;
  start_->setParent(guest ? column_ : static_cast<QWidget*>(this));
  start_->setVisible(empty_);
  if (guest_) {
    guest_->setParent(column_);
    guest_->show();
    QWidget* last = amount_->focusOrder().last();
    for (QWidget* stop : stopsIn(*guest_)) setTabOrder(std::exchange(last, stop), stop);
  } else {
    applyScale();
    showParts(!empty_);
  }
  orderFocus();
  arrange();
  if (!guest_) bar->setValue(ofSteps);
}

void WorkingPane::followGuest() {
  if (guest_) arrange();
}

void WorkingPane::setZoom(int percent) {
  const int wanted = std::clamp(percent, leastZoom, mostZoom);
  if (wanted == zoom_) return;
  zoom_ = wanted;
  applyScale();
  arrange();
}

void WorkingPane::applyScale() {
  const double scale = zoom_ / 100.0;
  start_->setScale(scale);
  flag_->setScale(scale);
  amount_->setScale(scale);
  for (FindingRow* row : findings_) row->setScale(scale);
  for (StepCard* card : cards_) card->setScale(scale);
}

void WorkingPane::applyScheme() {
  scheme_ = schemeFor(QWidget::palette());
  start_->setScheme(scheme_);
  flag_->setScheme(scheme_);
  amount_->setScheme(scheme_);
  for (FindingRow* row : findings_) row->setScheme(scheme_);
  for (StepCard* card : cards_) card->setScheme(scheme_);
  QPalette board = column_->palette();
  board.setColor(QPalette::Window, boardPalette(scheme_)[Ink::board]);
  column_->setPalette(board);
  column_->setAutoFillBackground(true);
  scroll_->viewport()->setPalette(board);
}

void WorkingPane::showParts(bool visible) {
  for (QWidget* part :
       {static_cast<QWidget*>(flag_), static_cast<QWidget*>(amount_), static_cast<QWidget*>(scroll_)})
    part->setVisible(visible);
}

/// Nothing is laid out before it is seen, and nothing is seen before it has its place: a case that is opened
/// with the program is laid out once, at its real width.
void WorkingPane::arrange() {
  if (!isVisible()) return;
  if (guest_) return arrangeOneColumn();
  if (empty_) return start_->setGeometry(rect());
  const int flagHigh = flag_->heightAt(width());
  flag_->setGeometry(0, 0, width(), flagHigh);
  const int amountHigh = amount_->heightAt(width());
  const bool inColumn = height() - flagHigh - amountHigh < height() * leastWorkingShare;
  moveAmount(inColumn);
  if (!inColumn) amount_->setGeometry(0, flagHigh, width(), amountHigh);
  const int top = inColumn ? flagHigh : flagHigh + amountHigh;
  scroll_->setGeometry(0, top, width(), std::max(0, height() - top));
  // room is kept for the scroll bar, so that its coming and going never lays out anew
  const int wide = width() - scroll_->verticalScrollBar()->sizeHint().width();
  column_->resize(wide, arrangeColumn(wide, inColumn));
  showParts(true);
}

/// Keeps the keyboard where it is: a tick that unfolds the amount must not lose it.
void WorkingPane::moveAmount(bool intoColumn) {
  QWidget* home = intoColumn ? column_ : static_cast<QWidget*>(this);
  if (amount_->parentWidget() == home) return;
  QPointer<QWidget> focused = amount_->isAncestorOf(focusWidget()) ? focusWidget() : nullptr;
  amount_->setParent(home);
  amount_->setVisible(true);
  if (focused) focused->setFocus(Qt::OtherFocusReason);
}

/// What has the keyboard in the guest: its field is not to move while one types.
QWidget* WorkingPane::typedAt() const {
  QWidget* focused = guest_ ? QApplication::focusWidget() : nullptr;
  return focused && guest_->isAncestorOf(focused) ? focused : nullptr;
}

/// Flag and amount have letters as large as leave room for the rest, and never smaller than the usual ones.
int WorkingPane::pin() {
  for (int percent = zoom_;; percent -= zoomStep) {
    flag_->setScale(percent / 100.0);
    amount_->setScale(percent / 100.0);
    const int high = flag_->heightAt(width()) + amount_->heightAt(width());
    if (percent - zoomStep < leastPinned || high <= height() * mostPinnedShare) return high;
  }
}

/// What appears above a field in which somebody types pushes nothing: the column is scrolled by as much, and
/// where it cannot be, what is pinned keeps its height.
void WorkingPane::arrangeOneColumn() {
  QScrollBar* bar = scroll_->verticalScrollBar();
  const int pinned = pin();
  const bool inColumn = pinned > height() * (1 - leastScrolledShare);
  moveAmount(inColumn);
  const int flagHigh = flag_->heightAt(width());
  int top = inColumn ? flagHigh : pinned;
  int at = bar->value();
  QWidget* typed = typedAt();
  if (typed && scroll_->y() > 0) at += top - scroll_->y();
  if (at < 0) top -= std::exchange(at, 0);
  flag_->setGeometry(0, 0, width(), flagHigh);
  if (!inColumn) amount_->setGeometry(0, flagHigh, width(), top - flagHigh);
  scroll_->setGeometry(0, top, width(), std::max(0, height() - top));
  const int wide = width() - bar->sizeHint().width();
  const int high = arrangeColumn(wide, inColumn);
  column_->resize(wide, std::max(high, at + scroll_->height()));
  bar->setValue(at);
  if (typed) reveal(typed);
  showParts(true);
}

int WorkingPane::arrangeColumn(int width, bool amountInColumn) {
  int y = 0;
  if (amountInColumn) {
    const int high = amount_->heightAt(width);
    amount_->setGeometry(0, 0, width, high);
    y += high;
  }
  if (guest_) {
    const int high = guest_->heightForWidth(width);
    guest_->setGeometry(0, y, width, high);
    y += high;
  }
  if (!empty_) return arrangeSteps(width, y);
  const int high = start_->heightAt(width);
  start_->setGeometry(0, y, width, high);
  return y + high;
}

int WorkingPane::arrangeSteps(int width, int top) {
  const int gap = qRound(cardGap * zoom_ / 100.0);
  int y = top + gap / 2;
  for (FindingRow* row : findings_) {
    const int high = row->heightAt(width);
    row->setGeometry(0, y, width, high);
    y += high;
  }
  y += findings_.empty() ? gap - gap / 2 : gap / 2;
  const double two = leastOfTwo * zoom_ / 100.0;
  const std::size_t beside = (width - 3 * gap) / 2 >= two ? 2 : 1;
  const int across = static_cast<int>(beside);
  const int cardWidth = std::max(1, (width - (across + 1) * gap) / across);
  for (std::size_t first = 0; first < cards_.size(); first += beside) {
    const std::size_t end = std::min(first + beside, cards_.size());
    int high = 0;
    for (std::size_t i = first; i < end; ++i) high = std::max(high, cards_[i]->heightAt(cardWidth));
    for (std::size_t i = first; i < end; ++i) {
      const int place = static_cast<int>(i - first);
      cards_[i]->setGeometry(gap + place * (cardWidth + gap), y, cardWidth, high);
    }
    y += high + gap;
  }
  return y;
}

void WorkingPane::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void WorkingPane::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  arrange();
}

void WorkingPane::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) applyScheme();
}

void WorkingPane::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(rect(), boardPalette(scheme_)[Ink::board]);
}

}  // namespace wardchalk::ui
