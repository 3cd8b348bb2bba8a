#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <utility>

#include "core/practice/sessions/set_file.h"
#include "tests/support/practice_answers.h"
#include "tests/ui/practice/pupil.h"
#include "tests/ui/support/heard.h"
#include "tests/ui/support/qt_class.h"
#include "ui/practice/line_feedback.h"
#include "ui/practice/line_row.h"
#include "ui/practice/reading_line.h"

namespace wardchalk::ui::reading_test {

namespace {

QString shownUnder(Pupil& pupil, std::size_t line) {
  const auto* label = pupil.window().findChild<QLabel*>(QStringLiteral("line-%1:reading").arg(line + 1));
  return label->text().replace(QChar::Nbsp, u' ');
}

/// Where every line and every button stands.
QList<QRect> places(Pupil& pupil) {
  QList<QRect> all;
  for (const QWidget* one :
       pupil.window().findChild<QWidget*>(QStringLiteral("problem-page"))->findChildren<QWidget*>())
    if (one->isVisible()) all << QRect(one->mapTo(&pupil.window(), QPoint(0, 0)), one->size());
  return all;
}

/// Whether everything stands where it stood when it was last looked at.
bool isSettled(Pupil& pupil, QList<QRect>& last) {
  QList<QRect> now = places(pupil);
  std::swap(now, last);
  return now == last;
}

}  // namespace

/// How a line is read stands apart from how it is marked.
class ReadingTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void isToldBeforeAnythingIsMarked();
  void isToldInATestToo();
  void whatCannotBeReadIsSaidOnceNobodyTypes();
  void whatCannotBeReadCostsNothing();
  void whatWasSaidOfAnotherTextIsTakenBack();
  void isHeard();
  void aHintIsHeardWithoutWhatWasHeardBefore();
  void nothingMovesWhileSomebodyTypes_data();
  void nothingMovesWhileSomebodyTypes();
  void isToldOfAKeptLine();
  void aBlankTypedTooEarlyChoosesNoVerdict();
  void whoWalksToAVerdictChoosesWithTheSpaceBar();
  void aMissingUnitIsToldAtARightLine();
  void aRoundingIsAskedAboutAtOnce();
  void withoutHelpNothingIsAsked();
};

void ReadingTest::isToldBeforeAnythingIsMarked() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("amount-liquid")}, 1, 5));
  const std::size_t line = pupil.session().current().problem.asks.size() - 1;
  pupil.write(line, QString());
  QCOMPARE(shownUnder(pupil, line), QString());
  pupil.type(QStringLiteral("400 mg / 5 mL = 80 mg/mL"));
  QCOMPARE(shownUnder(pupil, line), QStringLiteral("Read as: 400 mg/5 mL = 80 mg/mL"));
  QVERIFY(!pupil.session().current().lines[line].marked);
  pupil.press(Qt::Key_Backspace);
  QVERIFY(shownUnder(pupil, line) != QStringLiteral("Read as: 400 mg/5 mL = 80 mg/mL"));
}

void ReadingTest::isToldInATestToo() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5, true));
  pupil.write(0, QString());
  pupil.type(QStringLiteral(".7"));
  pupil.type(QStringLiteral("0 m2"));
  QCOMPARE(shownUnder(pupil, 0), QStringLiteral("Read as: 0.70 m²"));
}

void ReadingTest::whatCannotBeReadIsSaidOnceNobodyTypes() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QString());
  pupil.type(QStringLiteral("17"));
  QCOMPARE(shownUnder(pupil, 0), QStringLiteral("Read as: 17"));
  pupil.type(QStringLiteral(",2"));
  QCOMPARE(shownUnder(pupil, 0), QString());  // never what was read of another line
  pupil.type(QStringLiteral(" kg"));
  QTRY_COMPARE(
      shownUnder(pupil, 0),
      QStringLiteral("Cannot be read yet: 17,2 has a comma where thousands have none. Decimals have a "
                     "point."));
}

