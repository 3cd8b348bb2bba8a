#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPointer>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include "core/practice/lines/student_line.h"
#include "core/practice/sessions/session_tally.h"
#include "core/practice/sessions/set_file.h"
#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/practice/pupil.h"
#include "tests/ui/support/qt_class.h"
#include "ui/practice/line_builder.h"
#include "ui/practice/line_row.h"
#include "ui/practice/mark_badge.h"
#include "ui/practice/plan_page.h"
#include "ui/practice/worked_picture.h"

namespace wardchalk::ui::practice_journeys_test {

namespace {

QString contentOf(const QString& file) {
  QFile in(file);
  return in.open(QIODevice::ReadOnly) ? QString::fromUtf8(in.readAll()) : QString();
}

void save(const QString& file, const QByteArray& text) {
  QFile out(file);
  if (!out.open(QIODevice::WriteOnly) || out.write(text) != text.size()) qFatal("a test's own file");
}

}  // namespace

/// Students and a preceptor at the window of practice, with nothing but the keyboard.
class PracticeJourneysTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void aStudentLearns();
  void aMarkIsThatOfTheTextBesideIt();
  void theLastLineIsReadBeforeGoingOn();
  void aFaultIsPointedAt();
  void aHintComesWithAKey();
  void whoIsStuckIsHelped();
  void whatIsSaidOfWritingIsRead();
  void aNewRungIsSeen();
  void thePapersAreReachedWithTheKeyboard();
  void aPreceptorIsToldWhatIsMissing();
  void theWordsOfTheHouseRulesAreTrue();
  void aVerdictIsAChoiceOfFourWords();
  void whatFollowsTheVerdictIsCoveredUntilThen();
  void nothingIsMeasuredByAButton();
  void aLineIsBuilt();
  void theLinesMayChangeUnderTheBuilder();
  void aTestIsReviewedAndHandedIn();
  void aProblemIsSkippedAndOneMoreAskedFor();
  void theSameSetAgain();
  void theSummaryProposesWhatToPractiseNext();
  void aSetIsOpened();
  void aDamagedSetIsRefusedInWords();
  void leavingInTheMiddleIsAskedAbout();
  void aPreceptorMakesASet();
  void timeIsHandedToTheSession();
};

/// One line wrong, all rungs, corrected; then summary and table.
void PracticeJourneysTest::aStudentLearns() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  QVERIFY(pupil.isOn("problem-page"));
  QCOMPARE(pupil.window().findChild<QLabel*>(QStringLiteral("progress"))->text(),
           QStringLiteral("Problem 1 of 1"));
  QTRY_COMPARE(pupil.focused(), QStringLiteral("line-1:text"));
  pupil.write(0, QStringLiteral("999 m²"));
  pupil.enter();
  QVERIFY(!pupil.session().current().lines[0].isRight());
  QVERIFY(pupil.rungs(0).isEmpty());
  QCOMPARE(pupil.focused(), QStringLiteral("line-1:text"));
  for (int rung = 1; rung <= lastRung; ++rung) {
    QVERIFY(pupil.push(QStringLiteral("line-1:hint")));
    QCOMPARE(pupil.rungs(0).count(u'\n') + 1, rung);
    QCOMPARE(pupil.session().current().lines[0].rung, rung);
  }
  QVERIFY(pupil.rungs(0).contains(pupil.right(0).section(u' ', 0, 0)));
  pupil.write(0, pupil.right(0));
  pupil.enter();
  QVERIFY(pupil.session().current().lines[0].isRight());
  QVERIFY(pupil.rungs(0).isEmpty());
  QVERIFY(pupil.said(0).contains(QStringLiteral("Well worked")));
  pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY(pupil.isOn("summary-page"));
  QVERIFY(pupil.window()
              .findChild<QLabel*>(QStringLiteral("summary-title"))
              ->text()
              .contains(QStringLiteral("right in the end")));
  pupil.files().table = pupil.inFolder(QStringLiteral("results.csv"));
  QVERIFY(pupil.push(QStringLiteral("save-results")));
  const QStringList rows = contentOf(pupil.files().table).split(QStringLiteral("\r\n"), Qt::SkipEmptyParts);
  QCOMPARE(rows.size(), 2);
  QVERIFY(rows[0].startsWith(QStringLiteral("set,date,mode,seat,problem,seed,topic,level,line,answer,mark")));
  QVERIFY2(rows[1].contains(QStringLiteral(",learn,,1,5,bsa,1,bsa,")) &&
               rows[1].contains(QStringLiteral(",right,,2,4,")),
           qPrintable(rows[1]));
  QVERIFY(pupil.files().told.isEmpty());
}

