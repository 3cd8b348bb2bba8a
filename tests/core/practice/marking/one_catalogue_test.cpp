// The slips asked about at the bedside and the mistakes that mark a student are one list: where a slip of an
// order has the number of a mistake, the same wrong figure is known by that number on a student's line.

#include <gtest/gtest.h>

#include <algorithm>

#include "core/check/slips/slip.h"
#include "core/practice/marking/match_mistakes.h"
#include "core/practice/problem/problem.h"

namespace wardchalk::one_catalogue_test {
namespace {

std::vector<MistakeId> numbersOf(Slip slip) {
  std::vector<MistakeId> numbers;
  std::string_view rest = infoOf(slip).errors;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(' '), rest.size());
    const auto id = mistakeWithId(rest.substr(0, end));
    EXPECT_TRUE(id) << idOf(slip) << " names " << rest.substr(0, end);
    if (id) numbers.push_back(*id);
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return numbers;
}

constexpr std::size_t slipCount = slipTable.size();

TEST(OneCatalogue, everyNumberOfASlipIsThatOfAMistake) {
  for (std::size_t i = 0; i < slipCount; ++i) numbersOf(static_cast<Slip>(i));
}

TEST(OneCatalogue, everyMistakeStandsOnce) {
  for (std::size_t i = 0; i < mistakeTable.size(); ++i) {
    EXPECT_EQ(mistakeWithId(mistakeTable[i].number), static_cast<MistakeId>(i));
    EXPECT_EQ(mistakeTable[i].number, (i < 9 ? "E0" : "E") + std::to_string(i + 1));
  }
}

/// Whether the wrong figure is known by one of these numbers on this line.
bool isKnown(const Problem& problem, StepId line, const Number& factor,
             const std::vector<MistakeId>& numbers) {
  const Replay right(problem.key, {});
  if (!right.exact(line)) return false;
  const TypedNumber typed{*right.exact(line) * factor, 20};
  const std::vector<MistakeId> found = matchMistakes(typed, wrongValues(problem.key, line, {}).values);
  return std::ranges::any_of(numbers,
                             [&](MistakeId id) { return std::ranges::find(found, id) != found.end(); });
}

TEST(OneCatalogue, aSlipOfAnOrderIsTheSameMistakeInAStudentsLine) {
  std::array<int, slipCount> seen{};
  for (const Topic topic : {Topic::dailyDivided, Topic::doseByWeight, Topic::doseByBsa}) {
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
      const Problem problem = makeProblem(topic, 2, seed, exactRules());
      if (problem.key.verdict != VerdictKind::safe) continue;  // its figures are those of a slip already
      SlipGround ground{problem.given, problem.rules.pounds, {}, {}, {}};
      if (problem.key.weight) ground.kg = problem.key.weight->kg;
      if (problem.key.bsa) ground.m2 = problem.key.bsa->m2;
      ground.dosesADay = problem.given.order.schedule->most;
      for (std::size_t i = 0; i < slipCount; ++i) {
        const std::vector<MistakeId> numbers = numbersOf(static_cast<Slip>(i));
        const Undoing undoing = undone(static_cast<Slip>(i), ground);
        const auto* factor = std::get_if<Number>(&undoing);
        if (!factor || numbers.empty()) continue;
        if (numbers.front() == MistakeId::poundsAsKilograms && !problem.key.step(StepId::weight))
          continue;  // a child weighed in kg
        const Number wrong = Number(1) / *factor;
        EXPECT_TRUE(isKnown(problem, StepId::limitDose, wrong, numbers) ||
                    isKnown(problem, StepId::give, wrong, numbers))
            << slipTable[i].id << ", " << idOf(topic) << " seed " << seed;
        ++seen[i];
      }
    }
  }
  EXPECT_GE(std::ranges::count_if(seen, [](int times) { return times > 0; }), 8);
}

}  // namespace
}  // namespace wardchalk::one_catalogue_test
