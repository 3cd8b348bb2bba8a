#include <QApplication>
#include <QDataStream>
#include <QFile>
#include <QLabel>
#include <QRandomGenerator>
#include <QScreen>
#include <QTemporaryDir>
#include <QTest>

#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::window_place_test {

namespace {

/// The monitors of a desk, for the display that is none. The second hangs lower, so that some places between
/// them lie on no screen.
constexpr auto desk = R"({"screens": [
  {"name": "monitor", "x": 0, "y": 0, "width": 1366, "height": 768, "logicalDpi": 96, "logicalBaseDpi": 96},
  {"name": "other", "x": 1366, "y": 200, "width": 1280, "height": 1024, "logicalDpi": 96, "logicalBaseDpi": 96}
]})";

/// A geometry as Qt keeps it.
/// Source: QWidget::saveGeometry of Qt 6.4; that the order is right is held by a row of the test.
struct Kept {
  QRect frame{100, 100, 900, 600};
  QRect normal{100, 130, 900, 570};
  qint32 screen = 0;
  bool maximized = false;
  bool full = false;
  qint32 screenWidth = 1366;
  QRect place{100, 130, 900, 570};
  quint32 magic = 0x1D9D0CB;
  quint16 version = 3;

  [[nodiscard]] QByteArray bytes() const {
    QByteArray all;
    QDataStream out(&all, QIODevice::WriteOnly);
    out.setVersion(QDataStream::Qt_4_0);
    out << magic << version << quint16{0} << frame << normal << screen << quint8{maximized} << quint8{full}
        << screenWidth << place;
    return all;
  }
};

QByteArray placed(const QRect& where) {
  Kept kept;
  kept.frame = where;
  kept.normal = where;
  kept.place = where;
  return kept.bytes();
}

}  // namespace

/// Where the window opens, whatever its settings hold.
class WindowPlaceTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void theWindowAndItsCautionAreOnAScreen_data();
  void theWindowAndItsCautionAreOnAScreen();
  void aPlaceOnAScreenIsKept();

 private:
  static QString fault(const MainWindow& window);
};

void WindowPlaceTest::theWindowAndItsCautionAreOnAScreen_data() {
  QTest::addColumn<QByteArray>("kept");
  QTest::newRow("words") << QByteArray("place");
  QTest::newRow("one byte") << QByteArray(1, '\x01');
  QTest::newRow("noughts") << QByteArray(66, '\0');
  QTest::newRow("all ones") << QByteArray(66, '\xff');
  QTest::newRow("a megabyte") << QByteArray(1 << 20, '\x1d');
  QTest::newRow("far to the right") << placed({50000, 100, 1000, 600});
  QTest::newRow("far to the left") << placed({-50000, -50000, 1000, 600});
  QTest::newRow("below the screen") << placed({100, 700, 1000, 700});
  QTest::newRow("above the screen") << placed({100, -650, 1000, 700});
  QTest::newRow("half over the edge") << placed({1000, 400, 1200, 700});
  QTest::newRow("of a screen that is gone") << placed({2700, 0, 1366, 740});
  QTest::newRow("between two screens, on none") << placed({1400, 0, 1000, 190});
  QTest::newRow("across two screens") << placed({900, 300, 1000, 600});
  QTest::newRow("larger than any screen") << placed({0, 0, 30000, 30000});
  QTest::newRow("wide as can be") << placed({0, 0, INT_MAX - 1, INT_MAX - 1});
  QTest::newRow("places beyond numbers") << placed(QRect(QPoint(INT_MIN, INT_MIN), QPoint(INT_MAX, INT_MAX)));
  QTest::newRow("turned inside out") << placed(QRect(QPoint(900, 900), QPoint(100, 100)));
  QTest::newRow("of no size") << placed({300, 300, 0, 0});
  QTest::newRow("a sliver") << placed({300, 300, 1, 1});
  QTest::newRow("as tall as the screen, without room for a frame") << placed({0, 0, 1366, 768});
  const auto with = [](auto change) {
    Kept kept;
    change(kept);
    return kept.bytes();
  };
  QTest::newRow("full screen") << with([](Kept& kept) { kept.full = true; });
  QTest::newRow("maximized, and as tall as can be when not") << with([](Kept& kept) {
    kept.maximized = true;
    kept.normal = {100, 20, 900, 16777215};
  });
  QTest::newRow("maximized and full") << with([](Kept& kept) { kept.full = kept.maximized = true; });
  QTest::newRow("the ninth screen") << with([](Kept& kept) { kept.screen = 9; });
  QTest::newRow("a screen below none") << with([](Kept& kept) { kept.screen = -1; });
  QTest::newRow("another version") << with([](Kept& kept) { kept.version = 9; });
  const QByteArray whole = Kept{}.bytes();
  for (const qsizetype size : {4, 8, 24, 40, 47, 50, 60})
    QTest::addRow("cut after %lld", static_cast<long long>(size)) << whole.left(size);
  QRandomGenerator dice(20261129);
  for (int i = 0; i < 60; ++i) {
    QByteArray damaged = whole;
    for (int k = 0; k < 4; ++k)
      damaged[dice.bounded(8, static_cast<int>(damaged.size()))] = static_cast<char>(dice.bounded(256));
    QTest::addRow("damaged %d", i) << damaged;
  }
}

