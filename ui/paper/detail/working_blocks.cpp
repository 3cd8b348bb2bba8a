#include "ui/paper/detail/working_blocks.h"

#include <algorithm>
#include <array>
#include <utility>

#include "ui/paper/detail/flowed.h"
#include "ui/working/step_layout.h"

namespace wardchalk::ui::detail {

namespace {

/// Most steps that stand side by side.
constexpr std::size_t mostInRow = 3;

/// Cards have room round what is on them; on paper the cells of a row share it, so that all is flush with the
/// edge.
double cardPad(const Metrics& metrics) { return metrics.px(9); }
double gutter(const Metrics& metrics) { return metrics.px(12); }

double cellWidth(std::size_t inRow, const Metrics& metrics) {
  return (metrics.width + gutter(metrics)) / static_cast<double>(inRow) - gutter(metrics);
}

/// A step set as one of one, two or three in a row.
using Settings = std::array<StepLayout, mostInRow>;

std::vector<Settings> settingsOf(const SheetContent& content, const Metrics& metrics) {
  std::vector<Settings> all(content.steps.size());
  for (std::size_t inRow = 1; inRow <= mostInRow; ++inRow) {
    Metrics cell = metrics;
    cell.width = cellWidth(inRow, metrics) + 2 * cardPad(metrics);
    for (std::size_t i = 0; i < all.size(); ++i) all[i][inRow - 1] = layOut(content.steps[i], cell);
  }
  return all;
}

double rowHeight(const std::vector<Settings>& settings, std::size_t first, std::size_t inRow) {
  double height = 0;
  for (std::size_t i = first; i < first + inRow; ++i)
    height = std::max(height, settings[i][inRow - 1].size.height());
  return height;
}

/// For each step how many stand in a row that begins with it, so that all rows together are as low as can be.
std::vector<std::size_t> rowsOf(const std::vector<Settings>& settings) {
  const std::size_t count = settings.size();
  std::vector<double> least(count + 1, 0);
  std::vector<std::size_t> rows(count, 1);
  for (std::size_t i = count; i-- > 0;) {
    least[i] = rowHeight(settings, i, 1) + least[i + 1];
    for (std::size_t inRow = 2; inRow <= std::min(mostInRow, count - i); ++inRow) {
      const double height = rowHeight(settings, i, inRow) + least[i + inRow];
      if (height >= least[i]) continue;
      least[i] = height;
      rows[i] = inRow;
    }
  }
  return rows;
}

void addRule(SheetBlock& block, QPointF from, QPointF to) {
  block.drawing.bars.push_back({Bar::Kind::rule, from, to, 0.75, Ink::edge, 0});
}

SheetBlock rowBlock(const std::vector<Settings>& settings, std::size_t first, std::size_t inRow,
                    const Metrics& metrics) {
  SheetBlock block;
  block.height = rowHeight(settings, first, inRow);
  addRule(block, {0, 0}, {metrics.width, 0});
  const double step = cellWidth(inRow, metrics) + gutter(metrics);
  for (std::size_t i = 0; i < inRow; ++i) {
    const double left = static_cast<double>(i) * step;
    const double between = left - gutter(metrics) / 2;
    if (i > 0) addRule(block, {between, metrics.px(8)}, {between, block.height - metrics.px(4)});
    block.drawing.add(settings[first + i][inRow - 1].drawing, {left - cardPad(metrics), 0});
  }
  return block;
}

SheetBlock headingBlock(const SheetContent& content, const Metrics& metrics) {
  Box all = flowed({{content.workingHeading, typeOf(FontRole::question, true, metrics)},
                    {QStringLiteral("\u00a0 ") + content.legend, typeOf(FontRole::tag, false, metrics)}},
                   metrics, metrics.width);
  SheetBlock block;
  block.height = all.height() + metrics.px(4);
  block.drawing.add(std::move(all.drawing), {0, all.above});
  block.gapBefore = metrics.px(10);
  block.staysWithNext = true;
  return block;
}

SheetBlock leftOutBlock(const QString& text, const Metrics& metrics) {
  Box said = flowed({{text, typeOf(FontRole::finding, true, metrics)}}, metrics, metrics.width);
  SheetBlock block;
  addRule(block, {0, 0}, {metrics.width, 0});
  block.height = said.height() + metrics.px(8);
  block.drawing.add(std::move(said.drawing), {0, metrics.px(4) + said.above});
  return block;
}

}  // namespace

std::vector<SheetBlock> workingBlocks(const SheetContent& content, const Metrics& metrics) {
  if (content.steps.empty()) return {};
  const std::vector<Settings> settings = settingsOf(content, metrics);
  const std::vector<std::size_t> rows = rowsOf(settings);
  std::vector<SheetBlock> blocks{headingBlock(content, metrics)};
  for (std::size_t i = 0; i < settings.size(); i += rows[i])
    blocks.push_back(rowBlock(settings, i, rows[i], metrics));
  if (!content.leftOut.isEmpty()) blocks.push_back(leftOutBlock(content.leftOut, metrics));
  return blocks;
}

}  // namespace wardchalk::ui::detail
