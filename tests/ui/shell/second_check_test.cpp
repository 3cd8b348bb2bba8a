#include <QAbstractButton>
#include <QAction>
#include <QClipboard>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/form/form.h"
#include "ui/paper/sheet_preview.h"
#include "ui/shell/notice_bar.h"

namespace wardchalk::ui::second_check_test {

using test::everythingSaid;
using test::firstFound;
using test::pagesOfPdf;
using test::unspaced;
using test::usualCase;
using test::weightPlace;

/// A second person checks alone, by keyboard.
class SecondCheckTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void showsTheSecondPersonNothingOfTheFirst();
  void onAnEmptyFormThereIsNothingToCheck();
  void oneDifferentWeightAndThenEqual();
  void sameEntriesAreTheSameResult();
  void aFirstEntryMayBeCorrectedToo();
  void anEntryThatCannotBeReadIsLedTo();
  void leavingBringsTheFirstBackAndRecordsNothing();
  void stoppingAsksBeforeTheSecondEntriesAreLost();
  void comparingTooEarlyAsksAndIsRecorded();
  void recordingTakesATick();
  void aDisagreementWithholdsTheAmount();
  void aListThatRequiresItWithholdsTheAmount();
  void theListIsOfferedToTheSecondPerson();
  void aRowOfSeveralCasesIsNotOpenedMeanwhile();
  void aFieldThatCannotBeReadIsNamedBeforeTheStart();
  void theFileIsTheFirstPersons();
  void anyEditVoidsTheRecord();
  void otherRulesVoidTheRecord();
  void otherMinutesDoNotVoidTheRecord();
  void correctingBeginsWhereTheyDiffer();
  void whatAgreesAtLastSaysHowItIsSettled();
  void newChildKeepsNothingOfEither();
  void theCaseCannotBeSavedOrPrintedMeanwhile();
  void everyRowIsReadAloud();

 private:
  void fillFirst() {
    nurse_->fill(usualCase());
    QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  }
  void fillAgain(const QString& weight) {
    QStringList again = usualCase();
    again[weightPlace] = weight;
    nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
    nurse_->fill(again);
  }
  void begin() { nurse_->press(Qt::Key_F9); }
  void compare() { nurse_->press(Qt::Key_F9, Qt::ControlModifier); }
  void push(const char* button) {
    auto* one = nurse_->window().findChild<QAbstractButton*>(QLatin1String(button));
    QVERIFY2(one && one->isVisible(), button);
    one->setFocus(Qt::TabFocusReason);
    QTest::keyClick(one, Qt::Key_Space);
  }
  void record() {
    push("second-alone");
    push("second-finish");
  }
  QTableWidget* table() { return nurse_->window().findChild<QTableWidget*>(QStringLiteral("second-table")); }
  QString summary() { return nurse_->window().findChild<QLabel*>(QStringLiteral("second-summary"))->text(); }
  QString bar() { return nurse_->window().findChild<QLabel*>(QStringLiteral("second-words"))->text(); }
  QString notice(const char* name) {
    return nurse_->window().findChild<NoticeBar*>(QLatin1String(name))->said();
  }
  QStringList rowOf(const QString& what) {
    for (int row = 0; row < table()->rowCount(); ++row) {
      if (!table()->item(row, 1) || table()->item(row, 1)->text() != what) continue;
      QStringList cells;
      for (int i = 0; i < 4; ++i) cells << table()->item(row, i)->text().replace(QChar::Nbsp, u' ');
      return cells;
    }
    return {};
  }
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  QString printedSheet() {
    nurse_->dialogs().pdf = nurse_->folder() + QStringLiteral("/sheet.pdf");
    action("sheet-pdf")->trigger();
    return unspaced(pagesOfPdf(nurse_->dialogs().pdf).join(QString()));
  }

  std::unique_ptr<Nurse> nurse_;
};

void SecondCheckTest::init() {
  QGuiApplication::clipboard()->clear();
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
}

