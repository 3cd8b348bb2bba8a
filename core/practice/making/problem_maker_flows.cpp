#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/practice/making/problem_numbers.h"
#include "core/practice/making/problem_sketch.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

namespace {

/// What runs in, over what time, through which giving set (0 for a pump).
struct RunPlan {
  std::int64_t volume, minutes;
  std::int64_t dropFactor = 0;
};

constexpr std::array<std::int64_t, 6> bagVolumes = {20, 25, 50, 100, 200, 250};
constexpr std::array<std::int64_t, 8> runTimes = {
    15, 20, 30, 40, 45, 90, 120, 180};  // minutes; never 60: then a time left out would not show
constexpr std::array<std::int64_t, 9> slowVolumes = {100, 120, 150, 200, 240, 250, 300, 400, 500};
constexpr std::array<std::int64_t, 6> slowTimes = {120, 180, 240, 300, 360, 480};

// Giving sets (common practice, no source). Of 60 drops in 1 mL the drops in a minute are the mL in an hour:
// such a set has no place where both are asked.
constexpr std::array<std::int64_t, 4> givingSets = {10, 15, 20, 60};
constexpr std::array<std::int64_t, 3> coarseSets = {10, 15, 20};

/// "30 min", "2 h".
std::string timeText(std::int64_t minutes) {
  return minutes % 60 == 0 ? std::to_string(minutes / 60) + " h" : std::to_string(minutes) + " min";
}

/// Whether a child of so many thousandths of a kg may have it: 10 mL for each kg at most, and in an hour no
/// more. Common practice, no source.
bool isGentle(const RunPlan& flow, std::int64_t kg) {
  const std::int64_t most = kg * 10;
  return flow.volume * one <= most && flow.volume * one * 60 <= most * flow.minutes;
}

/// Whether the flow comes out within a tenth of a mL in an hour.
bool isEvenRate(const RunPlan& flow) { return flow.volume * 600 % flow.minutes == 0; }

/// Drops that can be counted.
bool areDropsFit(const RunPlan& flow) { return flow.volume * flow.dropFactor <= 60 * flow.minutes; }
bool areDropsWhole(const RunPlan& flow) { return flow.volume * flow.dropFactor % flow.minutes == 0; }

/// Levels of drops: whole ones; hours to be turned into minutes, and rounding; rounding, and the rate
/// besides.
std::optional<RunPlan> flowByDrops(ProblemDraw& draw, int level) {
  RunPlan flow{};
  flow.volume = level == 2 ? draw.of(slowVolumes) : draw.of(bagVolumes);
  flow.minutes = level == 2 ? draw.of(slowTimes) : draw.of(runTimes);
  flow.dropFactor = level == 3 ? draw.of(coarseSets) : draw.of(givingSets);
  if (!areDropsFit(flow) || areDropsWhole(flow) != (level == 1)) return std::nullopt;
  if (level == 1 && !isEvenRate(flow)) return std::nullopt;
  return flow;
}

std::optional<RunPlan> flowByPump(ProblemDraw& draw) {
  RunPlan flow{};
  flow.volume = draw.of(bagVolumes);
  flow.minutes = draw.of(runTimes);
  return isEvenRate(flow) ? std::optional(flow) : std::nullopt;
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

/// Writes how it runs, and asks for that after the verdict.
void writeRun(ProblemSketch& sketch, const RunPlan& flow, Topic topic, int level) {
  sketch.set(path::infusionVolume, std::to_string(flow.volume) + " mL");
  sketch.set(path::infusionOver, timeText(flow.minutes));
  if (topic == Topic::infusion || level == 3) sketch.amountLines.push_back(StepId::rate);
  if (flow.dropFactor == 0) return;
  sketch.set(path::dropFactor, std::to_string(flow.dropFactor) + " drop/mL");
  sketch.amountLines.push_back(StepId::drops);
  sketch.rounded = !areDropsWhole(flow);
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

/// What the reference says of the time: it is too short where that is meant.
void writeLeastTime(ProblemSketch& sketch, std::int64_t minutes, bool breaks) {
  const std::int64_t kept = std::max<std::int64_t>(minutes / 10 * 5, 10);
  const std::int64_t broken = minutes > 180 ? minutes + 60 : minutes * 2;
  sketch.set(path::minInfusionTime, timeText(breaks ? broken : kept));
}

}  // namespace

bool writeInfusion(ProblemSketch& sketch, ProblemDraw& draw, const ProblemRun& run, int level, bool breaks) {
  const auto flow = run.topic == Topic::drops ? flowByDrops(draw, level) : flowByPump(draw);
  if (!flow || !isGentle(*flow, run.kg)) return false;
  writeRun(sketch, *flow, run.topic, level);
  const bool dilution = run.topic == Topic::dilution;
  const bool tooStrong = breaks && (dilution || draw.below(2) == 0);
  const bool tooShort = breaks && !tooStrong;
  // A limit stands beside safe orders as well; otherwise it would tell.
  const bool everyLimit = level == highestLevel && run.topic != Topic::drops;
  const bool strengthLimited = everyLimit || draw.percent(level > lowestLevel ? 25 : 0);
  const bool timeLimited = everyLimit || draw.percent(level > lowestLevel ? 25 : 0);
  if ((dilution || tooStrong || strengthLimited) &&
      !writeMostConcentration(sketch, draw, run.dose, flow->volume, tooStrong))
    return false;
  if (tooShort || timeLimited) writeLeastTime(sketch, flow->minutes, tooShort);
  return true;
}

Sketched sketchRun(ProblemDraw& draw, Topic topic) {
  ProblemSketch sketch;
  const ProblemSize size = beginPapers(sketch, draw, 13, 190);
  const ProblemDose dose{*roundNumberIn(draw, 20 * one, 600 * one), "mg", "intravenous", size.months};
  if (!writeFlatOrder(sketch, draw, dose) || !writeLiquid(sketch, draw, dose, false) ||
      !writeInfusion(sketch, draw, {topic, dose.amount, size.kg}, lowestLevel, false))
    return std::nullopt;
  return sketch;
}

}  // namespace wardchalk
