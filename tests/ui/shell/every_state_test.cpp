#include <QAction>
#include <QApplication>
#include <QDir>
#include <QScrollArea>
#include <QTest>
#include <array>

#include "tests/support/golden_cases.h"
#include "tests/ui/practice/pupil.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/desktops.h"
#include "tests/ui/support/geometry.h"
#include "tests/ui/support/ink.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/record/reference_picker.h"
#include "ui/record/rules_editor.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/settings_dialog.h"
#include "ui/theme/letters.h"
#include "ui/working/flag_widget.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::every_state_test {

namespace {

constexpr std::array states = {"empty",       "typing",      "safe",         "ask",     "unsafe",
                               "as-prepared", "not-covered", "second-check", "cover",   "board",
                               "practice",    "picker",      "rules",        "settings"};
constexpr std::array sizes = {QSize(800, 600), QSize(1024, 768), QSize(1366, 768), QSize(1920, 1080),
                              QSize(3840, 2160)};
constexpr std::array percents = {100, 150, 200};
/// At 200 %: 320 pixels at the usual letters (source: WCAG 2.2, 1.4.10). The others hold tables or long words
/// beside a tick, and ask for more.
constexpr QSize narrow(640, 600);
constexpr std::array narrowStates = {"empty",       "typing", "safe",  "ask",      "unsafe",  "as-prepared",
                                     "not-covered", "cover",  "board", "practice", "settings"};

/// What CI draws of each state: the smallest screen with the largest letters, and the ward's usual one.
bool isUsual(const char* desktop, int percent, const QSize& size) {
  const QString name = QLatin1String(desktop);
  return (name == QStringLiteral("light") && percent == 100 && size == QSize(1366, 768)) ||
         (name == QStringLiteral("dark") && percent == 200 && size == QSize(1366, 768)) ||
         (name == QStringLiteral("contrast-dark") && percent >= 150 && size == QSize(800, 600));
}

void settle() {
  for (int rounds = 0; rounds < 6; ++rounds) QCoreApplication::processEvents();
}

}  // namespace

/// Every state in which a user meets the program, on every desktop, with every size of letters and screen:
/// nothing is cut, nothing reaches out, nothing is hard to hit. With WARDCHALK_SHOTS all of them are drawn to
/// be looked at; without, four of each state are held to the same.
class EveryStateTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void isWholeAndInReach_data();
  void isWholeAndInReach();
  void cleanup();

 private:
  QWidget* reach(const QString& state);
  QWidget* open(const char* golden);
  QWidget* second();
  QWidget* cover();
  QWidget* board();
  QWidget* practise(int percent);
  QWidget* picker();
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }

  std::unique_ptr<Nurse> nurse_;
  std::unique_ptr<Pupil> pupil_;
  QPalette before_ = QApplication::palette();
};

void EveryStateTest::cleanup() {
  pupil_.reset();
  nurse_.reset();
  setTextSize(100);
  QApplication::setPalette(before_);
}

QWidget* EveryStateTest::open(const char* golden) {
  const auto file = wardchalk::test::goldenFolder() / (std::string(golden) + ".case.json");
  return nurse_->window().openFile(QString::fromStdString(file.string())) ? &nurse_->window() : nullptr;
}

QWidget* EveryStateTest::second() {
  nurse_->fill(test::usualCase());
  nurse_->press(Qt::Key_F9);
  QStringList again = test::usualCase();
  again[test::weightPlace] = QStringLiteral("12.7 kg");
  nurse_->fill(again);
  nurse_->press(Qt::Key_F9, Qt::ControlModifier);
  return &nurse_->window();
}

QWidget* EveryStateTest::cover() {
  nurse_->fill(test::usualCase());
  auto* watch = nurse_->window().findChild<IdleWatch*>();
  std::chrono::milliseconds now{};
  watch->setClock([&now] { return ClockReading{now, now}; });
  now = std::chrono::seconds(301);
  watch->look();
  watch->setClock([] { return ClockReading{std::chrono::seconds(301), std::chrono::seconds(301)}; });
  return &nurse_->window();
}

QWidget* EveryStateTest::board() {
  if (!open("safe-per-surface-liquid")) return nullptr;
  action("board")->trigger();
  for (QWidget* one : QApplication::topLevelWidgets())
    if (qobject_cast<Board*>(one) && one->isVisible()) return one;
  return nurse_->window().findChild<Board*>();
}

