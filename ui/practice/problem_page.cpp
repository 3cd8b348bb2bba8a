#include "ui/practice/problem_page.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "core/practice/sessions/lesson_words.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "ui/access/announcer.h"
#include "ui/access/answers.h"
#include "ui/practice/line_builder.h"
#include "ui/practice/line_words.h"
#include "ui/practice/practice_look.h"
#include "ui/practice/practice_page.h"
#include "ui/practice/reading_line.h"
#include "ui/practice/time_left.h"
#include "ui/practice/worked_picture.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// Below this width, at 100 %, the papers stand above the lines and are scrolled with them.
constexpr double sideBySide = 860;
constexpr double milliseconds = 1000;
constexpr int besideEachOther = 16;
constexpr int roomBelow = 24;

QScrollArea* scrollIn(QWidget* parent, QWidget* inside) {
  auto* scroll = new QScrollArea(parent);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(inside);
  return scroll;
}

}  // namespace

ProblemPage::ProblemPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("problem-page"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 14, 24, 14);
  column->setSpacing(10);
  buildHead(column);
  buildSides(column);
  buildFoot(column);
  bindKeys();
}

// The line that has the keyboard goes with the rest of the widget, after `rows_` has gone: no line is come to
// then.
ProblemPage::~ProblemPage() { disconnect(qApp, nullptr, this, nullptr); }

void ProblemPage::buildHead(QBoxLayout* column) {
  auto* row = new QHBoxLayout;
  progress_ = wordsIn(this, {}, 1.3, true);
  progress_->setObjectName(QStringLiteral("progress"));
  progress_->setWordWrap(false);
  about_ = quietWordsIn(this, {});
  about_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  time_ = new TimeLeft(this);
  setLetters(time_, 1.08, true);
  connect(time_, &TimeLeft::isUp, this, &ProblemPage::tellTimeIsUp);
  row->setSpacing(24);
  row->addWidget(progress_);
  row->addWidget(time_);
  row->addWidget(about_, 1);
  column->addLayout(row);
}

void ProblemPage::buildSides(QBoxLayout* column) {
  auto* sides = new QHBoxLayout;
  sides->setSpacing(besideEachOther);
  papers_ = new PracticeCard(this);
  papers_->setObjectName(QStringLiteral("papers"));
  papers_->setFocusPolicy(Qt::StrongFocus);  // so that the keyboard comes to them, and with it a reader
  giveRole(papers_, QAccessible::Client);
  auto* papers = new QVBoxLayout(papers_);
  papers->setContentsMargins(20, 16, 20, 16);
  papers->setSpacing(12);
  lines_ = new PracticeCard(this);
  auto* lines = new QVBoxLayout(lines_);
  lines->setContentsMargins(20, 16, 20, 16);
  lines->setSpacing(20);
  paperScroll_ = scrollIn(this, papers_);
  auto* holder = new QWidget(this);
  sheet_ = new QVBoxLayout(holder);
  sheet_->setContentsMargins(0, 0, 0, 0);
  sheet_->setSpacing(besideEachOther);
  sheet_->addWidget(lines_, 1);
  lineScroll_ = scrollIn(this, holder);
  connect(lineScroll_->verticalScrollBar(), &QScrollBar::rangeChanged, this, &ProblemPage::bringIntoView);
  sides->addWidget(paperScroll_, 36);
  sides->addWidget(lineScroll_, 64);
  column->addLayout(sides, 1);
}

void ProblemPage::buildFoot(QBoxLayout* column) {
  foot_ = quietWordsIn(this, {});
  foot_->setObjectName(QStringLiteral("foot-words"));
  column->addWidget(foot_);
  auto* buttons = new QWidget(this);
  auto* row = new FlowLayout(buttons);
  back_ = addButton(row, tr("&Back"), "back");
  skip_ = addButton(row, tr("S&kip it"), "skip");
  more_ = addButton(row, tr("One &more like this"), "one-more");
  row->pushRight();
  review_ = addButton(row, tr("Re&view and hand in …"), "review");
  on_ = addButton(row, {}, "onwards");
  setLetters(on_, 1.08, true);
  column->addWidget(buttons);
  connect(back_, &QPushButton::clicked, this, [this] {
    keep();
    Q_EMIT back();
  });
  connect(skip_, &QPushButton::clicked, this, &ProblemPage::skip);
  connect(more_, &QPushButton::clicked, this, [this] {
    keep();
    Q_EMIT oneMoreWanted();
  });
  connect(review_, &QPushButton::clicked, this, [this] {
    keep();
    Q_EMIT reviewWanted();
  });
  connect(on_, &QPushButton::clicked, this, &ProblemPage::goOn);
}

