#include <benchmark/benchmark.h>

#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/text_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/working_text.h"

namespace {

using namespace wardchalk;

std::string textOf(const std::string& name) {
  const Result<std::string> text =
      readTextFile(std::string(WARDCHALK_SOURCE_DIR) + "/tests/golden/cases/" + name + ".case.json");
  return text ? *text : std::string();
}

Case caseOf(const std::string& name) {
  const Result<Case> inputs = readCase(textOf(name));
  return inputs ? *inputs : Case{};
}

/// The usual case, the longest one, and one with no liquid: what a ward sees; then orders that are outside,
/// for which slips are sought without and with a second reckoning.
const std::vector<std::string>& ordinaryCases() {
  static const std::vector<std::string> names = {
      "safe-per-surface-liquid", "household-powder-surface", "per-kg-day-tablet",    "order-in-millilitres",
      "unsafe-over-single",      "unsafe-slip-point-lost",   "ask-two-slips-surface"};
  return names;
}

void workOutCase(benchmark::State& state) {
  const std::string& name = ordinaryCases()[static_cast<std::size_t>(state.range(0))];
  const Case inputs = caseOf(name);
  for (auto _ : state) benchmark::DoNotOptimize(workOut(inputs, exactRules()));
  state.SetLabel(name);
}
BENCHMARK(workOutCase)->DenseRange(0, 6);

void readCaseFileText(benchmark::State& state) {
  const std::string text = textOf("safe-per-surface-liquid");
  for (auto _ : state) benchmark::DoNotOptimize(readCase(text));
}
BENCHMARK(readCaseFileText);

void writeWholeWorksheet(benchmark::State& state) {
  const Worksheet sheet = workOut(caseOf("safe-per-surface-liquid"), exactRules());
  for (auto _ : state) {
    std::string out;
    writeWorksheet(out, sheet, WorksheetExtent::whole);
    benchmark::DoNotOptimize(out);
  }
}
BENCHMARK(writeWholeWorksheet);

void writeWorkingText(benchmark::State& state) {
  const Worksheet sheet = workOut(caseOf("safe-per-surface-liquid"), exactRules());
  for (auto _ : state) benchmark::DoNotOptimize(workingText(sheet));
}
BENCHMARK(writeWorkingText);

void surfaceRoot(benchmark::State& state) {
  const Number square = Number::ratio(4429, 9000);
  for (auto _ : state) benchmark::DoNotOptimize(square.rootRounded(2));
}
BENCHMARK(surfaceRoot);

}  // namespace

BENCHMARK_MAIN();
