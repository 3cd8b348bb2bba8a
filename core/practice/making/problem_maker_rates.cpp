#include <array>
#include <span>

#include "core/medicine/paths.h"
#include "core/practice/making/problem_numbers.h"
#include "core/practice/making/problem_sketch.h"

namespace wardchalk {

namespace {

/// A range of rates as references print it, in hundredths of its unit.
struct RateRange {
  std::int64_t low, high;
};

constexpr std::array rateOnes = {RateRange{50, 200},  RateRange{100, 300}, RateRange{100, 400},
                                 RateRange{200, 500}, RateRange{300, 600}, RateRange{200, 800}};
constexpr std::array rateTens = {RateRange{1000, 4000}, RateRange{2000, 6000}, RateRange{1000, 3000},
                                 RateRange{2000, 5000}, RateRange{500, 2000},  RateRange{3000, 9000}};
constexpr std::array rateHundreds = {RateRange{5000, 20000}, RateRange{10000, 30000}, RateRange{20000, 50000},
                                     RateRange{10000, 40000}};
constexpr std::array rateByMinute = {RateRange{200, 1000}, RateRange{500, 2000}, RateRange{300, 900},
                                     RateRange{100, 500},  RateRange{250, 1000}, RateRange{500, 1500}};
constexpr std::array rateParts = {RateRange{10, 40}, RateRange{20, 50}, RateRange{10, 30}, RateRange{25, 75}};

/// What bags and big syringes hold of a medicine, in its unit (common practice, no source).
constexpr std::array<std::int64_t, 11> milligramBags = {5, 10, 20, 25, 40, 60, 100, 150, 200, 250, 400};
constexpr std::array<std::int64_t, 6> unitBags = {50, 250, 500, 1000, 2500, 5000};
constexpr std::array<std::int64_t, 3> millimoleBags = {10, 20, 40};
constexpr std::array<std::int64_t, 3> rateBagVolumes = {50, 50, 250};

/// A dose for each minute or hour: in what it is ordered, and what it runs from.
struct RatePlan {
  std::string_view unit;  ///< of order and reference
  bool perKg;
  std::span<const RateRange> ranges;
  std::string_view bagUnit;
  std::span<const std::int64_t> bags;
  std::int64_t perHour;  ///< so many thousandths of the unit are one of the bag's in an hour
};

constexpr std::int64_t thousandth = 1000 * one;  // mcg from a bag in mg

// By level: the bag's own unit by the hour; a thousandth of it, or by the minute; both. Units as wards order
// them (common practice, no source), figures invented.
constexpr std::array firstPlans = {RatePlan{" mg/kg/h", true, rateOnes, "mg", milligramBags, one},
                                   RatePlan{" mg/kg/h", true, rateOnes, "mg", milligramBags, one},
                                   RatePlan{" units/kg/h", true, rateTens, "units", unitBags, one},
                                   RatePlan{" mg/h", false, rateOnes, "mg", milligramBags, one},
                                   RatePlan{" units/h", false, rateHundreds, "units", unitBags, one},
                                   RatePlan{" mmol/kg/h", true, rateParts, "mmol", millimoleBags, one}};
constexpr std::array secondPlans = {RatePlan{" mcg/kg/h", true, rateTens, "mg", milligramBags, thousandth},
                                    RatePlan{" mcg/kg/h", true, rateTens, "mg", milligramBags, thousandth},
                                    RatePlan{" mcg/h", false, rateHundreds, "mg", milligramBags, thousandth},
                                    RatePlan{" mg/min", false, rateParts, "mg", milligramBags, one / 60},
                                    RatePlan{" units/kg/h", true, rateTens, "units", unitBags, one}};
constexpr std::array thirdPlans = {
    RatePlan{" mcg/kg/min", true, rateByMinute, "mg", milligramBags, thousandth / 60},
    RatePlan{" mcg/kg/min", true, rateByMinute, "mg", milligramBags, thousandth / 60},
    RatePlan{" mcg/min", false, rateTens, "mg", milligramBags, thousandth / 60}};

const RatePlan& ratePlanFor(ProblemDraw& draw, int level) {
  if (level == 1) return draw.of(firstPlans);
  return level == 2 ? draw.of(secondPlans) : draw.of(thirdPlans);
}

std::optional<std::int64_t> rateFor(ProblemDraw& draw, ProblemAim aim, const RateRange& range) {
  const std::int64_t low = range.low * 10, high = range.high * 10;
  if (aim == ProblemAim::tooMuch) return roundNumberIn(draw, high * 108 / 100, high * 2);
  if (aim == ProblemAim::tooLittle) return roundNumberIn(draw, low * 4 / 10, low * 92 / 100);
  return roundNumberIn(draw, low * 105 / 100, high * 95 / 100);
}

/// Writes a bag from which the rate is from 1 to 40 mL in an hour; false when none serves.
bool writeBag(ProblemSketch& sketch, ProblemDraw& draw, std::int64_t rate, std::int64_t kg,
              const RatePlan& plan) {
  const std::int64_t volume = draw.of(rateBagVolumes);
  const std::int64_t times = plan.perKg ? kg : one;
  std::vector<std::int64_t> fitting;
  for (const std::int64_t bag : plan.bags) {
    const std::int64_t tenths = rate * times / one * 10 * volume / bag / plan.perHour;
    if (tenths >= 10 && tenths <= 400) fitting.push_back(bag);
  }
  if (fitting.empty()) return false;
  const std::int64_t bag = draw.of(std::span<const std::int64_t>(fitting));
  sketch.set(path::stockKind, "liquid");
  sketch.set(path::strength,
             std::to_string(bag).append(" ").append(plan.bagUnit) + "/" + std::to_string(volume) + " mL");
  return true;
}

void writeRates(ProblemSketch& sketch, std::int64_t rate, const RateRange& range, const RatePlan& plan) {
  const std::string unit(plan.unit);
  sketch.set(path::dose, decimalText(rate) + unit);
  sketch.set(path::route, "intravenous");
  sketch.set(path::schedule, "continuous");
  sketch.set(path::low, decimalText(range.low * 10) + unit);
  sketch.set(path::high, decimalText(range.high * 10) + unit);
  sketch.set(path::referenceRoute, "intravenous");
}

}  // namespace

Sketched sketchDoseRate(ProblemDraw& draw, int level, ProblemAim aim) {
  ProblemSketch sketch;
  const ProblemChild child = drawProblemChild(draw, 9, 170);
  const RatePlan& plan = ratePlanFor(draw, level);
  const bool pounds = level == 2 && plan.perKg && draw.percent(60);
  const SizeStyle style = pounds ? SizeStyle::household : SizeStyle::metric;
  const std::int64_t kg = writeChild(sketch, child, style, false).kg;
  writeNames(sketch, draw);
  const RateRange& range = draw.of(plan.ranges);
  const auto rate = rateFor(draw, aim, range);
  if (!rate || !writeBag(sketch, draw, *rate, kg, plan)) return std::nullopt;
  writeRates(sketch, *rate, range, plan);
  const bool serves = aim != ProblemAim::notCovered;
  if ((!serves || draw.percent(40)) && !writeAgeBand(sketch, draw, child, serves) && !serves)
    return std::nullopt;
  sketch.verdict = sketch.rounded = true;
  sketch.amountLines = {StepId::rate};
  return sketch;
}

}  // namespace wardchalk