void ProblemPage::bindKeys() {
  const auto bind = [this](const QString& keys, auto what) {
    auto* shortcut = new QShortcut(QKeySequence(keys, QKeySequence::PortableText), this);
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    connect(shortcut, &QShortcut::activated, this, what);
  };
  bind(QStringLiteral("Ctrl+H"), [this] {
    if (LineRow* row = rowWithKeyboard()) climb(row);
  });
  bind(QStringLiteral("Ctrl+B"), [this] {
    if (LineRow* row = rowWithKeyboard()) build(row);
  });
  bind(QStringLiteral("Ctrl+Return"), [this] { goOn(); });
  bind(QStringLiteral("PgUp"), [this] { turnPage(-1); });
  bind(QStringLiteral("PgDown"), [this] { turnPage(+1); });
  // who has just finished the last line goes on with the same key
  auto* enter = new QShortcut(Qt::Key_Return, on_);
  enter->setContext(Qt::WidgetShortcut);
  connect(enter, &QShortcut::activated, this, &ProblemPage::goOn);
  bind(QStringLiteral("Ctrl+M"), [this] {
    if (more_->isVisible()) more_->click();
  });
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
    for (LineRow* row : rows_) {
      if (!now || !row->isAncestorOf(now) || row == last_) continue;
      keep();  // the time until now belongs to the line before
      comeTo(row);
      reveal(row, End::top);
    }
  });
}

void ProblemPage::comeTo(LineRow* row) {
  last_ = row;
  for (LineRow* one : rows_) one->setCurrent(one == row);
}

void ProblemPage::show(PracticeSession& session, double zoom) {
  session_ = &session;
  zoom_ = zoom;
  warned_ = false;
  fillHead();
  fillPapers();
  fillLines();
  fillFoot();
  applyLetters(window(), zoom);
  arrange();
  clock_.start();
  lineScroll_->ensureVisible(0, 0);
  if (rows_.empty()) return;
  comeTo(rows_.front());
  rows_.front()->field()->setFocus(Qt::OtherFocusReason);
  sayProblem();
}

void ProblemPage::begin(const PracticeSet& set, const std::string& seat) {
  seat_ = seat;
  QElapsedTimer clock;
  clock.start();
  time_->begin(set.minutes, [clock] { return clock.elapsed(); });
}

void ProblemPage::end() { time_->end(); }

void ProblemPage::tellTimeIsUp() {
  if (isVisible()) announce(*this, tr("Time is up. Hand in what you have."));
}

void ProblemPage::leave() {
  last_ = nullptr;
  rows_.clear();
  empty(lines_->layout());
  session_ = nullptr;
}

void ProblemPage::fillHead() {
  const Problem& problem = session_->current().problem;
  progress_->setText(tr("Problem %1 of %2").arg(session_->place() + 1).arg(session_->count()));
  QString about = tr("%1 · level %2 · set %3")
                      .arg(capital(fromCore(topicWord(problem.topic))))
                      .arg(problem.level)
                      .arg(session_->set().seed);
  if (!seat_.empty()) about += tr(" · seat %1").arg(fromCore(seat_));
  about_->setText(about);
}

void ProblemPage::fillPapers() {
  empty(papers_->layout());
  const QString story = fromCore(session_->current().problem.story);
  papers_->setAccessibleName(loosed(story).replace(u'\n', u' '));
  for (const QString& paragraph : story.split(u'\n', Qt::SkipEmptyParts)) {
    QLabel* label = wordsIn(papers_, held(isolated(paragraph.toStdString())), 1.1);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    papers_->layout()->addWidget(label);
  }
  static_cast<QBoxLayout*>(papers_->layout())->addStretch(1);
}

