#include <QAbstractButton>
#include <QAction>
#include <QDirIterator>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>
#include <QTest>

#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "ui/board/board.h"
#include "ui/form/form.h"
#include "ui/practice/practice_window.h"
#include "ui/record/cases_window.h"
#include "ui/record/rules_editor.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/practice_desk.h"
#include "ui/working/amount_widget.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::idle_test {

using test::everythingSaid;
using test::firstFound;
using test::settleAll;
using test::usualCase;

/// A workstation that others pass by. The clock is the test's own.
class IdleTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void sleepsWhileThereIsNothingToHide();
  void warnsFirstAndAnyKeyKeepsTheEntries();
  void coversEverythingThatTellsOfTheCase();
  void warnsOnTheBoardToo();
  void theWarningLeavesTheBandOfPractice();
  void confirmingGoesOnWithTheSameCase();
  void aHeldKeyLiftsNoCover();
  void aButtonThatGoesDownAfterTheCoverShowsNothing();
  void otherWorkIsPutAwayAndComesBack();
  void newChildClosesTheOtherCasesAndKeepsTheRules();
  void factsLeftOpenAreCoveredAgain();
  void theFactsTellNoVerdictAndNoAmount();
  void newChildUnderTheCover_data();
  void newChildUnderTheCover();
  void questionsAreOpenAgainAfterCovering();
  void coversASecondCheckToo();
  void aRecordedSecondCheckOutlivesTheCover();
  void minutesAreThoseOfTheHouse();
  void nothingTypedIsLeftOnDisk();

 private:
  IdleWatch* watch() { return nurse_->window().findChild<IdleWatch*>(); }
  CoverPage* page() { return nurse_->window().findChild<CoverPage*>(); }
  bool isCovered() { return page()->isVisible(); }
  QString warning() { return nurse_->window().findChild<NoticeBar*>(QStringLiteral("idle-warning"))->said(); }
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  void pass(int seconds) {
    now_ += std::chrono::seconds(seconds);
    watch()->look();
  }
  void push(const char* button) {
    auto* one = nurse_->window().findChild<QAbstractButton*>(QLatin1String(button));
    QVERIFY2(one && one->isVisible(), button);
    one->setFocus(Qt::TabFocusReason);
    QTest::keyClick(one, Qt::Key_Space);
  }

  std::chrono::milliseconds now_{1'000'000};
  std::unique_ptr<Nurse> nurse_;
};

void IdleTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
  watch()->setClock([this] { return ClockReading{now_, now_}; });
}

void IdleTest::sleepsWhileThereIsNothingToHide() {
  QVERIFY(!watch()->isTimed());
  nurse_->fill({QStringLiteral("103 cm")});
  QVERIFY(watch()->isTimed());
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QVERIFY(!watch()->isTimed());
  pass(3600);
  QVERIFY(!isCovered());
}

void IdleTest::warnsFirstAndAnyKeyKeepsTheEntries() {
  nurse_->fill(usualCase());
  pass(239);
  QCOMPARE(warning(), QString());
  pass(1);
  QVERIFY2(warning().contains(QStringLiteral("60")), qPrintable(warning()));
  pass(50);
  QVERIFY2(warning().contains(QStringLiteral("10")), qPrintable(warning()));
  nurse_->press(Qt::Key_Shift);
  QCOMPARE(warning(), QString());
  pass(239);
  QVERIFY(!isCovered());
  QTest::mouseMove(&nurse_->window(), QPoint(400, 300));
  QTest::mouseMove(&nurse_->window(), QPoint(410, 310));
  QCoreApplication::processEvents();
  pass(239);
  QVERIFY(!isCovered());
}

