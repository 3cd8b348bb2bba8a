#include "ui/form/form.h"

#include <QApplication>
#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "core/medicine/paths.h"
#include "core/words/read_back.h"
#include "core/words/sentences.h"
#include "ui/form/choice_box.h"
#include "ui/form/field_edit.h"
#include "ui/form/form_group.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int leastWidth = 420;

constexpr std::array systems = {std::pair{UnitSystem::metric, "metric"},
                                std::pair{UnitSystem::household, "household"}};

}  // namespace

Form::Form(CaseEditor& editor, const HouseRules& rules, QWidget* parent)
    : QScrollArea(parent), editor_(editor), rules_(rules), page_(new QWidget) {
  setObjectName(QStringLiteral("form"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  // with letters so large that the boxes do not fit beside one another, none may be out of reach
  setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  setMinimumWidth(leastWidth);
  setFocusPolicy(Qt::NoFocus);
  build();
  setWidget(page_);
  new FocusRing(page_);
  connect(&editor_, &CaseEditor::changed, this, &Form::refresh);
  connect(&editor_, &CaseEditor::takenBack, this, &Form::focusField);
  refresh();
}

void Form::build() {
  auto* column = new QVBoxLayout(page_);
  column->setContentsMargins(16, 4, 16, 4);
  column->setSpacing(4);
  for (const FieldGroup id : {FieldGroup::child, FieldGroup::order, FieldGroup::reference, FieldGroup::stock,
                              FieldGroup::infusion}) {
    auto* group = new FormGroup(id, page_);
    groups_ << group;
    column->addWidget(group);
    if (id == FieldGroup::child) addUnitSystem(group);
    if (id == FieldGroup::reference) addListButton(group);
    connect(group, &FormGroup::foldingChanged, this, &Form::refresh);
  }
  column->addStretch();
}

FieldEdit* Form::field(const QString& path) {
  const auto known = fields_.constFind(path);
  if (known != fields_.constEnd()) return *known;
  const auto named = [&](const FieldSpec& spec) { return path == fromCore(spec.path); };
  const auto spec = std::find_if(fieldTable().begin(), fieldTable().end(), named);
  return spec == fieldTable().end() ? nullptr : addField(*spec);
}

/// Half of the fields are rare; each is made when it first comes into view.
FieldEdit* Form::addField(const FieldSpec& spec) {
  FormGroup* group = groupOf(spec);
  auto* field = new FieldEdit(spec, group);
  field->hide();
  field->setBoxes(editor_.draft().boxes(spec.path));
  group->addField(field);
  fields_.insert(field->path(), field);
  tabsInOrder_ = false;
  connect(field, &FieldEdit::edited, &editor_, &CaseEditor::edit);
  connect(field, &FieldEdit::finished, &editor_, &CaseEditor::finish);
  connect(field, &FieldEdit::next, this, [this](const QString& path) { step(path, 1); });
  connect(field, &FieldEdit::previous, this, [this](const QString& path) { step(path, -1); });
  connect(field, &FieldEdit::pointedAt, this, &Form::pointed);
  return field;
}

FormGroup* Form::groupOf(const FieldSpec& spec) const {
  return *std::find_if(groups_.begin(), groups_.end(),
                       [&](const FormGroup* group) { return group->group() == spec.group; });
}

void Form::addUnitSystem(FormGroup* group) {
  auto* label = new PlainLabel(tr("&Units"), group);
  unitSystem_ = new ChoiceBox(group);
  unitSystem_->setObjectName(QStringLiteral("unit-system"));
  unitSystem_->setMinimumHeight(32);
  unitSystem_->setMinimumContentsLength(9);
  unitSystem_->setAccessibleName(tr("Units offered for an empty height and weight"));
  unitSystem_->addChoice("metric", tr("metric"));
  unitSystem_->addChoice("household", tr("household", "pounds and inches"));
  label->setBuddy(unitSystem_);
  group->addToHeading(label, unitSystem_);
  const auto tell = [this] {
    UnitSystem chosen = UnitSystem::none;
    for (const auto& [system, id] : systems)
      if (unitSystem_->chosen() == id) chosen = system;
    Q_EMIT unitSystemChosen(chosen);
  };
  connect(unitSystem_, &ChoiceBox::made, this, tell);
  connect(unitSystem_, &ChoiceBox::passed, this, tell);
}

void Form::addListButton(FormGroup* group) {
  listButton_ = new QToolButton(group);
  listButton_->setObjectName(QStringLiteral("from-list"));
  listButton_->setText(tr("from a list …"));
  listButton_->setAccessibleName(tr("Reference: choose it from the ward's list"));
  listButton_->setAutoRaise(true);
  listButton_->setMinimumHeight(32);
  listButton_->setFocusPolicy(Qt::StrongFocus);
  group->addToHeading(nullptr, listButton_);
  connect(listButton_, &QToolButton::clicked, this, &Form::listWanted);
}

void Form::offerList(bool offered) { listButton_->setVisible(offered); }

void Form::showUnitSystem(UnitSystem system) {
  std::string_view shown;
  for (const auto& [one, id] : systems)
    if (one == system) shown = id;
  unitSystem_->choose(shown);
}

/// Tab walks the fields as the papers lie, and comes to a group's own controls after its fields.
void Form::orderTabs() {
  if (std::exchange(tabsInOrder_, true)) return;
  QList<QWidget*> chain;
  for (const FormGroup* group : std::as_const(groups_)) {
    for (const FieldEdit* field : group->fields())
      for (QWidget* box : field->findChildren<QWidget*>())
        if (box->focusPolicy() != Qt::NoFocus && box->parentWidget() == field) chain << box;
    if (group->group() == FieldGroup::child) chain << unitSystem_;
    if (group->group() == FieldGroup::reference) chain << listButton_;
    chain << group->moreButton();
  }
  for (qsizetype i = 1; i < chain.size(); ++i) QWidget::setTabOrder(chain[i - 1], chain[i]);
}

bool Form::isInView(const FieldSpec& spec) const {
  if (spec.inView == InView::always || groupOf(spec)->isUnfolded()) return true;
  const QString path = fromCore(spec.path);
  if (editor_.draft().state(spec.path) != FieldState::empty || wanted_.contains(path)) return true;
  const QWidget* focused = QApplication::focusWidget();
  const FieldEdit* made = fields_.value(path);
  if (focused && made && made->isAncestorOf(focused)) return true;
  const std::string& kind = editor_.draft().boxes(path::stockKind).text;
  return (spec.inView == InView::powder && kind == "powder") ||
         (spec.inView == InView::solid && kind == "solid");
}

void Form::arrange() {
  for (FormGroup* group : std::as_const(groups_)) {
    QList<FieldEdit*> shown;
    for (const FieldSpec& spec : fieldTable())
      if (spec.group == group->group() && isInView(spec)) shown << field(fromCore(spec.path));
    group->arrange(shown);
  }
  orderTabs();
}

QList<FieldEdit*> Form::inView() const {
  QList<FieldEdit*> all;
  for (const FormGroup* group : groups_)
    for (FieldEdit* field : group->fields())
      if (!field->isHidden()) all << field;
  return all;
}

void Form::refresh() {
  const CaseDraft& draft = editor_.draft();
  for (FieldEdit* field : std::as_const(fields_)) field->setBoxes(draft.boxes(field->spec().path));
  arrange();
  const Case inputs = draft.toCase();
  const QList<FieldEdit*> shown = inView();
  for (FieldEdit* field : shown) sayLine(*field, inputs, field == shown.last());
  arrange();  // a refusal may need more room
}

void Form::sayLine(FieldEdit& field, const Case& inputs, bool last) {
  const FieldSpec& spec = field.spec();
  const QString hint = spec.hint ? QCoreApplication::translate("Hint", spec.hint) : QString();
  switch (editor_.draft().state(spec.path)) {
    case FieldState::empty:
      return field.say(hint, QuietLine::Tone::quiet);
    case FieldState::pending:
      return field.say(last ? tr("press Enter") : hint, QuietLine::Tone::quiet);
    case FieldState::refused:
      return field.say(QString::fromStdString(sentence(*editor_.draft().refusal(spec.path))),
                       QuietLine::Tone::refused);
    case FieldState::read:
      return field.say(QString::fromStdString(readBack(spec.path, inputs, rules_)), QuietLine::Tone::quiet);
  }
}

void Form::step(const QString& path, int by) {
  const QList<FieldEdit*> shown = inView();
  FieldEdit* to = shown.value(shown.indexOf(field(path)) + by);
  if (to) to->focusFirst();
}

/// What is pointed at: the field under the mouse, or else the one that has the keyboard.
void Form::pointed(const QString& path) {
  const QWidget* focused = QApplication::focusWidget();
  QString keyboardAt;
  for (const FieldEdit* one : std::as_const(fields_))
    if (focused && one->isAncestorOf(focused)) keyboardAt = one->path();
  if (!keyboardAt.isEmpty()) last_ = keyboardAt;
  if (!keyboardAt.isEmpty() && keyboardAt == path) ensureWidgetVisible(field(path), 0, 8);
  Q_EMIT pointedAt(path.isEmpty() ? keyboardAt : path);
}

void Form::focusField(const QString& path) {
  FieldEdit* wanted = field(path);
  if (!wanted) return;
  if (wanted->isHidden()) groupOf(wanted->spec())->setUnfolded(true);
  wanted->focusFirst();
}

void Form::focusTop() {
  focusField(inView().first()->path());
  verticalScrollBar()->setValue(0);
}

void Form::setWanted(const QStringList& paths) {
  if (paths == wanted_) return;
  wanted_ = paths;
  refresh();
}

void Form::focusLast() { focusField(last_.isEmpty() ? inView().first()->path() : last_); }

void Form::light(const QString& path) {
  for (FieldEdit* one : std::as_const(fields_)) one->setLit(one->path() == path);
}

bool Form::isUnfolded() const {
  return std::all_of(groups_.begin(), groups_.end(), [](const FormGroup* group) {
    return group->isUnfolded() || moreOf(group->group()).isEmpty();
  });
}

void Form::setUnfolded(bool unfolded) {
  for (FormGroup* group : std::as_const(groups_)) group->setUnfolded(unfolded);
}

}  // namespace wardchalk::ui
