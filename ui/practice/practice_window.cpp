#include "ui/practice/practice_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDate>
#include <QLabel>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "core/practice/sessions/session_tally.h"
#include "core/record/text_file.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/access/announcer.h"
#include "ui/access/answers.h"
#include "ui/practice/class_page.h"
#include "ui/practice/plan_page.h"
#include "ui/practice/practice_look.h"
#include "ui/practice/problem_page.h"
#include "ui/practice/review_page.h"
#include "ui/practice/set_page.h"
#include "ui/practice/summary_page.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/native_path.h"
#include "ui/theme/text.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui {

namespace {

constexpr QSize practiceSize(1180, 720);
constexpr int practiceZoomStep = 10;

PracticeSet firstSet(std::uint64_t seed) {
  PracticeSet set;
  set.seed = seed;
  set.count = 5;
  set.rules = classroomRules();  // pounds as a class works them
  return set;
}

}  // namespace

PracticeWindow::PracticeWindow(Questions& questions, PaperSize paper, std::uint64_t firstSeed, int zoom,
                               QWidget* parent)
    : QWidget(parent, Qt::Window),
      questions_(questions),
      nextSeed_(firstSeed),
      zoom_(zoom),
      pages_(new QStackedWidget(this)),
      plan_(new PlanPage(pages_)),
      sheet_(new ClassPage(pages_)),
      problem_(new ProblemPage(pages_)),
      review_(new ReviewPage(pages_)),
      summary_(new SummaryPage(pages_)),
      set_(new SetPage(questions, paper, pages_)) {
  setObjectName(QStringLiteral("practice-window"));
  giveRole(this, QAccessible::Window);
  giveRole(pages_, QAccessible::Client);  // or a reader says "layered pane"
  setWindowTitle(tr("PRACTICE – Wardchalk"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(new PracticeBand(fromCore(say(PhraseId::practiceSheet_banner)), this));
  for (QWidget* page : std::initializer_list<QWidget*>{plan_, sheet_, problem_, review_, summary_, set_})
    pages_->addWidget(page);
  column->addWidget(pages_, 1);
  QLabel* caution = quietWordsIn(this, fromCore(say(PhraseId::practice_invented)));
  caution->setObjectName(QStringLiteral("practice-caution"));
  caution->setAlignment(Qt::AlignCenter);
  caution->setContentsMargins(16, 4, 16, 6);
  column->addWidget(caution);
  new FocusRing(this);
  connectPages();
  bindKeys();
  applyScheme();
  resize(practiceSize);
  showPlan(firstSet(nextSeed_));
}

PracticeWindow::~PracticeWindow() = default;

bool belongsToPractice(const QWidget* widget) {
  for (; widget; widget = widget->parentWidget())
    if (qobject_cast<const PracticeWindow*>(widget)) return true;
  return false;
}

void PracticeWindow::connectPages() {
  connect(plan_, &PlanPage::begun, this, [this] { begin(withoutTerms(plan_->plan()), plan_->mode()); });
  connect(sheet_, &ClassPage::begun, this, [this] { begin(sheet_->set(), sheet_->mode(), sheet_->seat()); });
  connect(sheet_, &ClassPage::backWanted, this, [this] { showPlan(plan_->plan()); });
  connect(plan_, &PlanPage::openWanted, this, &PracticeWindow::openSet);
  connect(plan_, &PlanPage::makeSetWanted, this, &PracticeWindow::makeSet);
  connect(set_, &SetPage::paperChosen, this, &PracticeWindow::paperChosen);
  connect(set_, &SetPage::backWanted, this, [this] { showPlan(set_->plan()); });
  connect(problem_, &ProblemPage::onwards, this, &PracticeWindow::onwards);
  connect(problem_, &ProblemPage::back, this, &PracticeWindow::back);
  connect(problem_, &ProblemPage::oneMoreWanted, this, &PracticeWindow::oneMore);
  connect(problem_, &ProblemPage::reviewWanted, this, &PracticeWindow::showReview);
  connect(review_, &ReviewPage::problemWanted, this, [this](int place) {
    session_->goTo(static_cast<std::size_t>(place));
    session_->takeUp();
    showProblem(session_->place());
  });
  connect(review_, &ReviewPage::handedIn, this, [this] {
    session_->handIn();
    showSummary();
  });
  connect(summary_, &SummaryPage::saveWanted, this, &PracticeWindow::saveResults);
  connect(summary_, &SummaryPage::againWanted, this, [this] { begin(session_->set(), session_->mode()); });
  connect(summary_, &SummaryPage::newWanted, this, [this] {
    if (!mayLeave()) return;
    PracticeSet fresh = withoutTerms(session_->set());
    fresh.seed = ++nextSeed_;
    showPlan(fresh);
  });
  connect(summary_, &SummaryPage::lookWanted, this, [this] { showProblem(0); });
  connect(summary_, &SummaryPage::nextWanted, this, &PracticeWindow::practise);
}

void PracticeWindow::bindKeys() {
  const auto bind = [this](const char* keys, auto what) {
    auto* shortcut = new QShortcut(QKeySequence(QLatin1String(keys), QKeySequence::PortableText), this);
    connect(shortcut, &QShortcut::activated, this, what);
  };
  const auto choose = [this](int percent) {
    setZoom(percent);
    Q_EMIT textSizeChosen(zoom_);
  };
  bind("Ctrl++", [this, choose] { choose(zoom_ + practiceZoomStep); });
  bind("Ctrl+=", [this, choose] { choose(zoom_ + practiceZoomStep); });
  bind("Ctrl+-", [this, choose] { choose(zoom_ - practiceZoomStep); });
  bind("Ctrl+0", [choose] { choose(100); });
  bind("Ctrl+W", [this] { close(); });
  bind("F3", [this] { Announcer::of(*this).again(); });
}

void PracticeWindow::setZoom(int percent) {
  const int zoomed = std::clamp(percent, WorkingPane::leastZoom, WorkingPane::mostZoom);
  if (zoomed == zoom_) return;
  zoom_ = zoomed;
  applyLetters(this, zoom());
  if (pages_->currentWidget() == problem_) {
    problem_->keep();
    problem_->show(*session_, zoom());
  }
  if (pages_->currentWidget() == summary_) summary_->show(*session_, seat_, zoom());
}

void PracticeWindow::setPaper(PaperSize size) { set_->setPaper(size); }

void PracticeWindow::applyScheme() { setPalette(practiceWidgets(QApplication::palette())); }

/// The desktop's change of colours comes to a window itself, and never as `changeEvent` (Qt 6.4).
bool PracticeWindow::event(QEvent* event) {
  const bool done = QWidget::event(event);
  if (event->type() == QEvent::ApplicationPaletteChange) {
    applyScheme();
    applyLetters(this, zoom());
  }
  return done;
}

void PracticeWindow::showPlan(const PracticeSet& set) {
  plan_->setPlan(set);
  pages_->setCurrentWidget(plan_);
  applyLetters(this, zoom());
}

void PracticeWindow::openSet() {
  const QString file = questions_.file(this, openSetQuestion());
  if (file.isEmpty()) return;
  if (const auto set = openSetFile(file, questions_, this)) showSheet(*set);
}

void PracticeWindow::showSheet(const PracticeSet& set) {
  pages_->setCurrentWidget(sheet_);
  sheet_->show(set);
  applyLetters(this, zoom());
}

void PracticeWindow::makeSet() {
  set_->setPlan(plan_->plan());
  pages_->setCurrentWidget(set_);
  applyLetters(this, zoom());
}

void PracticeWindow::begin(PracticeSet set, PracticeMode mode, std::string seat) {
  if (!mayLeave()) return;
  problem_->leave();
  problem_->begin(set, seat);
  seat_ = std::move(seat);
  saved_ = false;
  session_ = std::make_unique<PracticeSession>(std::move(set), mode);
  showProblem(0);
}

void PracticeWindow::showProblem(std::size_t place) {
  session_->goTo(place);
  pages_->setCurrentWidget(problem_);
  problem_->show(*session_, zoom());
}

void PracticeWindow::showReview() {
  pages_->setCurrentWidget(review_);
  review_->show(*session_, zoom());
}

void PracticeWindow::showSummary() {
  problem_->end();
  pages_->setCurrentWidget(summary_);
  summary_->show(*session_, seat_, zoom());
  announce(*this, summary_->said());
}

void PracticeWindow::onwards() {
  if (session_->place() + 1 < session_->count()) return showProblem(session_->place() + 1);
  const bool isTest = session_->mode() == PracticeMode::test;
  if (isTest && !session_->isOver()) return showReview();
  showSummary();
}

void PracticeWindow::back() {
  if (session_->place() > 0) showProblem(session_->place() - 1);
}

void PracticeWindow::oneMore() {
  session_->oneMore();
  showProblem(session_->place() + 1);
}

void PracticeWindow::practise(Topic topic) {
  PracticeSet set = withoutTerms(session_->set());
  set.topics = {topic};
  set.seed = ++nextSeed_;
  begin(std::move(set), PracticeMode::learning);
}

void PracticeWindow::saveResults() {
  const QString proposed =
      seat_.empty() ? tr("practice-results.csv") : tr("practice-results-%1.csv").arg(fromCore(seat_));
  const QString file = questions_.file(
      this, {FileQuestion::save, tr("Save results for a spreadsheet"), tr("Tables (*.csv)"), proposed});
  if (file.isEmpty()) return;
  const std::string today = QDate::currentDate().toString(Qt::ISODate).toStdString();
  const auto written = writeTextFile(nativePath(file), sessionTable(*session_, {seat_, today}));
  saved_ = static_cast<bool>(written);
  if (!written) questions_.tell(this, tr("The results were not saved"), refusedFile(file, written.refusal()));
}

/// A problem page that was begun holds answers that would be gone.
bool PracticeWindow::isUnfinished() const {
  const bool underWay = pages_->currentWidget() == problem_ || pages_->currentWidget() == review_;
  if (!underWay || session_->isOver()) return false;
  for (std::size_t i = 0; i < session_->count(); ++i)
    if (session_->isMade(i) && std::ranges::any_of(session_->at(i).lines, [](const PracticeLine& line) {
          return !line.text.empty();
        }))
      return true;
  return false;
}

/// A teacher waits for the results of a seat.
bool PracticeWindow::isUnsaved() const { return !seat_.empty() && !saved_ && session_->isOver(); }

bool PracticeWindow::mayLeave() {
  if (!session_) return true;
  problem_->keep();
  if (isUnfinished())
    return questions_.goesOn(
        this, {tr("Practice"), tr("Practice is not finished, and nothing of it is kept. Leave it?"),
               tr("&Go on practising"), tr("&Leave it")});
  if (!isUnsaved()) return true;
  saved_ = questions_.goesOn(  // who leaves them is not asked again
      this, {tr("Practice"), tr("The results of seat %1 are not saved. Leave them?").arg(fromCore(seat_)),
             tr("&Go back to them"), tr("&Leave them")});
  return saved_;
}

void PracticeWindow::closeEvent(QCloseEvent* event) {
  if (mayLeave())
    event->accept();
  else
    event->ignore();
}

}  // namespace wardchalk::ui
