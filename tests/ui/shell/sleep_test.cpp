#include <QAbstractButton>
#include <QAction>
#include <QInputMethodEvent>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <QWindow>

#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/practice/practice_window.h"
#include "ui/record/cases_window.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/practice_desk.h"
#include "ui/shell/time_away.h"
#include "ui/shell/waking.h"

namespace wardchalk::ui::sleep_test {

using namespace std::chrono_literals;
using std::chrono::milliseconds;
using test::firstFound;
using test::usualCase;

/// The lid is closed over a case, and opened hours later by somebody else (H51). Both clocks are the test's
/// own, and no timer has run: the first event asks.
class SleepTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void H51_timeAwayIsTheLongerOfTwoClocks_data();
  void H51_timeAwayIsTheLongerOfTwoClocks();
  void theClocksOfThisMachineGoOn();
  void H51_theFirstEventCoversAndDoesNothingElse_data();
  void H51_theFirstEventCoversAndDoesNothingElse();
  void H51_theWholeOfAPressIsKeptFromAll_data();
  void H51_theWholeOfAPressIsKeptFromAll();
  void theNextPressDoesWhatItShould();
  void aModifierTakesTheKeysThatAreHeldWithIt();
  void aSmallStepOfTheNetworkCoversNothing();
  void nothingIsSwallowedWhileSomebodyIsThere();
  void H51_otherWindowsAreCoveredByTheirFirstEvent_data();
  void H51_otherWindowsAreCoveredByTheirFirstEvent();
  void aSecondCheckIsCoveredToo();
  void aWarningThatShowedGoesWithTheCase();
  void H51_wakingIsHeardWithoutAnyEvent();
  void noTimerRunsBehindTheCover();

 private:
  IdleWatch* watch() { return nurse_->window().findChild<IdleWatch*>(); }
  CoverPage* page() { return nurse_->window().findChild<CoverPage*>(); }
  bool isCovered() { return page()->isVisible(); }
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  QLineEdit* field(const char* name) { return nurse_->window().findChild<QLineEdit*>(QLatin1String(name)); }
  QWindow* native() { return nurse_->window().windowHandle(); }
  void sleep(milliseconds booted, milliseconds walled) {
    now_.sinceBoot += booted;
    now_.onTheWall += walled;
  }
  void goOn() {
    for (const char* name : {"cover-show", "cover-go-on"}) {
      auto* button = nurse_->window().findChild<QAbstractButton*>(QLatin1String(name));
      button->setFocus(Qt::TabFocusReason);
      QTest::keyClick(button, Qt::Key_Space);
    }
  }
  /// The window is covered, and nothing of what stood there has changed.
  void verifyOnlyCovered(const std::vector<WrittenEntry>& before);

  ClockReading now_{};
  std::unique_ptr<Nurse> nurse_;
};

void SleepTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
  now_ = {24h, 500'000h};
  watch()->setClock([this] { return now_; });
}

void SleepTest::H51_timeAwayIsTheLongerOfTwoClocks_data() {
  QTest::addColumn<qint64>("booted");
  QTest::addColumn<qint64>("walled");
  QTest::addColumn<qint64>("away");
  const auto row = [](const char* name, milliseconds booted, milliseconds walled, milliseconds away) {
    QTest::newRow(name) << qint64(booted.count()) << qint64(walled.count()) << qint64(away.count());
  };
  row("no time", 0s, 0s, 0s);
  row("both alike", 6min, 6min, 6min);
  row("a night", 12h, 12h, 12h);
  row("a machine that was frozen whole", 1s, 8h, 8h);
  row("the wall clock put forward", 10s, 6min, 6min);
  row("the wall clock a little slow", 5min, 5min - 2s, 5min);
  row("a small step back", 10s, 5s, 10s);
  row("a small step back over nothing", 1s, -4s, 1s);
  row("the largest step that is no setting", 0s, -30s, 0s);
  row("the smallest that is one", 0s, -30s - 1ms, tooLongToTell);
  row("a minute back", 2s, -58s, tooLongToTell);
  row("an hour back", 2s, 2s - 1h, tooLongToTell);
  row("half a day back", 1s, -12h, tooLongToTell);
  row("slept a night and set to the evening before", 8h, 0s, tooLongToTell);
  row("a clock that nobody can set went back", -1ms, 5s, tooLongToTell);
}