/// What was said to help stays while the line is mended; that it is not right yet was said of another text.
void PracticeJourneysTest::aMarkIsThatOfTheTextBesideIt() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QStringLiteral("999 m²"));
  pupil.enter();
  const auto* badge = pupil.row(0)->findChild<MarkBadge*>();
  QVERIFY(badge);
  QVERIFY(badge->isVisible());
  const QString said = pupil.said(0);
  pupil.write(0, QStringLiteral("99 m²"));
  QVERIFY(!badge->isVisible());
  QCOMPARE(pupil.said(0), said);
  pupil.write(0, QStringLiteral("999 m²"));
  QVERIFY(badge->isVisible());
  pupil.write(0, QStringLiteral("98 m²"));
  pupil.enter();
  QVERIFY(badge->isVisible());
}

/// The keyboard stays where it was, and the same key goes on: not before the line stands as it was checked.
void PracticeJourneysTest::theLastLineIsReadBeforeGoingOn() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  const auto* foot = pupil.window().findChild<QLabel*>(QStringLiteral("foot-words"));
  pupil.write(0, pupil.right(0));
  pupil.enter();
  QCOMPARE(pupil.focused(), QStringLiteral("line-1:text"));
  QVERIFY(pupil.said(0).contains(QStringLiteral("Well worked")));
  QCOMPARE(foot->text(), QStringLiteral("Enter once more: go on."));
  pupil.write(0, QStringLiteral("999 m²"));
  QVERIFY(foot->text() != QStringLiteral("Enter once more: go on."));
  pupil.enter();
  QVERIFY(pupil.isOn("problem-page"));
  pupil.enter();
  QVERIFY(pupil.isOn("problem-page"));
  pupil.write(0, pupil.right(0));
  pupil.enter();
  QVERIFY(pupil.isOn("problem-page"));
  pupil.enter();
  QTRY_VERIFY(pupil.isOn("summary-page"));
}

void PracticeJourneysTest::aFaultIsPointedAt() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QStringLiteral("√(103 cm × 17,2 kg)"));
  pupil.enter();
  QCOMPARE(qobject_cast<QLineEdit*>(pupil.row(0)->field())->selectedText(), QStringLiteral("17,2"));
  QVERIFY(pupil.said(0).contains(QStringLiteral("17,2")));
}

void PracticeJourneysTest::aHintComesWithAKey() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  pupil.write(0, QStringLiteral("999 m²"));
  pupil.press(Qt::Key_H, Qt::ControlModifier);
  QCOMPARE(pupil.session().current().lines[0].rung, 1);
  pupil.press(Qt::Key_H, Qt::ControlModifier);
  QCOMPARE(pupil.session().current().lines[0].rung, 2);
  QCOMPARE(pupil.session().current().lines[0].tries, 1);
}

/// On an empty line, before anything was checked: all four rungs, each of them kept in the session.
void PracticeJourneysTest::whoIsStuckIsHelped() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  const auto* hint = pupil.window().findChild<QAbstractButton*>(QStringLiteral("line-1:hint"));
  for (const char* next : {"Hint 1 of 4: where to look", "Hint 2 of 4: a question", "Hint 3 of 4: the rule",
                           "Hint 4 of 4: the worked line"}) {
    QVERIFY(hint->isVisible());
    QCOMPARE(hint->text(), QLatin1String(next));
    QVERIFY(pupil.push(QStringLiteral("line-1:hint")));
  }
  QVERIFY(!hint->isVisible());
  const auto* worked = pupil.window().findChild<WorkedPicture*>();
  QVERIFY(worked);
  QTRY_VERIFY(worked->isVisible());
  QTRY_VERIFY(worked->height() >= worked->heightForWidth(worked->width()));
  QVERIFY(!worked->layout().drawing.bars.empty() && !worked->layout().drawing.strokes.empty());
  QCOMPARE(pupil.session().current().lines[0].rung, lastRung);
  QCOMPARE(pupil.session().current().lines[0].tries, 0);
  QVERIFY(pupil.rungs(0).contains(pupil.right(0).section(u' ', 0, 0)));
}

