#include "ui/practice/practice_look.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPainter>
#include <QPainterPath>

#include "ui/practice/practice_style.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

namespace {

constexpr auto shareName = "letters-share";
constexpr auto boldName = "letters-bold";
constexpr auto quietName = "letters-quiet";
constexpr auto leastName = "least-height";

/// Letters a little larger than the desktop's: this is read slowly.
constexpr double usualShare = 1.1;
constexpr double quietShare = 0.94;
constexpr int cardRadius = 8;
constexpr int stripeWidth = 14;

/// A least height of its own would let a layout press the widget below what its letters need.
void growWithLetters(QWidget* widget) {
  const bool grows = qobject_cast<QAbstractButton*>(widget) || qobject_cast<QLineEdit*>(widget) ||
                     qobject_cast<QAbstractSpinBox*>(widget) || qobject_cast<QComboBox*>(widget);
  if (!grows || widget->minimumHeight() == 0) return;
  if (!widget->property(leastName).isValid()) widget->setProperty(leastName, widget->minimumHeight());
  widget->setMinimumHeight(qMax(widget->property(leastName).toInt(), widget->sizeHint().height()));
}

void applyQuiet(QWidget* widget) {
  QPalette own = widget->palette();
  own.setColor(QPalette::WindowText, practicePalette(practiceScheme())[Ink::quiet]);
  widget->setPalette(own);
}

}  // namespace

Scheme practiceScheme() { return schemeFor(QApplication::palette()); }

void setLetters(QWidget* widget, double share, bool bold) {
  widget->setProperty(shareName, share);
  widget->setProperty(boldName, bold);
}

void applyLetters(QWidget* window, double zoom) {
  const QFont base = sharedFont(desktopFont(), usualShare * zoom, false);
  window->setFont(base);
  for (QWidget* one : window->findChildren<QWidget*>()) {
    if (one->style() != practiceStyle()) one->setStyle(practiceStyle());
    const QVariant share = one->property(shareName);
    if (share.isValid()) one->setFont(sharedFont(base, share.toDouble(), one->property(boldName).toBool()));
    if (one->property(quietName).toBool()) applyQuiet(one);
    growWithLetters(one);
  }
}

QLabel* wordsIn(QWidget* parent, const QString& text, double share, bool bold) {
  auto* label = new PlainLabel(text, parent);
  label->setWordWrap(true);
  setLetters(label, share, bold);
  return label;
}

QLabel* quietWordsIn(QWidget* parent, const QString& text) {
  QLabel* label = wordsIn(parent, text);
  makeQuiet(label);
  return label;
}

void makeQuiet(QLabel* label) {
  setLetters(label, quietShare);
  label->setProperty(quietName, true);
  applyQuiet(label);
}

QPushButton* addButton(FlowLayout* flow, const QString& text, const char* name) {
  QPushButton* button = plainButton(text, name, flow->parentWidget(), practiceTarget);
  flow->addWidget(button);
  return button;
}

PracticeCard::PracticeCard(QWidget* parent) : QFrame(parent) {}

void PracticeCard::paintEvent(QPaintEvent*) {
  const BoardPalette& inks = practicePalette(practiceScheme());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(inks[Ink::edge], 1));
  painter.setBrush(inks[Ink::card]);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), cardRadius, cardRadius);
}

PracticeBand::PracticeBand(const QString& text, QWidget* parent) : PlainLabel(text, parent) {
  setObjectName(QStringLiteral("practice-band"));
  setAlignment(Qt::AlignCenter);
  setContentsMargins(16, 8, 16, 8);
  setLetters(this, 1.08, true);
}

void PracticeBand::paintEvent(QPaintEvent*) {
  const BandColours colours = bandColours(practiceScheme());
  QPainter painter(this);
  painter.fillRect(rect(), colours.ground);
  painter.setRenderHint(QPainter::Antialiasing);
  const int high = height();
  QPainterPath stripes;
  for (int x = -high; x < width(); x += 2 * stripeWidth)
    stripes.addPolygon(
        QPolygon({{x, high}, {x + high, 0}, {x + high + stripeWidth, 0}, {x + stripeWidth, high}}));
  painter.fillPath(stripes, colours.stripe);
  // the words stand on plain ground
  const int wide = qMin(width(), fontMetrics().horizontalAdvance(text()) + 48);
  painter.fillRect(QRect((width() - wide) / 2, 0, wide, high), colours.ground);
  painter.setPen(colours.ink);
  painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, text());
}

}  // namespace wardchalk::ui
