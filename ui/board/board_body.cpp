#include "ui/board/board_body.h"

#include <algorithm>
#include <utility>

#include "ui/working/stages.h"

namespace wardchalk::ui {

namespace {

/// So much smaller the letters may become for a chain to stay on one line.
constexpr double oneLineShare = 0.62;
constexpr double finer = 0.95;
/// Wider than any chain.
constexpr double endless = 1e5;

Metrics boardMetrics(double width, double scale, const BoardSizes& sizes) {
  Metrics metrics{width, scale, sizes.family(), 1};
  metrics.forBoard = true;
  return metrics;
}

bool isChain(const StepView& view) {
  return std::holds_alternative<Solved>(view.step.body) ||
         std::holds_alternative<SurfaceByFormula>(view.step.body);
}

/// The scale from which to look downwards for one that fits.
double firstScale(const StepView& view, double width, const BoardSizes& sizes) {
  const double most = sizes.mostScale();
  if (!isChain(view)) return most;
  const double natural = layOutBody(view, boardMetrics(endless, most, sizes)).size.width();
  if (natural <= width) return most;
  const double oneLine = most * width / natural * 0.99;
  return oneLine >= most * oneLineShare ? oneLine : most;
}

}  // namespace

BoardBody fitBody(const StepView& view, const QRectF& room, const BoardSizes& sizes) {
  double scale = firstScale(view, room.width(), sizes);
  StepLayout layout = layOutBody(view, boardMetrics(room.width(), scale, sizes));
  // Nothing is ever cut off: what does not fit at the least size is set smaller still.
  constexpr double smallest = 0.3;
  while (layout.size.height() > room.height() && scale > smallest) {
    const bool aboveLeast = scale > sizes.leastScale();
    scale *= finer;
    if (aboveLeast) scale = std::max(scale, sizes.leastScale());
    layout = layOutBody(view, boardMetrics(room.width(), scale, sizes));
  }
  BoardBody body;
  body.scale = scale;
  const double spare = std::max(0.0, room.height() - layout.size.height());
  body.rect = {room.topLeft() + QPointF(0, spare * 0.42), layout.size};
  body.drawing.add(std::move(layout.drawing), body.rect.topLeft());
  return body;
}

std::vector<QRectF> framesOf(const BoardBody& body, int factor) {
  std::vector<QRectF> frames;
  for (const HitArea& hit : body.drawing.hits) {
    if (hit.factor != factor) continue;
    const bool stacked =
        !frames.empty() && hit.rect.left() < frames.back().right() && frames.back().left() < hit.rect.right();
    if (stacked)
      frames.back() = frames.back().united(hit.rect);
    else
      frames.push_back(hit.rect);
  }
  return frames;
}

QRectF placeOfResult(const BoardBody& body, const StepView& view) {
  const std::vector<Stage> stages = stagesOf(view);
  const auto first = std::find_if(stages.begin(), stages.end(), [](const Stage& stage) {
    return stage.kind == StageKind::underRoot || stage.kind == StageKind::product;
  });
  if (first == stages.end()) return {};
  const auto at = static_cast<int>(first - stages.begin());
  for (const Run& run : body.drawing.runs) {
    if (run.stage != at) continue;
    const double high = run.type.pixels;
    const double wide = std::min(3.4 * high, body.rect.right() - run.rect.left());
    return {run.rect.left() + high * 0.2, run.at.y() - high * 1.15, std::max(wide, high * 1.4), high * 1.7};
  }
  return {};
}

}  // namespace wardchalk::ui
