#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/practice/problem_numbers.h"
#include "core/practice/problem_sketch.h"

namespace wardchalk {

namespace {

constexpr std::array<std::int64_t, 6> bagVolumes = {20, 25, 50, 100, 200, 250};
constexpr std::array<std::int64_t, 8> runTimes = {
    15, 20, 30, 40, 45, 90, 120, 180};  // minutes; never 60: then a time left out would not show
constexpr std::array<std::int64_t, 2> dropFactors = {
    15, 20};  // 60 makes drops a minute equal to mL an hour, 10 a decimal slip

/// "30 min", "2 h".
std::string timeText(std::int64_t minutes) {
  return minutes % 60 == 0 ? std::to_string(minutes / 60) + " h" : std::to_string(minutes) + " min";
}

/// Whether the flow comes out within a tenth of a mL in an hour.
bool isEvenRate(std::int64_t volume, std::int64_t minutes) { return volume * 600 % minutes == 0; }

/// Whole drops in a minute, in a number that can be counted.
bool isEvenDrops(std::int64_t volume, std::int64_t minutes, std::int64_t factor) {
  return volume * factor % minutes == 0 && volume * factor / minutes <= 60;
}

/// What must not be exceeded when the dose runs, in usual figures: the concentration in thousandths for one
/// mL.
std::optional<std::int64_t> concentrationFor(ProblemDraw& draw, std::int64_t dose, std::int64_t volume,
                                             bool breaks) {
  const std::int64_t own = dose / volume;
  if (own < 20) return std::nullopt;
  return breaks ? roundNumberIn(draw, own * 5 / 10, own * 9 / 10)
                : roundNumberIn(draw, own * 11 / 10, own * 2);
}

std::string perMl(std::int64_t thousandths, std::string_view unit) {
  return decimalText(thousandths).append(" ").append(unit).append("/mL");
}

std::string_view unitIn(const ProblemSketch& sketch) {
  for (const WrittenEntry& entry : sketch.entries)
    if (entry.path == path::dose) return std::string_view(entry.text).substr(entry.text.find(' ') + 1);
  return {};
}

}  // namespace

bool writeInfusion(ProblemSketch& sketch, ProblemDraw& draw, std::int64_t dose, Topic topic, int level,
                   bool breaks) {
  const std::int64_t volume = draw.of(bagVolumes);
  const std::int64_t minutes = draw.of(runTimes);
  if (!isEvenRate(volume, minutes)) return false;
  sketch.set(path::infusionVolume, std::to_string(volume) + " mL");
  sketch.set(path::infusionOver, timeText(minutes));
  const bool dilution = topic == Topic::dilution;
  const bool tooStrong = breaks && (dilution || draw.below(2) == 0);
  if (dilution || tooStrong || level == 3) {
    const auto most = concentrationFor(draw, dose, volume, tooStrong);
    if (!most) return false;
    sketch.set(path::maxConcentration, perMl(*most, unitIn(sketch)));
    sketch.lines.push_back(StepId::volume);
  }
  if ((breaks && !tooStrong) || level == 3) {
    const bool tooShort = breaks && !tooStrong;
    const std::int64_t least = tooShort ? minutes * 2 : std::max<std::int64_t>(minutes / 10 * 5, 10);
    sketch.set(path::minInfusionTime, timeText(least));
  }
  if (!dilution || level == 3) sketch.amountLines.push_back(StepId::rate);
  return true;
}

Sketched sketchFlow(ProblemDraw& draw, Topic topic, int level) {
  ProblemSketch sketch;
  writeChild(sketch, drawProblemChild(draw, 13, 190), SizeStyle::metric, false);
  writeNames(sketch, draw);
  const std::int64_t dose = *roundNumberIn(draw, 20 * one, 600 * one);
  if (!writeFlatOrder(sketch, draw, dose, "mg", "intravenous") ||
      !writeLiquid(sketch, draw, dose, "mg", false))
    return std::nullopt;
  const std::int64_t volume = draw.of(bagVolumes);
  const std::int64_t minutes = draw.of(runTimes);
  const std::int64_t factor = draw.of(dropFactors);
  const bool hours = minutes % 60 == 0;
  const bool drops = topic == Topic::drops;
  const bool wantsEven = !drops || level < 3;
  if (hours != (level == 2) && drops && level < 3) return std::nullopt;
  if (!isEvenRate(volume, minutes) && wantsEven) return std::nullopt;
  if (drops && wantsEven && !isEvenDrops(volume, minutes, factor)) return std::nullopt;
  if (drops && volume * factor > 60 * minutes) return std::nullopt;
  sketch.set(path::infusionVolume, std::to_string(volume) + " mL");
  sketch.set(path::infusionOver, timeText(minutes));
  if (drops) sketch.set(path::dropFactor, std::to_string(factor) + " drop/mL");
  sketch.rounded = !wantsEven;
  if (!drops || level == 3) sketch.amountLines.push_back(StepId::rate);
  if (drops) sketch.amountLines.push_back(StepId::drops);
  return sketch;
}

Sketched sketchDilution(ProblemDraw& draw, int level) {
  ProblemSketch sketch;
  writeChild(sketch, drawProblemChild(draw, 13, 190), SizeStyle::metric, false);
  writeNames(sketch, draw);
  const std::int64_t dose = *roundNumberIn(draw, 20 * one, 600 * one);
  if (!writeFlatOrder(sketch, draw, dose, "mg", "intravenous") ||
      !writeLiquid(sketch, draw, dose, "mg", false))
    return std::nullopt;
  if (!writeInfusion(sketch, draw, dose, Topic::dilution, level, false)) return std::nullopt;
  sketch.amountLines.clear();
  return sketch;
}

namespace {

/// A range of rates as references print it, in hundredths of its unit, and a bag that goes with it.
struct RateRange {
  std::int64_t low, high;
};
constexpr std::array<RateRange, 6> hourly = {RateRange{50, 200},  RateRange{100, 300}, RateRange{100, 400},
                                             RateRange{200, 500}, RateRange{300, 600}, RateRange{200, 800}};
constexpr std::array<RateRange, 6> hourlySmall = {RateRange{1000, 4000}, RateRange{2000, 6000},
                                                  RateRange{1000, 3000}, RateRange{2000, 5000},
                                                  RateRange{500, 2000},  RateRange{3000, 9000}};
constexpr std::array<RateRange, 6> byMinute = {RateRange{200, 1000}, RateRange{500, 2000},
                                               RateRange{300, 900},  RateRange{100, 500},
                                               RateRange{250, 1000}, RateRange{500, 1500}};
constexpr std::array<std::int64_t, 11> bagContents = {5, 10, 20, 25, 40, 60, 100, 150, 200, 250, 400};

struct RatePlan {
  std::string_view unit;   ///< of order and reference
  std::int64_t perMgHour;  ///< so many thousandths of the unit are one mg in an hour
};
constexpr std::array<RatePlan, 3> ratePlans = {RatePlan{" mg/kg/h", 1000}, RatePlan{" mcg/kg/h", 1000000},
                                               RatePlan{" mcg/kg/min", 1000000 / 60}};

RateRange rateRangeFor(ProblemDraw& draw, int level) {
  return level == 1 ? draw.of(hourly) : level == 2 ? draw.of(hourlySmall) : draw.of(byMinute);
}

std::optional<std::int64_t> rateFor(ProblemDraw& draw, ProblemAim aim, std::int64_t low, std::int64_t high) {
  if (aim == ProblemAim::tooMuch) return roundNumberIn(draw, high * 108 / 100, high * 2);
  if (aim == ProblemAim::tooLittle) return roundNumberIn(draw, low * 4 / 10, low * 92 / 100);
  return roundNumberIn(draw, low * 105 / 100, high * 95 / 100);
}

/// A bag from which the rate is from 1 to 40 mL in an hour. The rate is in thousandths of the plan's unit.
std::optional<std::int64_t> bagFor(ProblemDraw& draw, std::int64_t rate, std::int64_t kg,
                                   const RatePlan& plan) {
  std::vector<std::int64_t> fitting;
  for (const std::int64_t bag : bagContents) {
    const std::int64_t tenths = rate * kg / 1000 * 10 * 50 / bag / plan.perMgHour;
    if (tenths >= 10 && tenths <= 400) fitting.push_back(bag);
  }
  if (fitting.empty()) return std::nullopt;
  return draw.of(std::span<const std::int64_t>(fitting));
}

}  // namespace

Sketched sketchDoseRate(ProblemDraw& draw, int level, ProblemAim aim) {
  ProblemSketch sketch;
  const ProblemChild child = drawProblemChild(draw, 9, 170);
  const bool pounds = level == 2 && draw.percent(60);
  const ProblemSize size =
      writeChild(sketch, child, pounds ? SizeStyle::household : SizeStyle::metric, false);
  writeNames(sketch, draw);
  const RatePlan& plan = ratePlans[static_cast<std::size_t>(level - 1)];
  const RateRange range = rateRangeFor(draw, level);
  const auto rate = rateFor(draw, aim, range.low * 10, range.high * 10);
  if (!rate) return std::nullopt;
  const auto bag = bagFor(draw, *rate, size.kg, plan);
  if (!bag) return std::nullopt;
  sketch.set(path::dose, decimalText(*rate) + std::string(plan.unit));
  sketch.set(path::route, "intravenous");
  sketch.set(path::schedule, "continuous");
  sketch.set(path::low, decimalText(range.low * 10) + std::string(plan.unit));
  sketch.set(path::high, decimalText(range.high * 10) + std::string(plan.unit));
  sketch.set(path::referenceRoute, "intravenous");
  const bool serves = aim != ProblemAim::notCovered;
  if ((!serves || draw.percent(40)) && !writeAgeBand(sketch, draw, child, serves) && !serves)
    return std::nullopt;
  sketch.set(path::stockKind, "liquid");
  sketch.set(path::strength, std::to_string(*bag) + " mg/50 mL");
  sketch.verdict = true;
  sketch.rounded = true;
  sketch.amountLines = {StepId::rate};
  return sketch;
}

}  // namespace wardchalk
