#include "ui/board/board_surface.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QVariantAnimation>
#include <algorithm>
#include <utility>

#include "core/words/phrasebook.h"
#include "core/words/spoken.h"
#include "core/words/step_words.h"
#include "ui/access/announcer.h"
#include "ui/board/stage_words.h"
#include "ui/board/turned_view.h"
#include "ui/board/verdict_sheet.h"
#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

namespace {

Scheme otherLookOf(Scheme scheme) {
  switch (scheme) {
    case Scheme::light:
      return Scheme::dark;
    case Scheme::dark:
      return Scheme::light;
    case Scheme::contrastLight:
      return Scheme::contrastDark;
    case Scheme::contrastDark:
      return Scheme::contrastLight;
  }
  return scheme;
}

constexpr int usualSize = 100;
constexpr int largestSize = 200;
constexpr int sizeStep = 10;
/// So much of the room that a page usually has must be left for its working.
constexpr double roomShare = 0.5;
/// And so much of the size that its working usually has.
constexpr double workingShare = 0.75;

}  // namespace

BoardSurface::BoardSurface(QWidget* parent, const BoardStory& story, int strokeMs)
    : SpokenWidget(parent), story_(story), strokeMs_(strokeMs), stroke_(new QVariantAnimation(this)) {
  setObjectName(QStringLiteral("board-surface"));
  setAttribute(Qt::WA_OpaquePaintEvent);
  stroke_->setStartValue(0.0);
  stroke_->setEndValue(1.0);
  stroke_->setDuration(strokeMs);
  connect(stroke_, &QVariantAnimation::valueChanged, this, [this](const QVariant& share) {
    strokeShare_ = share.toDouble();
    update(body_.rect.toAlignedRect().adjusted(-8, -8, 8, 8));
  });
  followDesktop();
}

void BoardSurface::followDesktop() {
  setScheme(schemeFor(QWidget::palette()));
  if (verdict_) verdict_->setScheme(scheme());
}

double BoardSurface::layOutAt(int) { return height(); }

// --- what the keys do

void BoardSurface::act(BoardAct what) {
  notice_.clear();
  if (std::exchange(blank_, false) && what != BoardAct::leave) return refresh();
  if (std::exchange(showsKeys_, false) && what != BoardAct::leave) return refresh();
  const int typed = std::exchange(typed_, what == BoardAct::enter ? typed_ : 0);
  switch (what) {
    case BoardAct::next:
      return forward();
    case BoardAct::enter:
      return enter();
    case BoardAct::back:
      return typed > 0 ? (typed_ = typed / 10, refresh()) : backward();
    case BoardAct::first:
      return goTo(story_.first());
    case BoardAct::last:
      return goTo(story_.last());
    case BoardAct::blank:
      blank_ = true;
      return refresh();
    case BoardAct::leave:
      Q_EMIT leaveWanted();
      return;
    case BoardAct::predict:
      return togglePredict();
    case BoardAct::turn:
      return turnChosen();
    case BoardAct::chooseNext:
      return choose(+1);
    case BoardAct::chooseBefore:
      return choose(-1);
    case BoardAct::list:
      refresh();
      Q_EMIT listWanted();
      return;
    case BoardAct::keys:
      showsKeys_ = true;
      return refresh();
    case BoardAct::sayAgain:
      return refresh();
    case BoardAct::otherLook:
      return otherLook();
    case BoardAct::otherScreen:
      Q_EMIT otherScreenWanted();
      return;
    case BoardAct::inShort:
      Q_EMIT otherLengthWanted();
      return;
    case BoardAct::larger:
      return resizeBoard(size_ + sizeStep);
    case BoardAct::smaller:
      return resizeBoard(size_ - sizeStep);
    case BoardAct::usualSize:
      return resizeBoard(usualSize);
  }
}

void BoardSurface::goTo(const BoardPlace& place) {
  stroke_->stop();
  strokeShare_ = 1;
  turned_.clear();
  chosen_ = -1;
  typed_ = 0;
  place_ = place;
  refresh();
}

/// A turned factor is turned back before anything else is uncovered.
bool BoardSurface::turnAllBack() {
  if (turned_.empty()) return false;
  goTo(place_);
  return true;
}

void BoardSurface::forward() {
  if (turnAllBack()) return;
  const BoardPlace next = story_.next(place_, predict_);
  if (next == place_) return refresh();
  goTo(next);
  const BoardPage& page = story_.page(place_);
  if (page.stages[static_cast<std::size_t>(place_.stage)].kind == StageKind::strike) drawStrokesIn();
}