void ProblemPage::fillLines() {
  last_ = nullptr;
  rows_.clear();
  empty(lines_->layout());
  for (std::size_t i = 0; i < session_->current().lines.size(); ++i) rows_.push_back(addRow(i));
  static_cast<QBoxLayout*>(lines_->layout())->addStretch(1);
  uncover();
  showFeedback(nullptr);
}

LineRow* ProblemPage::addRow(std::size_t line) {
  const PracticeProblem& shown = session_->current();
  const PracticeSet& set = session_->set();
  const bool learning = session_->mode() == PracticeMode::learning;
  auto* row = new LineRow(line, shown.problem, {learning, learning && set.hints, set.builder}, lines_);
  row->setText(fromCore(shown.lines[line].text));
  row->showReading(readingOf(shown.problem, line, shown.lines[line].text));
  row->setReadOnly(shown.handedIn);
  lines_->layout()->addWidget(row);
  connect(row, &LineRow::edited, this, [this, row] {
    warned_ = false;
    if (foot_->text() == goOnWords()) foot_->setText(keyWords());
    read(row);
    uncover();
    const PracticeLine& kept = session_->current().lines[row->line()];
    if (!kept.marked) return;
    if (row->text() == fromCore(kept.text)) return row->show(feedbackOf(*row), false);
    if (!kept.isRight()) {
      const bool unread = kept.marked->mark.mark == Mark::unread;
      return row->takeBackMark(unread ? LineRow::Said::goes : LineRow::Said::stays);
    }
    keep();  // so that it is no longer called right
    row->show(feedbackOf(*row), false);
  });
  connect(row, &LineRow::checkWanted, this, [this, row] { check(row); });
  connect(row, &LineRow::hintWanted, this, [this, row] { climb(row); });
  connect(row, &LineRow::buildWanted, this, [this, row] { build(row); });
  return row;
}

void ProblemPage::fillFoot() {
  const bool test = session_->mode() == PracticeMode::test;
  const bool handedIn = session_->current().handedIn;
  const bool last = session_->place() + 1 == session_->count();
  foot_->setText(handedIn ? tr("Handed in. The worked lines stand below what was not right yet.")
                          : keyWords());
  back_->setVisible(session_->place() > 0);
  skip_->setVisible(!handedIn);
  more_->setVisible(!test && seat_.empty());  // a class has the same problems, in the same places
  review_->setVisible(test && !handedIn);
  on_->setText(test && last && !handedIn ? tr("&Go to the review")
               : last                    ? tr("Do&ne: to the summary")
                      : (test || handedIn ? tr("&Next problem") : tr("Do&ne: next problem")));
}

QString ProblemPage::goOnWords() { return tr("Enter once more: go on."); }

/// The keys of what this set allows.
QString ProblemPage::keyWords() const {
  const PracticeSet& set = session_->set();
  const bool test = session_->mode() == PracticeMode::test;
  QStringList keys{test ? tr("Enter: next line") : tr("Enter: check the line")};
  if (!test && set.hints) keys << tr("Ctrl+H: a hint, rung by rung");
  if (set.builder) keys << tr("Ctrl+B: build the line out of facts");
  keys << (test ? tr("Ctrl+Enter: next problem. Everything is marked when you hand it in.")
                : tr("Ctrl+Enter: done"));
  return keys.join(QStringLiteral(" · "));
}

void ProblemPage::keep() {
  if (!session_ || rows_.empty()) return;
  for (LineRow* row : rows_) session_->write(row->line(), row->text().toStdString());
  const auto seconds = static_cast<long>(clock_.elapsed() / static_cast<qint64>(milliseconds));
  if (seconds < 1) return;
  session_->spend(last_ ? last_->line() : 0, seconds);
  clock_.start();
}

LineFeedback ProblemPage::feedbackOf(const LineRow& row) const {
  const bool helps = session_->set().hints && session_->mode() == PracticeMode::learning;
  return lineFeedback(session_->current(), row.line(), helps ? Help::given : Help::none);
}

void ProblemPage::showFeedback(LineRow* pointAt) {
  for (LineRow* row : rows_) row->show(feedbackOf(*row), row == pointAt);
  for (WorkedPicture* picture : lines_->findChildren<WorkedPicture*>()) picture->setZoom(zoom_);
  applyLetters(window(), zoom_);
  orderStops();
}

