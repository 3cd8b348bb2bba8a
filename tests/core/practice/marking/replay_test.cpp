#include "core/practice/marking/replay.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/practice/making/problem_maker.h"

namespace wardchalk::replay_test {
namespace {

/// Whether a number of the step's chain is this one.
bool stands(const Step& step, const Number& value) {
  const Chain& chain = std::get<Solved>(step.body).chain;
  return std::ranges::any_of(chain.factors, [&](const Factor& factor) {
    return factor.over.value == value || factor.under.value == value;
  });
}

// A student's earlier answers come and go with each line; what was worked with them is shown later.
TEST(Replay, keepsTheNumbersItWasMadeWith) {
  const Problem problem = makeProblem(Topic::doseByBsa, 2, 7, exactRules());
  const Number answer(123);
  std::vector<Instead> instead{{Origin::step(StepId::bsa), answer}};
  const Replay replay(problem.key, instead);
  ASSERT_TRUE(stands(replay.shown(StepId::limitDose), answer));
  instead.front() = {Origin::step(StepId::give), Number(456)};
  EXPECT_TRUE(stands(replay.shown(StepId::limitDose), answer));
}

}  // namespace
}  // namespace wardchalk::replay_test