void IdleTest::coversEverythingThatTellsOfTheCase() {
  nurse_->fill(usualCase());
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/Plover.json");
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  action("board")->trigger();
  pass(300);
  QVERIFY(isCovered());
  QTRY_VERIFY(!nurse_->window().findChild<Board*>());
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
  QCOMPARE(nurse_->window().windowTitle(), QStringLiteral("Wardchalk"));
  QVERIFY(!watch()->isTimed());
  for (const char* name : {"save", "open", "sheet-pdf", "board", "copy-working", "undo", "example"})
    QVERIFY2(!action(name)->isEnabled(), name);
  QVERIFY(nurse_->goBack());  // offscreen nothing gives the keys back when the board closes
  QTRY_COMPARE(nurse_->focused(), QStringLiteral("cover-show"));
}

void IdleTest::warnsOnTheBoardToo() {
  nurse_->fill(usualCase());
  action("board")->trigger();
  auto* board = nurse_->window().findChild<Board*>();
  board->activateWindow();
  QTRY_COMPARE(QApplication::activeWindow(), board);
  pass(240);
  auto* line = board->findChild<NoticeBar*>();
  QVERIFY(line && line->isVisible() && line->said().contains(QStringLiteral("60")));
  QTest::keyClick(board, Qt::Key_Shift);
  QVERIFY(!board->findChild<NoticeBar*>());
  QVERIFY(!isCovered());
}

/// The band says that what stands below it is for no child, also while somebody is warned over it.
void IdleTest::theWarningLeavesTheBandOfPractice() {
  nurse_->fill(usualCase());
  action("practice")->trigger();
  PracticeWindow* practice = nurse_->window().findChild<PracticeDesk*>()->window();
  practice->activateWindow();
  QTRY_COMPARE(QApplication::activeWindow(), practice);
  pass(240);
  auto* line = practice->findChild<NoticeBar*>();
  QVERIFY(line && line->isVisible() && line->said().contains(QStringLiteral("60")));
  const auto* band = practice->findChild<QWidget*>(QStringLiteral("practice-band"));
  QVERIFY(!line->geometry().intersects(band->geometry()));
  QVERIFY(practice->rect().contains(line->geometry()));
}

void IdleTest::confirmingGoesOnWithTheSameCase() {
  nurse_->fill(usualCase());
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  pass(300);
  push("cover-show");
  QVERIFY(!firstFound(everythingSaid(), {QStringLiteral("17.2 kg")}).isEmpty());
  QCOMPARE(nurse_->focused(), QStringLiteral("cover-facts"));
  nurse_->enter();  // the same key again, pressed twice or held, reads nothing
  QVERIFY(isCovered());
  QVERIFY(nurse_->window().editor().draft().isEmpty());  // nothing is computed until it is confirmed
  push("cover-go-on");
  QVERIFY(!isCovered());
  QCOMPARE(nurse_->window().editor().draft().entries(), before);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(nurse_->window().isWindowModified());
  QVERIFY(watch()->isTimed());
  QVERIFY(action("save")->isEnabled());
}

/// A hand that lies on Enter has read nothing.
void IdleTest::aHeldKeyLiftsNoCover() {
  nurse_->fill(usualCase());
  pass(300);
  for (const char* name : {"cover-show", "cover-go-on"}) {
    auto* button = nurse_->window().findChild<QPushButton*>(QLatin1String(name));
    button->setFocus(Qt::TabFocusReason);
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Space})
      for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent held(type, key, Qt::NoModifier, QStringLiteral(" "), true);
        QCoreApplication::sendEvent(button, &held);
      }
    QVERIFY(isCovered());
    QCOMPARE(page()->showsFacts(), qstrcmp(name, "cover-go-on") == 0);
    if (!page()->showsFacts()) push("cover-show");
  }
}

/// A list of cases and house rules that are being changed are no less kept than the entries.
/// Enter presses a button that comes up a moment later; by then the cover may be gone.
void IdleTest::aButtonThatGoesDownAfterTheCoverShowsNothing() {
  nurse_->fill(usualCase());
  pass(300);
  QVERIFY(isCovered());
  auto* show = nurse_->window().findChild<QPushButton*>(QStringLiteral("cover-show"));
  const QSignalSpy came(show, &QPushButton::clicked);
  show->animateClick();
  nurse_->dialogs().answer = Unsaved::discard;
  action("new-child")->trigger();
  QVERIFY(!isCovered());
  QTRY_COMPARE(came.count(), 1);
  QVERIFY(!page()->showsFacts());
  QVERIFY(nurse_->window().editor().draft().isEmpty());
}

