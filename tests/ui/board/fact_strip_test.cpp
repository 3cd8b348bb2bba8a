#include "ui/board/fact_strip.h"

#include <QTest>
#include <map>
#include <set>

#include "tests/ui/support/ink.h"
#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::test::fact_strip_test {

namespace {

const BoardSizes& sizes() {
  static const BoardSizes screen(QSizeF(1024, 768));
  return screen;
}

Metrics letters() { return sizes().sized(FontRole::tag, sizes().leastAside()); }

double widthOf(const char* text) {
  return textBox(QString::fromUtf8(text), FontRole::tag, Ink::text, letters()).width;
}

Box strip(const std::vector<Fact>& facts, double width) {
  return factStrip(facts, letters(), sizes(), width);
}

/// The lines from above, their runs with bars between.
QStringList linesOf(const Box& box) {
  std::map<int, QStringList> lines;
  for (const Run& run : box.drawing.runs) lines[qRound(run.at.y())] << run.text;
  QStringList all;
  for (const auto& [y, runs] : lines) all << runs.join(u'|').replace(QChar::Nbsp, u' ');
  return all;
}

}  // namespace

class FactStripTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void leavesFactsWholeWhereNoLineIsWon();
  void goesOnAfterACommaWhereALineIsWon();
  void breaksNoNumberFromItsUnit();
  void keepsANameWithCommasWhole();
  void staysWithinItsWidth();
};

void FactStripTest::leavesFactsWholeWhereNoLineIsWon() {
  const std::vector<Fact> facts = {{"child", "15 kg"}, {"maximum", "20 mg per dose, 109.1 mg per day"}};
  QCOMPARE(linesOf(strip(facts, 4000)),
           QStringList{QStringLiteral("child|15 kg|maximum|20 mg per dose, 109.1 mg per day")});
  // two lines either way
  const double narrow = widthOf("maximum  20 mg per dose, 109.1 mg per day, ");
  QCOMPARE(linesOf(strip(facts, narrow)),
           (QStringList{QStringLiteral("child|15 kg"),
                        QStringLiteral("maximum|20 mg per dose, 109.1 mg per day")}));
}

void FactStripTest::goesOnAfterACommaWhereALineIsWon() {
  const std::vector<Fact> facts = {{"order", "Godwit 5 mg by mouth"},
                                   {"maximum", "20 mg per dose, 109.1 mg per day"},
                                   {"on hand", "40 mg in 50 mL"}};
  const double width = widthOf("order  Godwit 5 mg by mouth     maximum  20 mg per dose,        ");
  QCOMPARE(linesOf(strip(facts, width)),
           (QStringList{QStringLiteral("order|Godwit 5 mg by mouth|maximum|20 mg per dose,"),
                        QStringLiteral("109.1 mg per day|on hand|40 mg in 50 mL")}));
}

void FactStripTest::breaksNoNumberFromItsUnit() {
  const std::vector<Fact> facts = {{"child", "4 years 2 months, 103 cm, 17.2 kg"},
                                   {"order", "Plover 80 mg by mouth every 12 hours, as needed"},
                                   {"maximum", "1,000 mg per dose, 2,000 mg per day, 5 mg/mL"}};
  const std::set<QString> parts = {QStringLiteral("child"), QStringLiteral("order"),
                                   QStringLiteral("maximum")};
  for (double width = widthOf("order  Plover 80 mg by mouth every 12 hours, as needed,,");
       width < widthOf("n") * 200; width += 7)
    for (const Run& run : strip(facts, width).drawing.runs) {
      const bool ends = run.text.endsWith(u',') || run.text.endsWith(QStringLiteral("kg")) ||
                        run.text.endsWith(QStringLiteral("needed")) ||
                        run.text.endsWith(QStringLiteral("mL")) || parts.contains(run.text);
      QVERIFY2(ends, qPrintable(run.text));
    }
}

void FactStripTest::keepsANameWithCommasWhole() {
  const QString name = QStringLiteral("\u2068אבג, דהו, זחט\u2069");
  const std::vector<Fact> facts = {{"child", "15 kg, 103 cm"},
                                   {"order", (name + QStringLiteral(" 80 mg")).toStdString()},
                                   {"maximum", "20 mg per dose, 100 mg per day"},
                                   {"on hand", "40 mg in 50 mL"}};
  for (double width = widthOf("order   אבג, דהו, זחט 80 mg,,,"); width < widthOf("n") * 120; width += 11) {
    int whole = 0;
    for (const Run& run : strip(facts, width).drawing.runs)
      if (run.text.contains(name)) ++whole;
    QCOMPARE(whole, 1);
  }
}

void FactStripTest::staysWithinItsWidth() {
  const std::vector<Fact> facts = {
      {"reference",
       "Plover (also Grey plover; Bench brand; a long name of four words) 100 to 120 mg per m² "
       "per dose, by mouth every 12 hours"},
      {"maximum", "20 mg per dose"},
      {"minimum", "0.5 mg/mL, over 30 min"}};
  for (double width = 200; width < 1400; width += 50) {
    const Box box = strip(facts, width);
    QVERIFY2(overlapIn(box.drawing.runs).isEmpty(), qPrintable(overlapIn(box.drawing.runs)));
    for (const Run& run : box.drawing.runs) QVERIFY2(inkOf(run).right() <= width + 1, qPrintable(run.text));
  }
}

WARDCHALK_QT_TEST(FactStripTest)

}  // namespace wardchalk::ui::test::fact_strip_test

#include "fact_strip_test.moc"