void SecondCheckTest::showsTheSecondPersonNothingOfTheFirst() {
  fillFirst();
  QVERIFY(!firstFound(everythingSaid(), test::tellTale()).isEmpty());  // the scan finds what is there
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/Plover.json");
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  action("copy-working")->trigger();
  action("board")->trigger();
  action("sheet-preview")->trigger();
  QVERIFY(nurse_->window().findChild<Board*>() && nurse_->window().findChild<SheetPreview*>());
  nurse_->window().activateWindow();
  action("second-check-begin")->trigger();
  QTRY_VERIFY(!nurse_->window().findChild<Board*>() && !nurse_->window().findChild<SheetPreview*>());
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
  QVERIFY(!action("undo")->isEnabled());
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
  QVERIFY(notice("second-notice").contains(QStringLiteral("hidden")));
  QVERIFY(nurse_->window().windowTitle().contains(QStringLiteral("second check")));
}

void SecondCheckTest::onAnEmptyFormThereIsNothingToCheck() {
  begin();
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  QVERIFY(notice("second-notice").isEmpty());
}

void SecondCheckTest::oneDifferentWeightAndThenEqual() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("12.7 kg"));
  compare();
  QVERIFY(table()->isVisible());
  QCOMPARE(rowOf(QStringLiteral("Child: Weight")),
           QStringList({QStringLiteral("≠ DIFFERS"), QStringLiteral("Child: Weight"),
                        QStringLiteral("17.2 kg"), QStringLiteral("12.7 kg")}));
  QVERIFY(rowOf(QStringLiteral("safe or maximum dose"))[0].startsWith(u'≠'));
  QVERIFY(rowOf(QStringLiteral("ordered per dose"))[0].startsWith(u'='));
  QVERIFY(rowOf(QStringLiteral("Verdict"))[3].contains(QStringLiteral("UNSAFE")));
  QVERIFY(summary().contains(QStringLiteral("differ")));
  push("second-correct-second");
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("17200 g")});
  compare();
  QCOMPARE(rowOf(QStringLiteral("Child: Weight"))[0], QStringLiteral("= same value, written differently"));
  QVERIFY2(summary().startsWith(QStringLiteral("Same result")), qPrintable(summary()));
  record();
  QCOMPARE(nurse_->window().editor().draft().text("child.weight"), "17.2 kg");
  QVERIFY2(bar().contains(QStringLiteral("differed at first in Weight")), qPrintable(bar()));
  QVERIFY(bar().contains(QStringLiteral("same result after both looked at the papers")));
  QVERIFY(printedSheet().contains(QStringLiteral("Secondcheck:differedatfirstinWeight")));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
}

void SecondCheckTest::sameEntriesAreTheSameResult() {
  fillFirst();
  QVERIFY(printedSheet().contains(QStringLiteral("Secondcheck:notdone")));
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  record();
  QVERIFY(bar().contains(QStringLiteral("done independently, same result (")));
  const QString sheet = printedSheet();
  QVERIFY(sheet.contains(QStringLiteral("Secondcheck:doneindependently,sameresult(")));
  QVERIFY(!sheet.contains(QStringLiteral("notdone")));
}

void SecondCheckTest::aFirstEntryMayBeCorrectedToo() {
  nurse_->fill(usualCase());
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("27.1 kg")});
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  push("second-correct-first");
  QVERIFY(notice("second-notice").contains(QStringLiteral("FIRST")));
  QCOMPARE(nurse_->window().editor().draft().text("child.weight"), "27.1 kg");
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("17.2 kg")});
  compare();
  QVERIFY(summary().startsWith(QStringLiteral("Same result")));
  record();
  QCOMPARE(nurse_->window().editor().draft().text("child.weight"), "17.2 kg");
  QVERIFY(nurse_->window().isWindowModified());
}

void SecondCheckTest::anEntryThatCannotBeReadIsLedTo() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("17,2 kg"));
  compare();
  QVERIFY(!table());
  QCOMPARE(nurse_->focused(), QStringLiteral("child.weight:text"));
}

