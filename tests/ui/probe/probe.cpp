#include <malloc.h>

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPaintEvent>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>
#include <array>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/ui/shell/nurse.h"
#include "ui/board/board.h"
#include "ui/board/board_surface.h"
#include "ui/working/working_pane.h"

// Measures the window: numbers to read, never a test. `measure` beside this file runs every mode and prints
// the table.

namespace wardchalk::ui {
namespace {

QElapsedTimer sinceStart;

long peakKb() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmHWM:")) return std::stol(line.substr(6));
  return 0;
}

long residentKb() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmRSS:")) return std::stol(line.substr(6));
  return 0;
}

/// What the program has asked for and not given back; resident memory also holds what lies between.
long inUseKb() { return static_cast<long>(mallinfo2().uordblks / 1024); }

/// Counts what reaches the widgets of a window.
class Watch : public QObject {
 public:
  long paints = 0;
  long timers = 0;
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) ++paints;
    if (event->type() == QEvent::Timer) ++timers;
    return false;
  }
};

void settle() {
  for (int i = 0; i < 20; ++i) QCoreApplication::processEvents();
}

/// First paint of a window, then leave.
int firstPaint(QWidget& window) {
  class Once : public QObject {
   public:
    bool eventFilter(QObject*, QEvent* event) override {
      if (event->type() != QEvent::Paint) return false;
      QTimer::singleShot(0, [] {
        std::printf("%.2f %ld\n", static_cast<double>(sinceStart.nsecsElapsed()) / 1e6, peakKb());
        QCoreApplication::quit();
      });
      return false;
    }
  };
  static Once once;
  window.installEventFilter(&once);
  window.show();
  return QCoreApplication::exec();
}

int label() {
  QLabel window(QStringLiteral("One label"));
  window.resize(1366, 768);
  return firstPaint(window);
}

/// As the program itself starts: the file is read before the window is shown.
int start(const QString& file) {
  const QTemporaryDir folder;
  Settings settings(folder.filePath(QStringLiteral("settings.ini")));
  ScriptedDialogs dialogs;
  MainWindow window(exactRules(), settings, dialogs);
  if (!file.isEmpty()) window.openFile(file);
  return firstPaint(window);
}

void press(QWidget* field, int key, const QString& text, Qt::KeyboardModifiers with = Qt::NoModifier) {
  QKeyEvent down(QEvent::KeyPress, key, with, text);
  QCoreApplication::sendEvent(field, &down);
  QKeyEvent up(QEvent::KeyRelease, key, with, text);
  QCoreApplication::sendEvent(field, &up);
  QCoreApplication::sendPostedEvents();
  QCoreApplication::processEvents();  // lays out and paints what the key changed
}

double share(std::vector<double>& times, double part) {
  std::sort(times.begin(), times.end());
  return times[static_cast<std::size_t>(static_cast<double>(times.size() - 1) * part)];
}

/// From key press to painted pane, over every case of a folder: a digit typed into the dose and taken back,
/// then Enter, which judges again and goes to the next field, and back.
int keys(const QString& folder) {
  Nurse nurse;
  nurse.window().resize(1366, 768);
  nurse.window().show();
  settle();
  std::vector<double> times;
  for (const QString& name : QDir(folder).entryList({QStringLiteral("*.case.json")})) {
    nurse.window().openFile(QDir(folder).filePath(name));
    settle();
    nurse.walkTo(QStringLiteral("order.dose"));
    struct Key {
      Qt::Key key;
      QString text;
      Qt::KeyboardModifiers with;
    };
    const std::array keys = {Key{Qt::Key_5, QStringLiteral("5"), Qt::NoModifier},
                             Key{Qt::Key_Backspace, {}, Qt::NoModifier},
                             Key{Qt::Key_Return, QStringLiteral("\r"), Qt::NoModifier},
                             Key{Qt::Key_Return, QStringLiteral("\r"), Qt::ShiftModifier}};
    for (int i = 0; i < 20 && QApplication::focusWidget() != nullptr; ++i)
      for (const Key& key : keys) {
        QElapsedTimer timer;
        timer.start();
        press(QApplication::focusWidget(), key.key, key.text, key.with);
        times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
      }
  }
  std::printf("keys %zu, median %.2f ms, 99 %% %.2f ms, most %.2f ms\n", times.size(), share(times, 0.5),
              share(times, 0.99), share(times, 1));
  return 0;
}

