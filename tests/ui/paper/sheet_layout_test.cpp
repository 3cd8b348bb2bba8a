#include "ui/paper/sheet_layout.h"

#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QTest>
#include <algorithm>
#include <map>

#include "core/check/work_out.h"
#include "core/words/amount_words.h"
#include "tests/support/golden_cases.h"
#include "tests/support/settled.h"
#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/support/ink.h"
#include "tests/ui/support/qt_class.h"
#include "ui/paper/paint_sheet.h"
#include "ui/theme/text.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui::test::sheet_layout_test {

using wardchalk::test::GoldenCase;
using wardchalk::test::goldenCases;
using wardchalk::test::settled;

namespace {

const SheetMade made{QStringLiteral("2026-11-25 13:40"), QStringLiteral("1.2.3"), {}};

const GoldenCase& golden(const char* name) {
  return *std::find_if(goldenCases().begin(), goldenCases().end(),
                       [&](const GoldenCase& each) { return each.name == name; });
}

SheetContent contentOf(const GoldenCase& each, const SheetMade& by = made) {
  return sheetContent(workOut(each.given, each.rules), by);
}

QString textOf(const SheetPage& page) {
  QString text;
  for (const Run& run : page.drawing.runs) text += run.text;
  return unspaced(text);
}

QImage imageOf(const SheetPage& page, const PaperFormat& format) {
  constexpr double zoom = 1.5;
  QImage image((format.size * zoom).toSize(), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.scale(zoom, zoom);
  paintPage(painter, page);
  return image;
}

bool isGrey(QRgb pixel) { return qRed(pixel) == qGreen(pixel) && qGreen(pixel) == qBlue(pixel); }

struct LaidOut {
  SheetContent content;
  SheetLayout sheet;
};

/// Each golden case on each paper is laid out once for all that is asked of it.
const LaidOut& laidOut(int index, bool letter) {
  static std::map<std::pair<int, bool>, LaidOut> known;
  const auto found = known.find({index, letter});
  if (found != known.end()) return found->second;
  const SheetContent content = contentOf(goldenCases()[static_cast<std::size_t>(index)]);
  const SheetLayout sheet = layOutSheet(content, paperFormat(letter ? PaperSize::letter : PaperSize::a4));
  return known.emplace(std::pair{index, letter}, LaidOut{content, sheet}).first->second;
}

/// A sheet with as much on every paper as an entry may hold, in words that cannot be broken between.
GoldenCase crammed() {
  GoldenCase all = golden("infusion-drops");
  const std::string word(480, 'W');
  all.given.title = word;
  all.given.order.medicine = word;
  all.given.reference.source = word;
  return all;
}

}  // namespace

class SheetLayoutTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void isBlackOnWhiteInsideItsMargins_data() { addAll(); }
  void isBlackOnWhiteInsideItsMargins();
  void setsNoTextOverAnother_data() { addAll(); }
  void setsNoTextOverAnother();
  void keepsANumberWithItsUnit_data() { addAll(); }
  void keepsANumberWithItsUnit();
  void cutsNoStep_data() { addAll(); }
  void cutsNoStep();
  void theUsualCaseIsOnePage_data();
  void theUsualCaseIsOnePage();
  void aLongSheetRepeatsItsHeading();
  void wordsWithoutSpacesStayInsideTheMargins();
  void lettersAreLargeEnoughToRead();
  void nothingToPrepareIsSaidOnEveryPage_data() { addAll(); }
  void nothingToPrepareIsSaidOnEveryPage();
  void theAmountWaitsUntilEveryQuestionIsAsked();
  void whatMayNotBePreparedIsWhiteOnBlack();
  void theSecondCheckIsNotDoneUntilSigned();
  void whoeverSignsSeesWhatIsSigned_data() { addAll(); }
  void whoeverSignsSeesWhatIsSigned();

 private:
  void addAll();
};

void SheetLayoutTest::addAll() {
  QTest::addColumn<int>("index");
  QTest::addColumn<bool>("letter");
  for (std::size_t i = 0; i < goldenCases().size(); ++i)
    for (const bool letter : {false, true})
      QTest::addRow("%s, %s", goldenCases()[i].name.c_str(), letter ? "Letter" : "A4")
          << static_cast<int>(i) << letter;
}

// Qt fetches the columns of a row by name inside the test function, which no helper can do.
#define FETCH_SHEET()   \
  QFETCH(int, index);   \
  QFETCH(bool, letter); \
  const auto& [content, sheet] = laidOut(index, letter)

