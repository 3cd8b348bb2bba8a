#include <QTemporaryDir>
#include <QTest>

#include "core/check/work_out.h"
#include "core/words/unit_words.h"
#include "tests/support/golden_cases.h"
#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/support/qt_class.h"
#include "ui/paper/paint_sheet.h"
#include "ui/theme/text.h"

namespace wardchalk::ui::test::sheet_pdf_test {

using wardchalk::test::GoldenCase;
using wardchalk::test::goldenCases;

namespace {

const SheetMade made{QStringLiteral("2026-11-25 13:40"), QStringLiteral("1.2.3"), {}};

/// Everything that a step says on paper, in single parts.
QStringList partsOf(const StepView& view) {
  QStringList parts{view.question, view.lookingFor, view.reason, view.conclusion, view.product,
                    view.rounding, view.underRoot,  view.left,   view.relation,   view.right};
  parts << view.sums;
  if (const auto* solved = std::get_if<Solved>(&view.step.body))
    for (const Factor& factor : solved->chain.factors)
      parts << fromCore(valueText(factor.over))
            << fromCore(factor.under.isPlainOne() ? "" : valueText(factor.under));
  for (const Landmark& landmark : view.landmarks) parts << landmark.label;
  return parts;
}

QStringList partsOf(const SheetContent& content) {
  QStringList parts{content.title,      content.order,         content.caseTitle, content.workedOut,
                    content.ownLabel,   content.flag,          content.reason,    content.notMade,
                    content.measure,    content.dose,          content.none,      content.leftOut,
                    content.checksMade, content.checksNotMade, content.rules,     content.caution,
                    content.workedBy,   content.second,        content.program,   content.secondBy};
  parts << content.amountLines << content.doNotPrepare;
  for (const SheetFacts& paper : content.papers)
    for (const SheetFact& fact : paper.facts) parts << fact.label + fact.text;
  for (const SheetFinding& finding : content.findings) parts << finding.text;
  for (const SheetQuestion& question : content.questions) parts << question.text;
  for (const StepView& view : content.steps) parts << partsOf(view);
  return parts;
}

}  // namespace

class SheetPdfTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void holdsEverythingAsText_data() { addAll(); }
  void holdsEverythingAsText();
  void everyWordIsInsideTheMargins_data() { addAll(); }
  void everyWordIsInsideTheMargins();
  void readsStepByStep_data() { addAll(); }
  void readsStepByStep();
  void writesNothingThatIsMisread_data() { addAll(); }
  void writesNothingThatIsMisread();
  void theScannerFindsWhatItIsThereFor();
  void namesNothingOfTheChildOutsideItsPages();
  void aFileThatCannotBeWrittenIsTold();

 private:
  void addAll();
  QString pdfOf(const SheetContent& content) {
    const QString file = folder_.filePath(QStringLiteral("sheet.pdf"));
    return writePdf(file, content, PaperSize::a4) ? file : QString();
  }

  QTemporaryDir folder_;
};

void SheetPdfTest::addAll() {
  QTest::addColumn<int>("index");
  for (std::size_t i = 0; i < goldenCases().size(); ++i)
    QTest::addRow("%s", goldenCases()[i].name.c_str()) << static_cast<int>(i);
}

// Qt fetches the columns of a row by name inside the test function, which no helper can do.
#define FETCH_SHEET()                                                        \
  QFETCH(int, index);                                                        \
  const GoldenCase& golden = goldenCases()[static_cast<std::size_t>(index)]; \
  const Worksheet worksheet = workOut(golden.given, golden.rules);           \
  const SheetContent content = sheetContent(worksheet, made)

void SheetPdfTest::holdsEverythingAsText() {
  FETCH_SHEET();
  const QString text = unspaced(pagesOfPdf(pdfOf(content)).join(QString()));
  for (const QString& part : partsOf(content))
    QVERIFY2(text.contains(unspaced(part)), qPrintable(part + QStringLiteral("\nis not in\n") + text));
}

