#include "ui/form/field_edit.h"

#include <QAccessible>
#include <QApplication>
#include <QInputMethod>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "core/record/line_choices.h"
#include "ui/form/answer_line.h"
#include "ui/form/entry_line.h"
#include "ui/form/quiet_line.h"
#include "ui/theme/board_palette.h"
#include "ui/theme/edges.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/plain_tip.h"
#include "ui/theme/text.h"
#include "ui/theme/tick_box.h"

namespace wardchalk::ui {

namespace {

constexpr int lineHeight = 30;

bool isEnter(const QKeyEvent& key) { return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter; }

}  // namespace

FieldEdit::FieldEdit(const FieldSpec& spec, QWidget* parent) : QWidget(parent), spec_(spec) {
  setObjectName(path());
  // Columns alone say how wide a field is, so that the lines of all groups stand in line.
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  setMinimumWidth(1);
  auto* column = new QVBoxLayout(this);
  const int beside = spec.kind == FieldKind::flag ? 1 : 0;  // room for the edge of a tick's box
  column->setContentsMargins(beside, 0, 0, 1);
  column->setSpacing(2);
  label_ = new PlainLabel(labelOf(spec), this);
  label_->setObjectName(path() + QLatin1String(":label"));
  column->addWidget(label_);
  if (spec.kind == FieldKind::flag)
    buildFlag(column);
  else
    buildLine(column);
  quiet_ = new QuietLine(this);
  quiet_->setObjectName(path() + QLatin1String(":line"));
  column->addWidget(quiet_);
  column->addStretch();
  answer_ = new AnswerLine(parent ? parent : this);
  answer_->setObjectName(path() + QLatin1String(":answer"));
  answer_->hide();
  connect(answer_, &AnswerLine::chosen, this, &FieldEdit::write);
  sayQuietly({});
}

QString FieldEdit::path() const { return fromCore(spec_.path); }

void FieldEdit::buildLine(QBoxLayout* column) {
  text_ = new EntryLine(this);
  text_->setObjectName(path() + QLatin1String(":text"));
  text_->setMinimumHeight(lineHeight);
  text_->setMinimumWidth(36);
  text_->setAccessibleName(nameOf(spec_));
  text_->installEventFilter(this);
  text_->offerChoices(!spec_.choices.empty() || !lineChoices(spec_.path).empty());
  label_->setBuddy(text_);
  connect(text_, &EntryLine::written, this, &FieldEdit::writtenTo);
  connect(text_, &EntryLine::composing, this, [this] { Q_EMIT touched(path()); });
  connect(text_, &EntryLine::choicesWanted, this, &FieldEdit::openChoices);
  connect(text_, &EntryLine::undoWanted, this, &FieldEdit::undoWanted);
  connect(text_, &EntryLine::redoWanted, this, &FieldEdit::redoWanted);
  column->addWidget(text_);
}

void FieldEdit::buildFlag(QBoxLayout* column) {
  flag_ = new TickBox(labelOf(spec_), this);
  flag_->setObjectName(path() + QLatin1String(":flag"));
  flag_->setMinimumHeight(lineHeight);
  flag_->setAccessibleName(nameOf(spec_));
  flag_->installEventFilter(this);
  connect(flag_, &QAbstractButton::clicked, this, [this] {
    Q_EMIT edited(path(), entry());
    Q_EMIT finished(path());
  });
  label_->setText(QStringLiteral(" "));  // keeps the box level with its neighbours; its own text is its label
  column->addWidget(flag_);
}

/// A fixed word stands in the line as the nurse reads it, and in the draft by its id.
QString FieldEdit::shownOf(const QString& entry) const {
  for (const ChoiceWord& choice : spec_.choices)
    if (fromCore(choice.id) == entry) return wordsOf(choice);
  return entry;
}

QString FieldEdit::entryOf(const QString& shown) const {
  for (const ChoiceWord& choice : spec_.choices)
    if (wordsOf(choice).compare(shown.simplified(), Qt::CaseInsensitive) == 0) return fromCore(choice.id);
  return shown;
}

QString FieldEdit::entry() const {
  if (flag_) return flag_->isChecked() ? QStringLiteral("true") : QString();
  return entryOf(text_->text());
}

/// Compared as the draft has it: a mark before the first letter goes when bytes become text.
void FieldEdit::setEntry(const std::string& entry) {
  if (flag_) return flag_->setChecked(entry == "true");
  if (entryOf(text_->text()).toStdString() != entry) text_->showText(shownOf(QString::fromStdString(entry)));
}

void FieldEdit::setBareUnit(const QString& unit) {
  if (text_) text_->setBareUnit(unit);
}

void FieldEdit::setLabel(const QString& label) {
  if (!text_ || label_->text() == label) return;
  label_->setText(label);
  text_->setAccessibleName(nameOf(label));
}

void FieldEdit::setLocked(bool locked) {
  if (!text_ || text_->isReadOnly() == locked) return;
  text_->setReadOnly(locked);
  update();
  text_->setToolTip(plainTip(
      locked ? tr("From the ward's list. To change it, empty the reference (Ctrl+Shift+R).") : QString()));
}

/// What comes while the line has no keyboard came by another way, and is read at once.
void FieldEdit::writtenTo() {
  Q_EMIT edited(path(), entry());
  if (!text_->hasFocus()) Q_EMIT finished(path());
}

/// Chosen from the menu or by a button: as if it had been typed.
void FieldEdit::write(const QString& entry) {
  text_->setText(shownOf(entry));
  Q_EMIT finished(path());
}

void FieldEdit::openChoices() {
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->setObjectName(path() + QLatin1String(":choices"));
  for (const ChoiceWord& choice : spec_.choices)
    connect(menu->addAction(withoutMnemonic(wordsOf(choice))), &QAction::triggered, this,
            [this, id = fromCore(choice.id)] { write(id); });
  for (const std::string_view choice : lineChoices(spec_.path))
    connect(menu->addAction(withoutMnemonic(fromCore(choice))), &QAction::triggered, this, [this, choice] {
      const std::string line = lineWith(spec_.path, text_->text().toStdString(), choice);
      text_->setText(fromCore(line));
      if (line.starts_with(' ')) text_->setCursorPosition(0);  // the number is still to come
    });
  if (menu->isEmpty()) return delete menu;
  menu->popup(text_->mapToGlobal(QPoint(0, text_->height())));
}

/// Whether the quiet line has its place also while it is empty, so that nothing moves while one types.
bool FieldEdit::keepsLine() const { return spec_.kind == FieldKind::quantity || spec_.hint; }

void FieldEdit::sayQuietly(const QString& text) {
  answer_->say({}, {});
  answer_->hide();
  quiet_->say(text, QuietLine::Tone::quiet);
  quiet_->setVisible(keepsLine() || !text.isEmpty());
  describe();
}

void FieldEdit::refuse(const QString& why, const QStringList& writes) {
  QStringList shown;
  for (const QString& line : writes) shown << shownOf(line);
  answer_->say(why, shown);
  quiet_->say({}, QuietLine::Tone::quiet);
  describe();
}

bool FieldEdit::isRefused() const { return !answer_->said().isEmpty(); }

QString FieldEdit::line() const { return isRefused() ? answer_->said() : quiet_->said(); }

void FieldEdit::giveWay(bool away) {
  quiet_->setVisible(!away && (keepsLine() || !quiet_->said().isEmpty()));
}

/// Qt 6.4 has no state for an entry that is not right: the description says it first.
void FieldEdit::describe() {
  QWidget* at = stop();
  const QString text = isRefused() ? tr("Cannot be read: %1").arg(line()) : line();
  if (at->accessibleDescription() == text) return;
  at->setAccessibleDescription(text);
  QAccessibleEvent changed(at, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&changed);
}

void FieldEdit::setLit(bool lit) {
  if (lit_ == lit) return;
  lit_ = lit;
  update();
}

QWidget* FieldEdit::stop() const { return flag_ ? static_cast<QWidget*>(flag_) : text_; }

void FieldEdit::focusFirst() {
  stop()->setFocus(Qt::TabFocusReason);
  if (text_) text_->selectAll();
}

void FieldEdit::endComposing() {
  if (text_ && text_->isComposing()) QGuiApplication::inputMethod()->commit();
}

/// Enter goes on, Shift+Enter back, Alt+Enter takes the safe form.
bool FieldEdit::pressedEnter(Qt::KeyboardModifiers with) {
  const Qt::KeyboardModifiers held = with & ~Qt::KeypadModifier;
  if (held == Qt::AltModifier) {
    if (isRefused() && answer_->writes().size() == 1) write(answer_->writes().first());
    return true;
  }
  if (held != Qt::NoModifier && held != Qt::ShiftModifier) return false;
  endComposing();
  Q_EMIT finished(path());
  if (held == Qt::ShiftModifier)
    Q_EMIT previous(path());
  else
    Q_EMIT next(path());
  return true;
}

/// Tab goes on as Enter does where what was typed filled lines that follow; else it is Qt's.
bool FieldEdit::pressedTab() {
  endComposing();
  keepsTab_ = false;
  Q_EMIT finished(path());
  if (keepsTab_) Q_EMIT next(path());
  return keepsTab_;
}

/// Another window, a menu or a popup do not mean that typing is over.
void FieldEdit::left(Qt::FocusReason reason) {
  if (reason == Qt::ActiveWindowFocusReason || reason == Qt::PopupFocusReason ||
      reason == Qt::MenuBarFocusReason)
    return;
  Q_EMIT finished(path());
  Q_EMIT pointedAt(QString());
}

bool FieldEdit::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (isEnter(*key) && pressedEnter(key->modifiers())) return true;
    if (key->key() == Qt::Key_Tab && key->modifiers() == Qt::NoModifier && pressedTab()) return true;
  }
  if (event->type() == QEvent::FocusIn) Q_EMIT pointedAt(path());
  if (event->type() == QEvent::FocusOut) {
    endComposing();
    left(static_cast<QFocusEvent*>(event)->reason());
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

/// The edge of the line, and a mark where the field is pointed at in the working.
void FieldEdit::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (lit_) {
    const BoardPalette& inks = boardPalette(schemeFor(palette()));
    painter.fillRect(rect(), inks[Ink::lit]);
    painter.fillRect(QRect(0, 0, 3, height()), inks[Ink::focus]);
  }
  if (!text_) return;
  // what was taken from a list is told from what can be written: it has no ground of its own
  const QColor ground = palette().color(text_->isReadOnly() ? QPalette::Window : QPalette::Base);
  paintBox(painter, text_->geometry(), ground, palette());
}

}  // namespace wardchalk::ui