void BoardSurface::backward() {
  if (!turnAllBack()) goTo(story_.back(place_, predict_));
}

void BoardSurface::enter() {
  if (typed_ > 0) {
    const auto place = story_.atNumber(std::exchange(typed_, 0));
    return place ? goTo(*place) : refresh();
  }
  if (chosen_ >= 0) return turnChosen();
  forward();
}

void BoardSurface::typeDigit(int digit) {
  constexpr int most = 99;  // no working has a hundred steps
  const int longer = typed_ * 10 + digit;
  typed_ = longer > most ? digit : longer;
  refresh();
}

void BoardSurface::togglePredict() {
  predict_ = !predict_;
  if (!predict_) place_.predicting = false;
  refresh();
}

/// Factors are chosen once the whole chain is uncovered.
bool BoardSurface::maySelect() const {
  const BoardPage& page = story_.page(place_);
  if (page.isVerdict || factorsOf(page.view) == 0) return false;
  const auto last = std::find_if(page.stages.rbegin(), page.stages.rend(),
                                 [](const Stage& stage) { return stage.kind == StageKind::factor; });
  return place_.stage >= static_cast<int>(page.stages.rend() - last) - 1;
}

void BoardSurface::choose(int direction) {
  if (!maySelect()) return refresh();
  const int count = factorsOf(story_.page(place_).view);
  chosen_ = chosen_ < 0 ? (direction > 0 ? 0 : count - 1) : (chosen_ + direction + count) % count;
  refresh();
}

void BoardSurface::turnChosen() {
  if (!maySelect()) return refresh();
  if (chosen_ < 0) return choose(+1);
  stroke_->stop();
  strokeShare_ = 1;
  if (turned_.erase(chosen_) == 0) turned_.insert(chosen_);
  refresh();
}

void BoardSurface::otherLook() {
  setScheme(otherLookOf(scheme()));
  if (verdict_) verdict_->setScheme(scheme());
  refresh();
}

/// Never smaller than can be read from the last row.
void BoardSurface::resizeBoard(int percent) {
  size_ = std::clamp(percent, usualSize, largestSize);
  refresh();
  notice_ = fromCore(say(shownSize_ < size_ ? PhraseId::board_sizeFull : PhraseId::board_size,
                         {{"percent", std::to_string(shownSize_)}}));
  refresh();
}

void BoardSurface::notice(PhraseId what) {
  notice_ = fromCore(say(what));
  refresh();
}

void BoardSurface::drawStrokesIn() {
  if (strokeMs_ <= 0) return;
  strokeShare_ = 0;
  stroke_->start();
}

// --- what follows from the state

int BoardSurface::upToStage() const { return turned_.empty() ? place_.stage : INT_MAX; }

void BoardSurface::refresh() {
  const StepView& view = story_.page(place_).view;
  turnedView_ = turned_.empty() ? StepView() : turnedView(view, turned_);
  layOutAll();
  showVerdict();
  speak();
  if (isVisible()) announce(*this, spoken());
  update();
}

/// As large as it was chosen, as far as the working on this page keeps its room for it: what stands round it
/// grows at its cost. What is said of the size stands beside the caution, so it is measured with that: it
/// comes and goes and changes no size.
void BoardSurface::layOutAll() {
  if (width() < 1 || height() < 1) return;
  const QString notice = std::exchange(notice_, {});
  layOutWith(sizesAt(usualSize));
  const double leastScale = body_.scale * workingShare;
  const double leastRoom = frame_.room.height() * roomShare;
  if (size_ > usualSize)
    notice_ = fromCore(say(PhraseId::board_sizeFull, {{"percent", std::to_string(size_)}}));
  shownSize_ = largestWith(leastScale, leastRoom);
  notice_ = notice;
  layOutWith(sizesAt(shownSize_));
}

int BoardSurface::largestWith(double leastScale, double leastRoom) {
  for (int percent = size_; percent > usualSize; percent -= sizeStep) {
    layOutWith(sizesAt(percent));
    if (body_.scale >= leastScale && frame_.room.height() >= leastRoom) return percent;
  }
  return usualSize;
}

BoardSizes BoardSurface::sizesAt(int percent) const {
  return BoardSizes(QSizeF(size()), {}, percent / 100.0);
}

void BoardSurface::layOutWith(const BoardSizes& sizes) {
  const BoardPage& page = story_.page(place_);
  frame_ = layOutFrame(frameText(), sizes);
  body_ =
      page.isVerdict ? BoardBody() : fitBody(turned_.empty() ? page.view : turnedView_, frame_.room, sizes);
}

