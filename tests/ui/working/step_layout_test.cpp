#include "ui/working/step_layout.h"

#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QTest>
#include <algorithm>

#include "core/check/work_out.h"
#include "tests/ui/support/ink.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/working/sample_cases.h"
#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"
#include "ui/working/stages.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui::test::step_layout_test {

namespace {

QString name(const SampleCase& each) { return QString::fromStdString(each.name); }

std::vector<StepLayout> layouts(const SampleCase& each, const Metrics& metrics) {
  std::vector<StepLayout> all;
  for (const StepView& view : stepViews(workOut(each.given, each.rules)))
    all.push_back(layOut(view, metrics));
  return all;
}

/// One picture of all cards under one another.
QImage picture(const std::vector<StepLayout>& layouts, const Metrics& metrics, Scheme scheme) {
  double height = 8;
  for (const StepLayout& layout : layouts) height += layout.size.height() + 8;
  QImage image(static_cast<int>(metrics.width) + 16, static_cast<int>(height) + 8, QImage::Format_RGB32);
  const BoardPalette& palette = boardPalette(scheme);
  image.fill(palette[Ink::board]);
  QPainter painter(&image);
  painter.translate(8, 8);
  for (const StepLayout& layout : layouts) {
    painter.fillRect(QRectF(QPointF(), layout.size), palette[Ink::card]);
    paintDrawing(painter, layout.drawing, palette, {});
    painter.translate(0, layout.size.height() + 8);
  }
  return image;
}

StepView viewOf(const char* sampleName, StepId id) {
  for (StepView& view : stepViews(sample(sampleName)))
    if (view.step.id == id) return std::move(view);
  return {};
}

const Metrics usualMetrics{900, 1, {}, 1};

}  // namespace

class StepLayoutTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void staysInsideItsCard_data() { addAll(); }
  void staysInsideItsCard();
  void setsNoTextOverAnother_data() { addAll(); }
  void setsNoTextOverAnother();
  void numbersItsScaleInFull();
  void drawsNoLeaderThroughALabel_data() { addAll(); }
  void drawsNoLeaderThroughALabel();
  void spansBothSidesWithEachBar_data() { addAll(); }
  void spansBothSidesWithEachBar();
  void barIsAsWideAsTheWiderSide();
  void marksEachStruckPairTwice_data() { addAll(); }
  void marksEachStruckPairTwice();
  void uncoversFactorsThenPairsThenProductThenRounding();
  void drawsAPlainOneWithoutABar();
  void saysEqualOnlyWhereItIsExact();
  void tellsWhereEachNumberComesFrom();
  void setsLimitsToScale();
  void showsTheMaximumItIsComparedWith();
  void setsOneDoseOfADayBesideItsLimit();
  void fillsTheSyringeToTheMark();
  void fillsOneOfTwoSyringesWhole();
  void enlargesBetweenNumberedMarks();
  void drawsTheHalfTablet();
  void keepsANumberWithItsUnit_data() { addAll(); }
  void keepsANumberWithItsUnit();
  void shoots();

 private:
  void addAll();
};

void StepLayoutTest::addAll() {
  QTest::addColumn<int>("index");
  QTest::addColumn<double>("width");
  QTest::addColumn<double>("scale");
  for (std::size_t i = 0; i < samplesAndGoldens().size(); ++i)
    for (const auto& [width, scale] :
         {std::pair(900.0, 1.0), std::pair(900.0, 2.0), std::pair(560.0, 0.8), std::pair(320.0, 3.0)})
      QTest::addRow("%s, %g px, %g %%", samplesAndGoldens()[i].name.c_str(), width, scale * 100)
          << static_cast<int>(i) << width << scale;
}

