#include "ui/theme/letters.h"

#include <QApplication>
#include <QFontInfo>
#include <QVariant>
#include <QWidget>
#include <algorithm>

namespace wardchalk::ui {

namespace {

constexpr auto desktopName = "desktop-letters";
constexpr auto shareName = "share-of-letters";
constexpr auto boldName = "share-is-bold";

/// Up to this height of letters, 11 points at 96 dots to the inch, the usual widths hold.
constexpr double usualPixels = 15;

void applyShare(QWidget* widget) {
  const double share = widget->property(shareName).toDouble();
  widget->setFont(sharedFont(QApplication::font(), share, widget->property(boldName).toBool()));
}

}  // namespace

/// The desktop's font is asked for before the first change, and goes with the program.
void setTextSize(int percent) {
  const double share = std::max(percent, 100) / 100.0;
  const bool wasSet = qApp->property(desktopName).isValid();
  if (!wasSet && share == 1) return;  // nothing is set: what the desktop changes is followed
  if (!wasSet) qApp->setProperty(desktopName, QApplication::font());
  const QFont wanted = sharedFont(desktopFont(), share, desktopFont().bold());
  if (wanted == QApplication::font()) return;
  QApplication::setFont(wanted);
  for (QWidget* widget : QApplication::allWidgets())
    if (widget->property(shareName).isValid()) applyShare(widget);
}

QFont desktopFont() {
  const QVariant kept = qApp->property(desktopName);
  return kept.isValid() ? kept.value<QFont>() : QApplication::font();
}

double textScale() {
  const double pixels = QFontInfo(QApplication::font()).pixelSize();
  return std::max({1.0, pixels / usualPixels, pixels / QFontInfo(desktopFont()).pixelSize()});
}

QFont sharedFont(const QFont& base, double share, bool bold) {
  QFont font = base;
  if (base.pixelSize() > 0)
    font.setPixelSize(qRound(base.pixelSize() * share));
  else
    font.setPointSizeF(base.pointSizeF() * share);
  font.setBold(bold);
  return font;
}

void shareLetters(QWidget* widget, double share, bool bold) {
  widget->setProperty(shareName, share);
  widget->setProperty(boldName, bold);
  applyShare(widget);
}

}  // namespace wardchalk::ui