void BoardSurface::showVerdict() {
  const bool shown = story_.page(place_).isVerdict && place_.stage > 0 && !blank_;
  if (!shown) {
    delete std::exchange(verdict_, nullptr);
    return;
  }
  if (!verdict_) verdict_ = new VerdictSheet(this, story_, scheme());
  verdict_->fit(frame_.room, sizesAt(shownSize_));
  verdict_->setVisible(!showsKeys_);
}

QString BoardSurface::caption() const {
  if (!turned_.empty()) return leftOverSentence(turnedView_);
  return stageWords(story_, place_).caption;
}

/// Every line that can stand below this page, so that uncovering it moves nothing; a verdict takes all the
/// room.
QStringList BoardSurface::captions() const {
  const BoardPage& page = story_.page(place_);
  QStringList all{caption()};
  if (page.isVerdict) return all;
  for (int stage = 0; stage < static_cast<int>(page.stages.size()); ++stage)
    all << stageWords(story_, {place_.page, stage, false}).caption;
  return all << stageWords(story_, {place_.page, 0, true}).caption;
}

BoardFrameText BoardSurface::frameText() const {
  const BoardPage& page = story_.page(place_);
  BoardFrameText text;
  text.facts = story_.facts();
  text.foundLabel = fromCore(say(PhraseId::board_found));
  // a turned factor leaves no result, here neither
  text.found = story_.found(turned_.empty() ? place_ : BoardPlace{place_.page, 0, false});
  text.foundAll = story_.found(story_.last());
  text.heading = fromCore(say(
      PhraseId::board_step, {{"n", std::to_string(page.number)}, {"count", std::to_string(story_.count())}}));
  text.pages = static_cast<int>(story_.pages().size());
  text.page = place_.page;
  text.question = page.isVerdict ? fromCore(say(PhraseId::board_verdict)) : page.view.question;
  text.lookingFor = page.view.lookingFor;
  text.caption = caption();
  text.captions = captions();
  text.caution = fromCore(say(PhraseId::caution_short));
  text.status = !notice_.isEmpty()
                    ? notice_
                    : fromCore(typed_ > 0 ? say(PhraseId::board_goTo, {{"n", std::to_string(typed_)}})
                               : predict_ ? say(PhraseId::board_predictOn)
                                          : say(PhraseId::board_keysHint));
  return text;
}

void BoardSurface::speak() {
  if (blank_) {
    setAccessibleDescription({});
    return setSpoken(fromCore(say(PhraseId::board_blank)));
  }
  if (!notice_.isEmpty()) return setSpoken(notice_);
  if (showsKeys_) return setSpoken(boardKeysText().join(QStringLiteral(". ")));
  const QString so = spokenSoFar(story_, place_);
  const QStringList found = story_.found(place_);
  const QString label = fromCore(say(PhraseId::board_found)) + QStringLiteral(": ");
  if (!turned_.empty()) {
    setAccessibleDescription(leftOverSpoken(turnedView_));
  } else {
    setAccessibleDescription(
        loosed(found.isEmpty() ? so : so + QStringLiteral(". ") + label + found.join(QStringLiteral(", "))));
  }
  if (typed_ > 0) return setSpoken(fromCore(say(PhraseId::board_goTo, {{"n", std::to_string(typed_)}})));
  if (chosen_ < 0) return setSpoken(stageWords(story_, place_).spoken);
  const auto& chain = std::get<Solved>(story_.page(place_).view.step.body).chain;
  Factor factor = chain.factors[static_cast<std::size_t>(chosen_)];
  const bool isTurned = turned_.contains(chosen_);
  if (isTurned) factor = factor.turned();
  QString said = fromCore(
      say(isTurned ? PhraseId::board_turned : PhraseId::board_selected, {{"factor", spokenFactor(factor)}}));
  if (!turned_.empty()) said += u' ' + leftOverSpoken(turnedView_);
  setSpoken(said);
}

// --- what is painted

void BoardSurface::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette()[Ink::board]);
  if (blank_) return;
  paintBoard(painter);
  if (showsKeys_) paintKeys(painter);
}

void BoardSurface::paintBoard(QPainter& painter) const {
  painter.fillRect(QRectF(0, 0, width(), frame_.strip), palette()[Ink::card]);
  painter.setPen(QPen(palette()[Ink::edge], 1));
  painter.drawLine(QPointF(0, frame_.strip), QPointF(width(), frame_.strip));
  paintDrawing(painter, frame_.drawing, palette(), {});
  PaintWish wish;
  wish.upToStage = upToStage();
  wish.strokeShare = strokeShare_;
  paintDrawing(painter, body_.drawing, palette(), wish);
  paintResultPlace(painter);
  paintChosen(painter);
}