// Qt fetches the columns of a row by name inside the test function, which no helper can do.
#define FETCH_LAYOUTS()                                                          \
  QFETCH(int, index);                                                            \
  QFETCH(double, width);                                                         \
  QFETCH(double, scale);                                                         \
  const Metrics metrics{width, scale, {}, 1};                                    \
  const SampleCase& each = samplesAndGoldens()[static_cast<std::size_t>(index)]; \
  const std::vector<StepLayout> all = layouts(each, metrics)

void StepLayoutTest::staysInsideItsCard() {
  FETCH_LAYOUTS();
  for (const StepLayout& layout : all) {
    const QRectF card = QRectF(QPointF(), layout.size).adjusted(-0.5, -0.5, 0.5, 0.5);
    for (const Run& run : layout.drawing.runs)
      QVERIFY2(card.contains(inkOf(run)), qPrintable(run.text + QLatin1Char(' ') + described(inkOf(run))));
    for (const Bar& bar : layout.drawing.bars) QVERIFY(card.contains(bar.from) && card.contains(bar.to));
    for (const Stroke& stroke : layout.drawing.strokes)
      QVERIFY(card.contains(stroke.from) && card.contains(stroke.to));
    for (const Area& area : layout.drawing.areas)
      QVERIFY2(card.contains(area.outline.boundingRect()),
               qPrintable(described(area.outline.boundingRect())));
  }
}

void StepLayoutTest::setsNoTextOverAnother() {
  FETCH_LAYOUTS();
  for (const StepLayout& layout : all) {
    const QString overlap = overlapIn(layout.drawing.runs);
    QVERIFY2(overlap.isEmpty(), qPrintable(overlap));
  }
}

/// Each number that stands over or under a bar lies between its ends.
/// A scale is numbered as a dose is written.
void StepLayoutTest::numbersItsScaleInFull() {
  QStringList figures;
  for (const StepView& view : stepViews(sample("long figures close together")))
    for (const Run& run : layOut(view, usualMetrics).drawing.runs) figures << run.text;
  QVERIFY2(figures.contains(QStringLiteral("1,000,000")) || figures.contains(QStringLiteral("2,000,000")),
           qPrintable(figures.join(u'|')));
  for (const QString& figure : figures) QVERIFY2(!figure.contains(QStringLiteral("E+")), qPrintable(figure));
}

/// The line from a figure to its place on the scale must not look like a stroke through another figure.
void StepLayoutTest::drawsNoLeaderThroughALabel() {
  FETCH_LAYOUTS();
  for (const StepLayout& layout : all)
    for (const Bar& bar : layout.drawing.bars) {
      if (bar.kind != Bar::Kind::rule || !qFuzzyCompare(1 + bar.from.x(), 1 + bar.to.x())) continue;
      const QRectF leader = QRectF(bar.from, bar.to).normalized();
      for (const Run& run : layout.drawing.runs) {
        const QRectF ink = inkOf(run);
        const bool within = ink.left() < leader.x() && leader.x() < ink.right();
        const bool across = leader.top() < ink.bottom() - 1 && ink.top() + 1 < leader.bottom();
        QVERIFY2(!(within && across), qPrintable(run.text + QLatin1Char(' ') + described(ink)));
      }
    }
}

void StepLayoutTest::spansBothSidesWithEachBar() {
  FETCH_LAYOUTS();
  for (const StepLayout& layout : all)
    for (const Bar& bar : layout.drawing.bars) {
      if (bar.kind != Bar::Kind::fraction) continue;
      int above = 0;
      int below = 0;
      for (const HitArea& hit : layout.drawing.hits) {
        const bool meets = hit.isNumber && hit.rect.left() < bar.to.x() && hit.rect.right() > bar.from.x();
        const double far = qMin(qAbs(hit.rect.bottom() - bar.from.y()), qAbs(hit.rect.top() - bar.from.y()));
        if (!meets || far > 4 * scale) continue;
        QVERIFY2(hit.rect.left() >= bar.from.x() && hit.rect.right() <= bar.to.x(), qPrintable(hit.text));
        ++(hit.rect.center().y() < bar.from.y() ? above : below);
      }
      QVERIFY(above > 0);
      QVERIFY(below > 0);
    }
}

