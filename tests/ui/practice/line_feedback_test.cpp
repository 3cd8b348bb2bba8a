#include "ui/practice/line_feedback.h"

#include <QTest>

#include "tests/support/practice_answers.h"
#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::line_feedback_test {

namespace {

PracticeSession sessionOf(Topic topic) {
  PracticeSet set;
  set.topics = {topic};
  set.count = 1;
  set.seed = 5;
  return PracticeSession(set, PracticeMode::learning);
}

/// Digits of the right answer, which no rung before the last may hold.
QString figureOf(const PracticeSession& session) {
  return QString::fromStdString(wardchalk::test::rightAnswer(session.current().problem, 0))
      .section(u' ', 0, 0);
}

}  // namespace

class LineFeedbackTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void offersHelpAndSaysNothingBeforeALineIsChecked();
  void saysThatARightLineIsRight();
  void neverBlames();
  void climbsFourRungs();
  void keepsTheAnswerToTheLastRung();
  void theNewestRungIsSpokenAlone();
  void pointsAtAFault();
  void tellsHowToWriteWhatCouldBeMisread();
  void theWorkedLineIsAPictureOfTheKeyAlone();
  void showsTheWorkedLineOnceHandedIn();
  void findsBytesOnTheScreen_data();
  void findsBytesOnTheScreen();
  void isReadAloudWithoutDoublePoints();
};

void LineFeedbackTest::offersHelpAndSaysNothingBeforeALineIsChecked() {
  const PracticeSession session = sessionOf(Topic::bsa);
  const LineFeedback feedback = lineFeedback(session.current(), 0);
  QVERIFY(!feedback.mark);
  QVERIFY(feedback.said.isEmpty() && feedback.rungs.empty());
  QCOMPARE(feedback.next, QStringLiteral("Hint 1 of 4: where to look"));
}

void LineFeedbackTest::saysThatARightLineIsRight() {
  PracticeSession session = sessionOf(Topic::bsa);
  session.write(0, wardchalk::test::rightAnswer(session.current().problem, 0));
  session.check(0);
  const LineFeedback feedback = lineFeedback(session.current(), 0);
  QCOMPARE(feedback.mark, std::optional(Mark::right));
  QCOMPARE(feedback.word, QStringLiteral("right"));
  QCOMPARE(feedback.said, QStringList{QStringLiteral("Well worked.")});
  QVERIFY(feedback.next.isEmpty());
}

void LineFeedbackTest::neverBlames() {
  PracticeSession session = sessionOf(Topic::bsa);
  session.write(0, "999 m²");
  session.check(0);
  const LineFeedback feedback = lineFeedback(session.current(), 0);
  QCOMPARE(feedback.word, QStringLiteral("not yet"));
  QVERIFY(!feedback.said.isEmpty());
  for (const char* hard : {"wrong", "error", "invalid", "fail", "incorrect"})
    QVERIFY2(!feedback.spoken().contains(QLatin1String(hard), Qt::CaseInsensitive),
             qPrintable(feedback.spoken()));
}

void LineFeedbackTest::climbsFourRungs() {
  PracticeSession session = sessionOf(Topic::bsa);
  session.write(0, "999 m²");
  session.check(0);
  QStringList next;
  for (int rung = 0; rung <= lastRung; ++rung) {
    const LineFeedback feedback = lineFeedback(session.current(), 0);
    QCOMPARE(static_cast<int>(feedback.rungs.size()), rung);
    for (const ShownRung& shown : feedback.rungs) QVERIFY(!shown.text.isEmpty() && !shown.title.isEmpty());
    next << feedback.next;
    session.climb(0);
  }
  QVERIFY(next.last().isEmpty());
  QCOMPARE(next.removeDuplicates(), 0);
}

void LineFeedbackTest::keepsTheAnswerToTheLastRung() {
  PracticeSession session = sessionOf(Topic::bsa);
  const QString figure = figureOf(session);
  session.write(0, "999 m²");
  session.check(0);
  for (int rung = 1; rung < lastRung; ++rung) {
    session.climb(0);
    const QString told = lineFeedback(session.current(), 0).spoken();
    QVERIFY2(!told.contains(figure), qPrintable(told));
  }
  session.climb(0);
  const QString told = lineFeedback(session.current(), 0).spoken();
  QVERIFY2(told.contains(figure), qPrintable(told));
}

void LineFeedbackTest::theNewestRungIsSpokenAlone() {
  PracticeSession session = sessionOf(Topic::bsa);
  session.write(0, "999 m²");
  session.check(0);
  QCOMPARE(lineFeedback(session.current(), 0).spokenRung(), QString());
  const char* titles[] = {"Where to look: ", "A question: ", "The rule: ", "The worked line: "};
  for (const char* title : titles) {
    session.climb(0);
    const LineFeedback feedback = lineFeedback(session.current(), 0);
    QVERIFY2(feedback.spokenRung().startsWith(QLatin1String(title)), qPrintable(feedback.spokenRung()));
    QVERIFY(feedback.spoken().contains(feedback.spokenRung()));  // beside the rest, nothing new
    QVERIFY(!feedback.spokenRung().contains(feedback.word));
    QVERIFY(!feedback.spokenRung().contains(QChar::Nbsp));
  }
}