/// A line with a mistake in it and the first hint.
QWidget* EveryStateTest::practise(int percent) {
  pupil_ = std::make_unique<Pupil>(percent);
  if (!pupil_->begin({QStringLiteral("dose-by-bsa"), QStringLiteral("bsa")}, 3, 5)) return nullptr;
  pupil_->write(0, QStringLiteral("0.46 m²"));
  pupil_->enter();
  pupil_->press(Qt::Key_H, Qt::ControlModifier);
  return &pupil_->window();
}

QWidget* EveryStateTest::picker() {
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17.2 kg"), QStringLiteral("4 years")});
  nurse_->dialogs().chosen << QStringList{
      QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/demo/reference_list.json")};
  nurse_->press(Qt::Key_R, Qt::ControlModifier);
  auto* picker = nurse_->window().findChild<ReferencePicker*>();
  if (!picker) return nullptr;
  if (auto* open = picker->findChild<QAbstractButton*>(QStringLiteral("open-list")); open->isVisible())
    open->click();
  picker->search(QStringLiteral("plover"));
  return picker;
}

QWidget* EveryStateTest::reach(const QString& state) {
  if (state == QStringLiteral("empty")) return &nurse_->window();
  if (state == QStringLiteral("typing")) {
    nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17,2 kg"), QString(), QStringLiteral("Plover")});
    nurse_->type(QStringLiteral("by mo"));
    return &nurse_->window();
  }
  if (state == QStringLiteral("safe")) return open("safe-per-surface-liquid");
  if (state == QStringLiteral("ask")) return open("ask-two-slips-surface");
  if (state == QStringLiteral("unsafe")) return open("unsafe-over-single");
  if (state == QStringLiteral("as-prepared")) return open("unsafe-as-prepared");
  if (state == QStringLiteral("not-covered")) return open("not-covered-age");
  if (state == QStringLiteral("second-check")) return second();
  if (state == QStringLiteral("cover")) return cover();
  if (state == QStringLiteral("board")) return board();
  if (state == QStringLiteral("picker")) return picker();
  if (state == QStringLiteral("settings")) {
    action("settings")->trigger();
    return nurse_->window().findChild<SettingsDialog*>();
  }
  action("rules-edit")->trigger();
  return nurse_->window().findChild<RulesEditor*>();
}

void EveryStateTest::isWholeAndInReach_data() {
  QTest::addColumn<QString>("state");
  QTest::addColumn<int>("desktop");
  QTest::addColumn<int>("percent");
  QTest::addColumn<QSize>("size");
  const bool all = !qEnvironmentVariable("WARDCHALK_SHOTS").isEmpty();
  for (const char* state : states)
    for (std::size_t at = 0; at < desktops.size(); ++at)
      for (const int percent : percents)
        for (const QSize& size : sizes)
          if (all || isUsual(desktops[at].name, percent, size))
            QTest::addRow("%s, %s, %d %%, %dx%d", state, desktops[at].name, percent, size.width(),
                          size.height())
                << QString::fromLatin1(state) << static_cast<int>(at) << percent << size;
  for (const char* state : narrowStates)
    QTest::addRow("%s, narrow", state) << QString::fromLatin1(state) << 0 << 200 << narrow;
}

void EveryStateTest::isWholeAndInReach() {
  QFETCH(QString, state);
  QFETCH(int, desktop);
  QFETCH(int, percent);
  QFETCH(QSize, size);
  const Desktop& look = desktops[static_cast<std::size_t>(desktop)];
  QApplication::setPalette(paletteOf(look));
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(size);
  for (int step = 100; step < percent; step += 10) nurse_->press(Qt::Key_Plus, Qt::ControlModifier);
  QWidget* seen = state == QStringLiteral("practice") ? practise(percent) : reach(state);
  QVERIFY(seen);
  seen->setWindowState(Qt::WindowNoState);  // the board fills a screen
  const bool dialog = state == QStringLiteral("picker") || state == QStringLiteral("rules") ||
                      state == QStringLiteral("settings");
  seen->resize(dialog ? seen->size().boundedTo(size) : size);
  settle();
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (!folder.isEmpty())
    seen->grab().save(QStringLiteral("%1/%2+%3+%4+%5x%6.png")
                          .arg(folder, state, QLatin1String(look.name))
                          .arg(percent)
                          .arg(size.width())
                          .arg(size.height()));
  QVERIFY2(seen->width() <= size.width() && seen->height() <= size.height(),
           qPrintable(QStringLiteral("asks for %1x%2").arg(seen->width()).arg(seen->height())));
  QTRY_COMPARE(test::cut(*seen), QString());
  QTRY_COMPARE(test::sideways(*seen), QString());
  QCOMPARE(test::tooSmall(*seen), QString());
}

WARDCHALK_QT_TEST(EveryStateTest)

}  // namespace wardchalk::ui::every_state_test

#include "every_state_test.moc"
