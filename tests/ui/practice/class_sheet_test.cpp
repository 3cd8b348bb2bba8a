#include <QAbstractButton>
#include <QApplication>
#include <QDate>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSignalSpy>
#include <QTest>

#include "core/practice/sessions/set_file.h"
#include "core/words/rules_words.h"
#include "tests/ui/practice/pupil.h"
#include "tests/ui/support/qt_class.h"
#include "ui/practice/class_page.h"
#include "ui/practice/line_builder.h"
#include "ui/practice/line_row.h"
#include "ui/practice/time_left.h"

namespace wardchalk::ui::class_sheet_test {

namespace {

QString contentOf(const QString& file) {
  QFile in(file);
  return in.open(QIODevice::ReadOnly) ? QString::fromUtf8(in.readAll()) : QString();
}

PracticeSet bottles() {
  PracticeSet set;
  set.title = "Week 3";
  set.topics = {Topic::amountLiquid};
  set.seed = 5;
  set.count = 1;
  return set;
}

/// Opens the set from the page where practice begins.
void open(Pupil& pupil, const PracticeSet& set) {
  std::string text;
  writeSet(text, set);
  pupil.files().open = pupil.inFolder(QStringLiteral("class.json"));
  QFile out(pupil.files().open);
  if (!out.open(QIODevice::WriteOnly) || out.write(QByteArray::fromStdString(text)) < 1)
    qFatal("a test's own file");
  out.close();
  QVERIFY(pupil.push(QStringLiteral("open-set")));
  QVERIFY(pupil.isOn("class-page"));
}

/// Sits down and begins.
void begin(Pupil& pupil, const PracticeSet& set) {
  open(pupil, set);
  QTRY_COMPARE(pupil.focused(), QStringLiteral("seat"));
  pupil.type(QStringLiteral("A7"));
  pupil.enter();
  QVERIFY(pupil.isOn("problem-page"));
}

QString textOf(Pupil& pupil, const char* name) {
  const auto* label = pupil.window().findChild<QLabel*>(QLatin1String(name));
  return label ? label->text().replace(QChar::Nbsp, u' ') : QString();
}

bool isThere(Pupil& pupil, const char* name) {
  return pupil.window().findChild<QWidget*>(QLatin1String(name)) != nullptr;
}

/// The first line of the current problem that a builder has facts for.
QString lineWithFacts(Pupil& pupil) {
  return QStringLiteral("line-%1").arg(pupil.session().current().problem.asks.size());
}

}  // namespace

/// A set of a teacher's, in a student's window.
class ClassSheetTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void tellsWhatIsSet_data();
  void tellsWhatIsSet();
  void namesChangedRules();
  void offersNoChange();
  void beginsInTheModeOfTheSet_data();
  void beginsInTheModeOfTheSet();
  void aSeatIsACodeAndNeverAName_data();
  void aSeatIsACodeAndNeverAName();
  void withoutTheBuilderItIsNotThere();
  void withoutHintsTheyAreNotThere();
  void theBuilderHasTheStudentsOwnResultsAlone();
  void resultsCarrySetAndSeat();
  void aSheetIsNotProlongedOrRepeated();
  void unsavedResultsAreAskedAbout();
  void ownPracticeAfterwardsIsFreeAgain();
  void timeIsShownAndNeverTaken();
  void countsDownInWholeMinutes();
  void aTeacherFixesTerms();
  void aSeedOfSixteenDigitsStaysWhole();
  void aSeedBeyondTheGreatestIsRefused();
};

void ClassSheetTest::tellsWhatIsSet_data() {
  QTest::addColumn<QString>("told");
  QTest::newRow("how many") << QStringLiteral("1 problem, level 1: first steps.");
  QTest::newRow("topic") << QStringLiteral("Measuring a liquid.");
  QTest::newRow("mode") << QStringLiteral("Test: everything is marked when it is handed in.");
  QTest::newRow("builder") << QStringLiteral("Without the line builder.");
  QTest::newRow("time") << QStringLiteral("Time: 20 minutes.");
  QTest::newRow("units") << QStringLiteral("An answer is right only with its unit.");
  QTest::newRow("rules") << QStringLiteral("House rules: exact: 1 lb = 0.45359237 kg");
  QTest::newRow("mark") << QStringLiteral("Set 5, mark ");
}

