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

// Marking works a line again some dozens of times: what comes after it is not worked then, and nothing before
// it differs.
TEST(Replay, endsAtTheLastStepThatIsWanted) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const Problem problem = makeProblem(Topic::doseByBsa, 2, seed, exactRules());
    const std::vector<Instead> instead{{Origin::step(StepId::bsa), Number::ratio(3, 4)}};
    const Replay whole(problem.key, instead);
    const Replay part(problem.key, instead, StepId::limitDose);
    bool worked = true;
    for (const Step& step : problem.key.steps) {
      ASSERT_EQ(part.exact(step.id) != nullptr, worked && whole.exact(step.id) != nullptr) << idOf(step.id);
      EXPECT_TRUE(!part.exact(step.id) || *part.exact(step.id) == *whole.exact(step.id)) << idOf(step.id);
      EXPECT_TRUE(!part.result(step.id) || *part.result(step.id) == *whole.result(step.id));
      EXPECT_EQ(part.holds(step.id).has_value(), worked && whole.holds(step.id).has_value());
      worked = worked && step.id != StepId::limitDose;
    }
  }
}

// A root has no end. It is cut, so that it is never more than what it was drawn from.
TEST(Replay, cutsARootAfterTwentyDecimals) {
  const Number last = Number::powerOfTen(-20);
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const Problem problem = makeProblem(Topic::doseByBsa, 2, seed, exactRules());
    const Number root = *Replay(problem.key, {}).exact(StepId::bsa);
    const Number square = std::get<Solved>(problem.key.step(StepId::bsa)->body).product.exact;
    EXPECT_LE(root * root, square) << seed;
    EXPECT_GT((root + last) * (root + last), square) << seed;
  }
}

}  // namespace
}  // namespace wardchalk::replay_test
