#include "ui/form/form.h"

#include <QApplication>
#include <QLineEdit>
#include <QPointer>
#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>
#include <vector>

#include "core/medicine/paths.h"
#include "core/record/reference_choice.h"
#include "core/words/read_back.h"
#include "core/words/sentences.h"
#include "ui/form/field_edit.h"
#include "ui/form/field_table.h"
#include "ui/form/form_group.h"
#include "ui/theme/buttons.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/plain_scroll_bar.h"
#include "ui/theme/reveal.h"
#include "ui/theme/surface.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int leastWidth = 420;
constexpr int leastButton = 32;

/// What the worksheet waits for: its needs, and the nurse's word for a size that is hardly possible.
QStringList wantedFields(const Worksheet& sheet) {
  QStringList paths;
  for (const Need& need : sheet.needs) paths << fromCore(need.path);
  if (sheet.finding(FindingCode::sizeImplausible)) paths << fromCore(path::sizeConfirmed);
  if (sheet.finding(FindingCode::maxDosesOpen)) paths << fromCore(path::maxDosesPerDay);
  return paths;
}

QString bareUnitOf(std::string_view path, const BareUnits& units) {
  const std::optional<Unit> unit = path == path::height   ? units.height
                                   : path == path::weight ? units.weight
                                                          : std::nullopt;
  return unit ? fromCore(idOf(*unit)) : QString();
}

QToolButton* headingButton(FormGroup* group, const char* name, const QString& text) {
  auto* button = new QToolButton(group);
  button->setObjectName(QLatin1String(name));
  button->setText(text);
  button->setAutoRaise(true);
  button->setMinimumHeight(leastButton);
  button->setFocusPolicy(Qt::StrongFocus);
  pressByEnter(button);
  group->addToHeading(button);
  return button;
}

}  // namespace

