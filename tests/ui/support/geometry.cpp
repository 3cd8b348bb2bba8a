#include "tests/ui/support/geometry.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>

namespace wardchalk::ui::test {

namespace {

QString named(const QWidget* widget, const QString& text) {
  return QStringLiteral("%1 \"%2\" in %3x%4")
      .arg(widget->objectName(), text)
      .arg(widget->width())
      .arg(widget->height());
}

/// What a hand aims at; the parts of a box are aimed at with the box.
bool isTarget(const QWidget& one) {
  if (!one.isVisible() || !one.isEnabled()) return false;
  if (one.parentWidget() && (qobject_cast<const QComboBox*>(one.parentWidget()) ||
                             qobject_cast<const QAbstractSpinBox*>(one.parentWidget())))
    return false;
  return qobject_cast<const QAbstractButton*>(&one) || qobject_cast<const QLineEdit*>(&one) ||
         qobject_cast<const QComboBox*>(&one) || qobject_cast<const QAbstractSpinBox*>(&one);
}

}  // namespace

QString cut(const QWidget& within) {
  for (const QLabel* label : within.findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().trimmed().isEmpty()) continue;
    const bool fits = label->wordWrap() ? label->height() >= label->heightForWidth(label->width())
                                        : label->width() >= label->sizeHint().width();
    if (!fits || label->height() < label->fontMetrics().height()) return named(label, label->text());
  }
  for (const QAbstractButton* button : within.findChildren<QAbstractButton*>()) {
    if (!button->isVisible() || button->text().isEmpty()) continue;
    const QSize words = button->fontMetrics().size(Qt::TextShowMnemonic, button->text());
    if (button->width() < words.width() || button->height() < words.height())
      return named(button, button->text());
  }
  for (const QLineEdit* line : within.findChildren<QLineEdit*>()) {
    if (!line->isVisible()) continue;
    if (line->height() < line->fontMetrics().height() + 4) return named(line, line->text());
    if (line->fontMetrics().horizontalAdvance(line->text()) > line->width() - line->textMargins().right())
      return named(line, line->text());
  }
  return {};
}

QString sideways(const QWidget& window) {
  for (const QScrollArea* area : window.findChildren<QScrollArea*>()) {
    if (!area->isVisible() || !area->widget()) continue;
    if (area->horizontalScrollBar()->maximum() > 0) return named(area, QStringLiteral("scrolls sideways"));
    for (const QWidget* one : area->widget()->findChildren<QWidget*>()) {
      const int left = one->mapTo(area->widget(), QPoint()).x();
      if (one->isVisible() && !one->size().isEmpty() &&
          (left < -2 || left + one->width() > area->viewport()->width() + 2))
        return named(one, QStringLiteral("reaches out"));
    }
  }
  return {};
}

QString tooSmall(const QWidget& within) {
  constexpr int least = 24;
  for (const QWidget* one : within.findChildren<QWidget*>())
    if (isTarget(*one) && (one->width() < least || one->height() < least))
      return named(one, QStringLiteral("is hard to hit"));
  return {};
}

}  // namespace wardchalk::ui::test
