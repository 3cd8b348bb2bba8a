#include "ui/working/detail/body_layout.h"

#include <algorithm>
#include <utility>

#include "core/words/step_words.h"
#include "ui/working/detail/chain_layout.h"
#include "ui/working/detail/number_line.h"
#include "ui/working/detail/pieces.h"

namespace wardchalk::ui::detail {

namespace {

/// A number line narrower than this says little.
constexpr double narrowestLine = 300;
constexpr double widestLine = 520;

Piece sidePiece(const QString& text, const Side& side, const StepView& view, const Metrics& metrics,
                double width) {
  const FontRole role = !isStated(side.stated) ? FontRole::big : FontRole::words;
  Piece piece{paragraph(text, role, Ink::text, metrics, width),
              tagsBox({&side.term}, view.tags, metrics, width)};
  const QString origin = QString::fromStdString(side.term.origin.text());
  piece.body.drawing.hits.push_back({piece.body.rect(), origin, text, 0, true});
  piece.body.drawing.setStage(1);
  piece.tag.drawing.setStage(1);
  return piece;
}

/// A truth in its colour; one that judges nothing stands in plain ink.
Box badge(bool holds, bool judges, const QString& word, const Metrics& metrics) {
  const Ink ink = !holds ? Ink::fails : judges ? Ink::holds : Ink::text;
  const Ink ground = !holds ? Ink::failsFill : judges ? Ink::holdsFill : Ink::card;
  Box text = textBox(word, FontRole::badge, ink, metrics);
  const double side = metrics.px(10);
  const double air = metrics.px(3);
  Box box{text.width + 2 * side, text.above + air, text.below + air, {}};
  box.drawing.areas.push_back({corners(box.rect()), metrics.px(5), Area::Fill::solid, ground,
                               std::max(1.0, metrics.px(holds ? 1.2 : 2)), ink, 0});
  box.drawing.add(std::move(text.drawing), {side, 0});
  return box;
}

Piece plain(Box box, int stage) {
  box.drawing.setStage(stage);
  return {std::move(box), {}};
}

std::vector<Piece> inequality(const StepView& view, const Comparison& comparison, const Metrics& metrics,
                              double width) {
  std::vector<Piece> pieces;
  pieces.push_back(sidePiece(view.left, comparison.left, view, metrics, width));
  const FontRole role = view.relation.size() == 1 ? FontRole::big : FontRole::body;  // a sign, or words
  if (!view.relation.isEmpty())
    pieces.push_back(plain(paragraph(view.relation, role, Ink::text, metrics, width), 2));
  pieces.push_back(sidePiece(view.right, comparison.right, view, metrics, width));
  pieces.push_back(plain(badge(comparison.holds, view.judges, view.conclusion, metrics), 3));
  return pieces;
}

/// The chain that a side was found by, in smaller type: "84 mg × 90 over 100 = 75.6 mg".
void addSideChain(std::vector<Box>& rows, const Side& side, const QString& comesTo, const StepView& view,
                  const Metrics& metrics, double width) {
  if (!side.chain) return;
  const Product product = cancel(*side.chain);
  const bool exact = isShownExactly(side);
  ChainResult result;
  result.product = exact ? comesTo : comesTo.mid(1).trimmed();
  result.exact = exact;
  Metrics smaller = metrics;
  smaller.chainScale = 0.85;
  ChainBox chain = chainBox({*side.chain, product.pairs, result, view.tags}, smaller, width, 1);
  chain.box.drawing.setStage(1);
  rows.push_back(std::move(chain.box));
}

double widthOf(const std::vector<Piece>& pieces, double gap) {
  double width = 0;
  for (const Piece& piece : pieces) width += (width > 0 ? gap : 0) + piece.width();
  return width;
}

/// Beside when there is room for it, else below.
Box withLine(Box said, const StepView& view, const Metrics& metrics, double width) {
  if (view.landmarks.empty()) return said;
  const double air = metrics.px(28);
  const double room = width - said.width - air;
  const bool beside = room >= metrics.px(narrowestLine);
  const double wide = std::min(beside ? room : width, metrics.px(widestLine));
  Box line = numberLine(view.landmarks, view.unit, metrics, wide, view.judges ? Ink::holds : Ink::quiet);
  line.drawing.setStage(3);
  if (!beside) return column({std::move(said), std::move(line)}, metrics.px(6));
  // the line's axis stands a little below the middle of the inequality, so that labels and figures share the
  // height
  const double middle = (said.below - said.above) / 2;
  const double y = middle + (line.above - line.below) / 2;
  Box all{width, std::max(said.above, line.above - y), std::max(said.below, line.below + y), {}};
  all.drawing = std::move(said.drawing);
  all.drawing.add(std::move(line.drawing), {width - line.width, y});
  return all;
}

}  // namespace

Body comparisonBody(const StepView& view, const Comparison& comparison, const Metrics& metrics,
                    double width) {
  const double gap = metrics.px(12);
  Metrics fitting = metrics;
  std::vector<Piece> pieces = inequality(view, comparison, fitting, width);
  const auto widest = [&] {
    double most = 0;
    for (const Piece& piece : pieces) most = std::max(most, piece.width());
    return most;
  };
  while (widest() > width && fitting.chainScale > 0.3) {
    fitting.chainScale *= std::min(0.95, width / widest());
    pieces = inequality(view, comparison, fitting, width);
  }
  const double said = std::min(width, widthOf(pieces, gap));
  std::vector<Box> rows;
  const bool besideFits =
      !view.landmarks.empty() && width - said - metrics.px(28) >= metrics.px(narrowestLine);
  rows.push_back(piecesBox(std::move(pieces), gap, fitting, width));
  const double chainRoom = besideFits ? std::max(said, width - metrics.px(28 + narrowestLine)) : width;
  addSideChain(rows, comparison.left, view.leftChain, view, metrics, chainRoom);
  addSideChain(rows, comparison.right, view.rightChain, view, metrics, chainRoom);
  return {withLine(column(std::move(rows), metrics.px(4)), view, metrics, width), 3};
}

}  // namespace wardchalk::ui::detail
