#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "core/medicine/paths.h"
#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "ui/record/reference_picker.h"
#include "ui/working/amount_text.h"
#include "ui/working/amount_widget.h"
#include "ui/working/flag_widget.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::other_medicine_test {

using test::settlingBoxes;

namespace {

QString words(const char* text) { return QString::fromUtf8(text); }

}  // namespace

/// By keyboard alone: no way leads to SAFE by another medicine's reference, and none of an order as needed to
/// an amount without how many may be given.
class OtherMedicineTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void H43_changingTheMedicineAfterPicking();
  void H43_pickingBeforeTyping();
  void H43_emptyingTheOrderedMedicine();
  void H43_whatTheListKeepsCannotBeTypedOver();
  void H43_leavingTheEntryTakesItsFiguresWithIt();
  void H43_aReferenceThatWasTypedNamesItsMedicine();
  void H47_anOpenOrderHasNoAmountUntilTheMostDosesAreEntered();
  void H47_asNeededAndTheLowerOfBothStandWithTheAmount();

 private:
  /// Opens the ward's list by key and takes what is found for `part`.
  [[nodiscard]] bool take(const QString& part);
  [[nodiscard]] bool goTo(const char* path);
  /// Goes to a field and puts this in the place of what it holds.
  [[nodiscard]] bool write(const char* path, const QString& text);
  [[nodiscard]] WorkingPane* pane() { return nurse_->window().findChild<WorkingPane*>(); }
  [[nodiscard]] QString flagText() { return pane()->flag()->spoken(); }
  [[nodiscard]] QString amountText() { return pane()->amount()->findChild<AmountText*>()->spoken(); }
  [[nodiscard]] QString shown(const char* path) {
    auto* line = nurse_->window().findChild<QLineEdit*>(words(path) + words(":text"));
    return line ? line->text() : QString();
  }
  [[nodiscard]] std::string entry(std::string_view path) {
    return nurse_->window().editor().draft().text(path);
  }
  void fillUsual(const QString& medicine);

  std::unique_ptr<Nurse> nurse_;
};

void OtherMedicineTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->press(Qt::Key_F8);
}
void OtherMedicineTest::cleanup() { nurse_.reset(); }

bool OtherMedicineTest::goTo(const char* path) {
  const QString field = words(path) + u':';
  nurse_->press(Qt::Key_F5);
  for (int steps = 0; steps < 200 && !nurse_->focused().startsWith(words("child.height:")); ++steps)
    nurse_->press(Qt::Key_Return, Qt::ShiftModifier);
  for (int steps = 0; steps < 200 && !nurse_->focused().startsWith(field); ++steps) nurse_->enter();
  return nurse_->focused().startsWith(field);
}

bool OtherMedicineTest::write(const char* path, const QString& text) {
  if (!goTo(path)) return false;
  nurse_->press(Qt::Key_A, Qt::ControlModifier);
  nurse_->press(Qt::Key_Delete);
  nurse_->type(text);
  nurse_->enter();
  return true;
}

