#include "ui/practice/terms_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSpinBox>
#include <QWheelEvent>

#include "ui/access/answers.h"
#include "ui/practice/practice_look.h"

namespace wardchalk::ui {

namespace {

/// Places in the list of modes.
constexpr int openMode = 0;
constexpr int learnMode = 1;
constexpr int testMode = 2;

constexpr int boxColumns = 2;

/// Boxes that the wheel never changes.
class StillSpinBox : public QSpinBox {
 public:
  using QSpinBox::QSpinBox;

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

class StillComboBox : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

int modePlace(const std::optional<PracticeMode>& mode) {
  if (!mode) return openMode;
  return *mode == PracticeMode::learning ? learnMode : testMode;
}

void addLabelled(QGridLayout* grid, const QString& text, const QString& name, const char* id,
                 QWidget* field) {
  const int row = grid->rowCount();
  QLabel* label = wordsIn(grid->parentWidget(), text);
  label->setWordWrap(false);
  label->setBuddy(field);
  field->setObjectName(QLatin1String(id));
  field->setAccessibleName(name);
  field->setMinimumHeight(practiceTarget);
  field->setFocusPolicy(Qt::StrongFocus);
  grid->addWidget(label, row, 0);
  grid->addWidget(field, row, 1);
}

}  // namespace

TermsForm::TermsForm(QWidget* parent)
    : QWidget(parent), mode_(new StillComboBox(this)), minutes_(new StillSpinBox(this)) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 6, 0, 0);
  grid->setHorizontalSpacing(12);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(1, 1);
  const QString title = tr("What is fixed for the class?");
  giveRole(this, QAccessible::Grouping, title);
  grid->addWidget(wordsIn(this, title, 1.15, true), 0, 0, 1, 2);
  mode_->addItems({tr("the student chooses"), tr("learn"), tr("test")});
  mode_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  minutes_->setRange(0, mostMinutes);
  minutes_->setSpecialValueText(tr("no limit"));
  addLabelled(grid, tr("&Learn or test"), tr("Learn or test"), "set-mode", mode_);
  addLabelled(grid, tr("&Minutes"), tr("Minutes"), "set-minutes", minutes_);
  boxes_ = new QGridLayout;
  boxes_->setHorizontalSpacing(24);
  boxes_->setVerticalSpacing(2);
  grid->addLayout(boxes_, grid->rowCount(), 0, 1, 2);
  builder_ = addBox(tr("&with the line builder"), "set-builder");
  hints_ = addBox(tr("with h&ints, while learning"), "set-hints");
  units_ = addBox(tr("an answer needs its &unit"), "set-units");
  reason_ = addBox(tr("a &verdict needs its reason"), "set-reason");
  setTerms({});
}

QList<QWidget*> TermsForm::stops() const { return {mode_, minutes_, builder_, hints_, units_, reason_}; }

QCheckBox* TermsForm::addBox(const QString& text, const char* name) {
  auto* box = new QCheckBox(text, this);
  box->setObjectName(QLatin1String(name));
  box->setMinimumHeight(practiceTarget - 4);
  boxes_->addWidget(box, boxes_->count() / boxColumns, boxes_->count() % boxColumns);
  return box;
}

void TermsForm::setTerms(const PracticeSet& set) {
  mode_->setCurrentIndex(modePlace(set.mode));
  minutes_->setValue(set.minutes.value_or(0));
  builder_->setChecked(set.builder);
  hints_->setChecked(set.hints);
  units_->setChecked(set.wantsUnits);
  reason_->setChecked(set.wantsReason);
}

void TermsForm::writeInto(PracticeSet& set) const {
  set.mode.reset();
  if (mode_->currentIndex() == learnMode) set.mode = PracticeMode::learning;
  if (mode_->currentIndex() == testMode) set.mode = PracticeMode::test;
  set.minutes = minutes_->value() > 0 ? std::optional(minutes_->value()) : std::nullopt;
  set.builder = builder_->isChecked();
  set.hints = hints_->isChecked();
  set.wantsUnits = units_->isChecked();
  set.wantsReason = reason_->isChecked();
}

}  // namespace wardchalk::ui