void ClassSheetTest::tellsWhatIsSet() {
  QFETCH(QString, told);
  PracticeSet set = bottles();
  set.mode = PracticeMode::test;
  set.builder = false;
  set.minutes = 20;
  set.wantsUnits = true;
  Pupil pupil;
  open(pupil, set);
  QCOMPARE(textOf(pupil, "sheet-title"), QStringLiteral("Week 3"));
  QVERIFY2(textOf(pupil, "sheet-terms").contains(told), qPrintable(textOf(pupil, "sheet-terms")));
  QVERIFY(textOf(pupil, "sheet-terms").contains(QString::fromStdString(setMark(set))));
}

/// Rules without a name are not told by an empty one, nor by that of a shipped set.
void ClassSheetTest::namesChangedRules() {
  PracticeSet set = bottles();
  set.rules.name.clear();
  set.rules.pounds = Pounds::trade;
  Pupil pupil;
  open(pupil, set);
  QVERIFY2(textOf(pupil, "sheet-terms")
               .contains(QStringLiteral("House rules: ") + QString::fromStdString(rulesTitle(set.rules))),
           qPrintable(textOf(pupil, "sheet-terms")));
  QVERIFY(!rulesTitle(set.rules).empty());
}

/// Of everything that is filled in or pressed there are the seat, the way back and the beginning.
void ClassSheetTest::offersNoChange() {
  PracticeSet set = bottles();
  set.mode = PracticeMode::learning;
  Pupil pupil;
  open(pupil, set);
  QStringList seen;
  for (const QWidget* one :
       pupil.window().findChild<QWidget*>(QStringLiteral("class-page"))->findChildren<QWidget*>())
    if (one->isVisible() && one->focusPolicy() != Qt::NoFocus) seen << one->objectName();
  seen.sort();
  QCOMPARE(seen, (QStringList{QStringLiteral("seat"), QStringLiteral("sheet-back"),
                              QStringLiteral("sheet-begin")}));
}

void ClassSheetTest::beginsInTheModeOfTheSet_data() {
  QTest::addColumn<int>("mode");
  QTest::newRow("learning") << static_cast<int>(PracticeMode::learning);
  QTest::newRow("test") << static_cast<int>(PracticeMode::test);
}

void ClassSheetTest::beginsInTheModeOfTheSet() {
  QFETCH(int, mode);
  PracticeSet set = bottles();
  set.mode = static_cast<PracticeMode>(mode);
  Pupil pupil;
  begin(pupil, set);
  QCOMPARE(pupil.session().mode(), *set.mode);
  QVERIFY(pupil.session().set() == set);
}

void ClassSheetTest::aSeatIsACodeAndNeverAName_data() {
  QTest::addColumn<QString>("seat");
  QTest::addColumn<bool>("may");
  QTest::newRow("nothing") << QString() << false;
  QTest::newRow("a name") << QStringLiteral("Anna") << false;
  QTest::newRow("two names") << QStringLiteral("Anna Lena 3") << false;
  QTest::newRow("too long") << QStringLiteral("123456789") << false;
  QTest::newRow("a code") << QStringLiteral("A7") << true;
  QTest::newRow("a number") << QStringLiteral("12") << true;
}

