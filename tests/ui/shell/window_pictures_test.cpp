#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QTest>

#include "tests/support/golden_cases.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/desktops.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/field_edit.h"
#include "ui/form/form.h"
#include "ui/theme/board_palette.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/surface.h"

namespace wardchalk::ui::window_pictures_test {

namespace {

/// Whether each field has the room that it asks for, and none lies over another.
bool liesWell(const MainWindow& window) {
  QCoreApplication::processEvents();  // what asked for a new layout has it now
  QList<QRect> taken;
  for (const FieldEdit* field : window.findChildren<FieldEdit*>()) {
    if (!field->isVisible()) continue;
    const QRect here(field->mapTo(&window, QPoint()), field->size());
    const bool apart =
        std::none_of(taken.begin(), taken.end(), [&](const QRect& other) { return other.intersects(here); });
    if (!apart || field->height() < field->heightForWidth(field->width())) return false;
    taken << here;
  }
  return !taken.isEmpty();
}

void open(Nurse& nurse, const std::string& golden) {
  nurse.window().resize(1366, 768);
  nurse.window().openFile(
      QString::fromStdString((wardchalk::test::goldenFolder() / (golden + ".case.json")).string()));
}

}  // namespace

/// The whole window on the desktops that it may meet: it follows each of them, and with WARDCHALK_SHOTS it is
/// drawn to be looked at.
class WindowPicturesTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void followsTheDesktop_data() { addDesktops(); }
  void followsTheDesktop();
  void fieldsLieBesideEachOther_data();
  void fieldsLieBesideEachOther();
  void ringStaysRoundTheBoxThatARefusalMoves();
  void shoots_data() { addDesktops(); }
  void shoots();
  void cleanup() { QApplication::setPalette(before_); }

 private:
  static void addDesktops() {
    QTest::addColumn<int>("at");
    for (std::size_t i = 0; i < desktops.size(); ++i) QTest::newRow(desktops[i].name) << static_cast<int>(i);
  }
  QPalette before_ = QApplication::palette();
};

void WindowPicturesTest::followsTheDesktop() {
  QFETCH(int, at);
  const Desktop& desktop = desktops[static_cast<std::size_t>(at)];
  QApplication::setPalette(paletteOf(desktop));
  QCOMPARE(schemeFor(QApplication::palette()), desktop.scheme);
  Nurse nurse;
  const QImage window = nurse.window().grab().toImage();
  const QColor surface = surfacePalette(paletteOf(desktop)).color(QPalette::Window);
  QCOMPARE(window.pixelColor(4, window.height() / 2), surface);  // beside the form
  QCOMPARE(window.pixelColor(window.width() - 24, window.height() - 60),
           boardPalette(desktop.scheme)[Ink::board]);
}

void WindowPicturesTest::fieldsLieBesideEachOther_data() {
  QTest::addColumn<QString>("name");
  for (const wardchalk::test::GoldenCase& golden : wardchalk::test::goldenCases())
    QTest::newRow(golden.name.c_str()) << QString::fromStdString(golden.name);
}

void WindowPicturesTest::fieldsLieBesideEachOther() {
  QFETCH(QString, name);
  Nurse nurse;
  open(nurse, name.toStdString());
  QTRY_VERIFY(liesWell(nurse.window()));
}

void WindowPicturesTest::ringStaysRoundTheBoxThatARefusalMoves() {
  Nurse nurse;
  nurse.window().resize(1366, 768);
  const auto place = [&](const QWidget* one) {
    return QRect(one->mapTo(&nurse.window(), QPoint()), one->size());
  };
  nurse.fill({QStringLiteral("103 cm"), QStringLiteral("17.2 kg"), QString(), QStringLiteral("Plover")});
  const QRect before = place(nurse.window().findChild<QLineEdit*>(QStringLiteral("order.dose:text")));
  nurse.fill({QStringLiteral("through the tube, I think, or else by mouth if he takes it")});
  QTRY_VERIFY(place(QApplication::focusWidget()).top() > before.top());  // the sentence needs more lines
  const auto* ring = nurse.window().findChild<Form*>()->findChild<FocusRing*>();
  QTRY_COMPARE(place(ring).center(), place(QApplication::focusWidget()).center());
}

void WindowPicturesTest::shoots() {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) QSKIP("no folder for pictures is named");
  QFETCH(int, at);
  const Desktop& desktop = desktops[static_cast<std::size_t>(at)];
  QApplication::setPalette(paletteOf(desktop));
  for (const char* name : {"safe-per-surface-liquid", "ask-below-usual", "unsafe-over-single",
                           "not-covered-age", "undecided-height-missing", "household-powder-surface"})
    for (const int zoom : {100, 200}) {
      Nurse nurse;
      nurse.window().resize(1366, 768);
      nurse.window().openFile(QString::fromStdString((wardchalk::test::goldenFolder() / name).string()) +
                              QStringLiteral(".case.json"));
      for (int step = 100; step < zoom; step += 10) nurse.press(Qt::Key_Plus, Qt::ControlModifier);
      QTRY_VERIFY(liesWell(nurse.window()));
      nurse.window().grab().save(
          QStringLiteral("%1/window-%2-%3-%4.png")
              .arg(folder, QString::fromLatin1(name), QString::fromLatin1(desktop.name))
              .arg(zoom));
    }
  Nurse nurse;
  nurse.window().resize(1366, 768);
  nurse.window().grab().save(
      QStringLiteral("%1/window-empty-%2.png").arg(folder, QString::fromLatin1(desktop.name)));
  nurse.fill({QStringLiteral("103 cm"), QStringLiteral("17,2 kg")});
  QTRY_VERIFY(liesWell(nurse.window()));
  nurse.window().grab().save(
      QStringLiteral("%1/window-refusal-%2.png").arg(folder, QString::fromLatin1(desktop.name)));
}

WARDCHALK_QT_TEST(WindowPicturesTest)

}  // namespace wardchalk::ui::window_pictures_test

#include "window_pictures_test.moc"
