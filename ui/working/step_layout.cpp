#include "ui/working/step_layout.h"

#include <algorithm>
#include <utility>

#include "ui/working/box.h"
#include "ui/working/detail/body_layout.h"
#include "ui/working/type_measure.h"

namespace wardchalk::ui {

namespace {

/// On cards narrower than this the working begins at the left edge and not under the question.
constexpr double narrowCard = 420;

detail::Body bodyOf(const StepView& view, const Metrics& metrics, double width) {
  const auto& body = view.step.body;
  if (const auto* solved = std::get_if<Solved>(&body))
    return detail::solvedBody(view, *solved, metrics, width);
  if (const auto* formula = std::get_if<SurfaceByFormula>(&body))
    return detail::formulaBody(view, *formula, metrics, width);
  if (const auto* comparison = std::get_if<Comparison>(&body))
    return detail::comparisonBody(view, *comparison, metrics, width);
  return detail::measuringBody(view, std::get<Measuring>(body), metrics, width);
}

/// The step's number on its disc; the baseline is the question's.
Box discBox(const StepView& view, const Metrics& metrics) {
  Box figure = textBox(QString::number(view.number), FontRole::disc, Ink::onDisc, metrics);
  const double radius = std::max(metrics.px(12), figure.width / 2 + metrics.px(4));
  const TypeMeasure font(metrics.type(FontRole::disc), metrics.family);
  const double middle = -font.capHeight() / 2;
  Box box{2 * radius, radius - middle, radius + middle, {}};
  box.drawing.areas.push_back({corners({0, middle - radius, 2 * radius, 2 * radius}), radius,
                               Area::Fill::solid, Ink::disc, 0, Ink::line, 0});
  box.drawing.add(std::move(figure.drawing), {radius - figure.width / 2, 0});
  return box;
}

/// What is looked for and why: quiet words in lines no wider than `width`.
Box asideBox(const QString& text, Ink ink, const Metrics& metrics, double width) {
  return paragraph(text, FontRole::aside, ink, metrics, width);
}

/// Question and what is looked for on the left, the reason at the right edge when all fit on one line, else
/// below.
Box headerBox(const StepView& view, const Metrics& metrics, double width) {
  const double gap = metrics.px(16);
  std::vector<Box> left;
  left.push_back(paragraph(view.question, FontRole::question, Ink::text, metrics, width));
  if (!view.lookingFor.isEmpty()) left.push_back(asideBox(view.lookingFor, Ink::accent, metrics, width));
  Box said = wrapped(std::move(left), gap, metrics.px(2), width);
  if (view.reason.isEmpty()) return said;
  Box reason = textBox(view.reason, FontRole::aside, Ink::quiet, metrics);
  if (said.width + gap + reason.width > width)
    return column({std::move(said), asideBox(view.reason, Ink::quiet, metrics, width)}, metrics.px(2));
  Box all{width, std::max(said.above, reason.above), std::max(said.below, reason.below), {}};
  all.drawing = std::move(said.drawing);
  all.drawing.add(std::move(reason.drawing), {width - reason.width, 0});
  return all;
}

/// On a narrow card the quiet words begin at the left edge, under the disc.
std::vector<Box> narrowAsides(const StepView& view, const Metrics& metrics, double width) {
  std::vector<Box> boxes;
  if (!view.lookingFor.isEmpty()) boxes.push_back(asideBox(view.lookingFor, Ink::accent, metrics, width));
  if (!view.reason.isEmpty()) boxes.push_back(asideBox(view.reason, Ink::quiet, metrics, width));
  return boxes;
}

}  // namespace

StepLayout layOut(const StepView& view, const Metrics& metrics) {
  const double pad = metrics.px(12);
  const double padBelow = metrics.px(8);
  Box disc = discBox(view, metrics);
  const double indent = pad + disc.width + metrics.px(12);
  const double headerWidth = metrics.width - indent - pad;
  const bool narrow = metrics.width < metrics.px(narrowCard);
  const double bodyLeft = narrow ? pad : indent;
  const double bodyWidth = metrics.width - bodyLeft - pad;

  StepLayout layout;
  Box header = narrow ? paragraph(view.question, FontRole::question, Ink::text, metrics, headerWidth)
                      : headerBox(view, metrics, headerWidth);
  const double headerBase = metrics.px(8) + std::max(disc.above, header.above);
  double bottom = headerBase + std::max(disc.below, header.below);
  layout.drawing.add(std::move(disc.drawing), {pad, headerBase});
  layout.drawing.add(std::move(header.drawing), {indent, headerBase});
  if (narrow)
    for (Box& aside : narrowAsides(view, metrics, bodyWidth)) {
      layout.drawing.add(std::move(aside.drawing), {bodyLeft, bottom + metrics.px(2) + aside.above});
      bottom += metrics.px(2) + aside.height();
    }

  detail::Body body = bodyOf(view, metrics, bodyWidth);
  const double bodyBase = bottom + metrics.px(4) + body.box.above;
  layout.drawing.add(std::move(body.box.drawing), {bodyLeft, bodyBase});
  bottom = bodyBase + body.box.below + padBelow;

  layout.size = {metrics.width, bottom};
  layout.stages = body.lastStage + 1;
  return layout;
}

StepLayout layOutBody(const StepView& view, const Metrics& metrics) {
  detail::Body body = bodyOf(view, metrics, metrics.width);
  StepLayout layout;
  layout.size = {body.box.width, body.box.height()};
  layout.stages = body.lastStage + 1;
  layout.drawing.add(std::move(body.box.drawing), {0, body.box.above});
  return layout;
}

}  // namespace wardchalk::ui
