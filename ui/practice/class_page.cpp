#include "ui/practice/class_page.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include "core/practice/sessions/lesson_words.h"
#include "core/practice/sessions/seat_code.h"
#include "ui/access/announcer.h"
#include "ui/access/answers.h"
#include "ui/practice/line_words.h"
#include "ui/practice/practice_look.h"
#include "ui/practice/rules_choice.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

QString topicsInWords(const PracticeSet& set) {
  QStringList topics;
  for (const Topic topic : set.topics) topics << fromCore(topicWord(topic));
  return capital(topics.join(QStringLiteral("; ")));
}

QString helpInWords(const PracticeSet& set) {
  const QString builder =
      set.builder ? ClassPage::tr("With the line builder") : ClassPage::tr("Without the line builder");
  if (set.mode == PracticeMode::test) return builder + u'.';
  return (set.hints ? ClassPage::tr("%1, with hints.") : ClassPage::tr("%1, without hints.")).arg(builder);
}

QString modeInWords(PracticeMode mode) {
  return mode == PracticeMode::test ? ClassPage::tr("Test: everything is marked when it is handed in.")
                                    : ClassPage::tr("Learning: each line can be checked as it is written.");
}

}  // namespace

QStringList termsInWords(const PracticeSet& set) {
  QStringList terms;
  terms << ClassPage::tr("%1, level %2: %3.")
               .arg(counted(set.count, ClassPage::tr("1 problem"), ClassPage::tr("%1 problems")))
               .arg(set.level)
               .arg(fromCore(levelWord(set.level)));
  terms << topicsInWords(set) + u'.';
  if (set.mode) terms << modeInWords(*set.mode);
  terms << helpInWords(set);
  terms << (set.minutes
                ? counted(*set.minutes, ClassPage::tr("Time: 1 minute."), ClassPage::tr("Time: %1 minutes."))
                : ClassPage::tr("No time limit."));
  if (set.wantsUnits) terms << ClassPage::tr("An answer is right only with its unit.");
  if (set.wantsReason) terms << ClassPage::tr("A verdict needs its reason.");
  terms << ClassPage::tr("House rules: %1.").arg(rulesInWords(set.rules));
  terms << ClassPage::tr("Set %1, mark %2.").arg(set.seed).arg(fromCore(setMark(set)));
  return terms;
}

ClassPage::ClassPage(QWidget* parent) : PracticePage("class-page", parent) {
  title_ = wordsIn(inside(), {}, 1.6, true);
  title_->setObjectName(QStringLiteral("sheet-title"));
  column()->addWidget(title_);
  column()->addWidget(buildTerms());
  column()->addWidget(buildSeat());
  column()->addStretch(1);
  column()->addWidget(buildFoot());
  judgeSeat();
}

QWidget* ClassPage::buildTerms() {
  auto* card = new PracticeCard(inside());
  QVBoxLayout* column = columnOn(card);
  const QString title = ClassPage::tr("What your teacher has set");
  giveRole(card, QAccessible::Grouping, title);
  column->addWidget(wordsIn(card, title, 1.15, true));
  terms_ = wordsIn(card, {});
  terms_->setObjectName(QStringLiteral("sheet-terms"));
  column->addWidget(terms_);
  column->addWidget(buildMode());
  return card;
}

QWidget* ClassPage::buildMode() {
  modes_ = new QWidget(inside());
  auto* column = new QVBoxLayout(modes_);
  column->setContentsMargins(0, 6, 0, 0);
  column->setSpacing(2);
  giveRole(modes_, QAccessible::Grouping, ClassPage::tr("Learn, or be tested?"));
  learning_ = new QRadioButton(ClassPage::tr("&Learn: check each line"), modes_);
  learning_->setObjectName(QStringLiteral("sheet-mode:learning"));
  test_ = new QRadioButton(ClassPage::tr("&Test: hand in everything at the end"), modes_);
  test_->setObjectName(QStringLiteral("sheet-mode:test"));
  for (QRadioButton* button : {learning_, test_}) {
    button->setMinimumHeight(practiceTarget - 4);
    column->addWidget(button);
  }
  return modes_;
}

QWidget* ClassPage::buildSeat() {
  auto* card = new PracticeCard(inside());
  QVBoxLayout* column = columnOn(card);
  QLabel* label = wordsIn(card, ClassPage::tr("Your &seat code"), 1.15, true);
  column->addWidget(label);
  seat_ = new QLineEdit(card);
  seat_->setObjectName(QStringLiteral("seat"));
  seat_->setAccessibleName(ClassPage::tr("Seat code"));
  seat_->setPlaceholderText(ClassPage::tr("letters and digits, such as A7; never a name"));
  seat_->setMinimumHeight(practiceTarget + 4);
  setLetters(seat_, 1.12);
  label->setBuddy(seat_);
  column->addWidget(seat_);
  wrong_ = wordsIn(card, {}, 0.94);
  wrong_->setObjectName(QStringLiteral("seat-words"));
  column->addWidget(wrong_);
  connect(seat_, &QLineEdit::textChanged, this, &ClassPage::judgeSeat);
  connect(seat_, &QLineEdit::returnPressed, this, &ClassPage::beginIfSeated);
  return card;
}

QWidget* ClassPage::buildFoot() {
  auto* foot = new QWidget(inside());
  auto* flow = new FlowLayout(foot);
  QPushButton* back = addButton(flow, ClassPage::tr("&Back"), "sheet-back");
  flow->pushRight();
  begin_ = addButton(flow, ClassPage::tr("Be&gin"), "sheet-begin");
  begin_->setMinimumSize(160, 48);
  setLetters(begin_, 1.2, true);
  connect(back, &QPushButton::clicked, this, &ClassPage::backWanted);
  connect(begin_, &QPushButton::clicked, this, &ClassPage::beginIfSeated);
  return foot;
}

void ClassPage::show(const PracticeSet& set) {
  set_ = set;
  title_->setText(set.title.empty() ? ClassPage::tr("A set of your class") : outside(set.title));
  setAccessibleName(loosed(title_->text()));
  QStringList lines;
  for (const QString& line : termsInWords(set)) lines << held(line.toStdString());
  terms_->setText(lines.join(u'\n'));
  modes_->setVisible(!set.mode);
  learning_->setChecked(true);
  seat_->clear();
  seat_->setFocus(Qt::OtherFocusReason);
  announce(*this, title_->text() + QStringLiteral(". ") + lines.join(u' '));
}

PracticeMode ClassPage::mode() const {
  if (set_.mode) return *set_.mode;
  return test_->isChecked() ? PracticeMode::test : PracticeMode::learning;
}

std::string ClassPage::seat() const { return seat_->text().toStdString(); }

/// What is allowed, and once something else is written, that it is not.
void ClassPage::judgeSeat() {
  const bool seated = isSeatCode(seat());
  const QString allowed = ClassPage::tr(
      "1 to 8 letters (A to Z), digits or hyphens, with at least one digit. It stands in your results; "
      "never write a name.");
  wrong_->setText(
      seated || seat_->text().isEmpty()
          ? allowed
          : ClassPage::tr("This is no seat code. Write the one that your teacher gave you: 1 to 8 "
                          "letters (A to Z), digits or hyphens, with at least one digit."));
  seat_->setAccessibleDescription(wrong_->text());
  begin_->setEnabled(seated);
  if (!seated && !seat_->text().isEmpty())
    Announcer::of(*this).say(wrong_->text(), Announcer::Wait::whileTyping);
}

void ClassPage::beginIfSeated() {
  if (isSeatCode(seat())) Q_EMIT begun();
}

}  // namespace wardchalk::ui
