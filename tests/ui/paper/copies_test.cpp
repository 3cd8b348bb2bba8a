#include "ui/paper/copies.h"

#include <QImage>
#include <QTest>
#include <QXmlStreamReader>

#include "core/check/work_out.h"
#include "core/words/working_text.h"
#include "tests/support/golden_cases.h"
#include "tests/support/settled.h"
#include "tests/ui/support/qt_class.h"
#include "ui/theme/text.h"

namespace wardchalk::ui::test::copies_test {

using wardchalk::test::goldenCases;
using wardchalk::test::settled;

namespace {

/// What a general XML reader objects to; empty when it reads to the end. `names` gets every element it met.
QString xmlFault(const QByteArray& xml, QStringList& names) {
  QXmlStreamReader reader(xml);
  while (!reader.atEnd())
    if (reader.readNext() == QXmlStreamReader::StartElement) names << reader.name().toString();
  return reader.errorString();
}

Worksheet worked(int index) {
  const auto& golden = goldenCases()[static_cast<std::size_t>(index)];
  return workOut(golden.given, golden.rules);
}

bool isGrey(const QImage& image) {
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      const QRgb pixel = image.pixel(x, y);
      if (qRed(pixel) != qGreen(pixel) || qGreen(pixel) != qBlue(pixel)) return false;
    }
  return true;
}

bool hasInk(const QImage& image) {
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (qRed(image.pixel(x, y)) < 64) return true;
  return false;
}

}  // namespace

class CopiesTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void theWorkingIsReadByAnXmlReader_data() { addAll(); }
  void theWorkingIsReadByAnXmlReader();
  void eachStepIsOneMathElement_data() { addAll(); }
  void eachStepIsOneMathElement();
  void eachStepIsAPictureAndADrawing_data() { addAll(); }
  void eachStepIsAPictureAndADrawing();
  void textIsWhatATerminalShows();
  void sourcesAreTextToo();

 private:
  static void addAll() {
    QTest::addColumn<int>("index");
    for (std::size_t i = 0; i < goldenCases().size(); ++i)
      QTest::addRow("%s", goldenCases()[i].name.c_str()) << static_cast<int>(i);
  }
};

void CopiesTest::theWorkingIsReadByAnXmlReader() {
  QFETCH(int, index);
  const Shown shown = settled(worked(index));
  const Worksheet& sheet = shown.sheet();
  const auto data = workingAs(CopyAs::mathMl, shown);
  QStringList names;
  QCOMPARE(xmlFault(data->data(QStringLiteral("application/xhtml+xml")), names), QString());
  QCOMPARE(names.first(), QStringLiteral("html"));
  QCOMPARE(names.count(QStringLiteral("math")), static_cast<qsizetype>(sheet.steps.size()));
}

void CopiesTest::eachStepIsOneMathElement() {
  QFETCH(int, index);
  const Shown shown = settled(worked(index));
  const Worksheet& sheet = shown.sheet();
  for (std::size_t step = 0; step < sheet.steps.size(); ++step) {
    const auto data = stepAs(CopyAs::mathMl, step, shown);
    QStringList names;
    QCOMPARE(xmlFault(data->data(QStringLiteral("application/mathml+xml")), names), QString());
    QCOMPARE(names.first(), QStringLiteral("math"));
    QCOMPARE(names.count(QStringLiteral("math")), qsizetype(1));
    // every name is one of MathML 3's presentation elements (W3C, MathML 3.0, chapter 3)
    for (const QString& name : names)
      QVERIFY2(
          QStringLiteral(" math mrow mtable mtr mtd mn mo mi mtext mspace mfrac msqrt msub msup menclose ")
              .contains(u' ' + name + u' '),
          qPrintable(name));
  }
}

void CopiesTest::eachStepIsAPictureAndADrawing() {
  QFETCH(int, index);
  const Shown shown = settled(worked(index));
  const Worksheet& sheet = shown.sheet();
  for (std::size_t step = 0; step < sheet.steps.size(); ++step) {
    const auto picture = stepAs(CopyAs::picture, step, shown);
    const auto image = qvariant_cast<QImage>(picture->imageData());
    QVERIFY(hasInk(image));
    QVERIFY(isGrey(image));
    const auto drawing = stepAs(CopyAs::svg, step, shown);
    QStringList names;
    QCOMPARE(xmlFault(drawing->data(QStringLiteral("image/svg+xml")), names), QString());
    QCOMPARE(names.first(), QStringLiteral("svg"));
    QVERIFY(names.contains(QStringLiteral("text")));  // letters stay letters
    QVERIFY(drawing->hasImage());
  }
}

void CopiesTest::textIsWhatATerminalShows() {
  const Worksheet sheet = worked(0);
  QCOMPARE(workingAs(CopyAs::text, sheet)->text(), fromCore(workingText(sheet)));
  QCOMPARE(stepAs(CopyAs::text, 1, sheet)->text(), fromCore(stepText(sheet.steps[1], 2, sheet)));
}

/// A program that knows neither notation gets its source.
void CopiesTest::sourcesAreTextToo() {
  const Worksheet sheet = worked(0);
  const auto text = [&](CopyAs as) { return workingAs(as, sheet)->text(); };
  QVERIFY(text(CopyAs::mathMl).contains(QStringLiteral("<math")));
  QVERIFY(text(CopyAs::latex).startsWith(QStringLiteral("\\documentclass")));
  QVERIFY(stepAs(CopyAs::latex, 0, sheet)->text().startsWith(QStringLiteral("\\[")));
}

WARDCHALK_QT_TEST(CopiesTest)

}  // namespace wardchalk::ui::test::copies_test

#include "copies_test.moc"
