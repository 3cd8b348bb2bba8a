#include "ui/working/amount_widget.h"

#include <QCheckBox>
#include <QComboBox>
#include <QSignalSpy>
#include <QTest>
#include <map>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "tests/ui/working/kept_answers.h"
#include "tests/ui/working/sample_cases.h"
#include "ui/working/amount_text.h"

namespace wardchalk::ui::test {

namespace {

struct Shown {
  explicit Shown(const char* name) : amount(nullptr), answers(amount) {
    show(sample(name));
    amount.resize(900, amount.heightAt(900));
    amount.show();
  }
  void show(const Worksheet& sheet) { amount.show(sheet, answers.follow(sheet)); }
  QString text() const { return amount.findChild<AmountText*>()->spoken(); }
  QList<QCheckBox*> ticks() const { return amount.findChildren<QCheckBox*>(); }
  /// Ticks one question as asked, of the pharmacist.
  void answer(qsizetype question) const {
    ticks().at(question)->setChecked(true);
    amount.findChildren<QComboBox*>().at(question)->setCurrentIndex(1);
  }
  void tickAll() const {
    for (qsizetype i = 0; i < ticks().size(); ++i) answer(i);
  }
  AmountWidget amount;
  KeptAnswers answers;
};

}  // namespace

class AmountWidgetTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void saysWhatToMeasure();
  void amountIsTheLargestAndDoseAtLeastHalfOfIt();
  void saysWhyThereIsNone_data();
  void saysWhyThereIsNone();
  void staysFoldedUntilEveryQuestionIsAnswered();
  void staysFoldedUntilItIsSaidWithWhom();
  void foldsAgainWhenATickIsTakenBack();
  void anyEditVoidsTheTicks();
  void showingTheSameCaseKeepsTheTicks();
  void voidTicksFoldsTheAmount();
  void anAnswerThatIsNotKeptUnfoldsNothing();
  void whatIsKeptAloneUnfoldsNothing();
  void tellsHowEachQuestionIsSettled();
  void eachQuestionSaysWhomItCanBePutTo();
  void questionsHaveAccessibleNames();
};

void AmountWidgetTest::saysWhatToMeasure() {
  const Shown shown("usual");
  QVERIFY(shown.amount.showsAmount());
  QVERIFY2(shown.text().startsWith(QStringLiteral("Measure 3.2 mL (80 mg) for one dose")),
           qPrintable(shown.text()));
  for (const char* part :
       {"Plover 25 mg in 1 mL", "oral, every 12 h", "5 mL oral syringe", "no rounding needed"})
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
                            << "No amount yet: say what is in hand";
}

void AmountWidgetTest::saysWhyThereIsNone() {
  QFETCH(QString, name);
  QFETCH(QString, says);
  const Shown shown(name.toLatin1().constData());
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY2(shown.text().startsWith(says), qPrintable(shown.text()));
  QVERIFY(shown.ticks().isEmpty());
}

void AmountWidgetTest::staysFoldedUntilEveryQuestionIsAnswered() {
  const Shown shown("ask");
  QCOMPARE(shown.ticks().size(), 2);
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY(!shown.text().contains(QStringLiteral("mL")));
  const QSignalSpy changed(&shown.amount, &AmountWidget::changed);
  shown.answer(0);
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY(!shown.text().contains(QStringLiteral("mL")));
  shown.answer(1);
  QVERIFY(shown.amount.showsAmount());
  QVERIFY(shown.text().contains(QStringLiteral("Measure 2.2 mL (55 mg)")));
  QCOMPARE(changed.size(), 4);
}

void AmountWidgetTest::staysFoldedUntilItIsSaidWithWhom() {
  const Shown shown("ask");
  shown.answer(0);
  shown.ticks().last()->setChecked(true);
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY(shown.text().contains(QStringLiteral("with whom")));
  shown.amount.findChildren<QComboBox*>().last()->setCurrentIndex(0);
  QVERIFY(shown.amount.showsAmount());
}