void IdleTest::otherWorkIsPutAwayAndComesBack() {
  nurse_->fill(usualCase());
  action("several-cases")->trigger();
  auto* list = nurse_->window().findChild<CasesWindow*>();
  action("rules-edit")->trigger();
  auto* rules = nurse_->window().findChild<RulesEditor*>();
  QVERIFY(list && list->isVisible() && rules && rules->isVisible());
  pass(300);
  QVERIFY(!list->isVisible() && !rules->isVisible());
  push("cover-show");
  push("cover-go-on");
  QVERIFY(list->isVisible() && rules->isVisible() && rules->isModal());
}

void IdleTest::newChildClosesTheOtherCasesAndKeepsTheRules() {
  nurse_->fill(usualCase());
  action("several-cases")->trigger();
  action("rules-edit")->trigger();
  pass(300);
  nurse_->dialogs().answer = Unsaved::discard;
  push("cover-new-child");
  QTRY_VERIFY(!nurse_->window().findChild<CasesWindow*>());
  auto* rules = nurse_->window().findChild<RulesEditor*>();
  QVERIFY(rules && rules->isVisible());
}

void IdleTest::factsLeftOpenAreCoveredAgain() {
  nurse_->fill(usualCase());
  pass(300);
  push("cover-show");
  pass(300);
  QVERIFY(isCovered());
  QVERIFY(!page()->showsFacts());
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
  push("cover-show");
  push("cover-go-on");
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
}

void IdleTest::theFactsTellNoVerdictAndNoAmount() {
  nurse_->fill(usualCase());
  nurse_->fill({});
  pass(300);
  push("cover-show");
  for (const char* result : {"SAFE", "84 mg", "3.2 mL", "0.70"})
    QCOMPARE(firstFound(everythingSaid(), {QString::fromLatin1(result)}), QString());
}

void IdleTest::newChildUnderTheCover_data() {
  QTest::addColumn<Unsaved>("answer");
  QTest::newRow("saved first") << Unsaved::save;
  QTest::newRow("let go") << Unsaved::discard;
  QTest::newRow("kept") << Unsaved::keep;
}

void IdleTest::newChildUnderTheCover() {
  QFETCH(Unsaved, answer);
  nurse_->fill(usualCase());
  pass(300);
  nurse_->dialogs().answer = answer;
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/kept.json");
  push("cover-new-child");
  QCOMPARE(nurse_->dialogs().asked, 1);
  QCOMPARE(isCovered(), answer == Unsaved::keep);
  QVERIFY(nurse_->window().editor().draft().isEmpty());
  QCOMPARE(QFile::exists(nurse_->dialogs().save), answer == Unsaved::save);
  if (answer == Unsaved::keep) push("cover-show");
  QCOMPARE(firstFound(everythingSaid(), {QStringLiteral("17.2 kg")}).isEmpty(), answer != Unsaved::keep);
}

void IdleTest::questionsAreOpenAgainAfterCovering() {
  QStringList little = usualCase();
  little[5] = QStringLiteral("60 mg/dose");
  nurse_->fill(little);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::ask);
  auto* amount = nurse_->window().findChild<WorkingPane*>()->amount();
  settleAll(*amount);
  QVERIFY(amount->showsAmount());
  pass(300);
  push("cover-show");
  push("cover-go-on");
  QVERIFY(!amount->showsAmount());
}

void IdleTest::coversASecondCheckToo() {
  nurse_->fill(usualCase());
  nurse_->press(Qt::Key_F9);
  pass(300);  // with the second form still empty: the first entries must not be one key away
  QVERIFY(isCovered());
  push("cover-show");
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
  push("cover-go-on");
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
  nurse_->fill(usualCase());
  nurse_->press(Qt::Key_F9, Qt::ControlModifier);
  pass(300);
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
  push("cover-show");
  push("cover-go-on");
  QVERIFY(!firstFound(everythingSaid(), {QStringLiteral("Same result")}).isEmpty());
}