void ClassSheetTest::aSeatIsACodeAndNeverAName() {
  QFETCH(QString, seat);
  QFETCH(bool, may);
  Pupil pupil;
  open(pupil, bottles());
  QTRY_COMPARE(pupil.focused(), QStringLiteral("seat"));
  const auto* field = pupil.window().findChild<QLineEdit*>(QStringLiteral("seat"));
  QVERIFY(field->placeholderText().contains(QStringLiteral("never a name")));
  pupil.type(seat);
  QCOMPARE(field->text(), seat);  // what is refused stays as it was typed
  const auto* button = pupil.window().findChild<QAbstractButton*>(QStringLiteral("sheet-begin"));
  QCOMPARE(button->isEnabled(), may);
  const bool refused = textOf(pupil, "seat-words").contains(QStringLiteral("This is no seat code."));
  QCOMPARE(refused, !may && !seat.isEmpty());
  pupil.enter();
  QCOMPARE(pupil.isOn("problem-page"), may);
}

void ClassSheetTest::withoutTheBuilderItIsNotThere() {
  PracticeSet set = bottles();
  set.builder = false;
  Pupil pupil;
  begin(pupil, set);
  const QString line = lineWithFacts(pupil);
  QVERIFY(!isThere(pupil, qPrintable(line + QStringLiteral(":build"))));
  QVERIFY(!textOf(pupil, "foot-words").contains(QStringLiteral("Ctrl+B")));
  QVERIFY(pupil.walkTo(line + QStringLiteral(":text")));
  pupil.press(Qt::Key_B, Qt::ControlModifier);
  QVERIFY(!pupil.window().findChild<LineBuilder*>());
}

void ClassSheetTest::withoutHintsTheyAreNotThere() {
  PracticeSet set = bottles();
  set.hints = false;
  Pupil pupil;
  begin(pupil, set);
  QVERIFY(!textOf(pupil, "foot-words").contains(QStringLiteral("Ctrl+H")));
  pupil.write(0, pupil.wrong(0));
  pupil.press(Qt::Key_H, Qt::ControlModifier);
  QVERIFY(!pupil.session().current().lines[0].marked);  // nor was it checked
  pupil.enter();
  QVERIFY(pupil.session().current().lines[0].marked);
  QVERIFY(!pupil.window().findChild<QWidget*>(QStringLiteral("line-1:hint"))->isVisible());
  QVERIFY(pupil.rungs(0).isEmpty());
}

/// Whatever the key says of an earlier line.
void ClassSheetTest::theBuilderHasTheStudentsOwnResultsAlone() {
  PracticeSet set = bottles();
  set.topics = {Topic::doseByBsa};
  Pupil pupil;
  begin(pupil, set);
  const Problem& problem = pupil.session().current().problem;
  QVERIFY(problem.asks.size() > 1 && problem.asks[0].step == StepId::bsa);
  const auto factsOf = [&] {
    LineBuilder builder(problem.asks[1], problem, 1, nullptr, earlierAnswers(pupil.session().current(), 1));
    QStringList facts;
    const auto* list = builder.findChild<QListWidget*>(QStringLiteral("facts"));
    for (int i = 0; i < list->count(); ++i) facts << list->item(i)->text().replace(QChar::Nbsp, u' ');
    return facts.join(u'\n');
  };
  QVERIFY2(!factsOf().contains(pupil.right(0)), qPrintable(factsOf()));
  pupil.write(0, QStringLiteral("0.93 m²"));
  pupil.enter();
  QVERIFY2(factsOf().contains(QStringLiteral("0.93 m²")), qPrintable(factsOf()));
  QVERIFY(!factsOf().contains(pupil.right(0)));
}

void ClassSheetTest::resultsCarrySetAndSeat() {
  const PracticeSet set = bottles();
  Pupil pupil;
  begin(pupil, set);
  QVERIFY(pupil.push(QStringLiteral("skip")));
  QVERIFY(pupil.isOn("summary-page"));
  QVERIFY(textOf(pupil, "summary-sheet").contains(QStringLiteral("seat A7")));
  pupil.files().table = pupil.inFolder(QStringLiteral("results.csv"));
  const QDate before = QDate::currentDate();
  QVERIFY(pupil.push(QStringLiteral("save-results")));
  const QDate after = QDate::currentDate();
  const QStringList rows = contentOf(pupil.files().table).split(QStringLiteral("\r\n"), Qt::SkipEmptyParts);
  QVERIFY(rows.size() > 1);
  const auto beginsWith = [&](const QDate& day) {
    return rows[1].startsWith(QStringLiteral("%1,%2,learn,A7,1,5,amount-liquid,")
                                  .arg(QString::fromStdString(setMark(set)), day.toString(Qt::ISODate)));
  };
  QVERIFY2(beginsWith(before) || beginsWith(after), qPrintable(rows[1]));
}