/// The quiet line under the first field promises these; the reader takes them without a remark on the way.
void PracticeJourneysTest::whatIsSaidOfWritingIsRead() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  const auto* how = pupil.window().findChild<QLabel*>(QStringLiteral("line-1:how"));
  QVERIFY(how && how->isVisible() && how->text().contains(QStringLiteral("sqrt( )")));
  for (const char* line : {"sqrt(103 cm * 17.2 kg / 3600) = 0.70 m2", "0.70 m2 * 120 mg/m2 = 84 mg"}) {
    const ReadLine read = readStudentLine(line);
    QVERIFY2(std::holds_alternative<StudentLine>(read), line);
    QVERIFY2(std::get<StudentLine>(read).links[0].truth != Truth::wrong, line);
  }
}

/// At large letters as well: the last rung and the button of the next are in the window.
void PracticeJourneysTest::aNewRungIsSeen() {
  Pupil pupil(200);
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  const auto* hint = pupil.window().findChild<QWidget*>(QStringLiteral("line-1:hint"));
  const auto* band = pupil.window().findChild<QWidget*>(QStringLiteral("practice-band"));
  const QImage bandBefore = pupil.window().grab(band->geometry()).toImage();
  for (int rung = 1; rung < lastRung; ++rung) {
    pupil.press(Qt::Key_H, Qt::ControlModifier);
    QTRY_COMPARE(hint->visibleRegion().boundingRect(), hint->rect());
  }
  pupil.press(Qt::Key_H, Qt::ControlModifier);
  const auto* last = pupil.window().findChild<QWidget*>(QStringLiteral("line-1:rung-4"));
  QTRY_COMPARE(last->visibleRegion().boundingRect(), last->rect());
  // the field has the keyboard still; scrolled away, it leaves no ring on the band
  QCOMPARE(pupil.window().grab(band->geometry()).toImage(), bandBefore);
}

/// Above the lines they stand in full, and are scrolled with them by Page Up and Page Down.
void PracticeJourneysTest::thePapersAreReachedWithTheKeyboard() {
  Pupil pupil(300);
  QVERIFY(pupil.begin({QStringLiteral("dose-by-weight")}, 1, 5, true));
  const auto* papers = pupil.window().findChild<QWidget*>(QStringLiteral("papers"));
  QTRY_VERIFY(papers->height() >= papers->layout()->heightForWidth(papers->width()));
  const auto labels = papers->findChildren<QLabel*>();
  const auto isSeen = [](const QWidget* widget) { return !widget->visibleRegion().isEmpty(); };
  QTRY_VERIFY(labels.first()->isVisible());  // laid out; before that no key could scroll
  const auto isSeenAfter = [&](Qt::Key key) {
    pupil.press(key);
    return isSeen(labels.first());
  };
  QTRY_VERIFY(isSeenAfter(Qt::Key_PageUp));
  QTRY_VERIFY(!isSeenAfter(Qt::Key_PageDown));
  QTRY_VERIFY(isSeenAfter(Qt::Key_PageUp));
}

void PracticeJourneysTest::aPreceptorIsToldWhatIsMissing() {
  Pupil pupil;
  QVERIFY(pupil.push(QStringLiteral("make-set")));
  const auto* missing = pupil.window().findChild<QLabel*>(QStringLiteral("set-missing"));
  QCOMPARE(missing->text(), QStringLiteral("Choose one topic or more."));
  auto* page = pupil.window().findChild<QWidget*>(QStringLiteral("set-page"));
  page->findChild<QAbstractButton*>(QStringLiteral("topic:bsa"))->click();
  QVERIFY(missing->text().isEmpty());
  auto* number = page->findChild<QLineEdit*>(QStringLiteral("seed"));
  number->setFocus();
  number->selectAll();
  pupil.press(Qt::Key_Delete);
  QCOMPARE(missing->text(), QStringLiteral("Write a number for the set."));
}

