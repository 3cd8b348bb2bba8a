#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/practice/making/problem_numbers.h"
#include "core/practice/making/problem_site.h"
#include "core/practice/making/problem_sketch.h"
#include "core/practice/making/problem_units.h"

namespace wardchalk {

namespace {

constexpr std::int64_t leastVolume = 200;  // a fifth of a mL, twice what can be measured at all
constexpr std::int64_t mostVolume = 20 * one;

/// The most that is given at once.
std::int64_t mostMlOf(const ProblemDose& dose) {
  return mostInOnePlace(dose.route, dose.months).value_or(mostVolume);
}

/// The strongest liquid of a unit, thousandths in 1 mL (common practice, no source): salts are given thin.
std::int64_t strongestOf(const ProblemDose& dose) {
  if (isSalt(dose.unit)) return 4 * one;
  return dose.unit == "mg" ? (dose.isSwallowed() ? 200 * one : 500 * one) : 100000 * one;
}

std::string drugText(std::int64_t amount, std::string_view unit) {
  return decimalText(amount).append(" ").append(unit);
}

/// How the amount of an order is written.
struct OrderUnit {
  std::string_view unit;  ///< of the order and the reference
  std::int64_t times;     ///< so many thousandths of it are one thousandth of the label's
  std::int64_t divisor;
};
constexpr OrderUnit sameUnit{"mg", 1, 1};
constexpr OrderUnit grams{"g", 1, 1000};
constexpr OrderUnit micrograms{"mcg", 1000, 1};

/// A dose that a vial holds and mixing makes measurable.
struct Mixing {
  std::int64_t content, finalMl, displacement;
};

constexpr std::array<std::int64_t, 11> vialContents = {20 * one,  40 * one,  50 * one,  100 * one,
                                                       125 * one, 200 * one, 250 * one, 400 * one,
                                                       500 * one, 750 * one, 1000 * one};
constexpr std::int64_t greatestVial = 1000 * one;
constexpr std::array<std::int64_t, 4> finalVolumes = {2 * one, 4 * one, 5 * one, 8 * one};
constexpr std::array<std::int64_t, 5> displacements = {200, 300, 400, 500, 600};

/// Vials of which one holds the dose, mixed so that the dose falls on a mark.
std::vector<Mixing> mixingsFor(std::int64_t dose, std::int64_t mostMl) {
  std::vector<Mixing> fitting;
  for (const std::int64_t scale : {std::int64_t{1}, std::int64_t{10}})
    for (const std::int64_t vial : vialContents)
      for (const std::int64_t final : finalVolumes) {
        const std::int64_t content = vial * scale;
        if (content > std::max(greatestVial, dose * 3 / 2) || dose >= content || dose * 12 < content ||
            dose * final % content != 0)
          continue;
        const std::int64_t mL = dose * final / content;
        if (mL < leastVolume || mL > mostMl || !isOnEveryMark(mL)) continue;
        for (const std::int64_t displacement : displacements)
          if (displacement * 20 >= final && displacement * 5 <= final)
            fitting.push_back({content, final, displacement});
      }
  return fitting;
}

constexpr std::array<std::int64_t, 20> tabletStrengths = {
    500,      one,      2 * one,  2500,     4 * one,  5 * one,   8 * one,   10 * one,  12 * one,  15 * one,
    20 * one, 25 * one, 40 * one, 50 * one, 75 * one, 100 * one, 120 * one, 150 * one, 200 * one, 250 * one};

/// Tablets in fourths: whole ones, halves, fourths by level.
std::int64_t fourthsFor(ProblemDraw& draw, int level) {
  constexpr std::array<std::int64_t, 2> whole = {8, 12};
  constexpr std::array<std::int64_t, 5> halves = {2, 6, 10, 8, 12};
  constexpr std::array<std::int64_t, 6> fourths = {1, 3, 5, 7, 2, 6};
  if (level == 1) return draw.of(whole);
  return level == 2 ? draw.of(halves) : draw.of(fourths);
}

/// A bottle from which the dose falls between the marks.
bool writeBetweenMarks(ProblemSketch& sketch, ProblemDraw& draw, std::int64_t dose) {
  constexpr std::array<std::int64_t, 6> amounts = {120 * one, 125 * one, 150 * one,
                                                   160 * one, 200 * one, 250 * one};
  const std::int64_t amount = draw.of(amounts);
  const std::int64_t mL = dose * 5 * one / amount;
  if (mL < 3200 || mL > 9800 || (dose * 5 * one % amount == 0 && isOnEveryMark(mL))) return false;
  sketch.set(path::stockKind, "liquid");
  sketch.set(path::strength, drugText(amount, "mg") + "/5 mL");
  return true;
}

}  // namespace

bool writeLiquid(ProblemSketch& sketch, ProblemDraw& draw, const ProblemDose& dose, bool inGrams) {
  const std::int64_t labelMl = drawLabelMl(draw, dose.isSwallowed());
  const auto label = labelFor(draw, {dose.amount, leastVolume, mostMlOf(dose), labelMl, strongestOf(dose)});
  if (!label) return false;
  const bool asGrams = inGrams && label->amount >= 100 * one && label->amount % (10 * one) == 0;
  sketch.set(path::stockKind, "liquid");
  const std::string amount =
      asGrams ? drugText(label->amount / 1000, "g") : drugText(label->amount, dose.unit);
  sketch.set(path::strength, amount + "/" + decimalText(label->mL) + " mL");
  return true;
}

bool writePowder(ProblemSketch& sketch, ProblemDraw& draw, const ProblemDose& dose, int level) {
  const std::vector<Mixing> fitting = mixingsFor(dose.amount, mostMlOf(dose));
  if (fitting.empty()) return false;
  const Mixing& mixing = draw.of(std::span<const Mixing>(fitting));
  const std::int64_t diluent = mixing.finalMl - mixing.displacement;
  sketch.set(path::stockKind, "powder");
  sketch.set(path::content, drugText(mixing.content, dose.unit));
  sketch.set(path::diluent, decimalText(diluent) + " mL");
  const bool stated = level == 1 || (level == 3 && draw.percent(40));
  if (stated)
    sketch.set(path::finalVolume, decimalText(mixing.finalMl) + " mL");
  else
    sketch.set(path::displacement, decimalText(mixing.displacement) + " mL");
  return true;
}

bool writeFlatOrder(ProblemSketch& sketch, ProblemDraw& draw, const ProblemDose& dose) {
  const auto low = roundNumberIn(draw, dose.amount / 2, dose.amount * 7 / 8);
  const auto high = roundNumberIn(draw, dose.amount * 8 / 7, dose.amount * 9 / 5);
  if (!low || !high) return false;
  const ProblemOften often{static_cast<int>(draw.between(1, 4)), draw.percent(70)};
  sketch.set(path::dose, drugText(dose.amount, dose.unit));
  sketch.set(path::route, std::string(dose.route));
  sketch.set(path::schedule, often.text());
  sketch.set(path::low, drugText(*low, dose.unit) + "/dose");
  sketch.set(path::high, drugText(*high, dose.unit) + "/dose");
  sketch.set(path::referenceSchedule, often.text());
  sketch.set(path::referenceRoute, std::string(dose.route));
  return true;
}

Sketched sketchLiquid(ProblemDraw& draw, int level) {
  ProblemSketch sketch;
  const ProblemSize size = beginPapers(sketch, draw, 13, 190);
  const std::string_view route = draw.percent(80) ? "oral" : "enteral";
  const std::string_view unit = level == 1 ? unitFor(draw, route) : "mg";
  const bool small = level == 2 && draw.below(2) == 0;
  const std::int64_t amount = small          ? *roundNumberIn(draw, 50, 950)
                              : isSalt(unit) ? *roundNumberIn(draw, 3 * one, 40 * one)
                                             : *roundNumberIn(draw, 15 * one, 480 * one);
  const ProblemDose dose{amount, unit, route, size.months};
  const OrderUnit order = level != 2 ? OrderUnit{unit, 1, 1} : small ? micrograms : grams;
  if (amount * order.times % order.divisor != 0) return std::nullopt;
  if (!writeFlatOrder(sketch, draw, dose.in(order.unit, amount * order.times / order.divisor)))
    return std::nullopt;
  const bool between = level == 3 && draw.percent(60);
  if (!(between ? writeBetweenMarks(sketch, draw, amount) : writeLiquid(sketch, draw, dose, level == 3)))
    return std::nullopt;
  sketch.rounded = between;
  sketch.amountLines = {StepId::give};
  if (level == 3) sketch.amountLines.push_back(StepId::device);
  return sketch;
}

Sketched sketchSolid(ProblemDraw& draw, int level) {
  ProblemSketch sketch;
  beginPapers(sketch, draw, 62, 200);  // who can swallow a tablet
  const std::int64_t strength = draw.of(tabletStrengths);
  const std::int64_t fourths = fourthsFor(draw, level);
  if (strength * fourths % 40 != 0) return std::nullopt;
  const std::int64_t dose = strength * fourths / 4;
  OrderUnit order = sameUnit;
  if (level > 1 && draw.percent(50)) order = dose < one * 5 ? micrograms : grams;
  if (dose * order.times % (order.divisor * 10) != 0) return std::nullopt;
  const ProblemDose ordered{dose * order.times / order.divisor, order.unit, "oral"};
  if (!writeFlatOrder(sketch, draw, ordered)) return std::nullopt;
  const bool capsule = level == 1 && draw.percent(40);
  sketch.set(path::stockKind, "solid");
  sketch.set(path::strength, drugText(strength, "mg") + (capsule ? "/capsule" : "/tablet"));
  if (!capsule && level > 1) sketch.set(path::dividesInto, level == 3 ? "4" : "2");
  sketch.amountLines = {StepId::give};
  return sketch;
}

Sketched sketchPowder(ProblemDraw& draw, int level) {
  ProblemSketch sketch;
  const int months = beginPapers(sketch, draw, 7, 190).months;
  const std::int64_t amount = *roundNumberIn(draw, 12 * one, 800 * one);
  const ProblemDose dose{amount, "mg", draw.percent(30) ? "intravenous" : "intramuscular", months};
  if (!writeFlatOrder(sketch, draw, dose) || !writePowder(sketch, draw, dose, level)) return std::nullopt;
  sketch.amountLines = {StepId::strength, StepId::give};
  return sketch;
}

}  // namespace wardchalk