void SecondCheckTest::leavingBringsTheFirstBackAndRecordsNothing() {
  fillFirst();
  const std::vector<WrittenEntry> before = nurse_->window().editor().draft().entries();
  begin();
  nurse_->fill({QStringLiteral("99 cm")});
  nurse_->dialogs().goingOn = true;
  nurse_->press(Qt::Key_F9, Qt::ShiftModifier);
  QCOMPARE(nurse_->window().editor().draft().entries(), before);
  QVERIFY(nurse_->window().isWindowModified());
  QVERIFY(bar().contains(QStringLiteral("not done")));
  QCOMPARE(firstFound(everythingSaid(), {QStringLiteral("99 cm")}), QString());
}

void SecondCheckTest::stoppingAsksBeforeTheSecondEntriesAreLost() {
  fillFirst();
  begin();
  nurse_->fill({QStringLiteral("99 cm")});
  nurse_->press(Qt::Key_F9, Qt::ShiftModifier);
  QCOMPARE(nurse_->dialogs().goOns.size(), 1);
  QVERIFY(nurse_->dialogs().goOns[0].text.contains(QStringLiteral("is lost")));
  QCOMPARE(nurse_->window().editor().draft().text("child.height"), "99 cm");
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
}

/// Who sees the first person's work before the own is done has not worked alone, whatever comes of it.
void SecondCheckTest::comparingTooEarlyAsksAndIsRecorded() {
  fillFirst();
  begin();
  QStringList part = usualCase();
  part[weightPlace].clear();
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
  nurse_->fill(part);
  compare();
  QCOMPARE(nurse_->dialogs().goOns.size(), 1);
  QVERIFY2(nurse_->dialogs().goOns[0].text.contains(QStringLiteral("enter the weight")),
           qPrintable(nurse_->dialogs().goOns[0].text));
  QVERIFY(!table());
  nurse_->dialogs().goingOn = true;
  compare();
  QVERIFY(table() && table()->isVisible());
  push("second-correct-second");
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("17.2 kg")});
  compare();
  QCOMPARE(nurse_->dialogs().goOns.size(), 2);  // the first comparison is the one that counts
  QVERIFY(!nurse_->window().findChild<QWidget*>(QStringLiteral("second-alone"))->isVisible());
  push("second-finish");
  QVERIFY2(bar().contains(QStringLiteral("not done independently")), qPrintable(bar()));
}

void SecondCheckTest::recordingTakesATick() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  auto* finish = nurse_->window().findChild<QPushButton*>(QStringLiteral("second-finish"));
  QVERIFY(!finish->isEnabled());
  push("second-alone");
  QVERIFY(finish->isEnabled());
}

/// Nothing is prepared from a case about which two people disagree: neither flag nor sheet let it.
void SecondCheckTest::aDisagreementWithholdsTheAmount() {
  fillFirst();
  const QString amount = QStringLiteral("3.2 mL");
  QVERIFY(!firstFound(everythingSaid(), {amount}).isEmpty());
  begin();
  fillAgain(QStringLiteral("12.7 kg"));
  compare();
  record();
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::ask);
  QCOMPARE(nurse_->sheet().because(), std::string_view("second-differs"));
  QCOMPARE(firstFound(everythingSaid(), {amount, QStringLiteral("SAFE")}), QString());
  QVERIFY2(bar().contains(QStringLiteral("Entries not the same: Weight (")), qPrintable(bar()));
  const QString sheet = printedSheet();
  QVERIFY(sheet.contains(QStringLiteral("Secondcheck:DIFFERS.First:weightinkg17.2kg.Second:12.7kg.")));
  QVERIFY(sheet.contains(QStringLiteral("Donotprepareuntilitissettled.")));
  QVERIFY(!sheet.contains(QStringLiteral("3.2mL")) && !sheet.contains(QStringLiteral("SAFE")));
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("17.3 kg")});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);  // another case, of which nobody has said anything
}

