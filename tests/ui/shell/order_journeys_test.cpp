#include <QApplication>
#include <QLocale>
#include <QTest>

#include "core/number/decimal_text.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "ui/form/field_edit.h"
#include "ui/form/form.h"
#include "ui/working/amount_text.h"
#include "ui/working/amount_widget.h"
#include "ui/working/flag_widget.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::order_journeys_test {

using test::choose;
using test::settlingBoxes;

namespace {

/// What is typed into the boxes of one field; a flag is ticked with a space.
struct Entry {
  const char* path;
  QStringList typed;
};

QStringList one(const char* text) { return {QString::fromUtf8(text)}; }

}  // namespace

/// Stories of the less usual orders, told by keyboard alone, in an English and in a German desktop.
class OrderJourneysTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void initTestCase_data();
  void init();
  void cleanup();

  void infusionRunsInMillilitresAndDrops();
  void infusionTooFastIsUnsafeUntilItIsSlower();
  void rateOrderGivesAFlow();
  void asNeededIsCountedAtMostFrequent();
  void ageBandAsksForTheAgeAndLeavesOutTheYounger();
  void implausibleWeightIsConfirmedAskedAboutAndThenMeasured();
  void aNewWindowIsEmpty();

 private:
  /// Walks with Enter and Shift+Enter to the first box of the field.
  bool goTo(const char* path);
  /// Enters each field wherever it stands, every field of the form being shown.
  void enterAll(const QList<Entry>& entries);
  [[nodiscard]] WorkingPane* pane() { return nurse_->window().findChild<WorkingPane*>(); }
  [[nodiscard]] QString flagText() { return pane()->flag()->spoken(); }
  [[nodiscard]] QString amountText() { return pane()->amount()->findChild<AmountText*>()->spoken(); }

  std::unique_ptr<Nurse> nurse_;
};

void OrderJourneysTest::initTestCase_data() {
  QTest::addColumn<QLocale>("locale");
  QTest::newRow("English") << QLocale(QLocale::English, QLocale::UnitedStates);
  QTest::newRow("German") << QLocale(QLocale::German, QLocale::Germany);
}

void OrderJourneysTest::init() {
  QFETCH_GLOBAL(QLocale, locale);
  QLocale::setDefault(locale);
  nurse_ = std::make_unique<Nurse>();
  nurse_->press(Qt::Key_F8);
}

void OrderJourneysTest::cleanup() { nurse_.reset(); }

bool OrderJourneysTest::goTo(const char* path) {
  const QString field = QString::fromUtf8(path) + QLatin1Char(':');
  auto* form = nurse_->window().findChild<Form*>();
  if (!form->field(QString::fromUtf8(path))->isStop()) {  // a tick is no stop of Enter, but one of Tab
    form->focusField(QString::fromUtf8(path));
    return nurse_->focused().startsWith(field);
  }
  nurse_->press(Qt::Key_F5);
  for (int steps = 0; steps < 200 && !nurse_->focused().startsWith(QStringLiteral("child.height:")); ++steps)
    nurse_->press(Qt::Key_Return, Qt::ShiftModifier);
  for (int steps = 0; steps < 200 && !nurse_->focused().startsWith(field); ++steps) nurse_->enter();
  return nurse_->focused().startsWith(field);
}

void OrderJourneysTest::enterAll(const QList<Entry>& entries) {
  for (const Entry& entry : entries) {
    QVERIFY2(goTo(entry.path), entry.path);
    nurse_->fill(entry.typed);
  }
}

/// 80 mg in 50 mL over 30 min: 50 mL ÷ 0.5 h = 100 mL/h; 50 mL × 20 drops ÷ 30 min = 33.3 drops/min.
void OrderJourneysTest::infusionRunsInMillilitresAndDrops() {
  enterAll({{"child.height", one("103 cm")},
            {"child.weight", one("17.2 kg")},
            {"order.medicine", one("Godwit")},
            {"order.route", one("intravenous")},
            {"order.dose", one("80 mg/dose")},
            {"order.schedule", one("every 12 h")},
            {"reference.high", one("120 mg/m2/dose")},
            {"reference.schedule", one("every 12 h")},
            {"reference.source", one("Bench list, p. 7")},
            {"stock.kind", one("liquid")},
            {"stock.strength", one("25 mg in 1 mL")},
            {"infusion.volume", one("50 mL")},
            {"infusion.over", one("30 min")},
            {"infusion.drop_factor", one("20 drop/mL")}});
  const Worksheet& sheet = nurse_->sheet();
  QCOMPARE(sheet.verdict, VerdictKind::safe);
  QVERIFY(sheet.rate && sheet.rate->mlPerHour && sheet.rate->dropsPerMinute);
  QCOMPARE(exactText(*sheet.rate->mlPerHour->measured), std::string("100"));
  QCOMPARE(exactText(*sheet.rate->dropsPerMinute->measured), std::string("33"));
  QVERIFY2(amountText().contains(QStringLiteral("100 mL/h, or 33 drops/min")), qPrintable(amountText()));
  QVERIFY2(amountText().contains(QStringLiteral("Measure 3.2 mL (80 mg)")), qPrintable(amountText()));
}

