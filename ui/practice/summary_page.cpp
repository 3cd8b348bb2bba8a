#include "ui/practice/summary_page.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/practice/sessions/lesson_words.h"
#include "ui/practice/line_words.h"
#include "ui/practice/mistake_bars.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// Kind, and true.
QString titleOf(const LineTally& lines) {
  if (lines.lines == 0) return SummaryPage::tr("That is all for now");
  if (lines.atOnce == lines.lines) return SummaryPage::tr("Everything right first time: well worked");
  if (lines.inTheEnd == lines.lines) return SummaryPage::tr("Everything right in the end: well worked");
  return SummaryPage::tr("Done. Here is what went well, and what to look at next");
}

}  // namespace

SummaryPage::SummaryPage(QWidget* parent) : PracticePage("summary-page", parent) {
  title_ = wordsIn(inside(), {}, 1.5, true);
  title_->setObjectName(QStringLiteral("summary-title"));
  column()->addWidget(title_);
  sheet_ = wordsIn(inside(), {}, 1.05);
  sheet_->setObjectName(QStringLiteral("summary-sheet"));
  column()->addWidget(sheet_);
  auto* sides = new QHBoxLayout;
  sides->setSpacing(16);
  sides->addWidget(buildResults(), 1, Qt::AlignTop);
  sides->addWidget(buildMistakes(), 1, Qt::AlignTop);
  column()->addLayout(sides);
  column()->addStretch(1);
  column()->addWidget(buildFoot());
}

QWidget* SummaryPage::buildResults() {
  auto* card = new PracticeCard(inside());
  QVBoxLayout* column = columnOn(card);
  lines_ = wordsIn(card, {}, 1.15, true);
  lines_->setObjectName(QStringLiteral("summary-lines"));
  column->addWidget(lines_);
  topics_ = new QWidget(card);
  topicGrid_ = new QGridLayout(topics_);
  topicGrid_->setContentsMargins(0, 0, 0, 0);
  topicGrid_->setHorizontalSpacing(16);
  topicGrid_->setColumnStretch(0, 1);
  column->addWidget(topics_);
  return card;
}

QWidget* SummaryPage::buildMistakes() {
  auto* card = new PracticeCard(inside());
  QVBoxLayout* column = columnOn(card);
  column->addWidget(wordsIn(card, tr("What to look at again"), 1.15, true));
  noMistakes_ = wordsIn(card, tr("No mistake was made that is known by a name."));
  column->addWidget(noMistakes_);
  bars_ = new MistakeBars(card);
  column->addWidget(bars_);
  nextWords_ = wordsIn(card, {}, 1.05);
  nextWords_->setObjectName(QStringLiteral("summary-next"));
  column->addWidget(nextWords_);
  nextButton_ = plainButton(tr("&Practise that next"), "practise-next", card, practiceTarget);
  column->addWidget(nextButton_, 0, Qt::AlignLeft);
  connect(nextButton_, &QPushButton::clicked, this, [this] {
    if (next_) Q_EMIT nextWanted(*next_);
  });
  return card;
}

QWidget* SummaryPage::buildFoot() {
  auto* foot = new QWidget(inside());
  auto* flow = new FlowLayout(foot);
  const auto add = [&](const QString& text, const char* name, auto signal) {
    QPushButton* button = addButton(flow, text, name);
    connect(button, &QPushButton::clicked, this, signal);
    return button;
  };
  add(tr("&Look at the problems"), "look-again", &SummaryPage::lookWanted);
  save_ = add(tr("Save &results for a spreadsheet …"), "save-results", &SummaryPage::saveWanted);
  flow->pushRight();
  again_ = add(tr("Same &set again"), "same-again", &SummaryPage::againWanted);
  add(tr("Choose something &else"), "new-practice", &SummaryPage::newWanted);
  return foot;
}

QString SummaryPage::said() const { return title_->text() + QStringLiteral(". ") + lines_->text(); }

/// Whose results they are, and of which set: what a teacher asks for.
void SummaryPage::tellSheet(const PracticeSet& set, const std::string& seat) {
  sheet_->setVisible(!seat.empty());
  again_->setVisible(seat.empty());
  const QString title = set.title.empty() ? tr("A set of your class") : outside(set.title);
  sheet_->setText(tr("%1 · seat %2 · set mark %3. Save the results for your teacher.")
                      .arg(title, fromCore(seat), fromCore(setMark(set))));
}

void SummaryPage::show(const PracticeSession& session, const std::string& seat, double zoom) {
  const SessionTally tally = tallyOf(session);
  title_->setText(titleOf(tally.lines));
  setAccessibleName(title_->text());
  QString lines = tr("%1 of %2 lines right first time, %3 of %2 in the end.")
                      .arg(tally.lines.atOnce)
                      .arg(tally.lines.lines)
                      .arg(tally.lines.inTheEnd);
  if (tally.skipped > 0)
    lines += u' ' + counted(tally.skipped, tr("1 problem left aside."), tr("%1 problems left aside."));
  lines_->setText(lines);
  fillTopics(tally);
  bars_->setScale(zoom * 1.05);
  bars_->show(tally.mistakes);
  bars_->setVisible(!tally.mistakes.empty());
  noMistakes_->setVisible(tally.mistakes.empty());
  tellNext(tally);
  tellSheet(session.set(), seat);
  applyLetters(window(), zoom);
  ensureVisible(0, 0);
  QPushButton* first = !seat.empty() ? save_ : nextButton_->isHidden() ? again_ : nextButton_;
  first->setFocus(Qt::OtherFocusReason);
}

void SummaryPage::fillTopics(const SessionTally& tally) {
  empty(topicGrid_);
  const auto put = [&](int row, int column, const QString& text, bool heading) {
    QLabel* label = heading ? quietWordsIn(topics_, text) : wordsIn(topics_, text);
    label->setWordWrap(column == 0);
    if (column > 0) label->setAlignment(Qt::AlignRight | Qt::AlignTop);
    topicGrid_->addWidget(label, row, column);
  };
  put(0, 0, tr("Topic"), true);
  put(0, 1, tr("Right first time"), true);
  put(0, 2, tr("Right in the end"), true);
  int row = 1;
  for (const TopicTally& topic : tally.topics) {
    put(row, 0, capital(fromCore(topicWord(topic.topic))), false);
    put(row, 1, tr("%1 of %2").arg(topic.lines.atOnce).arg(topic.lines.lines), false);
    put(row, 2, tr("%1 of %2").arg(topic.lines.inTheEnd).arg(topic.lines.lines), false);
    ++row;
  }
  topics_->setVisible(!tally.topics.empty());
}

void SummaryPage::tellNext(const SessionTally& tally) {
  next_ = tally.next;
  nextButton_->setVisible(next_.has_value());
  if (next_)
    nextWords_->setText(tr("Next, this would help you most: %1.").arg(fromCore(topicWord(*next_))));
  else
    nextWords_->setText(tr("Try the next level, or another topic."));
}

}  // namespace wardchalk::ui
