#include <QTest>

#include "tests/ui/support/qt_class.h"
#include "ui/working/box.h"

namespace wardchalk::ui::long_words_test {

namespace {

QString lettersOf(const Box& box) {
  QString all;
  for (const Run& run : box.drawing.runs) all += run.text;
  return all.remove(u' ').remove(QChar::Nbsp);
}

}  // namespace

/// A name that no line holds is cut; what stands beside it keeps its size. A figure is never cut.
class LongWordsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void aNameIsCutAndNothingShrinks_data();
  void aNameIsCutAndNothingShrinks();
  void aFigureIsNeverCut_data();
  void aFigureIsNeverCut();

 private:
  Metrics metrics_{800, 1, {}, 1};
};

void LongWordsTest::aNameIsCutAndNothingShrinks_data() {
  QTest::addColumn<QString>("text");
  const QString wide(200, u'W');
  QTest::newRow("alone") << wide;
  QTest::newRow("before a figure") << wide + QStringLiteral(" 25\u00a0mg in 1\u00a0mL");
  QTest::newRow("among words") << QStringLiteral("Label must read: ") + wide + QStringLiteral(" 25\u00a0mg");
  QTest::newRow("with digits") << QStringLiteral("W7").repeated(100);
  QTest::newRow("in words") << QStringLiteral("Plover of the reeds ").repeated(10).trimmed();
  QTest::newRow("letters of two parts") << QStringLiteral("\U0001D54E").repeated(100);
  QTest::newRow("with marks") << QStringLiteral("e\u0301").repeated(100);
}

void LongWordsTest::aNameIsCutAndNothingShrinks() {
  QFETCH(QString, text);
  for (const double width : {800.0, 300.0, 120.0})
    for (const FontRole role : {FontRole::finding, FontRole::body, FontRole::question, FontRole::tag}) {
      const Box box = paragraph(text, role, Ink::text, metrics_, width);
      QVERIFY2(box.width <= width, qPrintable(QString::number(box.width)));
      QVERIFY(box.drawing.runs.size() > 1 || width > 700);
      for (const Run& run : box.drawing.runs) QCOMPARE(run.type.pixels, metrics_.type(role).pixels);
      QCOMPARE(lettersOf(box), QString(text).remove(u' ').remove(QChar::Nbsp));
      for (const Run& run : box.drawing.runs)
        QVERIFY(!run.text.front().isLowSurrogate() && !run.text.front().isMark());
    }
}

void LongWordsTest::aFigureIsNeverCut_data() {
  QTest::addColumn<QString>("text");
  QTest::newRow("figure") << QStringLiteral("123,456,789.123\u00a0mcg/kg/min");
  QTest::newRow("digits") << QString(40, u'9') + QStringLiteral("\u00a0mg");
}

void LongWordsTest::aFigureIsNeverCut() {
  QFETCH(QString, text);
  const Box box = paragraph(text, FontRole::body, Ink::text, metrics_, 90);
  QCOMPARE(box.drawing.runs.size(), std::size_t{1});
  QCOMPARE(box.drawing.runs.front().text, text);
}

WARDCHALK_QT_TEST(LongWordsTest)

}  // namespace wardchalk::ui::long_words_test

#include "long_words_test.moc"
