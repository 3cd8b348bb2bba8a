#include "ui/form/quiet_line.h"

#include <QEvent>
#include <QPainter>
#include <QRegularExpression>

#include "ui/access/answers.h"
#include "ui/theme/board_palette.h"
#include "ui/theme/letters.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int barWidth = 3;
constexpr int refusedIndent = 8;

/// A number and its unit never stand on two lines.
QString keptTogether(QString text) {
  static const QRegularExpression numberBeforeUnit(QStringLiteral("(?<=[0-9]) (?=\\S)"));
  return text.replace(numberBeforeUnit, QString(QChar::Nbsp));
}

}  // namespace

QuietLine::QuietLine(QWidget* parent) : PlainLabel(parent) {
  // what it says is the description of its field; as a label a reader would say it again with each group
  giveRole(this, QAccessible::Paragraph);
  setWordWrap(true);
  setIndent(0);
  setAlignment(Qt::AlignLeft | Qt::AlignTop);
  shareLetters(this, quietShare);
  setMinimumHeight(fontMetrics().height());
  applyInk();
}

void QuietLine::say(const QString& text, Tone tone) {
  if (text == said_ && tone == tone_) return;
  said_ = text;
  tone_ = tone;
  setContentsMargins(tone == Tone::refused ? refusedIndent : 0, 0, 0, 0);
  setText(keptTogether(text));
  setAccessibleName(loosed(text));
  applyInk();
  updateGeometry();
}

void QuietLine::applyInk() {
  const BoardPalette& inks = boardPalette(schemeFor(parentWidget() ? parentWidget()->palette() : palette()));
  QPalette own = parentWidget() ? parentWidget()->palette() : palette();
  own.setColor(QPalette::WindowText, tone_ == Tone::refused ? inks[Ink::text] : inks[Ink::quiet]);
  if (own.color(QPalette::WindowText) != palette().color(QPalette::WindowText)) setPalette(own);
}

void QuietLine::changeEvent(QEvent* event) {
  PlainLabel::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
    setMinimumHeight(fontMetrics().height());
  if (event->type() == QEvent::ParentChange || event->type() == QEvent::PaletteChange) applyInk();
}

void QuietLine::paintEvent(QPaintEvent* event) {
  PlainLabel::paintEvent(event);
  if (tone_ == Tone::quiet || said_.isEmpty()) return;
  QPainter painter(this);
  painter.fillRect(QRect(0, 1, barWidth, height() - 2), palette().color(QPalette::WindowText));
}

}  // namespace wardchalk::ui
