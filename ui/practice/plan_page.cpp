#include "ui/practice/plan_page.h"

#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include "ui/access/answers.h"
#include "ui/practice/plan_form.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

PlanPage::PlanPage(QWidget* parent) : PracticePage("plan-page", parent) {
  const QString title = tr("Practise dose calculation");
  column()->addWidget(wordsIn(inside(), title, 1.6, true));
  setAccessibleName(title);
  column()->addWidget(
      wordsIn(inside(),
              tr("Children and medicines here are invented, so a mistake here harms nobody. Take "
                 "your time. Nothing is kept unless you save it."),
              1.05));
  form_ = new PlanForm(PlanForm::Reader::student, inside());
  column()->addWidget(form_);
  buildMode();
  column()->addStretch(1);
  missing_ = quietWordsIn(inside(), {});
  missing_->setObjectName(QStringLiteral("plan-missing"));
  missing_->setAlignment(Qt::AlignRight);
  column()->addWidget(missing_);
  column()->addWidget(buildFoot());
  connect(form_, &PlanForm::changed, this, &PlanPage::tellWhatIsMissing);
  setPlan({});
}

void PlanPage::buildMode() {
  auto* holder = new QWidget(form_);
  auto* column = new QVBoxLayout(holder);
  column->setContentsMargins(0, 6, 0, 0);
  column->setSpacing(2);
  const QString title = tr("Learn, or be tested?");
  giveRole(holder, QAccessible::Grouping, title);
  column->addWidget(wordsIn(holder, title, 1.15, true));
  learning_ = new QRadioButton(tr("&Learn: check each line, with hints"), holder);
  learning_->setObjectName(QStringLiteral("mode:learning"));
  test_ = new QRadioButton(tr("&Test: hand in everything at the end"), holder);
  test_->setObjectName(QStringLiteral("mode:test"));
  learning_->setChecked(true);
  for (QRadioButton* button : {learning_, test_}) {
    button->setMinimumHeight(practiceTarget - 4);
    column->addWidget(button);
  }
  form_->more()->addWidget(holder);
}

QWidget* PlanPage::buildFoot() {
  auto* foot = new QWidget(inside());
  auto* flow = new FlowLayout(foot);
  QPushButton* open = addButton(flow, tr("&Open a set …"), "open-set");
  QPushButton* make = addButton(flow, tr("For preceptors: &make a set …"), "make-set");
  flow->pushRight();
  begin_ = addButton(flow, tr("&Begin"), "begin");
  begin_->setMinimumSize(160, 48);
  setLetters(begin_, 1.2, true);
  connect(open, &QPushButton::clicked, this, &PlanPage::openWanted);
  connect(make, &QPushButton::clicked, this, &PlanPage::makeSetWanted);
  connect(begin_, &QPushButton::clicked, this, &PlanPage::begun);
  return foot;
}

void PlanPage::tellWhatIsMissing() {
  missing_->setText(form_->missing());
  begin_->setEnabled(form_->missing().isEmpty());
}

void PlanPage::setPlan(const PracticeSet& plan) { form_->setPlan(plan); }

void PlanPage::arrange(int room) { form_->setRoom(room); }

PracticeSet PlanPage::plan() const { return form_->plan(); }

PracticeMode PlanPage::mode() const {
  return test_->isChecked() ? PracticeMode::test : PracticeMode::learning;
}

}  // namespace wardchalk::ui
