#include "core/practice/lesson.h"

#include <algorithm>

namespace wardchalk {

namespace {

bool asksFor(const Problem& problem, StepId step) {
  return std::ranges::any_of(problem.asks, [step](const Ask& ask) { return ask.step == step; });
}

bool asksVerdict(const Problem& problem) {
  return std::ranges::any_of(problem.asks, [](const Ask& ask) { return ask.isVerdict(); });
}

/// The unit in which the stock is measured out; none where nothing is in hand that is measured for one dose.
std::optional<Unit> measuredIn(const Stock& stock) {
  if (!stock.kind) return std::nullopt;
  if (*stock.kind != StockKind::solid) return Unit::mL;
  return stock.strength ? std::optional(stock.strength->in.unit) : std::nullopt;
}

/// A problem that is not to be given lacks the line that would be asked if it were.
void askForAmount(Problem& problem) {
  if (!asksVerdict(problem) || asksFor(problem, StepId::give)) return;
  if (problem.key.verdict == VerdictKind::safe) return;
  const auto unit = measuredIn(problem.given.stock);
  if (unit && problem.topic != Topic::doseRate) problem.asks.push_back({StepId::give, Units{{*unit}, {}}});
}

}  // namespace

Topic topicInSet(const PracticeSet& set, int place) {
  if (set.topics.empty()) return Topic::mixed;
  return set.topics[static_cast<std::size_t>(place) % set.topics.size()];
}

Problem lessonProblem(const PracticeSet& set, Topic topic, std::uint64_t seed) {
  Problem problem = makeProblem(topic, set.level, seed, set.rules);
  askForAmount(problem);
  return problem;
}

Problem lessonProblem(const PracticeSet& set, int place) {
  return lessonProblem(set, topicInSet(set, place), seedInSet(set.seed, place));
}

}  // namespace wardchalk
