#include "ui/record/rules_editor.h"

#include <QApplication>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "core/record/rules_examples.h"
#include "core/record/rules_file.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/rules_words.h"
#include "core/words/sentences.h"
#include "ui/access/announcer.h"
#include "ui/form/choice_box.h"
#include "ui/form/quiet_line.h"
#include "ui/record/rows_page.h"
#include "ui/record/rule_row.h"
#include "ui/record/rules_table.h"
#include "ui/record/syringe_table.h"
#include "ui/theme/buttons.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/target.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int usualHeight = 700;

QLabel* heading(const QString& text, QWidget* parent) {
  auto* label = new PlainLabel(text, parent);
  shareLetters(label, 1.15, true);
  return label;
}

}  // namespace

RulesEditor::RulesEditor(HouseRules rules, QWidget* parent) : QDialog(parent), rules_(std::move(rules)) {
  setAttribute(Qt::WA_DeleteOnClose);
  setObjectName(QStringLiteral("rules-editor"));
  setWindowTitle(tr("House rules"));
  build();
  const QSize wanted(RuleRow::usualWidth(fontMetrics()), usualHeight);
  resize(wanted.boundedTo(parent ? parent->size() : wanted));
  showExamples();
}

void RulesEditor::build() {
  auto* column = new QVBoxLayout(this);
  auto* about = new PlainLabel(
      tr("Where references disagree, the ward decides. Each example is worked out by the rules as they "
         "are here; they apply only once they are saved or used."),
      this);
  about->setWordWrap(true);
  column->addWidget(about);
  page_ = new RowsPage(this);
  addRows();
  column->addWidget(page_, 1);
  notSaved_ = new PlainLabel(this);
  notSaved_->setObjectName(QStringLiteral("rules-not-saved"));
  notSaved_->setWordWrap(true);
  QFont bold = notSaved_->font();
  bold.setBold(true);
  notSaved_->setFont(bold);
  notSaved_->hide();
  column->addWidget(notSaved_);
  auto* buttons = new QWidget(this);
  auto* row = new FlowLayout(buttons);
  row->setContentsMargins(0, 0, 0, 0);
  row->pushRight();
  const auto button = [&](const char* name, const QString& text) {
    auto* made = roomyButton(text, name, this);
    row->addWidget(made);
    return made;
  };
  connect(button("rules-save", tr("&Save as a file and use …")), &QPushButton::clicked, this, [this] {
    if (isWhole()) Q_EMIT saveWanted(rules_);
  });
  connect(button("rules-use", tr("&Use until the window is closed")), &QPushButton::clicked, this, [this] {
    if (isWhole()) Q_EMIT useWanted(rules_);
  });
  connect(button("rules-close", tr("&Close, change nothing")), &QPushButton::clicked, this, &QDialog::close);
  column->addWidget(buttons);
}

void RulesEditor::addRows() {
  QVBoxLayout* column = page_->column();
  std::optional<RuleGroup> group;
  for (const RuleSpec& spec : ruleTable()) {
    if (group != spec.group) {
      if (group == RuleGroup::amount) addSyringes(column);
      group = spec.group;
      column->addWidget(heading(headingOf(spec.group), this));
    }
    addRule(column, spec);
  }
  page_->finish();
}

void RulesEditor::addRule(QVBoxLayout* column, const RuleSpec& spec) {
  QWidget* box = makeBox(spec);
  box->setObjectName(QStringLiteral("rule:") + fromCore(spec.key));
  auto* row = new RuleRow(labelOf(spec), box, this);
  column->addWidget(row);
  fields_.insert(fromCore(spec.key), row);
}

QWidget* RulesEditor::makeBox(const RuleSpec& spec) {
  const std::string text = ruleText(rules_, spec.key);
  if (spec.choices.empty()) {
    auto* box = new QLineEdit(fromCore(text), this);
    connect(box, &QLineEdit::textEdited, this, [this, &spec](const QString& typed) { take(spec, typed); });
    return box;
  }
  auto* box = new ChoiceBox(this);
  for (const ChoiceWord& word : spec.choices) box->addChoice(word.id, wordsOf(word));
  box->choose(text);
  const auto tell = [this, &spec, box] { take(spec, fromCore(box->chosen())); };
  connect(box, &ChoiceBox::passed, this, tell);
  connect(box, &ChoiceBox::made, this, tell);
  return box;
}

void RulesEditor::addSyringes(QVBoxLayout* column) {
  column->addWidget(heading(tr("Syringes on this ward"), this));
  syringeLine_ = new QuietLine(this);
  column->addWidget(syringeLine_);
  syringes_ = new SyringeTable(this);
  syringes_->show(rules_.syringes);
  column->addWidget(syringes_);
  connect(syringes_, &SyringeTable::changed, this, &RulesEditor::takeSyringes);
}

void RulesEditor::take(const RuleSpec& spec, const QString& text) {
  const QString key = fromCore(spec.key);
  const auto set = setRule(rules_, spec.key, text.toStdString());
  if (set)
    refused_.remove(key);
  else
    refused_.insert(key, fromCore(sentence(set.refusal())));
  showExamples();
}

void RulesEditor::takeSyringes() {
  if (const auto all = syringes_->syringes()) rules_.syringes = *all;
  showExamples();
}

void RulesEditor::goTo(QWidget* box) {
  box->setFocus(Qt::TabFocusReason);
  page_->keepInView(box);  // it may have had the keyboard already
}

void RulesEditor::sayRefused(const QString& label, const QString& why) {
  notSaved_->setText(tr("Not saved: %1. %2", "label of a rule, why it cannot be read").arg(label, why));
  notSaved_->show();
  announce(*notSaved_, notSaved_->text());
}

void RulesEditor::showExamples() {
  notSaved_->hide();
  const bool shippedName = rulesTitle(rules_) != isolated(rules_.name) && !rules_.name.empty();
  const QString ownName = fromCore(say(PhraseId::rules_ownName, {{"name", rules_.name}}));
  for (auto field = fields_.begin(); field != fields_.end(); ++field) {
    const std::string key = field.key().toStdString();
    const bool rename = shippedName && key == "name";
    const QString refused = rename ? ownName : refused_.value(field.key());
    const QString text = refused.isEmpty() ? fromCore(ruleExample(key, rules_)) : refused;
    (*field)->example()->say(text, refused.isEmpty() ? QuietLine::Tone::quiet : QuietLine::Tone::refused);
    (*field)->box()->setAccessibleDescription(text);
  }
  if (syringeLine_) syringeLine_->say(fromCore(ruleExample("syringes", rules_)), QuietLine::Tone::quiet);
}

/// Whether every rule can be read; if not, the keyboard goes to the first that cannot.
bool RulesEditor::isWhole() {
  for (const RuleSpec& spec : ruleTable()) {
    const RuleRow& row = *fields_[fromCore(spec.key)];
    if (row.example()->tone() != QuietLine::Tone::refused) continue;
    sayRefused(labelOf(spec), row.box()->accessibleDescription());
    goTo(row.box());
    return false;
  }
  if (!syringes_->syringes()) {
    sayRefused(tr("Syringes on this ward"), syringes_->whyRefused());
    syringes_->focusRefused();
    page_->keepInView(QApplication::focusWidget());
    return false;
  }
  return true;
}

}  // namespace wardchalk::ui
