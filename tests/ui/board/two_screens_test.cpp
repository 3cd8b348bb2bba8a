#include <QApplication>
#include <QFile>
#include <QScreen>
#include <QTemporaryDir>
#include <QTest>

#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/board/board_surface.h"

namespace wardchalk::ui::two_screens_test {

namespace {

/// A monitor and a projector of another size beside it, for the display that is none.
constexpr auto desk = R"({"screens": [
  {"name": "monitor", "x": 0, "y": 0, "width": 1366, "height": 768, "logicalDpi": 96, "logicalBaseDpi": 96},
  {"name": "projector", "x": 1366, "y": 0, "width": 1920, "height": 1080, "logicalDpi": 96, "logicalBaseDpi": 96}
]})";

QScreen* screenNamed(const char* name) {
  for (QScreen* screen : QGuiApplication::screens())
    if (screen->name() == QLatin1String(name)) return screen;
  return nullptr;
}

}  // namespace

/// The board before a room, where a projector hangs beside the monitor.
class TwoScreensTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void opensOnTheScreenThatTheWindowIsNotOn_data();
  void opensOnTheScreenThatTheWindowIsNotOn();
  void goesToTheOtherScreenAndBack();
  void leavesTheWindowWhereItWas();

 private:
  static Board* boardOf(Nurse& nurse) { return nurse.window().findChild<Board*>(); }
  static bool fills(const Board* board, const char* screen) {
    return board && board->isVisible() && board->screen() == screenNamed(screen) &&
           board->geometry() == screenNamed(screen)->geometry();
  }
  /// A window on that screen, with its board called.
  static void call(Nurse& nurse, const char* screen) {
    nurse.window().setScreen(screenNamed(screen));
    nurse.window().setGeometry(QRect(screenNamed(screen)->geometry().topLeft(), QSize(1366, 768)));
    nurse.window().openFile(QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/cases/plover.json"));
    nurse.press(Qt::Key_F11);
  }
};

void TwoScreensTest::opensOnTheScreenThatTheWindowIsNotOn_data() {
  QTest::addColumn<QByteArray>("window");
  QTest::addColumn<QByteArray>("board");
  QTest::newRow("from the monitor") << QByteArray("monitor") << QByteArray("projector");
  QTest::newRow("from the projector") << QByteArray("projector") << QByteArray("monitor");
}

void TwoScreensTest::opensOnTheScreenThatTheWindowIsNotOn() {
  QFETCH(QByteArray, window);
  QFETCH(QByteArray, board);
  QCOMPARE(QGuiApplication::screens().size(), qsizetype(2));
  Nurse nurse;
  call(nurse, window.constData());
  QTRY_VERIFY(fills(boardOf(nurse), board.constData()));
}

void TwoScreensTest::goesToTheOtherScreenAndBack() {
  Nurse nurse;
  call(nurse, "monitor");
  QTRY_VERIFY(fills(boardOf(nurse), "projector"));
  QTest::keyClick(boardOf(nurse)->surface(), Qt::Key_Space);
  const auto place = boardOf(nurse)->surface()->place();
  QTest::keyClick(boardOf(nurse)->surface(), Qt::Key_S);
  QTRY_VERIFY(fills(boardOf(nurse), "monitor"));
  QTest::keyClick(boardOf(nurse)->surface(), Qt::Key_S);
  QTRY_VERIFY(fills(boardOf(nurse), "projector"));
  QCOMPARE(boardOf(nurse)->surface()->place(), place);
}

void TwoScreensTest::leavesTheWindowWhereItWas() {
  Nurse nurse;
  call(nurse, "monitor");
  QTRY_VERIFY(fills(boardOf(nurse), "projector"));
  QTest::keyClick(boardOf(nurse)->surface(), Qt::Key_Escape);
  QTRY_VERIFY(!boardOf(nurse));
  QCOMPARE(nurse.window().screen(), screenNamed("monitor"));
  QVERIFY(nurse.window().isVisible());
}

namespace {

int besideAProjector(int argc, char** argv) {
  const QTemporaryDir folder;
  QFile file(folder.filePath(QStringLiteral("desk.json")));
  if (!file.open(QIODevice::WriteOnly) || file.write(desk) < 0) return 1;
  file.close();
  qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" + QFile::encodeName(file.fileName()));
  QApplication app(argc, argv);
  TwoScreensTest test;
  return QTest::qExec(&test, argc, argv);
}

}  // namespace

WARDCHALK_QT_TEST_BY(TwoScreensTest, besideAProjector)

}  // namespace wardchalk::ui::two_screens_test

#include "two_screens_test.moc"