void ClassSheetTest::aSheetIsNotProlongedOrRepeated() {
  Pupil pupil;
  begin(pupil, bottles());
  QVERIFY(!pupil.window().findChild<QWidget*>(QStringLiteral("one-more"))->isVisible());
  pupil.press(Qt::Key_M, Qt::ControlModifier);
  QCOMPARE(pupil.session().count(), 1U);
  QVERIFY(pupil.push(QStringLiteral("skip")));
  QVERIFY(!pupil.window().findChild<QWidget*>(QStringLiteral("same-again"))->isVisible());
}

void ClassSheetTest::unsavedResultsAreAskedAbout() {
  Pupil pupil;
  begin(pupil, bottles());
  QVERIFY(pupil.push(QStringLiteral("skip")));
  pupil.window().close();
  QCOMPARE(pupil.files().asked, 1);
  QVERIFY(pupil.window().isVisible());
  pupil.files().table = pupil.inFolder(QStringLiteral("results.csv"));
  QVERIFY(pupil.push(QStringLiteral("save-results")));
  pupil.window().close();
  QCOMPARE(pupil.files().asked, 1);
  QVERIFY(!pupil.window().isVisible());
}

void ClassSheetTest::ownPracticeAfterwardsIsFreeAgain() {
  PracticeSet set = bottles();
  set.mode = PracticeMode::test;
  set.builder = false;
  set.hints = false;
  set.minutes = 20;
  Pupil pupil;
  begin(pupil, set);
  QVERIFY(pupil.push(QStringLiteral("skip")));
  QVERIFY(pupil.isOn("summary-page"));
  pupil.files().may = true;
  QVERIFY(pupil.push(QStringLiteral("new-practice")));
  QVERIFY(pupil.isOn("plan-page"));
  QVERIFY(pupil.push(QStringLiteral("begin")));
  QCOMPARE(pupil.session().mode(), PracticeMode::learning);
  QVERIFY(pupil.session().set().builder && pupil.session().set().hints && !pupil.session().set().minutes);
  QVERIFY(pupil.session().set().title.empty());
  QVERIFY(!pupil.window().findChild<QWidget*>(QStringLiteral("time-left"))->isVisible());
  QVERIFY(isThere(pupil, qPrintable(lineWithFacts(pupil) + QStringLiteral(":build"))));
}

void ClassSheetTest::timeIsShownAndNeverTaken() {
  qint64 now = 0;
  QWidget window;
  TimeLeft left(&window);
  const QSignalSpy up(&left, &TimeLeft::isUp);
  left.begin(std::nullopt, [&] { return now; });
  QVERIFY(left.isHidden());
  left.begin(2, [&] { return now; });
  QVERIFY(!left.isHidden());
  QCOMPARE(left.text(), QStringLiteral("2 of 2 minutes left"));
  now = 61 * 1000;
  left.tell();
  QCOMPARE(left.text(), QStringLiteral("1 of 2 minutes left"));
  now = 120 * 1000;
  left.tell();
  left.tell();
  QCOMPARE(left.text(), QStringLiteral("Time is up"));
  QCOMPARE(up.size(), 1);
  PracticeSet set = bottles();
  set.minutes = 20;
  Pupil pupil;
  begin(pupil, set);
  QCOMPARE(textOf(pupil, "time-left"), QStringLiteral("20 of 20 minutes left"));
}

