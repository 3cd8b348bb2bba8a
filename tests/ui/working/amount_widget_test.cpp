#include "ui/working/amount_widget.h"

#include <QComboBox>
#include <QSignalSpy>
#include <QTest>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "tests/ui/working/kept_answers.h"
#include "tests/ui/working/sample_cases.h"
#include "ui/working/amount_text.h"

namespace wardchalk::ui::test::amount_widget_test {

namespace {

struct Shown {
  explicit Shown(const char* name) : amount(nullptr), answers(amount, amount) {
    answers.follow(sample(name));
    amount.resize(900, amount.heightAt(900));
    amount.show();
  }
  QString text() const { return amount.findChild<AmountText*>()->spoken(); }
  QList<QComboBox*> boxes() const { return settlingBoxes(amount); }
  AmountWidget amount;
  KeptAnswers<AmountWidget> answers;
};

}  // namespace

class AmountWidgetTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void saysWhatToMeasure();
  void amountIsTheLargestAndDoseAtLeastHalfOfIt();
  void saysWhyThereIsNone_data();
  void saysWhyThereIsNone();
  void staysFoldedUntilEveryQuestionIsSettled();
  void foldsAgainWhenAnAnswerIsTakenBack();
  void anyEditOpensTheQuestions();
  void showingTheSameCaseKeepsTheAnswers();
  void anAnswerThatIsNotKeptUnfoldsNothing();
  void tellsHowEachQuestionIsSettled();
  void eachQuestionOffersWhatSettlesIt();
  void noLetterAndNoArrowSettles();
  void questionsHaveAccessibleNames();
};

void AmountWidgetTest::saysWhatToMeasure() {
  const Shown shown("usual");
  QVERIFY(shown.amount.showsAmount());
  QVERIFY2(shown.text().startsWith(QStringLiteral("Measure 3.2 mL (80 mg) for one dose")),
           qPrintable(shown.text()));
  for (const char* part :
       {"Plover 25 mg in 1 mL", "by mouth every 12 hours", "5 mL oral syringe", "no rounding needed"})
    QVERIFY2(shown.text().contains(QString::fromLatin1(part)), part);
}

void AmountWidgetTest::amountIsTheLargestAndDoseAtLeastHalfOfIt() {
  const Shown shown("usual");
  int amount = 0;
  int dose = 0;
  int most = 0;
  for (const Run& run : shown.amount.findChild<AmountText*>()->drawing().runs) {
    most = qMax(most, run.type.pixels);
    if (run.text.contains(QStringLiteral("3.2"))) amount = run.type.pixels;
    if (run.text.contains(QStringLiteral("80"))) dose = run.type.pixels;
  }
  QCOMPARE(amount, most);
  QVERIFY(2 * dose >= amount);
}

void AmountWidgetTest::saysWhyThereIsNone_data() {
  QTest::addColumn<QString>("name");
  QTest::addColumn<QString>("says");
  QTest::newRow("unsafe") << "unsafe"
                          << "No amount: the order is not safe by this reference.";
  QTest::newRow("not covered") << "not covered"
                               << "No amount: this reference does not cover the order.";
  QTest::newRow("undecided") << "undecided"
                             << "No amount yet: enter the height";
  QTest::newRow("no stock") << "rate"
                            << "No amount yet: say what is on hand";
}

void AmountWidgetTest::saysWhyThereIsNone() {
  QFETCH(QString, name);
  QFETCH(QString, says);
  const Shown shown(name.toLatin1().constData());
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY2(shown.text().startsWith(says), qPrintable(shown.text()));
  QVERIFY(shown.boxes().isEmpty());
}

void AmountWidgetTest::staysFoldedUntilEveryQuestionIsSettled() {
  const Shown shown("ask");
  QCOMPARE(shown.boxes().size(), 2);
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY(!shown.text().contains(QStringLiteral("mL")));
  choose(shown.boxes().first(), 1);
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY(!shown.text().contains(QStringLiteral("mL")));
  choose(shown.boxes().last(), 2);
  QVERIFY(shown.amount.showsAmount());
  QVERIFY(shown.text().contains(QStringLiteral("Measure 2.2 mL (55 mg)")));
}

