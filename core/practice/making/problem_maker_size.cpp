#include <array>

#include "core/medicine/paths.h"
#include "core/practice/making/problem_numbers.h"
#include "core/practice/making/problem_sketch.h"

namespace wardchalk {

namespace {

/// A height or a weight in the other system from the rest, so that one of them wants converting first.
ProblemSketch mixedSystems(ProblemDraw& draw, const ProblemChild& child, bool parts) {
  ProblemSketch metric, household;
  writeChild(metric, child, SizeStyle::metric, true);
  writeChild(household, child, parts ? SizeStyle::householdParts : SizeStyle::household, true);
  const std::string_view other = draw.below(2) == 0 ? path::height : path::weight;
  for (WrittenEntry& entry : metric.entries)
    for (const WrittenEntry& from : household.entries)
      if (entry.path == other && from.path == other) entry.text = from.text;
  metric.lines.push_back(other == path::height ? StepId::height : StepId::weight);
  return metric;
}

/// A small child weighed in g, or one measured in m: one step of a thousand or a hundred.
ProblemSketch metricSteps(ProblemDraw& draw) {
  ProblemSketch sketch;
  const bool infant = draw.below(2) == 0;
  const ProblemChild child = drawProblemChild(draw, infant ? 2 : 30, infant ? 14 : 170);
  sketch.set(path::age, child.ageText());
  sketch.set(path::sex, child.sex == Sex::female ? "female" : "male");
  sketch.set(path::height, infant ? std::to_string(child.cm) + " cm" : decimalText(child.cm * 10) + " m");
  const std::int64_t weightInGrams = child.kgTenths * 100 + draw.between(-4, 4) * 10;
  sketch.set(path::weight,
             infant ? std::to_string(weightInGrams) + " g" : decimalText(child.kgTenths * 100) + " kg");
  sketch.lines.push_back(infant ? StepId::weight : StepId::height);
  return sketch;
}

/// The order in g or mcg, of so many thousandths of a mg.
void writeOrderElsewhere(ProblemSketch& sketch, ProblemDraw& draw, std::int64_t dose, bool inGrams) {
  const ProblemOften often{static_cast<int>(draw.between(1, 3)), true};
  sketch.set(path::dose, inGrams ? decimalText(dose / 1000) + " g" : decimalText(dose * 1000) + " mcg");
  sketch.set(path::route, "oral");
  sketch.set(path::schedule, often.text());
  sketch.set(path::referenceSchedule, often.text());
  sketch.set(path::referenceRoute, "oral");
}

/// The order in one unit, the reference and the label in another.
Sketched drugSteps(ProblemDraw& draw) {
  ProblemSketch sketch;
  const int months = beginPapers(sketch, draw, 13, 170).months;
  const bool inGrams = draw.below(2) == 0;
  const std::int64_t dose =
      *roundNumberIn(draw, inGrams ? 120 * one : one / 10, inGrams ? 900 * one : one * 9 / 10);
  const auto low = roundNumberIn(draw, dose / 2, dose * 3 / 4);
  const auto high = roundNumberIn(draw, dose * 5 / 4, dose * 2);
  if (!low || !high || !writeLiquid(sketch, draw, {dose, "mg", "oral", months}, false)) return std::nullopt;
  if (inGrams && dose % (10 * one) != 0) return std::nullopt;
  writeOrderElsewhere(sketch, draw, dose, inGrams);
  sketch.set(path::low, decimalText(*low) + " mg/dose");
  sketch.set(path::high, decimalText(*high) + " mg/dose");
  sketch.lines = {StepId::limitDose};
  sketch.amountLines = {StepId::give};
  return sketch;
}

}  // namespace

Sketched sketchSurface(ProblemDraw& draw, int level) {
  const ProblemChild child = drawProblemChild(draw, 13, 200);
  ProblemSketch sketch;
  if (level == 3 && draw.percent(70)) {
    sketch = mixedSystems(draw, child, draw.below(2) == 0);
  } else {
    const bool parts = level == 3 || (level == 2 && draw.percent(30));
    const SizeStyle household = parts ? SizeStyle::householdParts : SizeStyle::household;
    writeChild(sketch, child, level == 1 ? SizeStyle::metric : household, true);
  }
  sketch.lines.push_back(StepId::bsa);
  return sketch;
}

Sketched sketchConversion(ProblemDraw& draw, int level) {
  if (level == 1) return metricSteps(draw);
  if (level == 2) {
    // one after the other: compilers differ in which argument of a call they draw first
    const bool parts = draw.below(2) == 0;
    return mixedSystems(draw, drawProblemChild(draw, 3, 200), parts);
  }
  return drugSteps(draw);
}

}  // namespace wardchalk