/// A line says what the shipped rules do.
void PracticeJourneysTest::theWordsOfTheHouseRulesAreTrue() {
  Pupil pupil;
  QVERIFY(pupil.push(QStringLiteral("make-set")));
  const auto* page = pupil.window().findChild<QWidget*>(QStringLiteral("set-page"));
  const auto* words = page->findChild<QLabel*>(QStringLiteral("school-words"));
  auto* box = page->findChild<QComboBox*>(QStringLiteral("school"));
  QVERIFY(words->text().contains(QStringLiteral("2.2 lb = 1 kg")));  // as a class begins
  box->setCurrentIndex(1);
  QVERIFY(words->text().contains(QStringLiteral("1 lb = 0.45359237 kg, weight not rounded")));
  QCOMPARE(exactRules().pounds, Pounds::exact);
  QVERIFY(!exactRules().kilogramDecimals);
  box->setCurrentIndex(0);
  QVERIFY(words->text().contains(QStringLiteral("2.2 lb = 1 kg, weight to 2 decimals")));
  QCOMPARE(classroomRules().pounds, Pounds::trade);
  QCOMPARE(classroomRules().kilogramDecimals, std::optional(2));
  QCOMPARE(classroomRules().roundTo, RoundTo::decimals);
}

namespace {

/// The first line that asks for the verdict of the current problem.
std::size_t verdictOf(const PracticeSession& session) {
  const auto& asks = session.current().problem.asks;
  for (std::size_t i = 0; i < asks.size(); ++i)
    if (asks[i].isVerdict()) return i;
  return asks.size();
}

}  // namespace

void PracticeJourneysTest::aVerdictIsAChoiceOfFourWords() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("dose-by-weight")}, 1, 3));
  const std::size_t verdict = verdictOf(pupil.session());
  QVERIFY(verdict < pupil.session().current().lines.size());
  LineRow* row = pupil.row(verdict);
  QCOMPARE(row->text(), QString());
  const std::pair<QChar, const char*> words[] = {
      {u's', "safe"}, {u'a', "ask"}, {u'u', "unsafe"}, {u'n', "does not fit"}};  // as files have them
  for (const auto& [key, word] : words) {
    row->field()->setFocus();
    pupil.type(QString(key));
    QCOMPARE(row->text(), QLatin1String(word));
  }
  pupil.write(verdict, pupil.right(verdict));
  pupil.enter();
  QVERIFY(pupil.session().current().lines[verdict].marked.has_value());
}

void PracticeJourneysTest::whatFollowsTheVerdictIsCoveredUntilThen() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("dose-by-weight")}, 6, 3));
  for (int problem = 0; problem < 6; ++problem) {
    const std::size_t verdict = verdictOf(pupil.session());
    const std::size_t lines = pupil.session().current().lines.size();
    for (std::size_t i = verdict + 1; i < lines; ++i) QVERIFY(!pupil.row(i)->isVisible());
    pupil.write(verdict, pupil.right(verdict));
    for (std::size_t i = verdict + 1; i < lines; ++i) QVERIFY(pupil.row(i)->isVisible());
    QVERIFY(pupil.push(QStringLiteral("skip")));
  }
  QVERIFY(pupil.isOn("summary-page"));
}

