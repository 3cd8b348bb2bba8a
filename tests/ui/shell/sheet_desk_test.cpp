#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QPrinter>
#include <QPushButton>
#include <QTest>

#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "ui/paper/sheet_preview.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui::sheet_desk_test {

using test::pagesOfPdf;
using test::settleAll;
using test::unspaced;

class SheetDeskTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() { nurse_ = std::make_unique<Nurse>(); }
  void cleanup() { nurse_.reset(); }

  void printsAtOneKey();
  void noPrinterChosenPrintsNothing();
  void printsOnThePaperOfThePrinter();
  void savesAPdf();
  void aPdfThatCannotBeWrittenIsTold();
  void anEmptyFormHasNoSheet();
  void aNumberStillBeingTypedCounts();
  void theAmountNeedsEveryAnswer();
  void nobodySignsForAReferenceThatTheListFilled();
  void looksAtThePagesByKeyboard();
  void thePaperIsRemembered();

 private:
  QString file(const char* name) { return nurse_->folder() + QLatin1Char('/') + QLatin1String(name); }
  void example() { nurse_->press(Qt::Key_F2); }
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  QString savedSheet() {
    nurse_->dialogs().pdf = file("sheet.pdf");
    action("sheet-pdf")->trigger();
    return unspaced(pagesOfPdf(file("sheet.pdf")).join(QString()));
  }
  SheetPreview* preview() { return nurse_->window().findChild<SheetPreview*>(); }

  std::unique_ptr<Nurse> nurse_;
};

void SheetDeskTest::printsAtOneKey() {
  example();
  const QString out = file("printed.pdf");
  nurse_->dialogs().setUpPrinter = [&](QPrinter& printer) {
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(out);
  };
  nurse_->press(Qt::Key_P, Qt::ControlModifier);
  const QStringList pages = pagesOfPdf(out);
  QCOMPARE(pages.size(), 1);
  QVERIFY(unspaced(pages.front()).contains(QStringLiteral("Measure3.2mL")));
  QCOMPARE(nurse_->dialogs().told, QStringList());
}

void SheetDeskTest::noPrinterChosenPrintsNothing() {
  example();
  nurse_->press(Qt::Key_P, Qt::ControlModifier);
  QCOMPARE(nurse_->dialogs().told, QStringList());
}

void SheetDeskTest::printsOnThePaperOfThePrinter() {
  example();
  const QString out = file("small.pdf");
  nurse_->dialogs().setUpPrinter = [&](QPrinter& printer) {
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(out);
    printer.setPageSize(QPageSize(QPageSize::A5));
  };
  nurse_->press(Qt::Key_P, Qt::ControlModifier);
  QVERIFY(test::pdfInfo(out).contains(QStringLiteral("420 x 595")));
  QVERIFY(pagesOfPdf(out).size() > 1);
}

void SheetDeskTest::savesAPdf() {
  example();
  QVERIFY(savedSheet().contains(QStringLiteral("SAFEbythisreference")));
  QVERIFY(test::pdfInfo(file("sheet.pdf")).contains(QStringLiteral("595")));
}

void SheetDeskTest::aPdfThatCannotBeWrittenIsTold() {
  example();
  nurse_->dialogs().pdf = file("no such folder/sheet.pdf");
  action("sheet-pdf")->trigger();
  QCOMPARE(nurse_->dialogs().told.size(), 1);
}

void SheetDeskTest::anEmptyFormHasNoSheet() {
  for (const char* name : {"sheet-print", "sheet-preview", "sheet-pdf"}) action(name)->trigger();
  QCOMPARE(nurse_->dialogs().told.size(), 3);
  QVERIFY(!preview());
}

void SheetDeskTest::aNumberStillBeingTypedCounts() {
  nurse_->type(QStringLiteral("103 cm"));
  QVERIFY(savedSheet().contains(QStringLiteral("Height103cm")));
}

void SheetDeskTest::theAmountNeedsEveryAnswer() {
  example();
  nurse_->walkTo(QStringLiteral("order.dose"));
  nurse_->press(Qt::Key_A, Qt::ControlModifier);
  nurse_->type(QStringLiteral("60 mg"));
  nurse_->enter();
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::ask);
  QVERIFY(savedSheet().contains(QStringLiteral("DONOTPREPARE")));
  settleAll(nurse_->window(), 2);
  const QString after = savedSheet();
  QVERIFY(!after.contains(QStringLiteral("DONOTPREPARE")));
  QVERIFY(after.contains(QStringLiteral("Settled:askedthepharmacist")));
  QVERIFY(after.contains(QStringLiteral("Measure2.4mL")));
}

void SheetDeskTest::nobodySignsForAReferenceThatTheListFilled() {
  example();
  QVERIFY(savedSheet().contains(QStringLiteral("Everyfigurewasreadfromitspaper")));
  CaseEditor& editor = nurse_->window().editor();
  editor.edit(QStringLiteral("reference.source"),
              QStringLiteral("Plover, oral: Bench list; from the ward's list, checked by A, 2026-01-01"));
  const QString sheet = savedSheet();
  QVERIFY(!sheet.contains(QStringLiteral("Everyfigurewasreadfromitspaper")));
  QVERIFY(sheet.contains(QStringLiteral("Thereferencewastakenfromtheward'slist.")));
}

void SheetDeskTest::looksAtThePagesByKeyboard() {
  example();
  nurse_->press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
  QVERIFY(preview());
  QVERIFY(QTest::qWaitForWindowActive(preview()));
  QCOMPARE(preview()->pageCount(), 1);
  const auto* pages = preview()->findChild<SpokenWidget*>(QStringLiteral("sheet-pages"));
  QTRY_COMPARE(QApplication::focusWidget(), pages);
  QVERIFY(pages->spoken().contains(QStringLiteral("square metres cancel")));
  const int usual = pages->width();
  nurse_->press(Qt::Key_Plus, Qt::ControlModifier);
  QVERIFY(pages->width() > usual);
  QStringList reached;
  for (int i = 0; i < 6; ++i) {
    nurse_->press(Qt::Key_Tab);
    reached << nurse_->focused();
  }
  for (const char* name : {"paper", "print", "pdf", "close"})
    QVERIFY2(reached.contains(QLatin1String(name)), name);
  nurse_->dialogs().pdf = file("sheet.pdf");
  preview()->findChild<QPushButton*>(QStringLiteral("pdf"))->click();
  QVERIFY(QFile::exists(file("sheet.pdf")));
  nurse_->press(Qt::Key_Escape);
  QTRY_VERIFY(!preview());
}

void SheetDeskTest::thePaperIsRemembered() {
  example();
  action("sheet-preview")->trigger();
  preview()->findChild<QComboBox*>(QStringLiteral("paper"))->setCurrentIndex(1);
  savedSheet();
  QVERIFY(test::pdfInfo(file("sheet.pdf")).contains(QStringLiteral("612 x 792")));
}

WARDCHALK_QT_TEST(SheetDeskTest)

}  // namespace wardchalk::ui::sheet_desk_test

#include "sheet_desk_test.moc"