void SheetLayoutTest::isBlackOnWhiteInsideItsMargins() {
  FETCH_SHEET();
  for (const SheetPage& page : sheet.pages) {
    const QImage image = imageOf(page, sheet.format);
    const double zoom = image.width() / sheet.format.size.width();
    const QRectF inside =
        QRectF(sheet.format.content().topLeft() * zoom, sheet.format.content().size() * zoom);
    const QRect ink = inside.adjusted(-2, -2, 2, 2).toAlignedRect();
    for (int y = 0; y < image.height(); ++y) {
      const auto* line = reinterpret_cast<const QRgb*>(image.constScanLine(y));
      for (int x = 0; x < image.width(); ++x) {
        const QRgb pixel = line[x];
        if (!isGrey(pixel)) QFAIL(qPrintable(QStringLiteral("colour at %1, %2").arg(x).arg(y)));
        if (!ink.contains(x, y) && qRed(pixel) != 255)
          QFAIL(qPrintable(QStringLiteral("outside the margins at %1, %2").arg(x / zoom).arg(y / zoom)));
      }
    }
  }
}

void SheetLayoutTest::setsNoTextOverAnother() {
  FETCH_SHEET();
  for (const SheetPage& page : sheet.pages) {
    const QString overlap = overlapIn(page.drawing.runs);
    QVERIFY2(overlap.isEmpty(), qPrintable(overlap));
  }
}

void SheetLayoutTest::keepsANumberWithItsUnit() {
  FETCH_SHEET();
  static const QRegularExpression bare(QStringLiteral("[0-9]$"));
  static const QRegularExpression unit(
      QStringLiteral("^ ?(mg|mL|g|kg|mcg|m²|h|hours?|doses?|tablets?|%)\\b"));
  for (const SheetPage& page : sheet.pages)
    for (std::size_t i = 1; i < page.drawing.runs.size(); ++i) {
      const Run& before = page.drawing.runs[i - 1];
      const Run& after = page.drawing.runs[i];
      const bool brokenOff = after.at.y() > before.at.y() + 2 && after.at.x() < before.at.x() + 1;
      QVERIFY2(!(brokenOff && before.text.contains(bare) && after.text.contains(unit)),
               qPrintable(before.text + QStringLiteral(" | ") + after.text));
    }
}

/// What a step asks and what it comes to stand on one page, once.
void SheetLayoutTest::cutsNoStep() {
  FETCH_SHEET();
  for (const StepView& view : content.steps) {
    const QString head = QString::number(view.number) + unspaced(view.question);
    int pages = 0;
    for (const SheetPage& page : sheet.pages) {
      const QString text = textOf(page);
      if (!text.contains(head)) continue;
      ++pages;
      QVERIFY2(text.indexOf(unspaced(view.conclusion), text.indexOf(head)) > 0, qPrintable(view.conclusion));
    }
    QCOMPARE(pages, 1);
  }
}

void SheetLayoutTest::theUsualCaseIsOnePage_data() {
  QTest::addColumn<QString>("name");
  for (const char* name : {"safe-per-surface-liquid", "ask-below-usual", "unsafe-over-single",
                           "not-covered-age", "undecided-height-missing", "per-kg-day-tablet"})
    QTest::addRow("%s", name) << QString::fromLatin1(name);
}

void SheetLayoutTest::theUsualCaseIsOnePage() {
  QFETCH(QString, name);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    QCOMPARE(layOutSheet(contentOf(golden(qPrintable(name))), paperFormat(size)).pages.size(),
             std::size_t(1));
}

void SheetLayoutTest::aLongSheetRepeatsItsHeading() {
  const SheetContent content = contentOf(golden("infusion-drops"));
  const SheetLayout sheet = layOutSheet(content, paperFormat(PaperSize::a4));
  QCOMPARE(sheet.pages.size(), std::size_t(2));
  for (std::size_t page = 0; page < 2; ++page) {
    const QString text = textOf(sheet.pages[page]);
    for (const QString& part : {content.title, content.order, content.flag, content.workedOut,
                                content.caution, content.pageOfAll.arg(page + 1).arg(2)})
      QVERIFY2(text.contains(unspaced(part)), qPrintable(part));
    QCOMPARE(sheet.pages[page].signs.front().verdict, VerdictKind::safe);
  }
}

void SheetLayoutTest::wordsWithoutSpacesStayInsideTheMargins() {
  const SheetContent content = contentOf(crammed());
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
    const SheetLayout sheet = layOutSheet(content, paperFormat(size));
    QString all;
    for (const SheetPage& page : sheet.pages) {
      all += textOf(page);
      for (const Run& run : page.drawing.runs)
        QVERIFY2(sheet.format.content().adjusted(-1, -1, 1, 1).contains(inkOf(run)), qPrintable(run.text));
    }
    QVERIFY(all.contains(QString(480, u'W')));  // wrapped and not cut off
  }
}

/// No letter is smaller than 6 points.
void SheetLayoutTest::lettersAreLargeEnoughToRead() {
  for (const GoldenCase& each : goldenCases())
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
      for (const SheetPage& page : layOutSheet(contentOf(each), paperFormat(size)).pages)
        for (const Run& run : page.drawing.runs) QVERIFY2(run.type.pixels >= 8, qPrintable(run.text));
}