/// From key press to painted board, over every stage of every case of a folder at 1920 x 1080; without
/// motion.
int board(const QString& folder) {
  Nurse nurse;
  std::vector<double> times;
  for (const QString& name : QDir(folder).entryList({QStringLiteral("*.case.json")})) {
    nurse.window().openFile(QDir(folder).filePath(name));
    Board board(nurse.sheet(), true, 0);
    board.resize(1920, 1080);
    board.show();
    settle();
    while (board.surface()->place() != board.story().last()) {
      QElapsedTimer timer;
      timer.start();
      press(board.surface(), Qt::Key_Space, QStringLiteral(" "));
      times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
  }
  std::printf("board stages %zu, median %.2f ms, 99 %% %.2f ms, most %.2f ms\n", times.size(),
              share(times, 0.5), share(times, 0.99), share(times, 1));
  return 0;
}

/// Timers that fire in an idle window in three seconds; the blinking cursor belongs to the desktop and is
/// switched off.
int idle() {
  QApplication::setCursorFlashTime(0);
  Nurse nurse;
  nurse.window().resize(1366, 768);
  nurse.window().show();
  settle();
  Watch watch;
  qApp->installEventFilter(&watch);
  QElapsedTimer timer;
  timer.start();
  while (timer.elapsed() < 3000) QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
  std::printf("timer events %ld, paints %ld in 3 s\n", watch.timers, watch.paints);
  return 0;
}

/// Memory over ten thousand edits and three thousand new children.
int soak() {
  Nurse nurse;
  nurse.dialogs().answer = Unsaved::discard;
  nurse.window().resize(1366, 768);
  nurse.window().show();
  settle();
  const auto children = [&](int count) {
    for (int i = 0; i < count; ++i) {
      nurse.type(QStringLiteral("103 cm"));
      nurse.press(Qt::Key_N, Qt::ControlModifier);
      QCoreApplication::processEvents();  // what is shown and hidden leaves events to be dealt with
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // as a loop that runs does
    }
  };
  const auto edits = [&](int count) {
    QWidget* field = QApplication::focusWidget();
    for (int i = 0; i < count / 2; ++i) {
      press(field, Qt::Key_5, QStringLiteral("5"));
      press(field, Qt::Key_Backspace, {});
    }
  };
  children(100);
  edits(1000);
  const auto tell = [](const char* when) {
    std::printf("%s: resident %ld KB, in use %ld KB\n", when, residentKb(), inUseKb());
  };
  tell("before");
  edits(10000);
  tell("after 10000 edits");
  for (int thousand = 1; thousand <= 3; ++thousand) {
    children(1000);
    tell("after 1000 new children more");
  }
  return 0;
}

}  // namespace
}  // namespace wardchalk::ui

int main(int argc, char** argv) {
  using namespace wardchalk::ui;
  sinceStart.start();
  QApplication app(argc, argv);
  const QStringList arguments = QApplication::arguments();
  const QString mode = arguments.value(1);
  const QString value = arguments.value(2);
  if (mode == QStringLiteral("label")) return label();
  if (mode == QStringLiteral("start")) return start(value);
  if (mode == QStringLiteral("keys")) return keys(value);
  if (mode == QStringLiteral("board")) return board(value);
  if (mode == QStringLiteral("idle")) return idle();
  if (mode == QStringLiteral("soak")) return soak();
  std::fprintf(stderr, "ui_probe label|start [CASE]|keys FOLDER|board FOLDER|idle|soak\n");
  return 2;
}
