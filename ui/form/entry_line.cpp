#include "ui/form/entry_line.h"

#include <QAction>
#include <QApplication>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QSignalBlocker>
#include <QToolButton>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

namespace {

constexpr int air = 5;          // px before the text
constexpr int leastArrow = 24;  // the least that a finger hits

/// A small angle that grows with the letters, in the ink of quiet words.
class Arrow : public QToolButton {
 public:
  using QToolButton::QToolButton;

 protected:
  void paintEvent(QPaintEvent* event) override {
    QToolButton::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double reach = fontMetrics().height() * 0.28;
    const QPointF tip = QRectF(rect()).center() + QPointF(0, reach / 2);
    painter.setPen(
        QPen(boardPalette(schemeFor(QApplication::palette()))[Ink::quiet], qMax(1.5, reach * 0.36)));
    painter.drawPolyline(QPolygonF({tip - QPointF(reach, reach), tip, tip + QPointF(reach, -reach)}));
  }
};

bool opensChoices(const QKeyEvent& event) {
  const bool altDown = event.key() == Qt::Key_Down && event.modifiers().testFlag(Qt::AltModifier);
  return altDown || (event.key() == Qt::Key_F4 && event.modifiers() == Qt::NoModifier);
}

}  // namespace

/// The box round the line is drawn by its field, so that all fields are one kind of box on every desktop.
EntryLine::EntryLine(QWidget* parent) : QLineEdit(parent), arrow_(new Arrow(this)) {
  setFrame(false);
  QPalette own;
  own.setColor(QPalette::Base, Qt::transparent);
  setPalette(own);
  arrow_->setAutoRaise(true);
  arrow_->setFocusPolicy(Qt::NoFocus);
  arrow_->setCursor(Qt::ArrowCursor);
  arrow_->setObjectName(QStringLiteral("choices"));
  arrow_->setAccessibleName(tr("what can be written here"));
  arrow_->hide();
  connect(arrow_, &QToolButton::clicked, this, &EntryLine::choicesWanted);
  connect(this, &QLineEdit::textChanged, this, [this] {
    update();
    Q_EMIT written();
  });
}

void EntryLine::showText(const QString& text) {
  if (text == this->text()) return;
  const QSignalBlocker quietly(this);
  setText(text);
  setCursorPosition(0);  // a long source shows where it begins
  update();
}

void EntryLine::setBareUnit(const QString& unit) {
  if (bareUnit_ == unit) return;
  bareUnit_ = unit;
  update();
}

void EntryLine::offerChoices(bool offered) {
  arrow_->setVisible(offered);
  applyMargins();
}

void EntryLine::applyMargins() { setTextMargins(air, 0, arrow_->isHidden() ? air : arrowWidth(), 0); }

int EntryLine::arrowWidth() const { return qMax(leastArrow, fontMetrics().height() + 4); }

void EntryLine::placeArrow() {
  arrow_->setGeometry(width() - arrowWidth() - 1, 1, arrowWidth(), height() - 2);
}

/// One history for the whole form instead of one in each line.
bool EntryLine::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
      event->ignore();
      return true;
    }
  }
  return QLineEdit::event(event);
}

void EntryLine::keyPressEvent(QKeyEvent* event) {
  if (opensChoices(*event)) return Q_EMIT choicesWanted();
  if (event->matches(QKeySequence::Undo)) return Q_EMIT undoWanted();
  if (event->matches(QKeySequence::Redo)) return Q_EMIT redoWanted();
  QLineEdit::keyPressEvent(event);
}

/// Qt's own menu offers the history of the line, which could bring back what is gone.
void EntryLine::contextMenuEvent(QContextMenuEvent* event) {
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  const bool writes = !isReadOnly();
  const auto add = [&](const char* name, const QString& text, auto&& does, bool enabled) {
    QAction* action = menu->addAction(text);
    action->setObjectName(QLatin1String(name));
    action->setEnabled(enabled);
    connect(action, &QAction::triggered, this, does);
  };
  add("line-undo", tr("Undo"), &EntryLine::undoWanted, writes);
  add("line-redo", tr("Redo"), &EntryLine::redoWanted, writes);
  menu->addSeparator();
  add("line-cut", tr("Cut"), &QLineEdit::cut, writes && hasSelectedText());
  add("line-copy", tr("Copy"), &QLineEdit::copy, hasSelectedText());
  add("line-paste", tr("Paste"), &QLineEdit::paste, writes);
  menu->addSeparator();
  add("line-select-all", tr("Select all"), &QLineEdit::selectAll, !text().isEmpty());
  menu->popup(event->globalPos());
}

void EntryLine::inputMethodEvent(QInputMethodEvent* event) {
  composing_ = !event->preeditString().isEmpty();
  if (composing_) Q_EMIT composing();
  QLineEdit::inputMethodEvent(event);
}

/// What is longer than its box shows where it begins, the figure before the unit. A menu or another window is
/// no leaving.
void EntryLine::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
    setCursorPosition(0);
}

void EntryLine::resizeEvent(QResizeEvent* event) {
  QLineEdit::resizeEvent(event);
  placeArrow();
}

void EntryLine::changeEvent(QEvent* event) {
  QLineEdit::changeEvent(event);
  if (event->type() != QEvent::FontChange) return;
  applyMargins();
  placeArrow();
  update();
}

/// Only digits stand there, or nothing yet.
bool EntryLine::showsBareUnit() const {
  if (bareUnit_.isEmpty()) return false;
  const QString typed = text().trimmed();
  return std::all_of(typed.begin(), typed.end(),
                     [](QChar c) { return (c >= u'0' && c <= u'9') || c == u'.'; });
}

void EntryLine::paintEvent(QPaintEvent* event) {
  QLineEdit::paintEvent(event);
  if (!showsBareUnit()) return;
  QPainter painter(this);
  painter.setPen(boardPalette(schemeFor(palette()))[Ink::quiet]);
  const int right = arrow_->isHidden() ? 8 : arrowWidth() + 4;
  painter.drawText(rect().adjusted(0, 0, -right, 0), Qt::AlignRight | Qt::AlignVCenter, bareUnit_);
}

}  // namespace wardchalk::ui
