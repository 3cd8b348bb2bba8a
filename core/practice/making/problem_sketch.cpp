#include "core/practice/making/problem_sketch.h"

#include <array>

#include "core/medicine/paths.h"
#include "core/practice/making/problem_names.h"
#include "core/practice/making/problem_numbers.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

namespace {

constexpr std::int64_t gramsInPound = 453592;  // thousandths; only to choose a dose by

ProblemSize writeHousehold(ProblemSketch& sketch, const ProblemChild& child, SizeStyle style,
                           bool withHeight) {
  const bool parts = style == SizeStyle::householdParts;
  const std::int64_t ounces = parts ? ouncesFor(child.kgTenths) : poundsFor(child.kgTenths) * 16;
  const std::int64_t inches = inchesFor(child.cm);
  std::string weight = std::to_string(ounces / 16) + " lb";
  if (ounces % 16 != 0) weight += " " + std::to_string(ounces % 16) + " oz";
  std::string height = std::to_string(inches) + " in";
  if (parts)
    height =
        std::to_string(inches / 12) + " ft" + (inches % 12 ? " " + std::to_string(inches % 12) + " in" : "");
  if (withHeight) sketch.set(path::height, height);
  sketch.set(path::weight, weight);
  const std::int64_t kg = ounces * gramsInPound / 16000;
  const std::int64_t surface = surfaceFor((inches * 254 + 50) / 100, (kg + 50) / 100);
  return {kg, (surface + 5) / 10 * 10, child.months};
}

constexpr std::array bandYears = {1, 2, 6, 12};
constexpr int roomInMonths = 6;

}  // namespace

ProblemSize writeChild(ProblemSketch& sketch, const ProblemChild& child, SizeStyle style, bool withHeight) {
  sketch.set(path::age, child.ageText());
  sketch.set(path::sex, child.sex == Sex::female ? "female" : "male");
  if (style != SizeStyle::metric) return writeHousehold(sketch, child, style, withHeight);
  if (withHeight) sketch.set(path::height, std::to_string(child.cm) + " cm");
  sketch.set(path::weight, decimalText(child.kgTenths * 100) + " kg");
  return {child.kgTenths * 100, (surfaceFor(child.cm, child.kgTenths) + 5) / 10 * 10, child.months};
}

void writeNames(ProblemSketch& sketch, ProblemDraw& draw) {
  sketch.set(path::medicine, std::string(draw.of(inventedMedicines())));
  sketch.set(path::source, say(PhraseId::story_source, {{"n", std::to_string(draw.between(2, 90))}}));
}

ProblemSize beginPapers(ProblemSketch& sketch, ProblemDraw& draw, int fewest, int most) {
  const ProblemSize size = writeChild(sketch, drawProblemChild(draw, fewest, most), SizeStyle::metric, false);
  writeNames(sketch, draw);
  return size;
}

std::string ProblemOften::text() const {
  if (inHours || doses == 1) return "every " + std::to_string(24 / doses) + " h";
  return std::to_string(doses) + " times a day";
}

bool writeAgeBand(ProblemSketch& sketch, ProblemDraw& draw, const ProblemChild& child, bool serves) {
  std::vector<std::pair<std::string_view, int>> edges;
  for (const int years : bandYears) {
    const int away = child.months - years * 12;
    if (away > -roomInMonths && away < roomInMonths) continue;
    edges.emplace_back((away > 0) == serves ? path::ageFrom : path::ageBelow, years);
  }
  if (edges.empty()) return false;
  const auto& [path, years] = draw.of(std::span<const std::pair<std::string_view, int>>(edges));
  sketch.set(path, std::to_string(years) + " year");
  return true;
}

}  // namespace wardchalk