void StepLayoutTest::barIsAsWideAsTheWiderSide() {
  for (const auto& [over, under] :
       {std::pair("1", "1,000,000 mg"), std::pair("1,000,000 mg", "1"), std::pair("8", "8")}) {
    const Box top = textBox(QString::fromLatin1(over), FontRole::number, Ink::text, usualMetrics);
    const Box bottom = textBox(QString::fromLatin1(under), FontRole::number, Ink::text, usualMetrics);
    const Box both = fraction(top, bottom, usualMetrics);
    QCOMPARE(both.drawing.bars.size(), std::size_t(1));
    const Bar& bar = both.drawing.bars.front();
    QVERIFY(bar.to.x() - bar.from.x() > qMax(top.width, bottom.width));
    for (const Run& run : both.drawing.runs)
      QVERIFY(run.rect.left() >= bar.from.x() && run.rect.right() <= bar.to.x());
    QVERIFY(both.drawing.runs[0].rect.bottom() <= bar.from.y());
    QVERIFY(both.drawing.runs[1].rect.top() >= bar.from.y());
  }
}

void StepLayoutTest::marksEachStruckPairTwice() {
  FETCH_LAYOUTS();
  const auto views = stepViews(workOut(each.given, each.rules));
  for (std::size_t i = 0; i < all.size(); ++i) {
    const auto* solved = std::get_if<Solved>(&views[i].step.body);
    if (!solved) continue;
    const auto& strokes = all[i].drawing.strokes;
    const std::vector<Stage> stages = stagesOf(views[i]);
    QCOMPARE(strokes.size(), 2 * solved->product.pairs.size());
    for (std::size_t pair = 0; pair < solved->product.pairs.size(); ++pair) {
      std::vector<const Stroke*> two;
      for (const Stroke& stroke : strokes)
        if (stages[static_cast<std::size_t>(stroke.stage)] ==
            Stage{StageKind::strike, static_cast<int>(pair)})
          two.push_back(&stroke);
      QCOMPARE(two.size(), std::size_t(2));
      QCOMPARE(two[0]->letter, two[1]->letter);
      QCOMPARE(two[0]->pattern, two[1]->pattern);
      QCOMPARE(two[0]->pattern, static_cast<int>(pair) % strokePatterns);
    }
  }
}

void StepLayoutTest::uncoversFactorsThenPairsThenProductThenRounding() {
  const StepLayout layout = layOut(viewOf("usual", StepId::bsa), usualMetrics);
  const auto stageOf = [&](const QString& text) {
    for (const Run& run : layout.drawing.runs)
      if (run.text == text) return run.stage;
    return -1;
  };
  const QString space(QChar::Nbsp);
  QCOMPARE(stageOf(QStringLiteral("103")), 1);
  QCOMPARE(stageOf(QStringLiteral("0.4921") + space + QStringLiteral("m⁴")), 4);  // after both pairs
  QCOMPARE(stageOf(QStringLiteral("0.7015") + space + QStringLiteral("m²")), 5);
  QCOMPARE(stageOf(QStringLiteral("0.70") + space + QStringLiteral("m²")), 6);
  QCOMPARE(stageOf(QStringLiteral("What is the body surface area (BSA)?")), 0);
  QCOMPARE(layout.stages, 7);
}

void StepLayoutTest::drawsAPlainOneWithoutABar() {
  const StepLayout layout = layOut(viewOf("usual", StepId::limitDose), usualMetrics);
  const auto bars = std::count_if(layout.drawing.bars.begin(), layout.drawing.bars.end(),
                                  [](const Bar& bar) { return bar.kind == Bar::Kind::fraction; });
  QCOMPARE(bars, std::ptrdiff_t(1));  // 120 mg over 1 m²·dose; 0.70 m² stands alone
}

