#include "ui/practice/review_page.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/practice/sessions/lesson_words.h"
#include "ui/practice/line_words.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// What stands in a line; that nothing does is said quietly, with an open circle before it.
QLabel* writtenIn(QWidget* card, const PracticeLine& line) {
  const QString text = fromCore(line.text).trimmed();
  if (!text.isEmpty()) return wordsIn(card, outside(text));
  QLabel* label = quietWordsIn(card, ReviewPage::tr("○ nothing written yet"));
  label->setAccessibleName(ReviewPage::tr("nothing written yet"));
  return label;
}

int blanksIn(const PracticeProblem& problem) {
  int blanks = 0;
  for (const PracticeLine& line : problem.lines) blanks += fromCore(line.text).trimmed().isEmpty() ? 1 : 0;
  return problem.skipped ? 0 : blanks;
}

}  // namespace

ReviewPage::ReviewPage(QWidget* parent) : PracticePage("review-page", parent) {
  column()->addWidget(wordsIn(inside(), tr("Look it over before you hand it in"), 1.5, true));
  open_ = wordsIn(inside(), {}, 1.05);
  open_->setObjectName(QStringLiteral("review-open"));
  column()->addWidget(open_);
  list_ = new QVBoxLayout;
  list_->setSpacing(12);
  column()->addLayout(list_);
  column()->addStretch(1);
  handIn_ = plainButton(tr("&Hand everything in"), "hand-in", inside(), practiceTarget);
  handIn_->setMinimumSize(220, 48);
  setLetters(handIn_, 1.15, true);
  column()->addWidget(handIn_, 0, Qt::AlignRight);
  connect(handIn_, &QPushButton::clicked, this, &ReviewPage::handedIn);
}

void ReviewPage::show(const PracticeSession& session, double zoom) {
  empty(list_);
  int blanks = 0;
  for (std::size_t i = 0; i < session.count(); ++i) {
    blanks += blanksIn(session.at(i));
    addProblem(session, i);
  }
  open_->setText(
      blanks == 0
          ? tr("Every line has something in it. You can still change any of them.")
          : counted(
                blanks, tr("1 line is still empty. You can go back to it, or hand everything in as it is."),
                tr("%1 lines are still empty. You can go back to them, or hand everything in as it is.")));
  applyLetters(window(), zoom);
  ensureVisible(0, 0);
  // not on the button that hands in: a key pressed once too often should not end a test
  auto* first = widget()->findChild<QPushButton*>(QStringLiteral("review-go-1"));
  (first ? first : handIn_)->setFocus(Qt::OtherFocusReason);
}

void ReviewPage::addProblem(const PracticeSession& session, std::size_t place) {
  const PracticeProblem& shown = session.at(place);
  auto* card = new PracticeCard(widget());
  auto* grid = new QGridLayout(card);
  grid->setContentsMargins(20, 12, 20, 12);
  grid->setHorizontalSpacing(20);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(0, 2);
  grid->setColumnStretch(1, 3);
  const QString title = tr("Problem %1").arg(place + 1);
  grid->addWidget(wordsIn(card, shown.skipped ? tr("%1 (left aside)").arg(title) : title, 1.1, true), 0, 0, 1,
                  2);
  auto* go = plainButton(tr("Change it"), "", card, practiceTarget);
  go->setObjectName(QStringLiteral("review-go-%1").arg(place + 1));
  go->setAccessibleName(tr("Change problem %1").arg(place + 1));
  grid->addWidget(go, 0, 2);
  connect(go, &QPushButton::clicked, this, [this, place] { Q_EMIT problemWanted(static_cast<int>(place)); });
  for (std::size_t i = 0; i < shown.lines.size(); ++i) {
    const int row = static_cast<int>(i) + 1;
    grid->addWidget(quietWordsIn(card, held(lineQuestion(shown.problem.asks[i], shown.problem))), row, 0);
    grid->addWidget(writtenIn(card, shown.lines[i]), row, 1);
  }
  list_->addWidget(card);
  card->show();  // at once, and not when the events are next looked at: the keyboard is on its way
  setTabOrder(go, handIn_);
}

}  // namespace wardchalk::ui