void AmountWidgetTest::foldsAgainWhenATickIsTakenBack() {
  const Shown shown("ask");
  shown.tickAll();
  shown.ticks().first()->setChecked(false);
  QVERIFY(!shown.amount.showsAmount());
}

void AmountWidgetTest::anyEditVoidsTheTicks() {
  Shown shown("ask");
  shown.tickAll();
  Case edited = sample("ask").given;
  QVERIFY(setEntry(edited, "child.sex", "female"));
  shown.show(workOut(edited, exactRules()));
  QVERIFY(!shown.amount.showsAmount());
  for (const QCheckBox* tick : shown.ticks()) QVERIFY(!tick->isChecked());
}

void AmountWidgetTest::showingTheSameCaseKeepsTheTicks() {
  Shown shown("ask");
  shown.tickAll();
  shown.show(sample("ask"));
  QVERIFY(shown.amount.showsAmount());
}

void AmountWidgetTest::voidTicksFoldsTheAmount() {
  Shown shown("ask");
  shown.tickAll();
  shown.amount.voidTicks();
  QVERIFY(!shown.amount.showsAmount());
}

/// A tick is what somebody says; whether it counts is not for the widget to decide.
void AmountWidgetTest::anAnswerThatIsNotKeptUnfoldsNothing() {
  Shown shown("ask");
  shown.answers.follow({});  // another sheet stands by now
  shown.tickAll();
  QVERIFY(!shown.amount.showsAmount());
  QVERIFY(!shown.amount.asked());
}

void AmountWidgetTest::whatIsKeptAloneUnfoldsNothing() {
  Shown shown("ask");
  Answers all;
  for (const FindingCode question : questionsOf(sample("ask"))) all.given[question] = Answer::pharmacist;
  shown.amount.showAnswers(all);
  QVERIFY(!shown.amount.showsAmount());
}

void AmountWidgetTest::tellsHowEachQuestionIsSettled() {
  const Shown shown("ask");
  std::map<FindingCode, std::optional<Answer>> told;
  connect(&shown.amount, &AmountWidget::answered, this,
          [&](FindingCode question, std::optional<Answer> how) { told[question] = how; });
  const std::vector<FindingCode> questions = questionsOf(sample("ask"));
  const std::vector wanted{Answer::prescriber, Answer::pharmacist, Answer::other};
  for (int whom = 0; whom < 3; ++whom) {
    shown.ticks().first()->setChecked(true);
    shown.amount.findChildren<QComboBox*>().first()->setCurrentIndex(whom);
    QCOMPARE(told.at(questions[0]), std::optional(wanted[static_cast<std::size_t>(whom)]));
    QCOMPARE(told.at(questions[1]), std::optional<Answer>());
  }
  shown.ticks().first()->setChecked(false);
  QCOMPARE(told.at(questions[0]), std::optional<Answer>());
}

void AmountWidgetTest::eachQuestionSaysWhomItCanBePutTo() {
  const Shown shown("ask");
  const auto boxes = shown.amount.findChildren<QComboBox*>();
  QCOMPARE(boxes.size(), shown.ticks().size());
  QStringList whom;
  for (int i = 0; i < boxes.first()->count(); ++i) whom << boxes.first()->itemText(i);
  QCOMPARE(whom, QStringList(
                     {QStringLiteral("prescriber"), QStringLiteral("pharmacist"), QStringLiteral("other")}));
  QCOMPARE(boxes.first()->currentIndex(), -1);
}

void AmountWidgetTest::questionsHaveAccessibleNames() {
  const Shown shown("ask");
  QVERIFY(shown.ticks().first()->accessibleName().contains(
      QStringLiteral("Too little by this reference: 55 mg")));
}

}  // namespace wardchalk::ui::test

QTEST_MAIN(wardchalk::ui::test::AmountWidgetTest)
#include "amount_widget_test.moc"