/// Papers, lines, foot. Without it what is made anew for a problem would come last, and so would papers that
/// have just come to stand above the lines.
void ProblemPage::orderStops() {
  QWidget* first = nullptr;
  QWidget* last = papers_;
  for (QWidget* one = nextInFocusChain(); one != this; one = one->nextInFocusChain()) {
    if (one == papers_ || !lineScroll_->isAncestorOf(one) || !(one->focusPolicy() & Qt::TabFocus)) continue;
    if (!first) first = one;
    last = one;
  }
  QWidget* before = first ? first->previousInFocusChain() : this;
  while (before != this && (before == papers_ || before->focusPolicy() == Qt::NoFocus))
    before = before->previousInFocusChain();
  if (before != this) setTabOrder(before, papers_);
  for (QPushButton* button : {back_, skip_, more_, review_, on_}) {
    setTabOrder(last, button);
    last = button;
  }
}

void ProblemPage::uncover() {
  const PracticeProblem& shown = session_->current();
  const bool saysVerdict = std::any_of(rows_.begin(), rows_.end(), [&](const LineRow* row) {
    return shown.problem.asks[row->line()].isVerdict() && !row->text().isEmpty();
  });
  for (LineRow* row : rows_) row->setVisible(!shown.isCovered(row->line(), saysVerdict));
}

/// How the line is read, seen at once and heard when nobody types.
void ProblemPage::read(LineRow* row) {
  const LineReading reading = readingOf(session_->current().problem, row->line(), row->text().toStdString());
  row->showReading(reading);
  Announcer::of(*this).say(readingWords(reading), Announcer::Wait::whileTyping);
}

/// Whether nothing is left to be answered below it.
bool ProblemPage::isLast(const LineRow* row) const {
  const std::size_t next = row->line() + 1;
  return next >= rows_.size() || rows_[next]->isHidden();
}

/// At the last line a student reads what is said of it, and goes on with the same key.
void ProblemPage::check(LineRow* row) {
  const PracticeLine& before = session_->current().lines[row->line()];
  const bool wasRight = before.isRight() && row->text() == fromCore(before.text);
  keep();
  if (wasRight && isLast(row) && session_->mode() == PracticeMode::learning &&
      !session_->current().handedIn) {
    // the next problem takes the place of the line whose key this is: once it is done with its key
    QMetaObject::invokeMethod(this, &ProblemPage::goOn, Qt::QueuedConnection);
    return;
  }
  if (session_->mode() == PracticeMode::test || session_->current().handedIn) return focusNext(row);
  session_->check(row->line());
  showFeedback(row);
  sayOf(*row, feedbackOf(*row).spoken());
  warned_ = false;
  const bool right = session_->current().lines[row->line()].isRight();
  if (right && !isLast(row)) return focusNext(row);
  if (right) foot_->setText(goOnWords());
  reveal(row, right ? End::bottom : End::top);
}

void ProblemPage::focusNext(const LineRow* row) {
  const std::size_t next = row->line() + 1;
  const bool open = !isLast(row);
  QWidget* to = open ? rows_[next]->field() : static_cast<QWidget*>(on_);
  to->setFocus(Qt::OtherFocusReason);
  if (open) reveal(rows_[next], End::top);
}

/// A hint for a line that was not checked yet is one for the line as it stands.
void ProblemPage::climb(LineRow* row) {
  if (!row->hasHints()) return;
  keep();
  const bool wasChecked = session_->current().lines[row->line()].marked.has_value();
  if (!wasChecked) session_->check(row->line());
  session_->climb(row->line());
  showFeedback(row);
  const LineFeedback feedback = feedbackOf(*row);
  sayOf(*row, wasChecked && !feedback.rungs.empty() ? feedback.spokenRung() : feedback.spoken());
  reveal(row, End::bottom);
}

/// Its number stands first: after a right line the keyboard is at the next one.
void ProblemPage::sayOf(const LineRow& row, const QString& said) {
  announce(*this, fromCore(say(PhraseId::spoken_line,
                               {{"n", std::to_string(row.line() + 1)}, {"said", said.toStdString()}})));
}