/// A problem that must not be given: its amount is answered by a button.
void PracticeJourneysTest::nothingIsMeasuredByAButton() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("dose-by-weight")}, 30, 3));
  for (int problem = 0; problem < 30; ++problem) {
    const PracticeProblem& shown = pupil.session().current();
    const std::size_t last = shown.lines.size() - 1;
    if (shown.problem.key.verdict != VerdictKind::unsafe || shown.problem.asks[last].step != StepId::give) {
      QVERIFY(pupil.push(QStringLiteral("skip")));
      continue;
    }
    pupil.write(verdictOf(pupil.session()), QStringLiteral("unsafe"));
    QVERIFY(pupil.push(QStringLiteral("line-%1:nothing").arg(last + 1)));
    pupil.enter();
    QVERIFY(pupil.session().current().lines[last].isRight());
    QCOMPARE(pupil.session().current().lines[last].text, std::string("do not measure"));
    return;
  }
  QFAIL("no problem that must not be given was drawn");
}

void PracticeJourneysTest::aLineIsBuilt() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("amount-liquid")}, 1, 5));
  std::size_t give = 0;
  while (pupil.session().current().problem.asks[give].step != StepId::give) ++give;
  const QString name = QStringLiteral("line-%1:text").arg(give + 1);
  QVERIFY(pupil.walkTo(name));
  bool built = false;
  // the dialog waits for its own end, so the student's keys are told beforehand
  QTimer::singleShot(0, &pupil.window(), [&] {
    auto* builder = pupil.window().findChild<LineBuilder*>();
    if (!builder) return;
    auto* facts = builder->findChild<QListWidget*>();
    QTest::keyClick(facts, Qt::Key_Return);
    QTest::keyClick(facts, Qt::Key_Down);
    QTest::keyClick(facts, Qt::Key_Return);
    auto* write = builder->findChild<QPushButton*>(QStringLiteral("write"));
    built = write->isEnabled();
    QTest::keyClick(write, Qt::Key_Space);
  });
  pupil.press(Qt::Key_B, Qt::ControlModifier);
  QVERIFY(built);
  QVERIFY(pupil.row(give)->text().contains(u'×'));
  QVERIFY(pupil.row(give)->text().endsWith(QStringLiteral(" = ")));
  QVERIFY(pupil.window().focusWidget());  // offscreen nobody makes it the active window again
  QCOMPARE(pupil.window().focusWidget()->objectName(), name);
}

/// A key presses a button that comes up a moment later: by then the builder is open, and what it was opened
/// for goes.
void PracticeJourneysTest::theLinesMayChangeUnderTheBuilder() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("amount-liquid")}, 1, 5));
  LineRow* row = nullptr;
  for (std::size_t i = 0; !row && i < pupil.session().current().problem.asks.size(); ++i)
    if (pupil.row(i)->canBeBuilt()) row = pupil.row(i);
  QVERIFY(row);
  const QPointer<LineRow> old = row;
  row->field()->setFocus(Qt::TabFocusReason);
  pupil.window().findChild<QPushButton*>(QStringLiteral("one-more"))->animateClick();
  QTimer closer;
  int seen = 0;
  connect(&closer, &QTimer::timeout, this, [&] {
    auto* builder = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    seen += builder ? 1 : 0;
    if (builder && pupil.session().count() == 2) builder->reject();
  });
  closer.start(5);
  pupil.press(Qt::Key_B, Qt::ControlModifier);  // comes back when the builder is closed
  QVERIFY(seen > 0);
  QCOMPARE(pupil.session().count(), 2U);
  QTRY_VERIFY(!old);
}

void PracticeJourneysTest::aTestIsReviewedAndHandedIn() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 2, 5, true));
  QCOMPARE(pupil.session().mode(), PracticeMode::test);
  QVERIFY(!pupil.window().findChild<QPushButton*>(QStringLiteral("line-1:check")));
  pupil.write(0, QStringLiteral("999 m²"));
  pupil.enter();
  QVERIFY(!pupil.session().current().lines[0].marked);
  QVERIFY(pupil.said(0).isEmpty());
  pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QCOMPARE(pupil.session().place(), 1U);
  pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY(pupil.isOn("review-page"));
  QVERIFY(pupil.window()
              .findChild<QLabel*>(QStringLiteral("review-open"))
              ->text()
              .contains(QStringLiteral("still empty")));
  QVERIFY(pupil.push(QStringLiteral("review-go-1")));
  QVERIFY(pupil.isOn("problem-page"));
  QCOMPARE(pupil.row(0)->text(), QStringLiteral("999 m²"));
  pupil.write(0, pupil.right(0));
  QVERIFY(pupil.push(QStringLiteral("review")));
  QVERIFY(!pupil.session().at(0).lines[0].marked);
  QVERIFY(pupil.push(QStringLiteral("hand-in")));
  QVERIFY(pupil.isOn("summary-page"));
  QVERIFY(pupil.session().at(0).lines[0].isRight());
  const SessionTally tally = tallyOf(pupil.session());
  QCOMPARE(tally.lines.lines, 2);
  QCOMPARE(tally.lines.atOnce, 1);
  QVERIFY(pupil.push(QStringLiteral("look-again")));
  QVERIFY(qobject_cast<QLineEdit*>(pupil.row(0)->field())->isReadOnly());
}

