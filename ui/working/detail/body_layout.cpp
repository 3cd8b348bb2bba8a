#include "ui/working/detail/body_layout.h"

#include <algorithm>
#include <utility>

#include "core/words/step_words.h"
#include "ui/theme/text.h"
#include "ui/working/detail/chain_layout.h"
#include "ui/working/detail/pieces.h"
#include "ui/working/detail/syringe.h"
#include "ui/working/detail/tablets.h"
#include "ui/working/detail/term_box.h"

namespace wardchalk::ui::detail {

namespace {

ChainResult resultOf(const StepView& view) {
  const bool rounds = !view.rounding.isEmpty();
  ChainResult result;
  result.product = rounds ? view.product : view.conclusion;
  result.exact = view.productExact;
  result.rounded = rounds ? view.conclusion : QString();
  result.rule = view.rounding;
  result.origin = QStringLiteral("step:") + QString::fromUtf8(idOf(view.step.id).data());
  result.under = view.underRoot;
  result.underExact = view.underRootExact;
  result.leftOver = view.leftOver;
  return result;
}

/// The base in its text size with the power set high: no stroke, no letter is ever there.
Box powerBox(const Term& base, const Number& power, const Metrics& metrics) {
  Box low = termBox(base, {}, metrics, 1);
  Box open = textBox(QStringLiteral("("), FontRole::number, Ink::text, metrics);
  Box close = textBox(QStringLiteral(")"), FontRole::number, Ink::text, metrics);
  Box high = textBox(numberText({power, {}, base.origin, -1}), FontRole::power, Ink::text, metrics);
  const double lift = low.above * 0.5;
  high.drawing.moveBy({0, -lift});
  high.above += lift;
  high.below = std::max(0.0, high.below - lift);
  return row({std::move(open), std::move(low), std::move(close), std::move(high)}, metrics.px(1));
}

Piece glued(const QString& sign, Box box, Box tag, const Metrics& metrics) {
  if (!sign.isEmpty())
    box = row({textBox(sign, FontRole::number, Ink::text, metrics), std::move(box)},
              metrics.px(8) * metrics.chainScale);
  return {std::move(box), std::move(tag)};
}

std::vector<Piece> formulaPieces(const StepView& view, const SurfaceByFormula& formula,
                                 const Metrics& metrics, double width) {
  const auto tag = [&](const Term& term) { return tagsBox({&term}, view.tags, metrics, width); };
  const ChainResult result = resultOf(view);
  std::vector<Piece> pieces;
  pieces.push_back(glued({}, termBox(formula.factor, {}, metrics, 1), tag(formula.factor), metrics));
  pieces.push_back(glued(QStringLiteral("×"), powerBox(formula.height, formula.heightPower, metrics),
                         tag(formula.height), metrics));
  pieces.push_back(glued(QStringLiteral("×"), powerBox(formula.weight, formula.weightPower, metrics),
                         tag(formula.weight), metrics));
  for (Piece& piece : pieces) {
    piece.body.drawing.setStage(1);
    piece.tag.drawing.setStage(1);
  }
  const bool rounds = !result.rounded.isEmpty();
  const auto say = [&](const QString& sign, const QString& text, bool last, int stage) {
    Box said = paragraph(text, last ? FontRole::result : FontRole::number, Ink::text, metrics, width * 0.9);
    if (last) said.drawing.hits.push_back({said.rect(), result.origin, text, 0});
    Piece piece =
        glued(sign, std::move(said), last && rounds ? quietBox(result.rule, metrics, width) : Box(), metrics);
    piece.body.drawing.setStage(stage);
    piece.tag.drawing.setStage(stage);
    pieces.push_back(std::move(piece));
  };
  say(result.exact ? QStringLiteral("=") : QStringLiteral("≈"), result.product, !rounds, 2);
  if (rounds) say(QStringLiteral("→"), result.rounded, true, 3);
  return pieces;
}

}  // namespace

Body formulaBody(const StepView& view, const SurfaceByFormula& formula, const Metrics& metrics,
                 double width) {
  Metrics fitting = metrics;
  std::vector<Piece> pieces = formulaPieces(view, formula, fitting, width);
  while (widestOf(pieces) > width && fitting.chainScale > 0.3) {
    fitting.chainScale *= 0.92;
    pieces = formulaPieces(view, formula, fitting, width);
  }
  return {piecesBox(std::move(pieces), fitting.px(10), fitting, width), view.rounding.isEmpty() ? 2 : 3};
}

Body solvedBody(const StepView& view, const Solved& solved, const Metrics& metrics, double width) {
  const ChainResult result = resultOf(view);
  const int first = 1 + static_cast<int>(view.sums.size());
  ChainBox chain = chainBox({solved.chain, solved.product.pairs, result, view.tags}, metrics, width, first);
  if (view.sums.isEmpty()) return {std::move(chain.box), chain.lastStage};
  std::vector<Box> rows;
  for (const QString& sum : view.sums) {
    rows.push_back(paragraph(sum, FontRole::body, Ink::text, metrics, width));
    rows.back().drawing.setStage(static_cast<int>(rows.size()));
  }
  rows.push_back(std::move(chain.box));
  return {column(std::move(rows), metrics.px(4)), chain.lastStage};
}

namespace {

Box deviceBox(const Measuring& measuring, const Metrics& metrics, double width) {
  if (measuring.exact.unit != Unit::mL) return tabletsBox(measuring, metrics, width);
  return drawsSyringe(measuring) ? syringeBox(measuring, metrics, width) : Box();
}

/// Drawing and sentence side by side where there is room for both, else one below the other.
Box measuredBox(Box drawn, const StepView& view, const Metrics& metrics, double width, int stage) {
  const double air = metrics.px(20);
  const bool beside = drawn.width > 0 && width - drawn.width - air >= metrics.px(180);
  const double room = beside ? width - drawn.width - air : width;
  Box said = paragraph(view.conclusion, FontRole::body, Ink::text, metrics, room);
  said.drawing.setStage(stage);
  if (drawn.width <= 0) return said;
  if (!beside) return column({std::move(said), std::move(drawn)}, metrics.px(6));
  const double y = (said.below - said.above) / 2 - (drawn.below - drawn.above) / 2;
  Box all{width, std::max(said.above, drawn.above - y), std::max(said.below, drawn.below + y), {}};
  all.drawing = std::move(drawn.drawing);
  all.drawing.moveBy({0, y});
  all.drawing.add(std::move(said.drawing), {width - room, 0});
  return all;
}

}  // namespace

/// Stage 1 is the exact amount, which a card does not repeat; then the empty scale, if a syringe is drawn;
/// then what is read there.
Body measuringBody(const StepView& view, const Measuring& measuring, const Metrics& metrics, double width) {
  const int reading = drawsSyringe(measuring) ? 3 : 2;
  Box drawn = deviceBox(measuring, metrics, width);
  drawn.drawing.delayBy(2);
  Box measured = measuredBox(std::move(drawn), view, metrics, width, reading);
  if (!metrics.forBoard) return {std::move(measured), reading};
  Box exact = textBox(held(givenText(measuring.exact)), FontRole::result, Ink::text, metrics);
  exact.drawing.setStage(1);
  return {column({std::move(exact), std::move(measured)}, metrics.px(10)), reading};
}

}  // namespace wardchalk::ui::detail