void ClassSheetTest::countsDownInWholeMinutes() {
  QCOMPARE(timeLeftWords(0, 30), QStringLiteral("30 of 30 minutes left"));
  QCOMPARE(timeLeftWords(1, 30), QStringLiteral("30 of 30 minutes left"));
  QCOMPARE(timeLeftWords(60 * 1000, 30), QStringLiteral("29 of 30 minutes left"));
  QCOMPARE(timeLeftWords(30 * 60 * 1000 - 1, 30), QStringLiteral("1 of 30 minutes left"));
  QCOMPARE(timeLeftWords(30 * 60 * 1000, 30), QStringLiteral("Time is up"));
}

/// With the keyboard alone, and what was fixed is in the file.
void ClassSheetTest::aTeacherFixesTerms() {
  Pupil pupil;
  QVERIFY(pupil.choose({QStringLiteral("amount-liquid")}));
  QVERIFY(pupil.push(QStringLiteral("make-set")));
  QVERIFY(pupil.walkTo(QStringLiteral("set-title")));
  pupil.type(QStringLiteral("Week 3"));
  QVERIFY(pupil.walkTo(QStringLiteral("set-mode")));
  pupil.press(Qt::Key_Down);
  pupil.press(Qt::Key_Down);
  QVERIFY(pupil.walkTo(QStringLiteral("set-minutes")));
  pupil.press(Qt::Key_A, Qt::ControlModifier);
  pupil.type(QStringLiteral("25"));
  for (const char* box : {"set-builder", "set-hints", "set-units", "set-reason"})
    QVERIFY(pupil.push(QLatin1String(box)));
  pupil.files().save = pupil.inFolder(QStringLiteral("made.json"));
  QVERIFY(pupil.push(QStringLiteral("set-save")));
  const Result<PracticeSet> set = readSet(contentOf(pupil.files().save).toStdString());
  QVERIFY(set);
  QCOMPARE(set->title, std::string("Week 3"));
  QVERIFY(set->mode == PracticeMode::test);
  QVERIFY(set->minutes == 25);
  QVERIFY(!set->builder && !set->hints && set->wantsUnits && set->wantsReason);
  QVERIFY(set->rules == classroomRules());
  // opened again, the page has what the file has
  QVERIFY(pupil.push(QStringLiteral("set-back")));
  pupil.files().open = pupil.files().save;
  QVERIFY(pupil.push(QStringLiteral("make-set")));
  QVERIFY(pupil.push(QStringLiteral("set-open")));
  pupil.files().save = pupil.inFolder(QStringLiteral("again.json"));
  QVERIFY(pupil.push(QStringLiteral("set-save")));
  QCOMPARE(contentOf(pupil.files().save), contentOf(pupil.files().open));
}

void ClassSheetTest::aSeedOfSixteenDigitsStaysWhole() {
  PracticeSet set = bottles();
  set.seed = greatestSeed;
  Pupil pupil;
  begin(pupil, set);
  QCOMPARE(pupil.session().current().problem.seed, greatestSeed);
  Pupil own;
  QVERIFY(own.choose({QStringLiteral("bsa")}));
  QVERIFY(own.walkTo(QStringLiteral("seed")));
  own.press(Qt::Key_A, Qt::ControlModifier);
  own.type(QStringLiteral("9007199254740991"));
  QVERIFY(own.push(QStringLiteral("begin")));
  QCOMPARE(own.session().current().problem.seed, greatestSeed);
}

void ClassSheetTest::aSeedBeyondTheGreatestIsRefused() {
  Pupil pupil;
  QVERIFY(pupil.choose({QStringLiteral("bsa")}));
  QVERIFY(pupil.walkTo(QStringLiteral("seed")));
  pupil.press(Qt::Key_A, Qt::ControlModifier);
  pupil.type(QStringLiteral("9007199254740992"));
  QCOMPARE(textOf(pupil, "plan-missing"), QStringLiteral("The set number is at most 9007199254740991."));
  QVERIFY(!pupil.window().findChild<QAbstractButton*>(QStringLiteral("begin"))->isEnabled());
}

WARDCHALK_QT_TEST(ClassSheetTest)

}  // namespace wardchalk::ui::class_sheet_test

#include "class_sheet_test.moc"