/// A dashed frame with a question mark where the result will stand, from the whole chain to the result.
void BoardSurface::paintResultPlace(QPainter& painter) const {
  if (!turned_.empty() || !maySelect()) return;
  const BoardPage& page = story_.page(place_);
  const QRectF at = placeOfResult(body_, page.view);
  const StageKind kind = page.stages[static_cast<std::size_t>(place_.stage)].kind;
  if (at.isEmpty() || (kind != StageKind::factor && kind != StageKind::strike)) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  QPen dashed(palette()[Ink::quiet], std::max(1.5, body_.scale * 0.7));
  dashed.setDashPattern({4, 3});
  painter.setPen(dashed);
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(at, 6, 6);
  painter.setPen(palette()[Ink::accent]);
  painter.setFont(fontOf({qRound(at.height() * 0.55), true}, {}));
  painter.drawText(at, Qt::AlignCenter, QStringLiteral("?"));
  painter.restore();
}

void BoardSurface::paintChosen(QPainter& painter) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  const double wide = std::max(2.5, body_.scale * 1.2);
  const auto ring = [&](int factor, Qt::PenStyle style, Ink ink) {
    painter.setPen(QPen(palette()[ink], wide, style));
    for (const QRectF& frame : framesOf(body_, factor))
      painter.drawRoundedRect(frame.adjusted(-3 * wide, -wide, 3 * wide, wide), 8, 8);
  };
  for (const int factor : turned_)
    if (factor != chosen_) ring(factor, Qt::DotLine, Ink::accent);
  if (chosen_ >= 0) ring(chosen_, Qt::SolidLine, Ink::focus);
  painter.restore();
}

void BoardSurface::paintKeys(QPainter& painter) const {
  const BoardSizes sizes{QSizeF(size())};
  const double pad = sizes.px(24);
  const Metrics metrics = sizes.sized(FontRole::finding, std::max(sizes.px(21), sizes.leastAside()));
  std::vector<Box> lines;
  for (const QString& line : boardKeysText())
    lines.push_back(paragraph(line, lines.empty() ? FontRole::question : FontRole::finding, Ink::text,
                              metrics, width() - 2 * sizes.margin() - 2 * pad));
  Box text = column(std::move(lines), sizes.px(8));
  const QSizeF size(text.width + 2 * pad, text.height() + 2 * pad);
  const QRectF panel({(width() - size.width()) / 2, (height() - size.height()) / 2}, size);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(palette()[Ink::focus], 2));
  painter.setBrush(palette()[Ink::card]);
  painter.drawRoundedRect(panel, 8, 8);
  text.drawing.moveBy(panel.topLeft() + QPointF(pad, pad + text.above));
  paintDrawing(painter, text.drawing, palette(), {});
}

// --- events

bool BoardSurface::event(QEvent* event) {
  // The keys of the board come here before any shortcut of the window behind it.
  if (event->type() == QEvent::ShortcutOverride) event->accept();
  return SpokenWidget::event(event);
}

bool BoardSurface::focusNextPrevChild(bool next) {
  act(next ? BoardAct::chooseNext : BoardAct::chooseBefore);
  return true;
}

void BoardSurface::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_0 && event->modifiers().testFlag(Qt::ControlModifier)) return act(BoardAct::usualSize);
  if (key >= Qt::Key_0 && key <= Qt::Key_9 && !blank_) return typeDigit(key - Qt::Key_0);
  if (const auto what = boardActFor(key)) return act(*what);
  SpokenWidget::keyPressEvent(event);
}

int BoardSurface::factorAt(const QPointF& at) const {
  for (int factor = 0; factor < factorsOf(story_.page(place_).view); ++factor)
    for (const QRectF& frame : framesOf(body_, factor))
      if (frame.adjusted(-6, -4, 6, 4).contains(at)) return factor;
  return -1;
}

/// A click on a factor chooses it; anywhere else it is a presenter's next or back.
void BoardSurface::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::RightButton) return act(BoardAct::back);
  if (event->button() != Qt::LeftButton) return;
  const int factor = blank_ || showsKeys_ || !maySelect() ? -1 : factorAt(event->position());
  if (factor < 0) return act(BoardAct::next);
  chosen_ = factor;
  refresh();
}

void BoardSurface::resizeEvent(QResizeEvent* event) {
  SpokenWidget::resizeEvent(event);
  refresh();
}

void BoardSurface::changeEvent(QEvent* event) {
  SpokenWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) followDesktop();
}

}  // namespace wardchalk::ui