void LineFeedbackTest::pointsAtAFault() {
  PracticeSession session = sessionOf(Topic::bsa);
  const std::string text = "√(103 cm × 17,2 kg / 3600)";
  session.write(0, text);
  session.check(0);
  const LineFeedback feedback = lineFeedback(session.current(), 0);
  QVERIFY(feedback.pointed);
  const TextRange range = rangeOf(*feedback.pointed, text);
  QCOMPARE(QString::fromStdString(text).mid(range.begin, range.length), QStringLiteral("17,2"));
  QVERIFY(feedback.said.join(u' ').contains(QStringLiteral("cannot be read yet")));
}

void LineFeedbackTest::tellsHowToWriteWhatCouldBeMisread() {
  PracticeSession session = sessionOf(Topic::bsa);
  QString text = QString::fromStdString(wardchalk::test::rightAnswer(session.current().problem, 0));
  QVERIFY(text.startsWith(QStringLiteral("0.")) || text.startsWith(u'1'));
  if (!text.startsWith(QStringLiteral("0."))) QSKIP("this child is large");
  session.write(0, text.mid(1).toStdString());
  session.check(0);
  const LineFeedback feedback = lineFeedback(session.current(), 0);
  QCOMPARE(feedback.mark, std::optional(Mark::right));
  QVERIFY(feedback.said.join(u' ').contains(text.section(u' ', 0, 0)));
  QVERIFY(feedback.pointed);
}

/// With an own wrong number from the line before the words go on with that number, and the key's chain would
/// contradict them.
void LineFeedbackTest::theWorkedLineIsAPictureOfTheKeyAlone() {
  PracticeSession session = sessionOf(Topic::doseByBsa);
  const Problem& problem = session.current().problem;
  QVERIFY(problem.asks.size() > 1 && problem.asks[1].step);
  const auto pictureOfSecond = [&](const std::string& first) {
    session.write(0, first);
    session.check(0);
    session.check(1);
    while (session.current().lines[1].rung < lastRung) session.climb(1);
    return lineFeedback(session.current(), 1).rungs.back().picture.has_value();
  };
  QVERIFY(pictureOfSecond(wardchalk::test::rightAnswer(problem, 0)));
  QVERIFY(!pictureOfSecond("1.93 m²"));
}

void LineFeedbackTest::showsTheWorkedLineOnceHandedIn() {
  PracticeSession session = sessionOf(Topic::bsa);
  const QString figure = figureOf(session);
  session.write(0, "999 m²");
  session.handIn();
  const LineFeedback feedback = lineFeedback(session.current(), 0);
  QVERIFY(feedback.spoken().contains(figure));
  QVERIFY(feedback.next.isEmpty());
}

void LineFeedbackTest::findsBytesOnTheScreen_data() {
  QTest::addColumn<QString>("text");
  QTest::addColumn<int>("begin");
  QTest::addColumn<int>("end");
  QTest::addColumn<QString>("piece");
  QTest::newRow("plain") << "84 mg" << 3 << 5 << "mg";
  QTest::newRow("behind a root") << QStringLiteral("√(4 m⁴)") << 4 << 5 << "4";
  QTest::newRow("two-byte power") << QStringLiteral("0.7 m²") << 4 << 7 << QStringLiteral("m²");
  QTest::newRow("outside the first plane") << QStringLiteral("𝟕 mg") << 5 << 7 << "mg";
  QTest::newRow("beyond the end") << "84" << 1 << 9 << "4";
  QTest::newRow("nothing") << "84" << 2 << 2 << "";
  QTest::newRow("backwards") << "84" << 2 << 1 << "";
}

void LineFeedbackTest::findsBytesOnTheScreen() {
  QFETCH(QString, text);
  QFETCH(int, begin);
  QFETCH(int, end);
  QFETCH(QString, piece);
  const TextRange range =
      rangeOf({static_cast<std::size_t>(begin), static_cast<std::size_t>(end)}, text.toStdString());
  QCOMPARE(text.mid(range.begin, range.length), piece);
}

void LineFeedbackTest::isReadAloudWithoutDoublePoints() {
  PracticeSession session = sessionOf(Topic::bsa);
  session.write(0, "999 m²");
  session.check(0);
  for (int i = 0; i < lastRung; ++i) session.climb(0);
  const QString told = lineFeedback(session.current(), 0).spoken();
  QVERIFY2(!told.contains(QStringLiteral("..")) && !told.contains(QChar(QChar::Nbsp)), qPrintable(told));
}

WARDCHALK_QT_TEST(LineFeedbackTest)

}  // namespace wardchalk::ui::line_feedback_test

#include "line_feedback_test.moc"