void SecondCheckTest::theListIsOfferedToTheSecondPerson() {
  fillFirst();
  begin();
  QVERIFY(action("choose-reference")->isEnabled());
  QVERIFY(nurse_->window().findChild<QWidget*>(QStringLiteral("from-list"))->isVisible());
}

void SecondCheckTest::aRowOfSeveralCasesIsNotOpenedMeanwhile() {
  fillFirst();
  begin();
  nurse_->fill({QStringLiteral("99 cm")});
  QVERIFY(!nurse_->window().openRow({{"child.weight", "20 kg"}}));
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  QVERIFY(nurse_->dialogs().told[0].contains(QStringLiteral("A second check is under way")));
  QCOMPARE(nurse_->window().editor().draft().text("child.height"), "99 cm");
  QCOMPARE(firstFound(everythingSaid(), test::tellTale()), QString());
  QVERIFY(!action("several-cases")->isEnabled() && !action("next-case")->isEnabled());
}

void SecondCheckTest::aFieldThatCannotBeReadIsNamedBeforeTheStart() {
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17,2 kg")});
  begin();
  QCOMPARE(nurse_->dialogs().told,
           QStringList(QStringLiteral("The second check has not begun: Weight cannot be read yet.")));
  QVERIFY(notice("second-notice").isEmpty());
  QCOMPARE(nurse_->focused(), QStringLiteral("child.weight:text"));
}

void SecondCheckTest::theFileIsTheFirstPersons() {
  fillFirst();
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/case.json");
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  begin();
  fillAgain(QStringLiteral("12.7 kg"));
  nurse_->dialogs().answer = Unsaved::save;
  QVERIFY(nurse_->window().close());
  QFile file(nurse_->dialogs().save);
  QVERIFY(file.open(QIODevice::ReadOnly));
  const QByteArray text = file.readAll();
  QVERIFY(text.contains("17.2 kg") && !text.contains("12.7 kg"));
}

void SecondCheckTest::anyEditVoidsTheRecord() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  record();
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("17.3 kg")});
  QVERIFY(bar().contains(QStringLiteral("not done")));
  QVERIFY(notice("second-voided").contains(QStringLiteral("void")));
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  QCOMPARE(nurse_->window().editor().draft().text("child.weight"), "17.2 kg");
  QVERIFY(bar().contains(QStringLiteral("not done")));
  QVERIFY(printedSheet().contains(QStringLiteral("Secondcheck:notdone")));
}

/// Told once it is recorded that both agree, the first person's entries in the form; and no longer than that.
void SecondCheckTest::aListThatRequiresItWithholdsTheAmount() {
  const QString amount = QStringLiteral("Measure3.2mL");
  fillFirst();
  QVERIFY(printedSheet().contains(amount));
  nurse_->window().editor().edit(QStringLiteral("reference.second_check_required"), QStringLiteral("true"));
  nurse_->window().editor().finishAll();
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(!printedSheet().contains(amount));
  begin();
  fillAgain(QStringLiteral("17.3 kg"));
  compare();
  push("second-correct-first");
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("17.3 kg")});
  QVERIFY(!everythingSaid().join(QString()).contains(QStringLiteral("Measure 3.2")));
  compare();
  record();
  QVERIFY(printedSheet().contains(amount));
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->fill({QStringLiteral("17.2 kg")});
  QVERIFY(!printedSheet().contains(amount));
}

void SecondCheckTest::otherRulesVoidTheRecord() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  record();
  nurse_->rules().use(RulesKind::classroom);
  QVERIFY(bar().contains(QStringLiteral("not done")));
}

/// After how many minutes the entries are covered changes no figure.
void SecondCheckTest::otherMinutesDoNotVoidTheRecord() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("17.2 kg"));
  compare();
  record();
  QFile rules(nurse_->folder() + QStringLiteral("/rules.json"));
  QVERIFY(rules.open(QIODevice::WriteOnly));
  rules.write(R"({"format": "wardchalk.house-rules", "version": 1, "name": "exact", "idle_minutes": 9})");
  rules.close();
  nurse_->dialogs().rules = rules.fileName();
  nurse_->rules().openFile();
  QVERIFY2(bar().contains(QStringLiteral("same result")), qPrintable(bar()));
  nurse_->rules().use(RulesKind::classroom);
  QVERIFY(notice("second-voided").startsWith(QStringLiteral("The house rules were changed")));
}

