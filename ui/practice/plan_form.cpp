#include "ui/practice/plan_form.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QCheckBox>
#include <QEvent>
#include <QGridLayout>
#include <QLineEdit>
#include <QRadioButton>
#include <QRegularExpressionValidator>
#include <QSpinBox>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <algorithm>
#include <utility>

#include "core/practice/sessions/lesson_words.h"
#include "ui/access/answers.h"
#include "ui/practice/line_words.h"
#include "ui/practice/practice_look.h"
#include "ui/practice/practice_page.h"
#include "ui/practice/rules_choice.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int topicColumns = 2;

/// A number of problems. The wheel never changes it.
class CountBox : public QSpinBox {
 public:
  explicit CountBox(QWidget* parent) : QSpinBox(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setRange(1, mostProblems);
  }

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace

PlanForm::PlanForm(Reader reader, QWidget* parent) : QWidget(parent), reader_(reader) {
  cards_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
  cards_->setContentsMargins(0, 0, 0, 0);
  cards_->setSpacing(16);
  cards_->addWidget(buildTopics(), 3);
  cards_->addWidget(buildRest(), 2);
}

QWidget* PlanForm::buildTopics() {
  auto* card = new PracticeCard(this);
  QVBoxLayout* column = columnOn(card);
  const QString title = reader_ == Reader::student ? tr("What would you like to practise?")
                                                   : tr("What should the class practise?");
  column->addWidget(wordsIn(card, title, 1.15, true));
  giveRole(card, QAccessible::Grouping, title);
  topicGrid_ = new QGridLayout;
  topicGrid_->setHorizontalSpacing(24);
  topicGrid_->setVerticalSpacing(2);
  const int count = static_cast<int>(topicIds.size());
  const int rows = (count + topicColumns - 1) / topicColumns;
  for (int i = 0; i < count; ++i) {
    const auto topic = static_cast<Topic>(i);
    auto* box = new QCheckBox(capital(fromCore(topicWord(topic))), card);
    box->setObjectName(QStringLiteral("topic:") + fromCore(idOf(topic)));
    box->setMinimumHeight(practiceTarget);
    topics_.push_back(box);
    topicGrid_->addWidget(box, i % rows, i / rows);
    connect(box, &QCheckBox::toggled, this, &PlanForm::changed);
  }
  column->addLayout(topicGrid_);
  belowTopics_ = new QVBoxLayout;
  column->addLayout(belowTopics_);
  column->addStretch(1);
  return card;
}

void PlanForm::tabBelowTopics(const QList<QWidget*>& stops) {
  QWidget* last = topics_.back();
  for (QWidget* stop : stops) setTabOrder(std::exchange(last, stop), stop);
}

QWidget* PlanForm::buildRest() {
  auto* card = new PracticeCard(this);
  QVBoxLayout* column = columnOn(card);
  buildLevels(column);
  column->addSpacing(8);
  buildNumbers(column);
  more_ = new QVBoxLayout;
  column->addLayout(more_);
  column->addStretch(1);  // beside a longer card nothing here is drawn apart
  return card;
}

void PlanForm::buildLevels(QBoxLayout* column) {
  const QString title = tr("How hard should it be?");
  column->addWidget(wordsIn(this, title, 1.15, true));
  auto* group = new QWidget(this);
  giveRole(group, QAccessible::Grouping, title);
  auto* choices = new QVBoxLayout(group);
  choices->setContentsMargins(0, 0, 0, 0);
  choices->setSpacing(column->spacing());
  levels_ = new QButtonGroup(this);
  for (int level = lowestLevel; level <= highestLevel; ++level) {
    auto* choice =
        new QRadioButton(QStringLiteral("%1 – %2").arg(level).arg(fromCore(levelWord(level))), group);
    choice->setObjectName(QStringLiteral("level:%1").arg(level));
    choice->setMinimumHeight(practiceTarget - 4);
    levels_->addButton(choice, level);
    choices->addWidget(choice);
  }
  column->addWidget(group);
  levels_->button(lowestLevel)->setChecked(true);
  connect(levels_, &QButtonGroup::idClicked, this, &PlanForm::changed);
}

void PlanForm::buildNumbers(QBoxLayout* column) {
  fields_ = new QGridLayout;
  fields_->setHorizontalSpacing(12);
  fields_->setVerticalSpacing(8);
  fields_->setColumnStretch(1, 1);
  column->addLayout(fields_);
  count_ = new CountBox(this);
  count_->setObjectName(QStringLiteral("count"));
  seed_ = new QLineEdit(this);
  seed_->setObjectName(QStringLiteral("seed"));
  seed_->setMaxLength(static_cast<int>(std::to_string(greatestSeed).size()));
  seed_->setValidator(new QRegularExpressionValidator(QRegularExpression(QStringLiteral("[0-9]+")), seed_));
  addField(tr("How man&y problems?"), tr("How many problems"), count_);
  addField(tr("Set &number"), tr("Set number"), seed_);
  buildRules();
  addNote(tr("The same topics, level, house rules and number give the same problems on every computer."));
  connect(count_, &QSpinBox::valueChanged, this, &PlanForm::changed);
  connect(seed_, &QLineEdit::textEdited, this, &PlanForm::changed);
}

void PlanForm::buildRules() {
  rules_ = new RulesChoice(this);
  rules_->setObjectName(QStringLiteral("school"));
  addField(tr("House &rules"), tr("House rules"), rules_);
  QLabel* words = addNote(rules_->words());
  words->setObjectName(QStringLiteral("school-words"));
  connect(rules_, &QComboBox::currentIndexChanged, this, [this, words] {
    words->setText(rules_->words());
    Q_EMIT changed();
  });
}

void PlanForm::addField(const QString& label, const QString& name, QWidget* field) {
  const int row = fields_->rowCount();
  QLabel* words = wordsIn(this, label);
  words->setWordWrap(false);
  words->setBuddy(field);
  field->setAccessibleName(name);
  field->setMinimumHeight(practiceTarget);
  fields_->addWidget(words, row, 0);
  fields_->addWidget(field, row, 1);
}

QLabel* PlanForm::addNote(const QString& text) {
  QLabel* note = quietWordsIn(this, text);
  fields_->addWidget(note, fields_->rowCount(), 0, 1, 2);
  return note;
}

void PlanForm::setRoom(int width) {
  room_ = width;
  arrange();
}

/// Asked of each card alone, since the form itself is never narrower than both when they stand side by side.
void PlanForm::arrange() {
  int wanted = cards_->spacing();
  for (int i = 0; i < cards_->count(); ++i) wanted += cards_->itemAt(i)->widget()->minimumSizeHint().width();
  cards_->setDirection(wanted <= room_ ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

bool PlanForm::event(QEvent* event) {
  const bool done = QWidget::event(event);
  if (event->type() == QEvent::LayoutRequest && room_ > 0) arrange();  // other letters want other room
  return done;
}

PracticeSet PlanForm::plan() const {
  PracticeSet plan = rest_;
  plan.topics.clear();
  for (std::size_t i = 0; i < topics_.size(); ++i)
    if (topics_[i]->isChecked()) plan.topics.push_back(static_cast<Topic>(i));
  plan.level = levels_->checkedId();
  plan.count = count_->value();
  plan.seed = seed_->text().toULongLong();
  plan.rules = rules_->rules();
  return plan;
}

void PlanForm::setPlan(const PracticeSet& plan) {
  rest_ = plan;
  choose(plan.topics);
  levels_->button(std::clamp(plan.level, lowestLevel, highestLevel))->setChecked(true);
  count_->setValue(plan.count);
  seed_->setText(QString::number(plan.seed));
  rules_->setRules(plan.rules);
  Q_EMIT changed();
}

void PlanForm::choose(const std::vector<Topic>& topics) {
  for (std::size_t i = 0; i < topics_.size(); ++i)
    topics_[i]->setChecked(std::ranges::find(topics, static_cast<Topic>(i)) != topics.end());
}

QString PlanForm::missing() const {
  if (std::ranges::none_of(topics_, [](const QCheckBox* box) { return box->isChecked(); }))
    return tr("Choose one topic or more.");
  if (seed_->text().isEmpty()) return tr("Write a number for the set.");
  return seed_->text().toULongLong() > greatestSeed ? tr("The set number is at most %1.").arg(greatestSeed)
                                                    : QString();
}

}  // namespace wardchalk::ui