void StepLayoutTest::saysEqualOnlyWhereItIsExact() {
  const auto signs = [](const StepView& view) {
    QString all;
    for (const Run& run : layOut(view, usualMetrics).drawing.runs)
      if (run.text == QStringLiteral("=") || run.text == QStringLiteral("≈")) all += run.text;
    return all;
  };
  QCOMPARE(signs(viewOf("usual", StepId::limitDose)), QStringLiteral("="));
  QCOMPARE(signs(viewOf("usual", StepId::bsa)), QStringLiteral("≈≈"));
  QCOMPARE(signs(viewOf("no route", StepId::give)), QStringLiteral("≈"));  // 80 mg of 30 mg/mL
}

void StepLayoutTest::tellsWhereEachNumberComesFrom() {
  const StepLayout layout = layOut(viewOf("usual", StepId::limitDose), usualMetrics);
  QStringList numbers;
  QStringList words;
  for (const HitArea& hit : layout.drawing.hits)
    (hit.isNumber ? numbers : words) << QString(hit.text).replace(QChar::Nbsp, u' ') + QStringLiteral(" < ") +
                                            hit.origin;
  QCOMPARE(numbers, QStringList({QStringLiteral("120 mg < reference.high"),
                                 QStringLiteral("1 m² · dose < reference.high"),
                                 QStringLiteral("0.70 m² < step:bsa")}));
  QVERIFY(words.contains(QStringLiteral("reference < reference.high")));
  QVERIFY(words.contains(QStringLiteral("step 1 < step:bsa")));
}

void StepLayoutTest::setsLimitsToScale() {
  const StepView view = viewOf("usual", StepId::compareSingle);
  QCOMPARE(view.landmarks.size(), std::size_t(3));
  const StepLayout layout = layOut(view, usualMetrics);
  QRectF allowed;
  QRectF below;
  for (const Area& area : layout.drawing.areas) {
    if (area.fill == Area::Fill::hatched) below = area.outline.boundingRect();
    if (area.ink == Ink::holds && area.fill == Area::Fill::solid) allowed = area.outline.boundingRect();
  }
  // hatched from 0 to 75.6 mg, allowed from there to 84 mg
  QCOMPARE(below.right(), allowed.left());
  QVERIFY(qAbs(allowed.width() / below.width() - (84 - 75.6) / 75.6) < 1e-6);
}

void StepLayoutTest::showsTheMaximumItIsComparedWith() {
  const StepView view = viewOf("not covered", StepId::compareMaxSingle);
  const bool shown = std::any_of(view.landmarks.begin(), view.landmarks.end(), [](const Landmark& landmark) {
    return landmark.kind == Landmark::Kind::maximum && landmark.value == Number(300);
  });
  QVERIFY(shown);
}

/// 25 mg once: one of three doses of 656 to 820 mg a day, not alone with the low end.
void StepLayoutTest::setsOneDoseOfADayBesideItsLimit() {
  const StepView view = viewOf("golden ask-one-dose-of-a-day", StepId::compareLow);
  const auto valueOf = [&](Landmark::Kind kind) {
    const auto found = std::find_if(view.landmarks.begin(), view.landmarks.end(),
                                    [kind](const Landmark& landmark) { return landmark.kind == kind; });
    return found == view.landmarks.end() ? Number() : found->value;
  };
  QCOMPARE(valueOf(Landmark::Kind::ordered), Number(25));
  QCOMPARE(valueOf(Landmark::Kind::low), Number::ratio(656, 3));
  QCOMPARE(valueOf(Landmark::Kind::limit), Number::ratio(820, 3));
}

std::vector<QRectF> liquids(const StepLayout& layout) {
  std::vector<QRectF> found;
  for (const Area& area : layout.drawing.areas)
    if (area.ink == Ink::liquid) found.push_back(area.outline.boundingRect());
  return found;
}