void SecondCheckTest::correctingBeginsWhereTheyDiffer() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("17.5 kg"));
  compare();
  push("second-correct-second");
  QCOMPARE(nurse_->focused(), QStringLiteral("child.weight:text"));
}

/// "Nothing differs" beside a button that records a difference says two things at once.
void SecondCheckTest::whatAgreesAtLastSaysHowItIsSettled() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("17.5 kg"));
  compare();
  auto* todo = nurse_->window().findChild<SecondCheckView*>()->findChildren<QLabel*>().at(1);
  auto* leave = nurse_->window().findChild<QAbstractButton*>(QStringLiteral("second-leave"));
  QVERIFY(leave->text().contains(QStringLiteral("it differs")));
  push("second-correct-second");
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->press(Qt::Key_A, Qt::ControlModifier);
  nurse_->type(test::usualCase()[test::weightPlace]);
  nurse_->enter();
  compare();
  QVERIFY2(summary().startsWith(QStringLiteral("Same result")), qPrintable(summary()));
  QVERIFY(todo->isVisible() && todo->text().contains(QStringLiteral("Record this")));
  QVERIFY2(leave->text().contains(QStringLiteral("differed stays recorded")), qPrintable(leave->text()));
  record();
  QVERIFY2(bar().contains(QStringLiteral("differed at first")), qPrintable(bar()));
}

void SecondCheckTest::newChildKeepsNothingOfEither() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("12.7 kg"));
  compare();
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QVERIFY(nurse_->window().editor().draft().isEmpty());
  QStringList wanted = test::tellTale();
  wanted << QStringLiteral("12.7");
  QCOMPARE(firstFound(everythingSaid(), wanted), QString());
  nurse_->press(Qt::Key_F9, Qt::ShiftModifier);
  QVERIFY(nurse_->window().editor().draft().isEmpty());
  QCOMPARE(nurse_->focused(), QStringLiteral("child.height:text"));
}

void SecondCheckTest::theCaseCannotBeSavedOrPrintedMeanwhile() {
  fillFirst();
  begin();
  for (const char* name : {"open", "save", "save-as", "sheet-print", "sheet-pdf", "sheet-preview", "example",
                           "rules-edit", "second-check-begin"})
    QVERIFY2(!action(name)->isVisible() && !action(name)->isEnabled(), name);
  QVERIFY(!nurse_->window().openFile(QStringLiteral("case.json")));
  nurse_->press(Qt::Key_F9, Qt::ShiftModifier);
  for (const char* name : {"open", "save", "sheet-pdf", "second-check-begin"})
    QVERIFY2(action(name)->isEnabled(), name);
  QVERIFY(!action("second-check-compare")->isVisible());
}

/// Sign, word and both entries in one sentence; not by colour alone.
void SecondCheckTest::everyRowIsReadAloud() {
  fillFirst();
  begin();
  fillAgain(QStringLiteral("12.7 kg"));
  compare();
  int rows = 0;
  for (int row = 0; row < table()->rowCount(); ++row) {
    if (!table()->item(row, 1)) continue;
    ++rows;
    const QString said = table()->item(row, 0)->data(Qt::AccessibleTextRole).toString();
    for (int i = 1; i < 4; ++i) {
      const QString cell = table()->item(row, i)->text();
      QVERIFY2(said.contains(cell) || cell == QStringLiteral("–"), qPrintable(said));
    }
  }
  QVERIFY(rows > 15);
}

WARDCHALK_QT_TEST(SecondCheckTest)

}  // namespace wardchalk::ui::second_check_test

#include "second_check_test.moc"
