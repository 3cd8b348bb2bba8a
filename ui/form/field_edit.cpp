#include "ui/form/field_edit.h"

#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QSignalBlocker>
#include <QStyleOptionButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/words/read_back.h"
#include "ui/form/choice_box.h"
#include "ui/theme/board_palette.h"
#include "ui/theme/edges.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int boxHeight = 32;
constexpr int betweenBoxes = 4;
constexpr int unitArrow = 36;  // of a choice box beside its words, with its edges

/// "ft in" is feet in the first box and inches in the second.
std::string_view firstUnit(std::string_view unit) { return unit.substr(0, unit.find(' ')); }
std::string_view smallerUnit(std::string_view unit) {
  const std::size_t space = unit.find(' ');
  return space == std::string_view::npos ? std::string_view() : unit.substr(space + 1);
}

bool isUndoKey(const QEvent* event) {
  if (event->type() != QEvent::ShortcutOverride) return false;
  const auto* key = static_cast<const QKeyEvent*>(event);
  return key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo);
}

}  // namespace

FieldEdit::FieldEdit(const FieldSpec& spec, QWidget* parent) : QWidget(parent), spec_(spec) {
  setObjectName(path());
  // Columns alone say how wide a field is, so that the boxes of all groups stand in line.
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  setMinimumWidth(1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(1, 0, 1, 1);  // room for the edges of the boxes
  column->setSpacing(2);
  label_ = new PlainLabel(labelOf(spec), this);
  label_->setObjectName(path() + QLatin1String(":label"));
  auto* row = new QHBoxLayout;
  row->setSpacing(betweenBoxes);
  line_ = new QuietLine(this);
  line_->setObjectName(path() + QLatin1String(":line"));
  column->addWidget(label_);
  column->addLayout(row);
  column->addWidget(line_);
  column->addStretch();
  buildBoxes(row);
  nameBoxes();
  showSecond();
  say({}, QuietLine::Tone::quiet);
}

QString FieldEdit::path() const { return fromCore(spec_.path); }

QLineEdit* FieldEdit::makeLine(const char* role) {
  auto* line = new QLineEdit(this);
  line->setObjectName(path() + QLatin1Char(':') + QLatin1String(role));
  line->setMinimumHeight(boxHeight);
  line->setMinimumWidth(36);
  line->installEventFilter(this);
  connect(line, &QLineEdit::textEdited, this, &FieldEdit::tell);
  return line;
}

ChoiceBox* FieldEdit::makeChoice(const char* role) {
  auto* box = new ChoiceBox(this);
  box->setObjectName(path() + QLatin1Char(':') + QLatin1String(role));
  box->setMinimumHeight(boxHeight);
  box->installEventFilter(this);
  connect(box, &ChoiceBox::passed, this, &FieldEdit::tell);
  connect(box, &ChoiceBox::made, this, &FieldEdit::finishChoice);
  return box;
}

void FieldEdit::buildBoxes(QBoxLayout* row) {
  if (spec_.kind == FieldKind::flag) return buildFlag(row);
  if (spec_.kind == FieldKind::choice) return buildChoice(row);
  text_ = makeLine("text");
  label_->setBuddy(text_);
  row->addWidget(text_, 3);
  if (spec_.kind == FieldKind::words || spec_.kind == FieldKind::lowEnd) return;
  if (shapeOf(spec_.path) == FieldShape::parts) buildSecond(row);
  unit_ = makeChoice("unit");
  for (const std::string_view unit : unitChoices(spec_.path)) unit_->addChoice(unit, shownUnit(unit));
  row->addWidget(unit_, 3);
  if (spec_.kind == FieldKind::strength) {
    between_ = new PlainLabel(tr("in", "25 mg in 1 mL"), this);
    row->addWidget(between_);
    buildSecond(row);
  }
  if (!secondUnitChoices(spec_.path).empty()) buildSecondUnit(row);
}

void FieldEdit::buildSecond(QBoxLayout* row) {
  second_ = makeLine("second");
  row->addWidget(second_, 2);
}

void FieldEdit::buildSecondUnit(QBoxLayout* row) {
  secondUnit_ = makeChoice("second-unit");
  const bool dose = spec_.kind == FieldKind::dose;
  for (const std::string_view id : secondUnitChoices(spec_.path))
    secondUnit_->addChoice(id, dose ? QString::fromStdString(basisWords(id)) : shownUnit(id));
  row->addWidget(secondUnit_, dose ? 7 : 3);
}

void FieldEdit::buildChoice(QBoxLayout* row) {
  choice_ = makeChoice("choice");
  for (const ChoiceWord& word : spec_.choices) choice_->addChoice(word.id, wordsOf(word));
  label_->setBuddy(choice_);
  row->addWidget(choice_, 1);
}

void FieldEdit::buildFlag(QBoxLayout* row) {
  flag_ = new QCheckBox(labelOf(spec_), this);
  flag_->setObjectName(path() + QLatin1String(":flag"));
  flag_->setMinimumHeight(boxHeight);
  flag_->installEventFilter(this);
  connect(flag_, &QAbstractButton::clicked, this, &FieldEdit::finishChoice);
  label_->setText(QStringLiteral(" "));  // keeps the box level with its neighbours; its own text is its label
  row->addWidget(flag_, 1);
}

void FieldEdit::nameBoxes() {
  const QString name = nameOf(spec_);
  const std::string unit = unit_ ? unit_->chosen() : std::string();
  const QString in = unit.empty() ? tr("no unit chosen") : tr("in %1").arg(spokenUnit(firstUnit(unit)));
  if (text_) text_->setAccessibleName(unit_ ? tr("%1, %2", "field, unit").arg(name, in) : name);
  if (choice_) choice_->setAccessibleName(name);
  if (flag_) flag_->setAccessibleName(name);
  if (unit_) unit_->setAccessibleName(tr("%1, unit").arg(name));
  if (second_ && between_)
    second_->setAccessibleName(tr("%1, in how much").arg(name));
  else if (second_)
    second_->setAccessibleName(
        tr("%1, and %2", "field, smaller unit").arg(name, spokenUnit(smallerUnit(unit))));
  if (secondUnit_)
    secondUnit_->setAccessibleName((between_ ? tr("%1, in which unit") : tr("%1, stated for")).arg(name));
}

Boxes FieldEdit::boxes() const {
  Boxes boxes;
  if (text_) boxes.text = text_->text().toStdString();
  if (choice_) boxes.text = choice_->chosen();
  if (flag_) boxes.text = flag_->isChecked() ? "true" : "";
  if (unit_) boxes.unit = unit_->chosen();
  if (second_) boxes.second = second_->text().toStdString();
  if (secondUnit_) boxes.secondUnit = secondUnit_->chosen();
  return boxes;
}

void FieldEdit::setBoxes(const Boxes& boxes) {
  if (boxes == this->boxes()) return;
  const auto write = [](QLineEdit* line, const std::string& text) {
    const QString wanted = QString::fromStdString(text);
    if (!line || line->text() == wanted) return;
    line->setText(wanted);
    line->setCursorPosition(0);  // a long source shows where it begins
  };
  write(text_, boxes.text);
  write(second_, boxes.second);
  if (choice_) choice_->choose(boxes.text);
  if (flag_) flag_->setChecked(boxes.text == "true");
  if (unit_) unit_->choose(boxes.unit);
  if (secondUnit_) secondUnit_->choose(boxes.secondUnit);
  showSecond();
  nameBoxes();
}

/// The second box is in view where the unit has two parts or the label needs a volume, and always while it
/// holds text.
void FieldEdit::showSecond() {
  if (!second_) return;
  const std::string in = secondUnit_ ? secondUnit_->chosen() : std::string();
  const bool wanted = between_ ? in != "tablet" && in != "capsule" : !smallerUnit(unit_->chosen()).empty();
  second_->setVisible(wanted || !second_->text().isEmpty());
  // two units in one box need their whole words: "year + month"
  if (!between_)
    unit_->setMinimumWidth(wanted ? fontMetrics().horizontalAdvance(unit_->currentText()) + unitArrow : 0);
}

/// Whether the quiet line has its place also while it is empty, so that nothing moves while one types.
bool FieldEdit::keepsLine() const {
  const bool silent =
      spec_.kind == FieldKind::choice || spec_.kind == FieldKind::flag || spec_.kind == FieldKind::words;
  return !silent || spec_.hint;
}

void FieldEdit::say(const QString& text, QuietLine::Tone tone) {
  line_->say(text, tone);
  line_->setVisible(keepsLine() || !text.isEmpty());
  for (QWidget* stop :
       {static_cast<QWidget*>(text_), static_cast<QWidget*>(choice_), static_cast<QWidget*>(flag_)})
    if (stop && stop->accessibleDescription() != text) stop->setAccessibleDescription(text);
}

QString FieldEdit::line() const { return line_->said(); }

int FieldEdit::columns() const {
  constexpr int half = 6;
  return line_->tone() == QuietLine::Tone::refused ? std::max(spec_.columns, half) : spec_.columns;
}

void FieldEdit::setLit(bool lit) {
  if (lit_ == lit) return;
  lit_ = lit;
  update();
}

QList<QWidget*> FieldEdit::stops() const {
  QList<QWidget*> all{text_, choice_, flag_};
  if (between_)
    all << unit_ << second_ << secondUnit_;
  else
    all << second_ << unit_ << secondUnit_;
  all.removeIf([](const QWidget* stop) { return !stop || stop->isHidden(); });
  return all;
}

void FieldEdit::focusFirst() {
  QWidget* first = stops().value(0);
  if (!first) return;
  first->setFocus(Qt::TabFocusReason);
  if (text_) text_->selectAll();
}

void FieldEdit::tell() {
  showSecond();
  nameBoxes();
  Q_EMIT edited(path(), boxes());
}

void FieldEdit::finishChoice() {
  tell();
  // A unit chosen before the rest of the field is filled in leaves it open for the rest.
  const bool whole = choice_ || flag_ || !nextUnfilled(nullptr);
  if (whole || !keepsFocus()) Q_EMIT finished(path());
}

/// Whether the keyboard is in one of the boxes, or in the list that one of them has opened.
bool FieldEdit::keepsFocus() const {
  const QWidget* at = QApplication::focusWidget();
  while (at && at != this) at = at->parentWidget();
  return at == this;
}

/// The first box after `at` that is still to be filled in; after `nullptr`, the first of all.
QWidget* FieldEdit::nextUnfilled(QWidget* at) const {
  const QList<QWidget*> all = stops();
  for (qsizetype i = at ? all.indexOf(at) + 1 : 0; i < all.size(); ++i) {
    const auto* line = qobject_cast<const QLineEdit*>(all[i]);
    const auto* choice = qobject_cast<const ChoiceBox*>(all[i]);
    const bool optional = line == second_ && !between_ && at == nullptr;
    if ((line && line->text().isEmpty() && !optional) || (choice && !choice->isChosen())) return all[i];
  }
  return nullptr;
}

bool FieldEdit::pressedEnter(QWidget* at, bool back) {
  const Boxes typed = sorted(spec_.path, boxes());
  if (typed != boxes()) {
    setBoxes(typed);
    tell();
  }
  const bool whole = typed.isEmpty() || standsForItself(typed.text);
  QWidget* open = back || whole ? nullptr : nextUnfilled(at);
  if (open) {
    open->setFocus(Qt::TabFocusReason);
    return true;
  }
  Q_EMIT finished(path());
  if (back)
    Q_EMIT previous(path());
  else
    Q_EMIT next(path());
  return true;
}

bool FieldEdit::eventFilter(QObject* watched, QEvent* event) {
  if (isUndoKey(event)) {  // one history for the whole form instead of one in each box
    event->ignore();
    return true;
  }
  if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    const bool plain = (key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    if (enter && plain)
      return pressedEnter(qobject_cast<QWidget*>(watched), key->modifiers().testFlag(Qt::ShiftModifier));
  }
  if (event->type() == QEvent::FocusIn) Q_EMIT pointedAt(path());
  if (event->type() == QEvent::FocusOut) {
    // Another window, a menu or the list of a box do not mean that typing is over.
    const Qt::FocusReason reason = static_cast<QFocusEvent*>(event)->reason();
    const bool away = reason != Qt::ActiveWindowFocusReason && reason != Qt::PopupFocusReason &&
                      reason != Qt::MenuBarFocusReason;
    if (away && !keepsFocus()) {
      Q_EMIT finished(path());
      Q_EMIT pointedAt(QString());
    }
  }
  return QWidget::eventFilter(watched, event);
}

void FieldEdit::enterEvent(QEnterEvent* event) {
  QWidget::enterEvent(event);
  Q_EMIT pointedAt(path());
}

void FieldEdit::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  Q_EMIT pointedAt(QString());
}

/// The edges of the boxes, and a mark where the field is pointed at in the working.
void FieldEdit::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (lit_) {
    const BoardPalette& inks = boardPalette(schemeFor(palette()));
    painter.fillRect(rect(), inks[Ink::lit]);
    painter.fillRect(QRect(0, 0, 3, height()), inks[Ink::focus]);
  }
  for (const QWidget* stop : stops())
    if (stop != flag_) paintEdge(painter, stop->geometry(), palette());
  if (!flag_) return;
  QStyleOptionButton option;
  option.initFrom(flag_);
  const QRect tick = flag_->style()->subElementRect(QStyle::SE_CheckBoxIndicator, &option, flag_);
  paintEdge(painter, tick.translated(flag_->pos()), palette());
}

}  // namespace wardchalk::ui