void AmountWidgetTest::foldsAgainWhenAnAnswerIsTakenBack() {
  const Shown shown("ask");
  settleAll(shown.amount);
  QVERIFY(shown.amount.showsAmount());
  choose(shown.boxes().first(), 0);
  QVERIFY(!shown.amount.showsAmount());
}

void AmountWidgetTest::anyEditOpensTheQuestions() {
  Shown shown("ask");
  settleAll(shown.amount);
  Case edited = sample("ask").given;
  QVERIFY(setEntry(edited, "child.sex", "female"));
  shown.answers.follow(workOut(edited, exactRules()));
  QVERIFY(!shown.amount.showsAmount());
  for (const QComboBox* box : shown.boxes()) QCOMPARE(box->currentIndex(), 0);
}

void AmountWidgetTest::showingTheSameCaseKeepsTheAnswers() {
  Shown shown("ask");
  settleAll(shown.amount);
  shown.answers.follow(sample("ask"));
  QVERIFY(shown.amount.showsAmount());
}

/// A choice is what somebody says; whether it counts is not for the widget to decide.
void AmountWidgetTest::anAnswerThatIsNotKeptUnfoldsNothing() {
  Shown shown("ask");
  shown.answers.forget({});  // another sheet stands by now
  settleAll(shown.amount);
  QVERIFY(!shown.amount.showsAmount());
  for (const QComboBox* box : shown.boxes()) QCOMPARE(box->currentIndex(), 0);
}

void AmountWidgetTest::tellsHowEachQuestionIsSettled() {
  const Shown shown("ask");
  const std::vector<FindingCode> questions = questionsOf(sample("ask"));
  const std::vector<Answer> ways = whatSettles(questions[0]);
  QCOMPARE(ways.size(), 4U);
  for (int place = 1; place <= 4; ++place) {
    choose(shown.boxes().first(), place);
    QCOMPARE(shown.answers.answers().given.at(questions[0]), ways[static_cast<std::size_t>(place - 1)]);
    QVERIFY(!shown.answers.answers().isSettled(questions[1]));
  }
}

void AmountWidgetTest::eachQuestionOffersWhatSettlesIt() {
  const Shown shown("ask");
  QStringList ways;
  for (int i = 0; i < shown.boxes().first()->count(); ++i) ways << shown.boxes().first()->itemText(i);
  QCOMPARE(ways, QStringList({QStringLiteral("settled how?"), QStringLiteral("asked the prescriber"),
                              QStringLiteral("asked the pharmacist"), QStringLiteral("asked a senior nurse"),
                              QStringLiteral("read in the chart")}));
  QCOMPARE(shown.boxes().first()->currentIndex(), 0);
}

void AmountWidgetTest::noLetterAndNoArrowSettles() {
  const Shown shown("ask");
  QComboBox* box = shown.boxes().first();
  for (const int key : {Qt::Key_A, Qt::Key_R, Qt::Key_End, Qt::Key_PageDown, Qt::Key_Right}) {
    QTest::keyClick(box, static_cast<Qt::Key>(key));
    QCOMPARE(box->currentIndex(), 0);
  }
  QTest::keyClick(box, Qt::Key_Down);  // opens the list, and chooses nothing
  QTRY_VERIFY(box->view()->isVisible());
  QTest::keyClick(box->view(), Qt::Key_A);
  QCOMPARE(box->view()->currentIndex().row(), 0);
  QTest::keyClick(box->view(), Qt::Key_Escape);
  QTRY_VERIFY(!box->view()->isVisible());
  QCOMPARE(box->currentIndex(), 0);
  QVERIFY(shown.answers.answers().given.empty());
}

void AmountWidgetTest::questionsHaveAccessibleNames() {
  const Shown shown("ask");
  QVERIFY(shown.boxes().first()->accessibleName().contains(
      QStringLiteral("How was it settled: Too little by this reference: 55 mg")));
}

WARDCHALK_QT_TEST(AmountWidgetTest)

}  // namespace wardchalk::ui::test::amount_widget_test

#include "amount_widget_test.moc"