/// On the finer grid of paper letters are as wide as they were laid out.
void SheetPdfTest::everyWordIsInsideTheMargins() {
  FETCH_SHEET();
  const QMarginsF margins = paperFormat(PaperSize::a4).margins * (72.0 / 96);
  const std::vector<PdfWord> words = wordsOfPdf(pdfOf(content));
  QVERIFY(words.size() > 50);
  for (const PdfWord& word : words) {
    const QRectF inside = QRectF(QPointF(), word.page).marginsRemoved(margins).adjusted(-1, -2, 1, 2);
    QVERIFY2(inside.contains(word.rect), qPrintable(word.text));
  }
  for (std::size_t i = 1; i < words.size(); ++i) {
    const QRectF both = words[i - 1].rect & words[i].rect;
    QVERIFY2(both.width() < 1 || both.height() < 3, qPrintable(words[i - 1].text + u' ' + words[i].text));
  }
}

void SheetPdfTest::readsStepByStep() {
  FETCH_SHEET();
  const QStringList pages = pagesOfPdf(pdfOf(content));
  qsizetype at = 0;
  const QString text = unspaced(pages.join(QString()));
  for (const StepView& view : content.steps) {
    const qsizetype next = text.indexOf(QString::number(view.number) + unspaced(view.question), at);
    QVERIFY2(next >= 0, qPrintable(view.question));
    const qsizetype end = text.indexOf(unspaced(view.conclusion), next);
    QVERIFY2(end > next, qPrintable(view.conclusion));
    at = next;
  }
  for (qsizetype page = 0; page < pages.size(); ++page) {
    QVERIFY(unspaced(pages[page]).endsWith(unspaced(content.pageOfAll.arg(page + 1).arg(pages.size()))));
    QVERIFY(unspaced(pages[page]).contains(unspaced(content.caution)));
  }
}

void SheetPdfTest::writesNothingThatIsMisread() {
  FETCH_SHEET();
  for (const QString& page : pagesOfPdf(pdfOf(content))) QCOMPARE(unsafeWriting(page), QString());
}

void SheetPdfTest::theScannerFindsWhatItIsThereFor() {
  for (const char* bad :
       {"5.0 mg", "0.50 mL", ".5 mg", "5mg", "1200 mg", "10 µg", "5 IU", "10 U", "5 cc", "QD", "mg/d"})
    QVERIFY2(!unsafeWriting(QString::fromUtf8(bad)).isEmpty(), bad);
  for (const char* good : {"0.70 m²", "5 mg", "0.5 mL", "1,200 mg", "10 mcg", "2026-11-25 13:40", "3,600 cm",
                           "10 units", "mg/day", "0.45359237 kg", "page 1 of 10", "3.2 mL · 10 mL"})
    QCOMPARE(unsafeWriting(QString::fromUtf8(good)), QString());
}

void SheetPdfTest::namesNothingOfTheChildOutsideItsPages() {
  GoldenCase golden = goldenCases().front();
  golden.given.title = "Uncommon words";
  const SheetContent content = sheetContent(workOut(golden.given, golden.rules), made);
  const QString told = pdfInfo(pdfOf(content));
  QVERIFY2(told.contains(content.title), qPrintable(told));
  QVERIFY2(!told.contains(QStringLiteral("Uncommon")), qPrintable(told));
}

void SheetPdfTest::aFileThatCannotBeWrittenIsTold() {
  const GoldenCase& golden = goldenCases().front();
  const SheetContent content = sheetContent(workOut(golden.given, golden.rules), made);
  const auto refusal =
      writePdf(folder_.filePath(QStringLiteral("none/sheet.pdf")), content, PaperSize::a4).refusalIfAny();
  QVERIFY(refusal);
  QCOMPARE(refusal->code, RefusalCode::folderMissing);
}

#undef FETCH_SHEET

WARDCHALK_QT_TEST(SheetPdfTest)

}  // namespace wardchalk::ui::test::sheet_pdf_test

#include "sheet_pdf_test.moc"
