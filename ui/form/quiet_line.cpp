#include "ui/form/quiet_line.h"

#include <QEvent>
#include <QPainter>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

namespace {

constexpr int barWidth = 3;
constexpr int refusedIndent = 8;

}  // namespace

QuietLine::QuietLine(QWidget* parent) : QLabel(parent) {
  setTextFormat(Qt::PlainText);
  setWordWrap(true);
  setAlignment(Qt::AlignLeft | Qt::AlignTop);
  QFont small = font();
  small.setPointSizeF(small.pointSizeF() * 0.9);
  setFont(small);
  setMinimumHeight(fontMetrics().height());
  applyInk();
}

void QuietLine::say(const QString& text, Tone tone) {
  if (text == this->text() && tone == tone_) return;
  tone_ = tone;
  setIndent(tone == Tone::refused ? refusedIndent : 0);
  setText(text);
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
  QLabel::changeEvent(event);
  if (event->type() == QEvent::ParentChange || event->type() == QEvent::PaletteChange) applyInk();
}

void QuietLine::paintEvent(QPaintEvent* event) {
  QLabel::paintEvent(event);
  if (tone_ == Tone::quiet || text().isEmpty()) return;
  QPainter painter(this);
  painter.fillRect(QRect(0, 1, barWidth, height() - 2), palette().color(QPalette::WindowText));
}

}  // namespace wardchalk::ui