/// Which problem it is, and its papers: a reader does not come to them by itself.
void ProblemPage::sayProblem() {
  announce(*this, progress_->text() + QStringLiteral(". ") + papers_->accessibleName());
}

void ProblemPage::build(LineRow* row) {
  if (!row->canBeBuilt() || session_->current().handedIn) return;
  keep();
  const Problem& problem = session_->current().problem;
  LineBuilder builder(problem.asks[row->line()], problem, zoom_, window(),
                      earlierAnswers(session_->current(), row->line()));
  const QPointer<LineRow> stays = row;
  const bool taken = builder.exec() == QDialog::Accepted;
  if (!stays) return;  // a button that was still going down has led to other lines
  if (taken) row->write(builder.line());
  row->field()->setFocus(Qt::OtherFocusReason);
}

int ProblemPage::linesNotRight() const {
  const auto& lines = session_->current().lines;
  return static_cast<int>(
      std::ranges::count_if(lines, [](const PracticeLine& line) { return !line.isRight(); }));
}

void ProblemPage::goOn() {
  keep();
  const bool learning = session_->mode() == PracticeMode::learning;
  if (learning && !session_->current().handedIn) {
    for (LineRow* row : rows_)
      if (!session_->current().lines[row->line()].marked && !row->text().trimmed().isEmpty())
        session_->check(row->line());
    showFeedback(nullptr);
    const int open = linesNotRight();
    if (open > 0 && !warned_) {
      warned_ = true;
      foot_->setText(
          counted(open,
                  tr("1 line is not right yet. Look at it again, or press the button once more to hand "
                     "everything in as it stands and see the worked lines."),
                  tr("%1 lines are not right yet. Look at them again, or press the button once more to hand "
                     "everything in as it stands and see the worked lines.")));
      announce(*this, foot_->text());
      return;
    }
    session_->handIn();
    if (open > 0) return show(*session_, zoom_);  // so that the worked lines are seen
  }
  Q_EMIT onwards();
}

void ProblemPage::skip() {
  keep();
  session_->skip();
  Q_EMIT onwards();
}

LineRow* ProblemPage::rowWithKeyboard() const {
  return last_ ? last_ : rows_.empty() ? nullptr : rows_.front();
}

void ProblemPage::arrange() {
  const bool beside = width() >= sideBySide * zoom_;
  if (beside == (paperScroll_->widget() != nullptr)) return;
  if (beside) {
    sheet_->removeWidget(papers_);
    paperScroll_->setWidget(papers_);
  } else {
    sheet_->insertWidget(0, paperScroll_->takeWidget());
  }
  papers_->show();
  paperScroll_->setVisible(beside);
  orderStops();
}

/// Now, and again whenever rows move: a rung that came just now has no height yet.
void ProblemPage::reveal(LineRow* row, End end) {
  revealed_ = row;
  revealedEnd_ = end;
  QTimer::singleShot(0, this, &ProblemPage::bringIntoView);
}

/// Of a line that is higher than the window one end is shown.
void ProblemPage::bringIntoView() {
  if (!revealed_) return;
  const QRect at(revealed_->mapTo(lineScroll_->widget(), QPoint(0, 0)), revealed_->size());
  const bool fits = at.height() + 2 * roomBelow <= lineScroll_->viewport()->height();
  if (fits || revealedEnd_ == End::bottom) lineScroll_->ensureVisible(0, at.bottom(), 0, roomBelow);
  if (fits || revealedEnd_ == End::top) lineScroll_->ensureVisible(0, at.top(), 0, roomBelow);
}

/// The papers are turned where they are longer than their side, otherwise what stands with the lines.
void ProblemPage::turnPage(int direction) {
  QScrollBar* papers = paperScroll_->verticalScrollBar();
  const bool longPapers = paperScroll_->isVisible() && papers->maximum() > 0;
  (longPapers ? papers : lineScroll_->verticalScrollBar())
      ->triggerAction(direction > 0 ? QScrollBar::SliderPageStepAdd : QScrollBar::SliderPageStepSub);
}

void ProblemPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

}  // namespace wardchalk::ui
