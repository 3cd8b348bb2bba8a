#include "core/practice/making/problem_maker.h"

#include <algorithm>
#include <cassert>

#include "core/check/work_out.h"
#include "core/practice/making/problem_fit.h"
#include "core/practice/making/problem_traps.h"
#include "core/practice/problem/problem_story.h"
#include "core/record/case_entry.h"

namespace wardchalk {

namespace {

/// A stream of its own for each topic and level of a seed.
ProblemDraw drawFor(Topic topic, int level, std::uint64_t seed) {
  return ProblemDraw(seed ^ (static_cast<std::uint64_t>(topic) + 1) << 56U ^
                     static_cast<std::uint64_t>(level) << 54U);
}

Topic drawTopic(ProblemDraw& draw) {
  return static_cast<Topic>(draw.below(static_cast<std::int64_t>(Topic::mixed)));
}

ProblemAim drawAim(ProblemDraw& draw, Topic topic, int level) {
  if (!asksVerdict(topic, level)) return ProblemAim::safe;
  std::int64_t drawn = draw.below(100);
  if ((drawn -= aim_share::tooMuch) < 0) return ProblemAim::tooMuch;
  if ((drawn -= aim_share::notCovered) < 0)
    return level == lowestLevel ? ProblemAim::safe : ProblemAim::notCovered;
  if ((drawn -= aim_share::tooLittle) < 0) return ProblemAim::tooLittle;
  if ((drawn -= aim_share::scheduleDiffers) >= 0) return ProblemAim::safe;
  return topic == Topic::doseRate ? ProblemAim::tooLittle : ProblemAim::scheduleDiffers;
}

Sketched sketchFor(ProblemDraw& draw, Topic topic, int level, ProblemAim aim) {
  if (asksVerdict(topic, level) && topic != Topic::doseRate) return sketchDose(draw, topic, level, aim);
  switch (topic) {
    case Topic::bsa:
      return sketchSurface(draw, level);
    case Topic::conversion:
      return sketchConversion(draw, level);
    case Topic::amountLiquid:
      return sketchLiquid(draw, level);
    case Topic::amountSolid:
      return sketchSolid(draw, level);
    case Topic::reconstitution:
      return sketchPowder(draw, level);
    case Topic::doseRate:
      return sketchDoseRate(draw, level, aim);
    default:
      return sketchRun(draw, topic);
  }
}

/// The entries in the order of the papers.
std::vector<WrittenEntry> sorted(const std::vector<WrittenEntry>& written) {
  std::vector<WrittenEntry> entries;
  for (const CaseEntry& known : caseEntries())
    for (const WrittenEntry& entry : written)
      if (entry.path == known.path) entries.push_back(entry);
  return entries;
}

Case caseOf(const std::vector<WrittenEntry>& entries) {
  Case given;
  for (const WrittenEntry& entry : entries) {
    [[maybe_unused]] const auto set = setEntry(given, entry.path, entry.text);
    assert(set);
  }
  return given;
}

/// Sizes that the key works out are always asked for: a slip there moves all that follows.
std::vector<StepId> linesIn(const Worksheet& key, const std::vector<StepId>& wanted) {
  std::vector<StepId> lines = wanted;
  for (const StepId size : {StepId::height, StepId::weight, StepId::bsa})
    if (key.given.order.dose && key.step(size)) lines.push_back(size);
  std::sort(lines.begin(), lines.end());
  lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
  return lines;
}

/// Asks for these steps as far as the key has them; false when it wants one.
bool askFor(Problem& problem, const std::vector<StepId>& lines) {
  bool all = true;
  for (const StepId line : lines) {
    const auto ask = askFor(idOf(line), problem.key);
    if (ask) problem.asks.push_back(*ask);
    all = all && ask;
  }
  return all;
}

bool writeAsks(Problem& problem, const ProblemSketch& sketch) {
  bool all = askFor(problem, linesIn(problem.key, sketch.lines));
  if (sketch.verdict) problem.asks.push_back({});
  const auto inKey = [&](StepId line) { return problem.key.step(line) != nullptr; };
  if (!sketch.verdict && !std::ranges::all_of(sketch.amountLines, inKey)) return false;
  all = askFor(problem, sketch.amountLines) && all;
  return all;
}

/// The problem of a sketch, all but its story; false when the key lacks a line that is asked for.
bool fillIn(Problem& problem, const ProblemSketch& sketch) {
  problem.entries = sorted(sketch.entries);
  problem.given = caseOf(problem.entries);
  problem.key = workOut(problem.given, problem.rules);
  problem.asks.clear();
  return writeAsks(problem, sketch);
}

bool isGood(const Problem& problem, const ProblemSketch& sketch, ProblemAim aim) {
  return isAsMeant(problem, sketch, aim) && slipsAreApart(problem) &&
         isSameInEverySchool(problem, sketch, aim);
}

/// Draws until a problem is good, and tells how often. A sketch is always found, whatever the rules; whether
/// it is good hangs on them, and past `mostDraws` the last one that can be worked is kept.
int drawProblem(ProblemDraw& draw, Problem& problem) {
  const Topic about = problem.topic == Topic::mixed ? drawTopic(draw) : problem.topic;
  const ProblemAim aim = drawAim(draw, about, problem.level);
  bool sketched = false;
  for (int draws = 1;; ++draws) {
    if (draws > mostDraws && sketched) return draws;
    const Sketched sketch = sketchFor(draw, about, problem.level, aim);
    if (!sketch) continue;
    sketched = true;
    if (fillIn(problem, *sketch) && isGood(problem, *sketch, aim)) return draws;
  }
}

}  // namespace

bool asksVerdict(Topic topic, int level) {
  switch (topic) {
    case Topic::bsa:
    case Topic::conversion:
    case Topic::amountLiquid:
    case Topic::amountSolid:
      return false;
    case Topic::reconstitution:
      return level == highestLevel;
    case Topic::infusion:
    case Topic::drops:
    case Topic::dilution:
      return level > lowestLevel;
    default:
      return true;
  }
}

MadeProblem makeProblemCounted(Topic topic, int level, std::uint64_t seed, const HouseRules& rules) {
  MadeProblem made;
  Problem& problem = made.problem;
  problem.seed = seed;
  problem.topic = topic;
  problem.level = std::clamp(level, lowestLevel, highestLevel);
  problem.rules = rules;
  ProblemDraw draw = drawFor(topic, problem.level, seed);
  const std::uint64_t wording = draw.next();
  made.draws = drawProblem(draw, problem);
  if (problem.asks.empty()) problem.asks.push_back({});
  problem.story = storyOf(problem.given, rules, wording);
  return made;
}

Problem makeProblem(Topic topic, int level, std::uint64_t seed, const HouseRules& rules) {
  return makeProblemCounted(topic, level, seed, rules).problem;
}

}  // namespace wardchalk