bool OtherMedicineTest::take(const QString& part) {
  if (!nurse_->goBack()) return false;
  nurse_->dialogs().chosen << QStringList{
      QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/demo/reference_list.json")};
  QTest::keyClick(&nurse_->window(), Qt::Key_R, Qt::ControlModifier);
  auto* picker = nurse_->window().findChild<ReferencePicker*>();
  if (!picker || !hasKeyboard(picker)) return false;
  if (picker->findChild<QPushButton*>(words("open-list"))->isVisible() && nurse_->window().isVisible())
    picker->findChild<QPushButton*>(words("open-list"))->click();
  picker->search(part);
  nurse_->enter();
  const bool closed = QTest::qWaitFor([this] { return !nurse_->window().findChild<ReferencePicker*>(); });
  return closed && nurse_->goBack();
}

void OtherMedicineTest::fillUsual(const QString& medicine) {
  QVERIFY(write("child.height", words("103 cm")));
  QVERIFY(write("child.weight", words("17.2 kg")));
  QVERIFY(write("child.age", words("4 year")));
  QVERIFY(write("order.medicine", medicine));
  QVERIFY(write("order.dose", words("80 mg/dose")));
  QVERIFY(write("order.schedule", words("every 12 h")));
  QVERIFY(write("order.route", words("oral")));
  QVERIFY(write("stock.kind", words("liquid")));
  QVERIFY(write("stock.strength", words("25 mg in 1 mL")));
}

void OtherMedicineTest::H43_changingTheMedicineAfterPicking() {
  fillUsual(words("Plover"));
  QVERIFY(take(words("plover oral")));
  QCOMPARE(entry(path::referenceMedicine), std::string("Plover"));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY2(amountText().contains(words("3.2 mL")), qPrintable(amountText()));
  for (const char* other : {"Wren", "Plover2", "Plove", "Plover XR"}) {
    QVERIFY(write("order.medicine", words(other)));
    QCOMPARE(nurse_->sheet().because(), std::string_view("not-covered-medicine"));
    QVERIFY2(flagText().contains(words("NOT COVERED")) &&
                 flagText().contains(words("this reference is for Plover")),
             qPrintable(flagText()));
    QVERIFY2(!amountText().contains(words("mL")), qPrintable(amountText()));
  }
  QVERIFY(write("order.medicine", words("  PLÓVER ")));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
}

void OtherMedicineTest::H43_pickingBeforeTyping() {
  fillUsual(QString());
  QVERIFY(take(words("plover oral")));
  QCOMPARE(nurse_->sheet().because(), std::string_view("order.medicine"));
  QVERIFY2(flagText().contains(words("enter the medicine ordered")), qPrintable(flagText()));
  QVERIFY(write("order.medicine", words("Wren")));
  QCOMPARE(nurse_->sheet().because(), std::string_view("not-covered-medicine"));
  QVERIFY(!nurse_->sheet().give);
}

void OtherMedicineTest::H43_emptyingTheOrderedMedicine() {
  fillUsual(words("Plover"));
  QVERIFY(take(words("plover oral")));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  for (const char* nothing : {"", "  "}) {
    QVERIFY(write("order.medicine", words(nothing)));
    QCOMPARE(nurse_->sheet().verdict, VerdictKind::undecided);
    QCOMPARE(nurse_->sheet().because(), std::string_view("order.medicine"));
    QVERIFY(!nurse_->sheet().give);
  }
}

void OtherMedicineTest::H43_whatTheListKeepsCannotBeTypedOver() {
  fillUsual(words("Wren"));
  QVERIFY(write("order.medicine", QString()));
  QVERIFY(take(words("plover oral")));
  const std::string source = entry(path::source);
  for (const char* path : {"reference.medicine", "reference.source", "reference.also_called"}) {
    const std::string before = entry(path);
    const QString text = shown(path);
    for (const char* typed : {"Wren", ""}) {
      QVERIFY2(write(path, words(typed)), path);
      QCOMPARE(entry(path), before);
      QCOMPARE(shown(path), text);
    }
  }
  QCOMPARE(entry(path::source), source);
  QVERIFY2(nurse_->line(words("reference.medicine")).startsWith(words("from the ward's list")),
           qPrintable(nurse_->line(words("reference.medicine"))));
  QVERIFY(write("order.medicine", words("Wren")));
  QCOMPARE(nurse_->sheet().because(), std::string_view("not-covered-medicine"));
}

void OtherMedicineTest::H43_leavingTheEntryTakesItsFiguresWithIt() {
  fillUsual(words("Plover"));
  QVERIFY(take(words("plover oral")));
  nurse_->press(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
  for (const WrittenEntry& one : nurse_->window().editor().draft().entries())
    QVERIFY2(!one.path.starts_with("reference."), one.path.c_str());
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::undecided);
  QVERIFY(write("reference.medicine", words("Wren")));
  QCOMPARE(entry(path::referenceMedicine), std::string("Wren"));
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(entry(path::referenceMedicine), std::string("Plover"));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
}

void OtherMedicineTest::H43_aReferenceThatWasTypedNamesItsMedicine() {
  fillUsual(words("Plover"));
  QVERIFY(write("reference.high", words("120 mg/m2/dose")));
  QVERIFY(write("reference.schedule", words("every 12 h")));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(write("reference.medicine", words("Heron")));
  QCOMPARE(nurse_->sheet().because(), std::string_view("not-covered-medicine"));
  QVERIFY(write("reference.also_called", words("Brand; plover")));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(write("reference.also_called", words("Brand")));
  QCOMPARE(nurse_->sheet().because(), std::string_view("not-covered-medicine"));
}

/// 240 mg of 1,032 mg in 24 h: four fit, and the order would give six.
void OtherMedicineTest::H47_anOpenOrderHasNoAmountUntilTheMostDosesAreEntered() {
  fillUsual(words("Dunlin"));
  QVERIFY(write("order.dose", words("240 mg/dose")));
  QVERIFY(write("order.schedule", words("every 4 to 6 h prn")));
  QVERIFY(write("stock.strength", words("120 mg in 5 mL")));
  QVERIFY(take(words("dunlin oral")));
  QCOMPARE(nurse_->sheet().because(), std::string_view("max-doses-open"));
  QVERIFY2(flagText().contains(words("at most 4 fit")), qPrintable(flagText()));
  QVERIFY2(amountText().contains(words("enter that number")), qPrintable(amountText()));
  const QString told =
      test::firstFound(test::everythingSaid(), {words("Measure 10"), words("10 mL oral syringe")});
  QVERIFY2(told.isEmpty(), qPrintable(told));
  for (const QComboBox* box : settlingBoxes(*pane()->amount())) QCOMPARE(box->count(), 1);
  QVERIFY(write("order.max_doses_per_day", words("5")));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::unsafe);
  QVERIFY(write("order.max_doses_per_day", words("4")));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY2(amountText().contains(words("10 mL (240 mg)")), qPrintable(amountText()));
}

void OtherMedicineTest::H47_asNeededAndTheLowerOfBothStandWithTheAmount() {
  fillUsual(words("Plover"));
  QVERIFY(write("reference.high", words("120 mg/m2/dose")));
  QVERIFY(write("reference.max_doses_per_day", words("4")));
  QVERIFY2(amountText().contains(words("by mouth every 12 hours, no more than 4 doses in 24 h")),
           qPrintable(amountText()));
  QVERIFY(write("order.schedule", words("every 12 h as needed")));
  QVERIFY(write("order.max_doses_per_day", words("2")));
  QVERIFY2(amountText().contains(words("by mouth every 12 hours, as needed, no more than 2 doses in 24 h")),
           qPrintable(amountText()));
}

WARDCHALK_QT_TEST(OtherMedicineTest)

}  // namespace wardchalk::ui::other_medicine_test

#include "other_medicine_test.moc"