void PracticeJourneysTest::aProblemIsSkippedAndOneMoreAskedFor() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  const std::string first = pupil.session().current().problem.story;
  pupil.press(Qt::Key_M, Qt::ControlModifier);
  QCOMPARE(pupil.session().count(), 2U);
  QVERIFY(pupil.session().current().problem.story != first);
  QVERIFY(pupil.push(QStringLiteral("skip")));
  QVERIFY(pupil.isOn("summary-page"));
  QVERIFY(pupil.session().at(1).skipped);
}

void PracticeJourneysTest::theSameSetAgain() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  const std::string story = pupil.session().current().problem.story;
  QVERIFY(pupil.push(QStringLiteral("skip")));
  QVERIFY(pupil.push(QStringLiteral("same-again")));
  QVERIFY(pupil.isOn("problem-page"));
  QCOMPARE(pupil.session().current().problem.story, story);
  QVERIFY(!pupil.session().current().skipped);
}

void PracticeJourneysTest::theSummaryProposesWhatToPractiseNext() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("drops")}, 1, 5));
  pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY(pupil.isOn("problem-page"));  // it says first that lines are not right yet
  QVERIFY(pupil.window()
              .findChild<QLabel*>(QStringLiteral("foot-words"))
              ->text()
              .contains(QStringLiteral("not right yet")));
  pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY(pupil.session().current().handedIn);
  QVERIFY(pupil.rungs(0).contains(QStringLiteral("drops/min")));  // the worked line, after handing in
  pupil.press(Qt::Key_Return, Qt::ControlModifier);
  QVERIFY(pupil.isOn("summary-page"));
  QVERIFY(pupil.push(QStringLiteral("practise-next")));
  QCOMPARE(pupil.session().current().problem.topic, Topic::drops);
  QVERIFY(pupil.session().set().seed != 5);
}

void PracticeJourneysTest::aSetIsOpened() {
  Pupil pupil;
  pupil.files().open = pupil.inFolder(QStringLiteral("class.json"));
  save(
      pupil.files().open,
      R"({"format": "wardchalk.set", "version": 1, "title": "Week 3", "topics": ["drops"], "level": 2, "count": 4, "seed": 77})");
  QVERIFY(pupil.push(QStringLiteral("open-set")));
  QCOMPARE(pupil.window().findChild<QLabel*>(QStringLiteral("sheet-title"))->text(),
           QStringLiteral("Week 3"));
  QVERIFY(pupil.walkTo(QStringLiteral("seat")));
  pupil.type(QStringLiteral("A7"));
  QVERIFY(pupil.push(QStringLiteral("sheet-begin")));
  QCOMPARE(pupil.session().count(), 4U);
  QCOMPARE(pupil.session().set().level, 2);
  QCOMPARE(pupil.session().current().problem.seed, std::uint64_t{77});
}

void PracticeJourneysTest::aDamagedSetIsRefusedInWords() {
  Pupil pupil;
  pupil.files().open = pupil.inFolder(QStringLiteral("class.json"));
  save(pupil.files().open,
       R"({"format": "wardchalk.set", "version": 1, "topics": ["owls"], "level": 1, "count": 4, "seed": 7})");
  QVERIFY(pupil.push(QStringLiteral("open-set")));
  QCOMPARE(pupil.files().told.size(), 1);
  QVERIFY2(pupil.files().told[0].contains(QStringLiteral("owls")), qPrintable(pupil.files().told[0]));
  QVERIFY(pupil.isOn("plan-page"));
}

