#include "tests/ui/shell/dialog_pictures.h"

#include <QApplication>
#include <QWidget>

#include "tests/ui/support/desktops.h"

namespace wardchalk::ui {

namespace {

constexpr QSize wardMonitor(1366, 768);

void shoot(const QString& file, const std::function<QWidget*()>& show, bool large) {
  QWidget* dialog = show();
  if (!dialog) qFatal("there is no dialog to draw");
  if (large || dialog->width() > wardMonitor.width()) dialog->resize(wardMonitor);
  QCoreApplication::processEvents();
  dialog->grab().save(file);
}

}  // namespace

bool shootDialog(const QString& name, const std::function<QWidget*()>& show) {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) return false;
  const QPalette palette = QApplication::palette();
  const QFont font = QApplication::font();
  for (const Desktop& desktop : desktops)
    for (const bool large : {false, true}) {
      QApplication::setPalette(paletteOf(desktop));
      QFont letters = font;
      if (large) letters.setPointSizeF(2 * font.pointSizeF());
      QApplication::setFont(letters);
      const QString file = QStringLiteral("%1/%2-%3-%4.png").arg(folder, name, QLatin1String(desktop.name));
      shoot(file.arg(large ? 200 : 100), show, large);
    }
  QApplication::setPalette(palette);
  QApplication::setFont(font);
  return true;
}

}  // namespace wardchalk::ui