void ReadingTest::whatCannotBeReadCostsNothing() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QStringLiteral("17,2 kg"));
  pupil.enter();
  const PracticeLine& line = pupil.session().current().lines[0];
  QCOMPARE(line.marked->mark.mark, Mark::unread);
  QCOMPARE(line.tries, 0);
  QCOMPARE(shownUnder(pupil, 0), QString());  // it is said beside the mark now, once
  QVERIFY(pupil.said(0).contains(QStringLiteral("17,2")));
}

/// That a line cannot be read is true of the text that was checked alone. Its room stays until it is checked
/// again.
void ReadingTest::whatWasSaidOfAnotherTextIsTakenBack() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QStringLiteral("17,2 kg"));
  pupil.enter();
  const auto* said = pupil.window().findChild<QLabel*>(QStringLiteral("line-1:said"));
  QVERIFY(said->isVisible());
  const auto* hint = pupil.window().findChild<QWidget*>(QStringLiteral("line-1:hint"));
  QCoreApplication::processEvents();
  const QPoint before = hint->mapTo(&pupil.window(), QPoint(0, 0));
  pupil.press(Qt::Key_End);
  pupil.type(QStringLiteral("  "));
  QVERIFY(!said->isVisible());
  QCoreApplication::processEvents();
  QCOMPARE(hint->mapTo(&pupil.window(), QPoint(0, 0)), before);
  pupil.enter();
  QVERIFY(said->isVisible());
}

void ReadingTest::isHeard() {
  test::Listener ears;
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QString());
  ears.clear();
  pupil.type(QStringLiteral("0.70 m2"));
  QTRY_COMPARE(ears.heard(), QStringList{QStringLiteral("Read as: 0.70 m²")});
  pupil.type(QStringLiteral(" *"));
  QTRY_VERIFY(ears.last().startsWith(QStringLiteral("Cannot be read yet: ")));
}

/// Who asks for a hint at a line that was not looked at hears what it is, and the hint.
void ReadingTest::aHintIsHeardWithoutWhatWasHeardBefore() {
  test::Listener ears;
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QStringLiteral("0.46 m²"));
  ears.clear();
  pupil.press(Qt::Key_H, Qt::ControlModifier);
  QTRY_VERIFY2(ears.last().startsWith(QStringLiteral("Line 1: not yet. ")) &&
                   ears.last().contains(QStringLiteral("Where to look: ")),
               qPrintable(ears.last()));
  pupil.press(Qt::Key_H, Qt::ControlModifier);
  QTRY_VERIFY2(ears.last().startsWith(QStringLiteral("Line 1: A question: ")), qPrintable(ears.last()));
  QVERIFY2(!ears.last().contains(QStringLiteral("not yet")) &&
               !ears.last().contains(QStringLiteral("Where to look")),
           qPrintable(ears.last()));
}

void ReadingTest::nothingMovesWhileSomebodyTypes_data() {
  QTest::addColumn<int>("zoom");
  for (const int zoom : {100, 130, 200}) QTest::addRow("%d", zoom) << zoom;
}

void ReadingTest::nothingMovesWhileSomebodyTypes() {
  QFETCH(int, zoom);
  Pupil pupil(zoom);
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 1, 5));
  pupil.write(0, QString());
  QList<QRect> before;
  QTRY_VERIFY(isSettled(pupil, before));
  for (const char* text : {"0.70", " m2", " * 120 mg/", "m2 = 84,5 mg"}) {
    pupil.type(QLatin1String(text));
    QCoreApplication::processEvents();
    QCOMPARE(places(pupil), before);
  }
  QTRY_VERIFY(shownUnder(pupil, 0).startsWith(QStringLiteral("Cannot be read yet")));
  QCOMPARE(places(pupil), before);
}

/// Of a problem that is come back to.
void ReadingTest::isToldOfAKeptLine() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 2, 5, true));
  pupil.write(0, QStringLiteral("0.70 m2"));
  pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(shownUnder(pupil, 0), QString());
  QVERIFY(pupil.push(QStringLiteral("back")));
  QCOMPARE(shownUnder(pupil, 0), QStringLiteral("Read as: 0.70 m²"));
}