void IdleTest::aRecordedSecondCheckOutlivesTheCover() {
  nurse_->fill(usualCase());
  nurse_->press(Qt::Key_F9);
  nurse_->fill(usualCase());
  nurse_->press(Qt::Key_F9, Qt::ControlModifier);
  push("second-alone");
  push("second-finish");
  pass(300);
  push("cover-show");
  push("cover-go-on");
  QVERIFY(nurse_->window()
              .findChild<QLabel*>(QStringLiteral("second-words"))
              ->text()
              .contains(QStringLiteral("same result")));
}

void IdleTest::minutesAreThoseOfTheHouse() {
  QFile rules(nurse_->folder() + QStringLiteral("/rules.json"));
  QVERIFY(rules.open(QIODevice::WriteOnly));
  rules.write(R"({"format": "wardchalk.house-rules", "version": 1, "name": "quick", "idle_minutes": 1})");
  rules.close();
  nurse_->dialogs().rules = rules.fileName();
  nurse_->rules().openFile();
  nurse_->fill(usualCase());
  pass(29);
  QCOMPARE(warning(), QString());
  pass(1);
  QVERIFY(warning().contains(QStringLiteral("30")));
  pass(30);
  QVERIFY(isCovered());
}

/// After a whole journey no file of settings, no temporary and no configuration folder holds anything that
/// was typed.
void IdleTest::nothingTypedIsLeftOnDisk() {
  nurse_->fill(usualCase());
  nurse_->press(Qt::Key_F9);
  nurse_->fill(usualCase());
  nurse_->press(Qt::Key_F9, Qt::ControlModifier);
  push("second-alone");
  push("second-finish");
  pass(300);
  push("cover-show");
  push("cover-go-on");
  nurse_->rules().use(RulesKind::classroom);
  nurse_->press(Qt::Key_2, Qt::ControlModifier);
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  nurse_->fill({QStringLiteral("104.56 cm"), QStringLiteral("17.23 kg"), QString(), QString(),
                QStringLiteral("Dunlinwort")});
  QVERIFY(nurse_->window().close());
  const QString folder = nurse_->folder();
  QStringList places{folder};
  for (const char* variable : {"XDG_CONFIG_HOME", "XDG_CACHE_HOME", "XDG_DATA_HOME", "TMPDIR"})
    if (qEnvironmentVariableIsSet(variable)) places << qEnvironmentVariable(variable);
  QVERIFY(places.size() > 3);  // the test runs with folders of its own
  const QList<QByteArray> typed{"104.56", "17.23",      "Dunlinwort", "17.2 kg",
                                "103 cm", "Bench list", "120 mg",     "Plover"};
  int files = 0;
  for (const QString& place : places)
    for (QDirIterator at(place, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories); at.hasNext();) {
      QFile file(at.next());
      if (!file.open(QIODevice::ReadOnly)) continue;
      ++files;
      const QByteArray text = file.readAll();
      for (const QByteArray& one : typed)
        QVERIFY2(!text.contains(one), (file.fileName().toUtf8() + " holds " + one).constData());
    }
  QVERIFY(files > 0);  // the settings at least
}

namespace {

/// Folders of their own, so that nothing of other programs is looked through.
int inAHomeOfItsOwn(int argc, char** argv) {
  static QTemporaryDir home;
  for (const char* variable : {"XDG_CONFIG_HOME", "XDG_CACHE_HOME", "XDG_DATA_HOME", "TMPDIR"}) {
    const QString place = home.filePath(QString::fromLatin1(variable));
    QDir().mkpath(place);
    qputenv(variable, place.toUtf8());
  }
  QApplication application(argc, argv);
  IdleTest test;
  return QTest::qExec(&test, argc, argv);
}

}  // namespace

WARDCHALK_QT_TEST_BY(IdleTest, inAHomeOfItsOwn)

}  // namespace wardchalk::ui::idle_test

#include "idle_test.moc"
