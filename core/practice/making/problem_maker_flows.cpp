#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/practice/making/problem_numbers.h"
#include "core/practice/making/problem_sketch.h"

namespace wardchalk {

namespace {

constexpr std::array<std::int64_t, 6> bagVolumes = {20, 25, 50, 100, 200, 250};
constexpr std::array<std::int64_t, 8> runTimes = {
    15, 20, 30, 40, 45, 90, 120, 180};  // minutes; never 60: then a time left out would not show
constexpr std::array<std::int64_t, 2> dropFactors = {
    15, 20};  // 60 makes drops a minute equal to mL an hour, 10 a decimal slip

constexpr std::array<std::int64_t, 9> slowVolumes = {100, 120, 150, 200, 240, 250, 300, 400, 500};
constexpr std::array<std::int64_t, 6> slowTimes = {120, 180, 240, 300, 360, 480};

/// "30 min", "2 h".
std::string timeText(std::int64_t minutes) {
  return minutes % 60 == 0 ? std::to_string(minutes / 60) + " h" : std::to_string(minutes) + " min";
}

/// Whether a child of so many thousandths of a kg may have it: 10 mL for each kg at most, and in an hour no
/// more. Common practice, no source.
bool isGentle(std::int64_t volume, std::int64_t minutes, std::int64_t kg) {
  const std::int64_t most = kg * 10;
  return volume * one <= most && volume * one * 60 <= most * minutes;
}

/// Whether the flow comes out within a tenth of a mL in an hour.
bool isEvenRate(std::int64_t volume, std::int64_t minutes) { return volume * 600 % minutes == 0; }

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

void writeRun(ProblemSketch& sketch, std::int64_t volume, std::int64_t minutes) {
  sketch.set(path::infusionVolume, std::to_string(volume) + " mL");
  sketch.set(path::infusionOver, timeText(minutes));
}

/// What the reference says of the concentration.
bool writeMostConcentration(ProblemSketch& sketch, ProblemDraw& draw, std::int64_t dose, std::int64_t volume,
                            bool breaks) {
  const auto most = concentrationFor(draw, dose, volume, breaks);
  if (!most) return false;
  sketch.set(path::maxConcentration, perMl(*most, unitIn(sketch)));
  sketch.lines.push_back(StepId::volume);
  return true;
}

/// A safe order into a vein, of one dose for all children, from a bottle.
struct FlatDose {
  ProblemSketch sketch;
  std::int64_t dose;
  std::int64_t kg;
};

std::optional<FlatDose> flatDose(ProblemDraw& draw) {
  FlatDose flat;
  flat.kg = beginPapers(flat.sketch, draw, 13, 190).kg;
  flat.dose = *roundNumberIn(draw, 20 * one, 600 * one);
  if (!writeFlatOrder(flat.sketch, draw, flat.dose, "mg", "intravenous")) return std::nullopt;
  if (!writeLiquid(flat.sketch, draw, flat.dose, "mg", false)) return std::nullopt;
  return flat;
}

/// Drops that can be counted, and where they are to come out even, whole.
bool areDropsFit(std::int64_t volume, std::int64_t minutes, std::int64_t factor, bool even) {
  return volume * factor <= 60 * minutes && (!even || volume * factor % minutes == 0);
}

}  // namespace

bool writeInfusion(ProblemSketch& sketch, ProblemDraw& draw, const ProblemRun& run, int level, bool breaks) {
  const std::int64_t volume = draw.of(bagVolumes);
  const std::int64_t minutes = draw.of(runTimes);
  if (!isEvenRate(volume, minutes) || !isGentle(volume, minutes, run.kg)) return false;
  writeRun(sketch, volume, minutes);
  const bool dilution = run.topic == Topic::dilution;
  const bool tooStrong = breaks && (dilution || draw.below(2) == 0);
  const bool tooShort = breaks && !tooStrong;
  const bool limited = dilution || tooStrong || level == 3;
  if (limited && !writeMostConcentration(sketch, draw, run.dose, volume, tooStrong)) return false;
  const std::int64_t least = tooShort ? minutes * 2 : std::max<std::int64_t>(minutes / 10 * 5, 10);
  if (tooShort || level == 3) sketch.set(path::minInfusionTime, timeText(least));
  if (!dilution || level == 3) sketch.amountLines.push_back(StepId::rate);
  return true;
}

Sketched sketchInfusion(ProblemDraw& draw) {
  auto flat = flatDose(draw);
  const std::int64_t volume = draw.of(bagVolumes);
  const std::int64_t minutes = draw.of(runTimes);
  if (!flat || !isGentle(volume, minutes, flat->kg) || !isEvenRate(volume, minutes)) return std::nullopt;
  writeRun(flat->sketch, volume, minutes);
  flat->sketch.amountLines = {StepId::rate};
  return std::move(flat->sketch);
}

Sketched sketchDrops(ProblemDraw& draw, int level) {
  auto flat = flatDose(draw);
  const bool slow = level == 2;  // hours, to be turned into minutes
  const bool even = level < 3;
  const std::int64_t volume = slow ? draw.of(slowVolumes) : draw.of(bagVolumes);
  const std::int64_t minutes = slow ? draw.of(slowTimes) : draw.of(runTimes);
  const std::int64_t factor = draw.of(dropFactors);
  if (!flat || !isGentle(volume, minutes, flat->kg) || !areDropsFit(volume, minutes, factor, even))
    return std::nullopt;
  if (even && !isEvenRate(volume, minutes)) return std::nullopt;
  writeRun(flat->sketch, volume, minutes);
  flat->sketch.set(path::dropFactor, std::to_string(factor) + " drop/mL");
  flat->sketch.rounded = !even;
  if (!even) flat->sketch.amountLines.push_back(StepId::rate);
  flat->sketch.amountLines.push_back(StepId::drops);
  return std::move(flat->sketch);
}

Sketched sketchDilution(ProblemDraw& draw, int level) {
  auto flat = flatDose(draw);
  if (!flat || !writeInfusion(flat->sketch, draw, {Topic::dilution, flat->dose, flat->kg}, level, false))
    return std::nullopt;
  flat->sketch.amountLines.clear();
  return std::move(flat->sketch);
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
  const bool pounds = level == 2 && draw.percent(60);
  const std::int64_t kg =
      writeChild(sketch, child, pounds ? SizeStyle::household : SizeStyle::metric, false).kg;
  writeNames(sketch, draw);
  const RatePlan& plan = ratePlans[static_cast<std::size_t>(level - 1)];
  const RateRange range = rateRangeFor(draw, level);
  const auto rate = rateFor(draw, aim, range.low * 10, range.high * 10);
  const auto bag = rate ? bagFor(draw, *rate, kg, plan) : std::nullopt;
  if (!bag) return std::nullopt;
  writeRates(sketch, *rate, range, plan);
  const bool serves = aim != ProblemAim::notCovered;
  if ((!serves || draw.percent(40)) && !writeAgeBand(sketch, draw, child, serves) && !serves)
    return std::nullopt;
  sketch.set(path::stockKind, "liquid");
  sketch.set(path::strength, std::to_string(*bag) + " mg/50 mL");
  sketch.verdict = sketch.rounded = true;
  sketch.amountLines = {StepId::rate};
  return sketch;
}

}  // namespace wardchalk