Form::Form(CaseEditor& editor, const HouseRules& rules, QWidget* parent)
    : QScrollArea(parent), editor_(editor), rules_(rules), page_(new QWidget) {
  setObjectName(QStringLiteral("form"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setVerticalScrollBar(new PlainScrollBar(Qt::Vertical));
  // with letters so large that the boxes do not fit beside one another, none may be out of reach
  setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  fitWidth();
  setFocusPolicy(Qt::NoFocus);
  build();
  setWidget(page_);
  qApp->installEventFilter(this);
  new FocusRing(page_);
  connect(&editor_, &CaseEditor::changed, this, &Form::refresh);
  connect(&editor_, &CaseEditor::filledBesides, this, &Form::filledBesides);
  connect(&editor_, &CaseEditor::takenBack, this, &Form::focusField);
  refresh();
}

/// Beside the working it keeps the width that its rows are made for, by the letters; in a column it has what
/// there is, and its rows break.
void Form::fitWidth() { setMinimumWidth(inColumn_ ? 0 : qRound(leastWidth * textScale())); }

void Form::standInColumn(bool inColumn) {
  inColumn_ = inColumn;
  setVerticalScrollBarPolicy(inColumn ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
  fitWidth();
  keepSurface();
}

/// In the column of the working it lies on its own surface still, and not on the board's.
void Form::keepSurface() {
  const QPalette own = inColumn_ ? surfacePalette(QApplication::palette()) : QPalette();
  const bool isThere = testAttribute(Qt::WA_SetPalette) && palette() == own;
  if (inColumn_ ? !isThere : testAttribute(Qt::WA_SetPalette)) setPalette(own);
}

int Form::heightForWidth(int width) const {
  return qMax(page_->minimumSizeHint().height(), page_->layout()->totalHeightForWidth(width));
}

void Form::keepingKeyboard(const std::function<void()>& move) {
  QWidget* at = window()->focusWidget();  // also of a window that is not in front
  const QPointer<QWidget> focused = isAncestorOf(at) ? at : nullptr;
  const QPointer<QLineEdit> line = qobject_cast<QLineEdit*>(focused);
  for (FieldEdit* field : std::as_const(fields_)) field->endComposing();
  const int cursor = line ? line->cursorPosition() : 0;
  const int from = line ? line->selectionStart() : -1;
  const int selected = line ? static_cast<int>(line->selectedText().size()) : 0;
  {
    std::vector<QSignalBlocker> quietly;
    for (FieldEdit* field : std::as_const(fields_)) quietly.emplace_back(field);
    move();
    if (focused) focused->setFocus(Qt::OtherFocusReason);
  }
  if (!line) return;
  line->setCursorPosition(cursor);
  if (from >= 0) line->setSelection(from, selected);
}

void Form::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::FontChange) fitWidth();
  if (event->type() == QEvent::PaletteChange && inColumn_) keepSurface();
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
    if (id == FieldGroup::child) addUnitNote(group);
    if (id == FieldGroup::reference) {
      addEmptyButton(group);
      addListButton(group);
    }
    connect(group, &FormGroup::foldingChanged, this, &Form::refresh);
    connect(group, &FormGroup::opened, this, [this, group] { openedGroup(*group); });
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
  field->setEntry(editor_.draft().line(spec.path));
  field->setBareUnit(bareUnitOf(spec.path, editor_.draft().offered()));
  group->addField(field);
  fields_.insert(field->path(), field);
  connect(field, &FieldEdit::edited, &editor_, &CaseEditor::edit);
  connect(field, &FieldEdit::touched, &editor_, &CaseEditor::touch);
  connect(field, &FieldEdit::finished, &editor_, &CaseEditor::finish);
  connect(field, &FieldEdit::undoWanted, &editor_, [this] { editor_.undoStack().undo(); });
  connect(field, &FieldEdit::redoWanted, &editor_, [this] { editor_.undoStack().redo(); });
  connect(field, &FieldEdit::next, this, [this](const QString& path) { step(path, 1); });
  connect(field, &FieldEdit::previous, this, [this](const QString& path) { step(path, -1); });
  connect(field, &FieldEdit::pointedAt, this, &Form::pointed);
  return field;
}

FormGroup* Form::groupOf(const FieldSpec& spec) const {
  return *std::find_if(groups_.begin(), groups_.end(),
                       [&](const FormGroup* group) { return group->group() == spec.group; });
}

void Form::addUnitNote(FormGroup* group) {
  unitNote_ = new PlainLabel(group);
  unitNote_->setObjectName(QStringLiteral("unit-note"));
  group->addToHeading(unitNote_);
}

void Form::addListButton(FormGroup* group) {
  listButton_ = headingButton(group, "from-list", tr("from a list …"));
  listButton_->setAccessibleName(tr("Reference: from a list of the ward"));
  connect(listButton_, &QToolButton::clicked, this, &Form::listWanted);
}

/// What belongs to a list's entry is left as a whole, so that none of its figures is left to judge another
/// medicine.
void Form::addEmptyButton(FormGroup* group) {
  emptyButton_ = headingButton(group, "empty-reference", tr("empty it"));
  emptyButton_->setAccessibleName(tr("Reference: empty it, to leave the list's entry"));
  connect(emptyButton_, &QToolButton::clicked, &editor_, &CaseEditor::emptyReference);
}

void Form::offerList(bool offered) { listButton_->setVisible(offered); }

void Form::showBareUnits() {
  const BareUnits& units = editor_.draft().offered();
  if (!units.height)
    unitNote_->clear();
  else if (units.weight)
    unitNote_->setText(tr("metric: a bare number is cm, kg"));
  else
    unitNote_->setText(*units.height == Unit::cm ? tr("metric: a bare height is in cm")
                                                 : tr("household: a bare height is in inches"));
  for (FieldEdit* field : std::as_const(fields_)) field->setBareUnit(bareUnitOf(field->spec().path, units));
}

/// Tab goes down the form as the eye does, whatever was made first.
void Form::orderTabs() {
  QList<QPointer<QWidget>> stops;
  for (const FormGroup* group : std::as_const(groups_))
    for (QWidget* stop : group->stops()) stops << stop;
  if (stops == stops_) return;
  stops_ = stops;
  for (qsizetype i = 1; i < stops.size(); ++i) QWidget::setTabOrder(stops[i - 1], stops[i]);
}

bool Form::isInView(const FieldSpec& spec) const {
  if (spec.inView == InView::always || groupOf(spec)->isUnfolded()) return true;
  const QString path = fromCore(spec.path);
  if (editor_.draft().state(spec.path) != FieldState::empty || wanted_.contains(path)) return true;
  const QWidget* focused = QApplication::focusWidget();
  const FieldEdit* made = fields_.value(path);
  if (focused && made && made->isAncestorOf(focused)) return true;
  const std::string kind = editor_.draft().text(path::stockKind);
  return (spec.inView == InView::powder && kind == "powder") ||
         (spec.inView == InView::solid && kind == "solid") ||
         (spec.inView == InView::asNeeded && editor_.draft().line(path::asNeeded) == "true");
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

void Form::showEntries() {
  for (FieldEdit* field : std::as_const(fields_)) field->setEntry(editor_.draft().line(field->spec().path));
}

void Form::refresh() {
  showEntries();
  arrangeOnceReleased();
  const Case& inputs = editor_.draft().toCase();
  for (FieldEdit* field : std::as_const(fields_))
    field->setLocked(isKeptByList(field->spec().path, inputs.reference));
  emptyButton_->setVisible(isFromList(inputs.reference));
  const FieldSpec& strength = fieldSpec(path::strength);
  field(fromCore(path::strength))->setLabel(labelOf(strength, editor_.draft().text(path::stockKind)));
  const QList<FieldEdit*> shown = inView();
  for (FieldEdit* field : shown) sayLine(*field, inputs, field == shown.last());
  arrangeOnceReleased();  // a refusal may need more room
}

/// Nothing moves between the press of the mouse and its release: what was pressed is what is hit.
void Form::arrangeOnceReleased() {
  if (pressed_)
    arrangeWaits_ = true;
  else
    arrange();
}

bool Form::eventFilter(QObject* watched, QEvent* event) {
  if (watched == page_ && event->type() == QEvent::LayoutRequest) Q_EMIT heightChanged();
  // a release may be lost with the window that it was meant for: a key ends the press too
  if (event->type() == QEvent::MouseButtonPress) pressed_ = true;
  if (event->type() == QEvent::MouseButtonRelease || event->type() == QEvent::KeyPress) {
    pressed_ = false;
    if (std::exchange(arrangeWaits_, false))
      QMetaObject::invokeMethod(this, &Form::arrange, Qt::QueuedConnection);
  }
  return QScrollArea::eventFilter(watched, event);
}

/// How an entry was understood, and what an end of the reference comes to for this child.
QString Form::readLine(const FieldEdit& field, const Case& inputs) const {
  const std::string_view path = field.spec().path;
  QStringList said;
  const auto add = [&](const QString& text) {
    if (!text.isEmpty()) said << text;
  };
  const auto& remarks = editor_.draft().remarks(path);
  if (std::find(remarks.begin(), remarks.end(), EntryRemark::trailingZero) != remarks.end())
    add(tr("the zero after the point was left out"));
  const QString found = found_.value(field.path());
  add(found.isEmpty() ? QString::fromStdString(readBack(path, inputs, rules_)) : found);
  if (path == path::referenceMedicine && isKeptByList(path, inputs.reference))
    add(tr("from the ward's list"));
  return said.join(QStringLiteral("; "));
}

void Form::sayLine(FieldEdit& field, const Case& inputs, bool last) {
  const FieldSpec& spec = field.spec();
  const QString hint = spec.hint ? QCoreApplication::translate("Hint", spec.hint) : QString();
  switch (editor_.draft().state(spec.path)) {
    case FieldState::empty:
      return field.sayQuietly(hint);
    case FieldState::pending:
      return field.sayQuietly(last ? tr("press Enter") : hint);
    case FieldState::refused:
      return sayRefusal(field);
    case FieldState::read:
      return field.sayQuietly(readLine(field, inputs));
  }
}

void Form::sayRefusal(FieldEdit& field) {
  const std::string_view path = field.spec().path;
  const Refusal refusal = *editor_.draft().refusal(path);
  QStringList writes;
  for (const std::string& answer : editor_.draft().answers(path)) writes << QString::fromStdString(answer);
  if (writes.isEmpty() && !refusal.suggestion.empty()) writes << QString::fromStdString(refusal.suggestion);
  field.refuse(QString::fromStdString(sentence(refusal)), writes);
}

/// What is typed next is meant for the line behind those that were filled: in one of them, with its text
/// chosen, it would take the place of what has just been filled, and all that follows would stand a line too
/// early.
void Form::filledBesides(const QString& path, const QStringList& others) {
  justFilled_ = {path, others};
  if (FieldEdit* from = field(path)) from->keepTab();
}

void Form::step(const QString& path, int by) {
  const QList<FieldEdit*> shown = inView();
  const JustFilled filled = std::exchange(justFilled_, {});
  const QStringList passed = by > 0 && filled.by == path ? filled.others : QStringList();
  for (qsizetype at = shown.indexOf(field(path)) + by; at >= 0 && at < shown.size(); at += by)
    if (shown[at]->isStop() && !passed.contains(shown[at]->path())) return shown[at]->focusFirst();
}

/// What is pointed at: the field under the mouse, or else the one that has the keyboard.
void Form::pointed(const QString& path) {
  const QWidget* focused = QApplication::focusWidget();
  QString keyboardAt;
  for (const FieldEdit* one : std::as_const(fields_))
    if (focused && one->isAncestorOf(focused)) keyboardAt = one->path();
  if (!keyboardAt.isEmpty()) last_ = keyboardAt;
  if (!keyboardAt.isEmpty() && keyboardAt != justFilled_.by) justFilled_ = {};
  if (!keyboardAt.isEmpty() && keyboardAt == path) reveal(field(path));
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
  reveal(groups_.first()->moreButton());  // it stands in the heading
}

void Form::openedGroup(const FormGroup& group) {
  for (FieldEdit* field : group.fields())
    if (!field->isHidden() && field->spec().inView == InView::unfolded && field->isStop())
      return field->focusFirst();
}

void Form::setWanted(const QStringList& paths) {
  if (paths == wanted_) return;
  wanted_ = paths;
  arrangeOnceReleased();
}

void Form::follow(const Worksheet& sheet) {
  found_.clear();
  for (const std::string_view end : {path::low, path::high})
    if (const std::string text = forThisChild(end, sheet); !text.empty())
      found_.insert(fromCore(end), QString::fromStdString(text));
  setWanted(wantedFields(sheet));
  const Case& inputs = editor_.draft().toCase();
  for (const std::string_view end : {path::low, path::high})
    if (FieldEdit* field = fields_.value(fromCore(end));
        field && editor_.draft().state(end) == FieldState::read)
      field->sayQuietly(readLine(*field, inputs));
}

void Form::followNothing() {
  found_.clear();
  setWanted({});
}

bool Form::focusRefused() {
  const auto path = firstRefused(editor_.draft());
  if (path) focusField(fromCore(*path));
  return path.has_value();
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