void StepLayoutTest::fillsTheSyringeToTheMark() {
  const StepLayout layout = layOut(viewOf("usual", StepId::device), usualMetrics);
  const QRectF liquid = liquids(layout).front();
  double barrel = 0;
  for (const Area& area : layout.drawing.areas)
    if (area.fill == Area::Fill::none && area.outline.boundingRect().left() == liquid.left())
      barrel = area.outline.boundingRect().width();
  QVERIFY(qAbs(liquid.width() / barrel - 3.2 / 5) < 1e-6);
}

// 1 mL and 0.16 mL: the full one above, without its scale enlarged, and the rest below it.
void StepLayoutTest::fillsOneOfTwoSyringesWhole() {
  const StepView view = viewOf("two syringes", StepId::device);
  const StepLayout layout = layOut(view, usualMetrics);
  const std::vector<QRectF> filled = liquids(layout);
  QCOMPARE(filled.size(), std::size_t(3));
  std::vector<double> parts;
  for (const QRectF& liquid : {filled[0], filled[1]})
    for (const Area& area : layout.drawing.areas) {
      const QRectF frame = area.outline.boundingRect();
      if (area.fill == Area::Fill::none && frame.left() == liquid.left() && frame.top() == liquid.top())
        parts.push_back(liquid.width() / frame.width());
    }
  QCOMPARE(parts.size(), std::size_t(2));
  QVERIFY(qAbs(parts[0] - 1) < 1e-6 && qAbs(parts[1] - 0.16) < 1e-6);
  QVERIFY(filled[0].bottom() < filled[1].top());
  QStringList read;
  for (const Run& run : layout.drawing.runs) read << run.text;
  QVERIFY(read.contains(QStringLiteral("0.16")) && !read.contains(QStringLiteral("1.16")));
}

void StepLayoutTest::enlargesBetweenNumberedMarks() {
  const StepLayout layout = layOut(viewOf("usual", StepId::device), usualMetrics);
  const QRectF enlarged = liquids(layout).at(1);
  QStringList figures;
  for (const Run& run : layout.drawing.runs)
    if (run.rect.center().x() > enlarged.left() - 12 && run.rect.top() > enlarged.center().y() &&
        run.rect.left() < enlarged.left() + 200)
      figures << run.text;
  QCOMPARE(figures.mid(0, 2), QStringList({QStringLiteral("3"), QStringLiteral("4")}));
}

void StepLayoutTest::drawsTheHalfTablet() {
  const StepLayout layout = layOut(viewOf("tablet", StepId::device), usualMetrics);
  const std::vector<QRectF> given = liquids(layout);
  QCOMPARE(given.size(), std::size_t(2 + 1));  // a whole one, the outline of the second, and its given half
  QVERIFY(qAbs(given.front().width() - 2 * given.back().width()) < 1);
}

void StepLayoutTest::keepsANumberWithItsUnit() {
  FETCH_LAYOUTS();
  static const QRegularExpression bare(QStringLiteral("[0-9] (mg|mL|g|kg|mcg|m²|h|doses?|tablets?)\\b"));
  for (const StepLayout& layout : all)
    for (const Run& run : layout.drawing.runs) QVERIFY2(!run.text.contains(bare), qPrintable(run.text));
}

void StepLayoutTest::shoots() {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) QSKIP("no folder for pictures is named");
  for (const SampleCase& each : sampleCases())
    for (const auto& [width, scale] : {std::pair(900.0, 1.0), std::pair(900.0, 2.0), std::pair(320.0, 3.0)}) {
      const Metrics metrics{width, scale, {}, 1};
      const auto all = layouts(each, metrics);
      if (all.empty()) continue;
      picture(all, metrics, Scheme::light)
          .save(QStringLiteral("%1/steps-%2-%3-%4.png").arg(folder, name(each)).arg(width).arg(scale * 100));
    }
}

#undef FETCH_LAYOUTS

WARDCHALK_QT_TEST(StepLayoutTest)

}  // namespace wardchalk::ui::test::step_layout_test

#include "step_layout_test.moc"
