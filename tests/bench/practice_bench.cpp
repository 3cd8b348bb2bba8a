// Practice: making a problem with its key, and marking a line of a student. The aims: a thousand problems a
// second, 2 ms for a line.

#include <benchmark/benchmark.h>

#include <chrono>
#include <string>

#include "core/practice/marking/marking.h"
#include "core/practice/problem/problem.h"
#include "core/words/step_words.h"

namespace {

using namespace wardchalk;

void makeAProblem(benchmark::State& state) {
  const auto topic = static_cast<Topic>(state.range(0));
  std::uint64_t seed = 0;
  for (auto _ : state) benchmark::DoNotOptimize(makeProblem(topic, 3, ++seed, exactRules()));
  state.SetLabel(std::string(idOf(topic)));
}
BENCHMARK(makeAProblem)->DenseRange(0, static_cast<int>(topicIds.size()) - 1);

/// Marks every number line of drawn problems with this answer in place of the right one.
void markLines(benchmark::State& state, std::string (*answer)(const Step& step)) {
  std::uint64_t seed = 0;
  long lines = 0;
  for (auto _ : state) {
    const Problem problem = makeProblem(Topic::mixed, 3, ++seed, exactRules());
    const auto begin = std::chrono::steady_clock::now();
    Marking marking(problem);
    long marked = 0;
    for (std::size_t i = 0; i < problem.asks.size(); ++i) {
      const Step* step = problem.asks[i].step ? problem.key.step(*problem.asks[i].step) : nullptr;
      if (!step || !std::holds_alternative<Solved>(step->body)) continue;
      benchmark::DoNotOptimize(marking.mark(i, answer(*step)));
      ++marked;
    }
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    state.SetIterationTime(marked == 0 ? 0 : took.count() / static_cast<double>(marked));
    lines += marked;
  }
  state.counters["lines"] = static_cast<double>(lines);
}

void markRightLine(benchmark::State& state) {
  markLines(state, [](const Step& step) {
    const auto& solved = std::get<Solved>(step.body);
    return show(solved.result).text;
  });
}
BENCHMARK(markRightLine)->UseManualTime()->Iterations(400);

/// No known mistake and no pair of them comes to it: the longest search.
void markUnknownLine(benchmark::State& state) {
  markLines(state, [](const Step& step) {
    return show(std::get<Solved>(step.body).result * Number::ratio(1379, 1000)).text;
  });
}
BENCHMARK(markUnknownLine)->UseManualTime()->Iterations(400);

}  // namespace