void PracticeJourneysTest::leavingInTheMiddleIsAskedAbout() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 2, 5));
  pupil.write(0, QStringLiteral("0.7"));
  pupil.window().close();
  QCOMPARE(pupil.files().asked, 1);
  QVERIFY(pupil.window().isVisible());
  pupil.files().may = true;
  pupil.window().close();
  QVERIFY(!pupil.window().isVisible());
}

void PracticeJourneysTest::aPreceptorMakesASet() {
  Pupil pupil;
  QVERIFY(pupil.push(QStringLiteral("make-set")));
  QVERIFY(pupil.isOn("set-page"));
  auto* page = pupil.window().findChild<QWidget*>(QStringLiteral("set-page"));
  auto* topic = page->findChild<QAbstractButton*>(QStringLiteral("topic:bsa"));
  topic->setFocus();
  pupil.press(Qt::Key_Space);
  QVERIFY(pupil.walkTo(QStringLiteral("set-title")));
  pupil.type(QStringLiteral("Week 3"));
  QVERIFY(pupil.walkTo(QStringLiteral("school")));
  pupil.press(Qt::Key_Down);
  pupil.files().save = pupil.inFolder(QStringLiteral("class.json"));
  QVERIFY(pupil.push(QStringLiteral("set-save")));
  const Result<PracticeSet> set = readSet(contentOf(pupil.files().save).toStdString());
  QVERIFY(set);
  QCOMPARE(set->title, std::string("Week 3"));
  QVERIFY(set->rules == exactRules());
  QVERIFY(set->topics == std::vector{Topic::bsa});
  for (const bool key : {false, true}) {
    pupil.files().pdf = pupil.inFolder(key ? QStringLiteral("key.pdf") : QStringLiteral("questions.pdf"));
    QVERIFY(pupil.push(key ? QStringLiteral("set-key") : QStringLiteral("set-questions")));
    const QStringList pages = test::pagesOfPdf(pupil.files().pdf);
    for (const QString& one : pages)
      QVERIFY2(one.contains(QStringLiteral("PRACTICE: invented medicines")), qPrintable(one));
    QVERIFY(pages[0].contains(QStringLiteral("Week 3")));
    QCOMPARE(pages[0].contains(QStringLiteral("Key")), key);
    QVERIFY(test::pdfInfo(pupil.files().pdf).contains(QStringLiteral("(A4)")));
  }
  const QSignalSpy papers(&pupil.window(), &PracticeWindow::paperChosen);
  QVERIFY(pupil.walkTo(QStringLiteral("set-paper")));
  pupil.press(Qt::Key_Down);
  QCOMPARE(papers.size(), 1);
  QCOMPARE(papers[0][0].value<PaperSize>(), PaperSize::letter);
  QVERIFY(pupil.push(QStringLiteral("set-key")));
  QVERIFY(test::pdfInfo(pupil.files().pdf).contains(QStringLiteral("(letter)")));
  QVERIFY(pupil.files().told.isEmpty());
  pupil.files().pdf = pupil.inFolder(QStringLiteral("nowhere/key.pdf"));
  QVERIFY(pupil.push(QStringLiteral("set-key")));
  QCOMPARE(pupil.files().told.size(), 1);
  QVERIFY(pupil.push(QStringLiteral("set-back")));
  QVERIFY(pupil.isOn("plan-page"));
}

void PracticeJourneysTest::timeIsHandedToTheSession() {
  Pupil pupil;
  QVERIFY(pupil.begin({QStringLiteral("bsa")}, 1, 5));
  const auto spent = [&] {
    pupil.enter();  // a check hands over the time
    return pupil.session().current().lines[0].seconds > 0;
  };
  QTRY_VERIFY_WITH_TIMEOUT(spent(), 10000);
}

WARDCHALK_QT_TEST(PracticeJourneysTest)

}  // namespace wardchalk::ui::practice_journeys_test

#include "practice_journeys_test.moc"