namespace {

/// Works the lines before the verdict, so that Enter brings the keyboard to it.
std::size_t comeToTheVerdict(Pupil& pupil) {
  const auto& asks = pupil.session().current().problem.asks;
  std::size_t line = 0;
  for (; line < asks.size() && !asks[line].isVerdict(); ++line) {
    pupil.write(line, pupil.right(line));
    pupil.enter();
  }
  return line;
}

}  // namespace

void ReadingTest::aBlankTypedTooEarlyChoosesNoVerdict() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 1, 3));
  const std::size_t verdict = comeToTheVerdict(pupil);
  QVERIFY(verdict > 0 && verdict < pupil.session().current().lines.size());
  QTRY_VERIFY(pupil.row(verdict)->isAncestorOf(QApplication::focusWidget()));
  pupil.type(QStringLiteral("  "));
  QCOMPARE(pupil.row(verdict)->text(), QString());
  pupil.press(Qt::Key_Right);
  pupil.press(Qt::Key_Space);
  QCOMPARE(pupil.row(verdict)->text(), QStringLiteral("ask"));
}

void ReadingTest::whoWalksToAVerdictChoosesWithTheSpaceBar() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("dose-by-bsa")}, 1, 3));
  const std::size_t verdict = comeToTheVerdict(pupil);
  pupil.row(0)->field()->setFocus();
  QVERIFY(pupil.walkTo(QStringLiteral("verdict-0")));
  pupil.press(Qt::Key_Space);
  QCOMPARE(pupil.row(verdict)->text(), QStringLiteral("safe"));
}

namespace {

PracticeSession sessionOf(Topic topic, HouseRules rules = classroomRules()) {
  PracticeSet set;
  set.topics = {topic};
  set.seed = 5;
  set.rules = std::move(rules);
  return PracticeSession(set, PracticeMode::learning);
}

/// A body surface area with one decimal where two are asked for.
PracticeSession roundedEarly() {
  PracticeSession session = sessionOf(Topic::bsa, exactRules());
  const double right = QString::fromStdString(wardchalk::test::rightAnswer(session.current().problem, 0))
                           .section(u' ', 0, 0)
                           .toDouble();
  session.write(0, (QString::number(right, 'f', 1) + QStringLiteral(" m²")).toStdString());
  session.check(0);
  return session;
}

}  // namespace

void ReadingTest::aMissingUnitIsToldAtARightLine() {
  PracticeSession session = sessionOf(Topic::amountLiquid);
  const std::size_t line = session.current().problem.asks.size() - 1;
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("amount-liquid")}, 1, 5));
  const QString number = pupil.right(line).section(u' ', 0, 0);
  session.write(line, number.toStdString());
  session.check(line);
  QCOMPARE(session.current().lines[line].marked->mark.mark, Mark::right);
  const QString said = lineFeedback(session.current(), line).said.join(u' ');
  QVERIFY2(said.contains(QStringLiteral("Write the unit behind each answer.")), qPrintable(said));
}

void ReadingTest::aRoundingIsAskedAboutAtOnce() {
  PracticeSession session = roundedEarly();
  const LineMark& mark = session.current().lines[0].marked->mark;
  QVERIFY(mark.has(MistakeId::sizeRoundedEarly) || mark.has(MistakeId::roundedElsewhere));
  QCOMPARE(session.current().lines[0].rung, 0);
  const QString said = lineFeedback(session.current(), 0).said.join(u' ');
  QVERIFY2(said.contains(QStringLiteral("How many decimals does the question ask for")), qPrintable(said));
}

void ReadingTest::withoutHelpNothingIsAsked() {
  const PracticeSession session = roundedEarly();
  const LineFeedback feedback = lineFeedback(session.current(), 0, Help::none);
  QVERIFY(!feedback.spoken().contains(QStringLiteral("How many decimals")));
  QVERIFY(feedback.next.isEmpty());
}

WARDCHALK_QT_TEST(ReadingTest)

}  // namespace wardchalk::ui::reading_test

#include "reading_test.moc"
