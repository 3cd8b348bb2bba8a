#pragma once

#include <QApplication>
#include <QTest>

// The classes of Qt Test of one room are one program, since linking and moc for each costs more than
// compiling it. Every class still runs alone, in a process of its own: the program's first word says which.

namespace wardchalk::ui::test {

/// Runs one class as a main would; the first of the words is the class's name, in the place of the program's.
using RunClass = int (*)(int argc, char** argv);

/// Makes a class known to the program's main.
bool knowClass(const char* name, RunClass run);

/// What QTEST_MAIN does in Qt 6.4 (qtest.h): initMain before the application, and one size of text on every
/// screen.
template <typename Application, typename Class>
int runClass(int argc, char** argv) {
  QTest::Internal::callInitMain<Class>();
  Application application(argc, argv);
  Application::setAttribute(Qt::AA_Use96Dpi, true);
  Class tests;
  return QTest::qExec(&tests, argc, argv);
}

}  // namespace wardchalk::ui::test

/// At the end of a file's own namespace: its class is run by a function of the file, which makes the
/// application itself.
#define WARDCHALK_QT_TEST_BY(Class, ...) \
  [[maybe_unused]] static const bool known##Class = ::wardchalk::ui::test::knowClass(#Class, __VA_ARGS__);

/// At the end of a file's own namespace, where a program of one class has QTEST_MAIN.
#define WARDCHALK_QT_TEST(Class) WARDCHALK_QT_TEST_WITH(QApplication, Class)

/// The same without a display, in place of QTEST_GUILESS_MAIN.
#define WARDCHALK_QT_CORE_TEST(Class) WARDCHALK_QT_TEST_WITH(QCoreApplication, Class)

#define WARDCHALK_QT_TEST_WITH(Application, Class)                          \
  WARDCHALK_QT_TEST_BY(Class, [](int argc, char** argv) {                   \
    QTEST_SET_MAIN_SOURCE_PATH                                              \
    return ::wardchalk::ui::test::runClass<Application, Class>(argc, argv); \
  })