void OrderJourneysTest::infusionTooFastIsUnsafeUntilItIsSlower() {
  enterAll({{"child.weight", one("20 kg")},
            {"order.route", one("intravenous")},
            {"order.dose", one("100 mg/dose")},
            {"order.schedule", one("every 8 h")},
            {"reference.high", one("5 mg/kg/dose")},
            {"reference.schedule", one("every 8 h")},
            {"stock.kind", one("liquid")},
            {"stock.strength", one("50 mg in 1 mL")},
            {"infusion.volume", one("50 mL")},
            {"infusion.over", one("20 min")},
            {"reference.min_infusion_time", one("30 min")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::unsafe);
  QVERIFY2(flagText().contains(QStringLiteral("Too fast")), qPrintable(flagText()));
  QVERIFY(!nurse_->sheet().give);
  enterAll({{"infusion.over", one("30 min")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(nurse_->sheet().rate);
}

/// 5 mcg/kg/min × 15 kg = 75 mcg/min = 4.5 mg/h; 40 mg in 50 mL is 0.8 mg in 1 mL: 5.625 mL/h, set as 5.6.
void OrderJourneysTest::rateOrderGivesAFlow() {
  enterAll({{"child.weight", one("15 kg")},
            {"order.medicine", one("Godwit")},
            {"order.route", one("intravenous")},
            {"order.dose", one("5 mcg/kg/min")},
            {"order.schedule", one("continuous")},
            {"reference.high", one("10 mcg/kg/min")},
            {"reference.low", one("2 mcg/kg/min")},
            {"reference.source", one("Bench list, p. 9")},
            {"stock.kind", one("liquid")},
            {"stock.strength", one("40 mg in 50 mL")}});
  const Worksheet& sheet = nurse_->sheet();
  QCOMPARE(sheet.verdict, VerdictKind::safe);
  QCOMPARE(nurse_->line(QStringLiteral("order.dose")), QStringLiteral("5 mcg per kg per minute"));
  QVERIFY(sheet.rate && sheet.rate->mlPerHour);
  QCOMPARE(exactText(*sheet.rate->mlPerHour->measured), std::string("5.6"));
  QVERIFY2(amountText().contains(QStringLiteral("5.6 mL/h")), qPrintable(amountText()));
  enterAll({{"order.dose", one("10.1 mcg/kg/min")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::unsafe);
  QVERIFY(!nurse_->sheet().rate);
}

/// 15 mg/kg × 20 kg = 300 mg; 60 mg/kg × 20 kg = 1200 mg in 24 h. Every 4 h 280 mg would be 1680 mg; four
/// times it is 1120 mg.
void OrderJourneysTest::asNeededIsCountedAtMostFrequent() {
  enterAll({{"child.weight", one("20 kg")},
            {"order.medicine", one("Wren")},
            {"order.route", one("oral")},
            {"order.dose", one("280 mg/dose")},
            {"order.schedule", one("every 4 to 6 h")},
            {"order.as_needed", one(" ")},
            {"reference.high", one("15 mg/kg/dose")},
            {"reference.schedule", one("every 4 to 6 h")},
            {"reference.max_per_day", one("60 mg/kg/day")},
            {"reference.source", one("Bench list, p. 2")},
            {"stock.kind", one("liquid")},
            {"stock.strength", one("140 mg in 5 mL")}});
  QVERIFY(nurse_->sheet().given.order.asNeeded);
  QVERIFY(nurse_->sheet().finding(FindingCode::asNeededCountedAtMostFrequent));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::ask);  // how many in 24 h the order does not say: four fit
  QVERIFY(nurse_->sheet().finding(FindingCode::maxDosesOpen));
  enterAll({{"order.max_doses_per_day", one("4")}});
  QCOMPARE(exactText(nurse_->sheet().orderedDay->value), std::string("1120"));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY2(amountText().contains(QStringLiteral("Measure 10 mL (280 mg)")), qPrintable(amountText()));
}

/// √(88 × 12.5 ÷ 3600) = 0.5528, 0.55 m²; 120 mg/m² are 66 mg.
void OrderJourneysTest::ageBandAsksForTheAgeAndLeavesOutTheYounger() {
  enterAll({{"child.height", one("88 cm")},
            {"child.weight", one("12.5 kg")},
            {"order.route", one("oral")},
            {"order.dose", one("65 mg/dose")},
            {"order.schedule", one("every 12 h")},
            {"reference.high", one("120 mg/m2/dose")},
            {"reference.schedule", one("every 12 h")},
            {"reference.age_from", one("2 year")},
            {"stock.kind", one("liquid")},
            {"stock.strength", one("25 mg in 1 mL")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::undecided);
  QVERIFY2(flagText().startsWith(QStringLiteral("NO VERDICT: enter the age")), qPrintable(flagText()));
  QVERIFY2(amountText().contains(QStringLiteral("enter the age")), qPrintable(amountText()));
  enterAll({{"child.age", one("1 year 11 month")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::notCovered);
  QVERIFY2(flagText().contains(QStringLiteral("NOT COVERED by this reference")), qPrintable(flagText()));
  QVERIFY(!nurse_->sheet().give);
  enterAll({{"child.age", one("2 year 0 month")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(amountText().contains(QStringLiteral("Measure 2.6 mL (65 mg)")));
}

/// 172 kg at four years, a point lost: nothing is judged until the size is confirmed; then it is a question,
/// and the amount comes when it is said how the question was settled.
void OrderJourneysTest::implausibleWeightIsConfirmedAskedAboutAndThenMeasured() {
  enterAll({{"child.height", one("103 cm")},
            {"child.weight", one("172 kg")},
            {"child.age", one("4 year 2 month")},
            {"order.route", one("oral")},
            {"order.dose", one("250 mg/dose")},
            {"order.schedule", one("every 12 h")},
            {"reference.high", one("1.5 mg/kg/dose")},
            {"reference.schedule", one("every 12 h")},
            {"stock.kind", one("liquid")},
            {"stock.strength", one("25 mg in 1 mL")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::undecided);
  QVERIFY(nurse_->sheet().finding(FindingCode::sizeImplausible));
  QVERIFY2(flagText().contains(QStringLiteral("hardly possible")), qPrintable(flagText()));
  QVERIFY2(flagText().contains(QStringLiteral("ten times too much")), qPrintable(flagText()));

  enterAll({{"child.size_confirmed", one(" ")}});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::ask);
  QVERIFY(!pane()->amount()->showsAmount());
  nurse_->press(Qt::Key_F7);
  for (int tabs = 0; tabs < 20 && nurse_->focused() != QStringLiteral("settled_0"); ++tabs)
    nurse_->press(Qt::Key_Tab);
  QCOMPARE(nurse_->focused(), QStringLiteral("settled_0"));
  nurse_->press(Qt::Key_W);  // "weighed again": no letter chooses
  QVERIFY(!pane()->amount()->showsAmount());
  choose(settlingBoxes(nurse_->window()).first(), 1);
  QVERIFY(pane()->amount()->showsAmount());
  QVERIFY2(amountText().contains(QStringLiteral("Measure 10 mL (250 mg)")), qPrintable(amountText()));

  enterAll({{"order.dose", one("249 mg/dose")}});  // any change opens the question again
  QVERIFY(!pane()->amount()->showsAmount());
}

/// The next nurse at the same desk finds nothing of the last child.
void OrderJourneysTest::aNewWindowIsEmpty() {
  enterAll({{"child.height", one("103 cm")}, {"child.weight", one("17.2 kg")}});
  Settings settings(nurse_->settingsFile());
  MainWindow next(exactRules(), settings, nurse_->dialogs());
  next.show();
  QVERIFY(next.editor().draft().isEmpty());
  QCOMPARE(next.worksheet().given, Case{});
}

WARDCHALK_QT_TEST(OrderJourneysTest)

}  // namespace wardchalk::ui::order_journeys_test

#include "order_journeys_test.moc"