void SheetLayoutTest::nothingToPrepareIsSaidOnEveryPage() {
  FETCH_SHEET();
  const Worksheet worksheet = workOut(goldenCases()[static_cast<std::size_t>(index)].given,
                                      goldenCases()[static_cast<std::size_t>(index)].rules);
  const AmountWords words = amountWords(worksheet);
  const bool prepares = worksheet.verdict == VerdictKind::safe && !words.measure.empty();
  QCOMPARE(content.printsAmount(), prepares);
  for (const SheetPage& page : sheet.pages) {
    QCOMPARE(textOf(page).contains(unspaced(QStringLiteral("DO NOT PREPARE A DOSE FROM THIS SHEET"))),
             !prepares);
    if (!prepares && !words.measure.empty()) {
      QVERIFY(!textOf(page).contains(unspaced(fromCore(words.measure))));
      QVERIFY(!textOf(page).contains(unspaced(fromCore(words.label))));
    }
  }
}

void SheetLayoutTest::theAmountWaitsUntilEveryQuestionIsAsked() {
  const GoldenCase& little = golden("ask-below-usual");
  const SheetContent before = contentOf(little);
  const SheetContent after = sheetContent(settled(workOut(little.given, little.rules)), made);
  const auto text = [](const SheetContent& content) {
    return textOf(layOutSheet(content, paperFormat(PaperSize::a4)).pages.front());
  };
  QVERIFY(text(before).contains(QStringLiteral("Toolittlebythisreference")));
  QVERIFY(!text(before).contains(QStringLiteral("0.32mL")));
  QVERIFY(text(before).contains(unspaced(before.leftOut)));
  QVERIFY(text(before).contains(unspaced(before.askedBy)));
  QVERIFY(text(after).contains(QStringLiteral("Measure0.32mL")));
  QVERIFY(text(after).contains(QStringLiteral("Settled:askedtheprescriber")));
  QVERIFY(!text(after).contains(QStringLiteral("DONOTPREPARE")));
  QVERIFY(after.steps.size() > before.steps.size());
}

void SheetLayoutTest::whatMayNotBePreparedIsWhiteOnBlack() {
  for (const auto& [name, onBlack] :
       {std::pair("safe-per-surface-liquid", false), std::pair("ask-below-usual", false),
        std::pair("unsafe-over-single", true), std::pair("not-covered-age", true),
        std::pair("undecided-height-missing", false)}) {
    const SheetContent content = contentOf(golden(name));
    const SheetLayout sheet = layOutSheet(content, paperFormat(PaperSize::a4));
    QCOMPARE(sheet.pages.front().signs.front().onBlack, onBlack);
    const auto& runs = sheet.pages.front().drawing.runs;
    const auto flag =
        std::find_if(runs.begin(), runs.end(), [&](const Run& run) { return run.text == content.flag; });
    QVERIFY(flag != runs.end());
    const QImage image = imageOf(sheet.pages.front(), sheet.format);
    const double zoom = image.width() / sheet.format.size.width();
    const QPoint beside = ((flag->rect.topRight() + QPointF(6, 4)) * zoom).toPoint();
    QCOMPARE(qRed(image.pixel(beside)), onBlack ? 0 : 255);
  }
}

void SheetLayoutTest::theSecondCheckIsNotDoneUntilSigned() {
  for (const GoldenCase& each : goldenCases()) {
    const SheetLayout sheet = layOutSheet(contentOf(each), paperFormat(PaperSize::a4));
    QVERIFY(textOf(sheet.pages.back()).contains(QStringLiteral("NOTdoneuntilsignedhere")));
  }
}

/// On the page with the places to sign: the order, the verdict, the amount, the end of the working and which
/// page of how many it is.
void SheetLayoutTest::whoeverSignsSeesWhatIsSigned() {
  FETCH_SHEET();
  const auto pages = static_cast<int>(sheet.pages.size());
  for (int page = 1; page <= pages; ++page) {
    const QString text = textOf(sheet.pages[static_cast<std::size_t>(page - 1)]);
    QVERIFY(text.contains(unspaced(content.pageOfAll.arg(page).arg(pages))));
    if (!text.contains(unspaced(content.signHere))) continue;
    QCOMPARE(text.count(unspaced(content.signHere)), 2);
    for (const QString& part : {content.order, content.flag, content.measure, content.dose})
      QVERIFY2(text.contains(unspaced(part)), qPrintable(part));
    if (!content.steps.empty()) QVERIFY(text.contains(unspaced(content.steps.back().question)));
  }
}

#undef FETCH_SHEET

WARDCHALK_QT_TEST(SheetLayoutTest)

}  // namespace wardchalk::ui::test::sheet_layout_test

#include "sheet_layout_test.moc"