/// What of the window is not on one screen; empty when all is.
QString WindowPlaceTest::fault(const MainWindow& window) {
  const QRect place = window.frameGeometry();
  const auto* caution = window.findChild<QLabel*>(QStringLiteral("caution"));
  const QRect bottom(caution->mapToGlobal(QPoint(0, 0)), caution->size());
  const QString where =
      QStringLiteral("%1,%2 %3x%4").arg(place.x()).arg(place.y()).arg(place.width()).arg(place.height());
  if (!window.isVisible() || window.isMinimized() || window.isFullScreen())
    return QStringLiteral("out of sight: ") + where;
  for (const QScreen* screen : QGuiApplication::screens())
    if (screen->availableGeometry().contains(place) && place.contains(bottom) && !bottom.isEmpty()) return {};
  return QStringLiteral("not on a screen: ") + where;
}

void WindowPlaceTest::theWindowAndItsCautionAreOnAScreen() {
  QFETCH(QByteArray, kept);
  const QTemporaryDir folder;
  Settings settings(folder.filePath(QStringLiteral("settings.ini")));
  settings.setGeometry(kept);
  ScriptedDialogs dialogs;
  MainWindow window(exactRules(), settings, dialogs);
  window.show();
  QVERIFY(QTest::qWaitForWindowExposed(&window));
  QCOMPARE(fault(window), QString());
  window.showNormal();  // out of its maximized state it is on a screen as well
  QCoreApplication::processEvents();
  QCOMPARE(fault(window), QString());
}

void WindowPlaceTest::aPlaceOnAScreenIsKept() {
  const QTemporaryDir folder;
  Settings settings(folder.filePath(QStringLiteral("settings.ini")));
  Kept kept;
  kept.frame = kept.normal = kept.place = {1450, 300, 1100, 700};
  kept.screen = 1;
  kept.screenWidth = 1280;
  settings.setGeometry(kept.bytes());
  ScriptedDialogs dialogs;
  MainWindow window(exactRules(), settings, dialogs);
  window.show();
  QVERIFY(QTest::qWaitForWindowExposed(&window));
  QCOMPARE(window.screen()->name(), QStringLiteral("other"));
  QCOMPARE(window.geometry(), QRect(1450, 300, 1100, 700));
  const QByteArray again = window.saveGeometry();
  // The test writes it as Qt does, but for the frame, which the screens have of their own.
  constexpr qsizetype frameFrom = 8;
  constexpr qsizetype frameEnds = 24;
  QCOMPARE(again.left(frameFrom), kept.bytes().left(frameFrom));
  QCOMPARE(again.mid(frameEnds), kept.bytes().mid(frameEnds));
}

namespace {

int onThatDesk(int argc, char** argv) {
  const QTemporaryDir folder;
  QFile file(folder.filePath(QStringLiteral("desk.json")));
  if (!file.open(QIODevice::WriteOnly) || file.write(desk) < 0) return 1;
  file.close();
  qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" + QFile::encodeName(file.fileName()));
  QApplication app(argc, argv);
  WindowPlaceTest test;
  return QTest::qExec(&test, argc, argv);
}

}  // namespace

WARDCHALK_QT_TEST_BY(WindowPlaceTest, onThatDesk)

}  // namespace wardchalk::ui::window_place_test

#include "window_place_test.moc"
