#include "ui/working/step_layout.h"

#include <QImage>
#include <QPainter>
#include <QTest>

#include "core/check/work_out.h"
#include "core/words/phrasebook.h"
#include "tests/ui/working/sample_cases.h"
#include "ui/working/paint_drawing.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui::test {

namespace {

QString name(const SampleCase& each) { return QString::fromStdString(each.name); }

std::vector<StepLayout> layouts(const SampleCase& each, const Metrics& metrics) {
  std::vector<StepLayout> all;
  for (const StepView& view : stepViews(workOut(each.given, each.rules), englishPhrases()))
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

}  // namespace

class StepLayoutTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void shoots();
};

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

}  // namespace wardchalk::ui::test

QTEST_MAIN(wardchalk::ui::test::StepLayoutTest)
#include "step_layout_test.moc"