void SleepTest::H51_timeAwayIsTheLongerOfTwoClocks() {
  QFETCH(qint64, booted);
  QFETCH(qint64, walled);
  QFETCH(qint64, away);
  const ClockReading from{100h, 400'000h};
  const ClockReading to{from.sinceBoot + milliseconds(booted), from.onTheWall + milliseconds(walled)};
  QCOMPARE(qint64(timeAway(from, to).count()), away);
}

void SleepTest::theClocksOfThisMachineGoOn() {
  const ClockReading from = readClocks();
  QVERIFY(from.sinceBoot > 0ms);
  QVERIFY(from.onTheWall > 400'000h);  // after 2015
  QTRY_VERIFY(readClocks().sinceBoot > from.sinceBoot);
  const milliseconds away = timeAway(from, readClocks());
  QVERIFY(away > 0ms && away < 1min);
}

void SleepTest::verifyOnlyCovered(const std::vector<WrittenEntry>& before) {
  QVERIFY(isCovered());
  QVERIFY(!page()->showsFacts());
  QCOMPARE(firstFound(test::everythingSaid(), test::tellTale()), QString());
  QCOMPARE(nurse_->dialogs().asked, 0);
  QVERIFY(nurse_->dialogs().told.isEmpty());
  QVERIFY(!watch()->isTimed());
  goOn();
  QVERIFY(!isCovered());
  QCOMPARE(nurse_->window().editor().draft().entries(), before);
}

void SleepTest::H51_theFirstEventCoversAndDoesNothingElse_data() {
  QTest::addColumn<qint64>("booted");
  QTest::addColumn<qint64>("walled");
  QTest::addColumn<QString>("event");
  struct Jump {
    const char* name;
    milliseconds booted;
    milliseconds walled;
  };
  const Jump jumps[] = {{"6 min", 6min, 6min},
                        {"8 h", 8h, 8h},
                        {"12 h", 12h, 12h},
                        {"frozen 8 h", 0s, 8h},
                        {"set back 6 min", 1s, -6min},
                        {"set back 12 h", 1s, -12h},
                        {"slept, set back", 8h, -16h},
                        {"just the limit", 5min, 5min}};
  for (const Jump& jump : jumps)
    for (const char* event : {"letter", "digit in a window", "Space", "Enter", "shortcut",
                              "shortcut in a window", "click", "right click", "click in a window", "wheel",
                              "move", "release", "input method", "override", "dialog", "timer", "waking"})
      QTest::addRow("%s, %s", jump.name, event)
          << qint64(jump.booted.count()) << qint64(jump.walled.count()) << QString::fromLatin1(event);
}

void SleepTest::H51_theFirstEventCoversAndDoesNothingElse() {
  QFETCH(qint64, booted);
  QFETCH(qint64, walled);
  QFETCH(QString, event);
  nurse_->fill(usualCase());
  auto* dose = field("order.dose:text");
  auto* flag = nurse_->window().findChild<QAbstractButton*>(QStringLiteral("order.as_needed:flag"));
  QVERIFY(dose && flag);
  dose->setFocus(Qt::TabFocusReason);
  dose->end(false);
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  nurse_->dialogs().answer = Unsaved::discard;
  sleep(milliseconds(booted), milliseconds(walled));
  const QPoint onFlag = flag->mapTo(&nurse_->window(), flag->rect().center());
  if (event == QStringLiteral("letter")) QTest::keyClick(dose, Qt::Key_5);
  if (event == QStringLiteral("digit in a window")) QTest::keyClick(native(), Qt::Key_5);
  if (event == QStringLiteral("Space")) {
    flag->setFocus(Qt::TabFocusReason);
    QTest::keyClick(native(), Qt::Key_Space);
  }
  if (event == QStringLiteral("Enter")) QTest::keyClick(dose, Qt::Key_Return);
  if (event == QStringLiteral("shortcut")) QTest::keyClick(dose, Qt::Key_N, Qt::ControlModifier);
  if (event == QStringLiteral("shortcut in a window"))
    QTest::keyClick(native(), Qt::Key_N, Qt::ControlModifier);
  if (event == QStringLiteral("click")) QTest::mouseClick(flag, Qt::LeftButton);
  if (event == QStringLiteral("right click")) QTest::mouseClick(dose, Qt::RightButton);
  if (event == QStringLiteral("click in a window"))
    QTest::mouseClick(native(), Qt::LeftButton, Qt::NoModifier, onFlag);
  if (event == QStringLiteral("wheel")) {
    QWheelEvent turn(onFlag, native()->mapToGlobal(onFlag), QPoint(), QPoint(0, -120), Qt::NoButton,
                     Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(native(), &turn);
  }
  if (event == QStringLiteral("move")) {
    QMouseEvent move(QEvent::MouseMove, onFlag, native()->mapToGlobal(onFlag), Qt::NoButton, Qt::NoButton,
                     Qt::NoModifier);
    QCoreApplication::sendEvent(native(), &move);
  }
  if (event == QStringLiteral("release")) QTest::mouseRelease(flag, Qt::LeftButton);
  if (event == QStringLiteral("override")) {
    QKeyEvent override(QEvent::ShortcutOverride, Qt::Key_N, Qt::ControlModifier);
    override.setAccepted(false);
    QCoreApplication::sendEvent(dose, &override);
    QVERIFY(override.isAccepted());  // or the shortcut would be tried next
    QTest::keyRelease(native(), Qt::Key_N, Qt::ControlModifier);
  }
  if (event == QStringLiteral("input method")) {
    QInputMethodEvent commit;
    commit.setCommitString(QStringLiteral("5"));
    QCoreApplication::sendEvent(dose, &commit);
  }
  if (event == QStringLiteral("dialog")) {
    QKeyEvent key(QEvent::KeyPress, Qt::Key_F9, Qt::NoModifier);
    QCoreApplication::sendEvent(native(), &key);
    QTest::keyRelease(native(), Qt::Key_F9);
  }
  if (event == QStringLiteral("timer")) watch()->look();
  if (event == QStringLiteral("waking")) Q_EMIT watch()->findChild<Waking*>()->woken();
  verifyOnlyCovered(before);
}

void SleepTest::H51_theWholeOfAPressIsKeptFromAll_data() {
  QTest::addColumn<bool>("key");
  QTest::newRow("a key that is held") << true;
  QTest::newRow("a button that is held") << false;
}

/// Behind the cover the keyboard stands on a button, and the pointer may stand on one: the end of the press
/// that covered must not press it.
void SleepTest::H51_theWholeOfAPressIsKeptFromAll() {
  QFETCH(bool, key);
  nurse_->fill(usualCase());
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  sleep(8h, 8h);
  auto* show = nurse_->window().findChild<QAbstractButton*>(QStringLiteral("cover-show"));
  if (key) {
    QTest::keyPress(native(), Qt::Key_Space);
    QVERIFY(isCovered());
    show->setFocus(Qt::TabFocusReason);
    for (int again = 0; again < 3; ++again)
      for (const QEvent::Type type : {QEvent::KeyRelease, QEvent::KeyPress}) {
        QKeyEvent held(type, Qt::Key_Space, Qt::NoModifier, QStringLiteral(" "), true);
        QCoreApplication::sendEvent(native(), &held);
      }
    QVERIFY(!show->isDown());
    QTest::keyRelease(native(), Qt::Key_Space);
  } else {
    QTest::mousePress(native(), Qt::LeftButton, Qt::NoModifier, QPoint(700, 400));
    QVERIFY(isCovered());
    const QPoint there = show->mapTo(&nurse_->window(), show->rect().center());
    QTest::mouseRelease(native(), Qt::LeftButton, Qt::NoModifier, there);
    QVERIFY(!show->isDown());
  }
  verifyOnlyCovered(before);
}

void SleepTest::theNextPressDoesWhatItShould() {
  nurse_->fill(usualCase());
  sleep(8h, 8h);
  auto* show = nurse_->window().findChild<QAbstractButton*>(QStringLiteral("cover-show"));
  QTest::keyClick(native(), Qt::Key_Space);
  QVERIFY(isCovered() && !page()->showsFacts());
  show->setFocus(Qt::TabFocusReason);
  QTest::keyClick(native(), Qt::Key_Space);
  QVERIFY(page()->showsFacts());
  QVERIFY(watch()->isTimed());
  // the release of the press that covered was heard by another program
  sleep(8h, 8h);
  QTest::keyPress(native(), Qt::Key_Space);
  QVERIFY(isCovered() && !page()->showsFacts());
  show->setFocus(Qt::TabFocusReason);
  QTest::keyClick(native(), Qt::Key_Space);
  QVERIFY(page()->showsFacts());
}

/// Ctrl, and then N while it is held: no new child is begun.
void SleepTest::aModifierTakesTheKeysThatAreHeldWithIt() {
  nurse_->fill(usualCase());
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  nurse_->dialogs().answer = Unsaved::discard;
  sleep(8h, 8h);
  QTest::keyPress(native(), Qt::Key_Control);
  QVERIFY(isCovered());
  // QTest::keyClick would press Ctrl once more
  for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease})
    qt_handleKeyEvent(native(), type, Qt::Key_N, Qt::ControlModifier);
  QCOMPARE(nurse_->dialogs().asked, 0);
  QTest::keyRelease(native(), Qt::Key_Control, Qt::ControlModifier);
  verifyOnlyCovered(before);
}

void SleepTest::aSmallStepOfTheNetworkCoversNothing() {
  nurse_->fill({QStringLiteral("103 cm")});
  sleep(2s, -4s);
  nurse_->type(QStringLiteral("17.2 kg"));
  nurse_->enter();
  QVERIFY(!isCovered());
  QCOMPARE(nurse_->line(QStringLiteral("child.weight")).isEmpty(), false);
  QVERIFY(!nurse_->window().editor().draft().isEmpty());
  sleep(200s, 200s);
  nurse_->press(Qt::Key_Shift);
  sleep(200s, 200s);
  nurse_->press(Qt::Key_Shift);
  QVERIFY(!isCovered());
}

void SleepTest::nothingIsSwallowedWhileSomebodyIsThere() {
  nurse_->fill({QStringLiteral("103 cm")});
  sleep(5min - 1ms, 5min - 1ms);
  QTest::keyClick(native(), Qt::Key_7);
  QVERIFY(!isCovered());
  QCOMPARE(field("child.weight:text")->text(), QStringLiteral("7"));
}

void SleepTest::H51_otherWindowsAreCoveredByTheirFirstEvent_data() {
  QTest::addColumn<QString>("where");
  QTest::newRow("practice") << QStringLiteral("practice");
  QTest::newRow("a list of cases") << QStringLiteral("cases");
}

void SleepTest::H51_otherWindowsAreCoveredByTheirFirstEvent() {
  QFETCH(QString, where);
  nurse_->fill(usualCase());
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  QWidget* other = nullptr;
  if (where == QStringLiteral("practice")) {
    nurse_->press(Qt::Key_F12);
    other = nurse_->window().findChild<PracticeDesk*>()->window();
  } else {
    action("several-cases")->trigger();
    other = nurse_->window().findChild<CasesWindow*>();
  }
  QVERIFY(other && hasKeyboard(other));
  const QList<QAbstractButton*> buttons = other->findChildren<QAbstractButton*>();
  QVERIFY(!buttons.isEmpty());
  QSignalSpy pressed(buttons.first(), &QAbstractButton::pressed);
  sleep(8h, 8h);
  QTest::mouseClick(buttons.first(), Qt::LeftButton);
  QCOMPARE(pressed.count(), 0);
  QCOMPARE(other->isVisible(), where == QStringLiteral("practice"));
  QVERIFY(nurse_->goBack());
  verifyOnlyCovered(before);
}

void SleepTest::aSecondCheckIsCoveredToo() {
  nurse_->fill(usualCase());
  nurse_->press(Qt::Key_F9);
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17.2 kg")});
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  sleep(8h, 8h);
  nurse_->press(Qt::Key_5);
  QVERIFY(isCovered());
  QCOMPARE(firstFound(test::everythingSaid(), test::tellTale()), QString());
  goOn();
  QCOMPARE(nurse_->window().editor().draft().entries(), before);
}

void SleepTest::aWarningThatShowedGoesWithTheCase() {
  nurse_->fill(usualCase());
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  sleep(4min + 10s, 4min + 10s);
  watch()->look();
  auto* warning = nurse_->window().findChild<NoticeBar*>(QStringLiteral("idle-warning"));
  QVERIFY(!warning->said().isEmpty());
  sleep(8h, 8h);
  nurse_->press(Qt::Key_Shift);
  QCOMPARE(warning->said(), QString());
  verifyOnlyCovered(before);
}

void SleepTest::H51_wakingIsHeardWithoutAnyEvent() {
  nurse_->fill(usualCase());
  sleep(8h, 8h);
  Q_EMIT watch()->findChild<Waking*>()->woken();
  QVERIFY(isCovered());
}

void SleepTest::noTimerRunsBehindTheCover() {
  nurse_->fill(usualCase());
  QVERIFY(watch()->isTimed());
  sleep(8h, 8h);
  QTest::keyClick(native(), Qt::Key_Space);
  QVERIFY(isCovered() && !watch()->isTimed() && !watch()->isWatching());
}

WARDCHALK_QT_TEST(SleepTest)

}  // namespace wardchalk::ui::sleep_test

#include "sleep_test.moc"
