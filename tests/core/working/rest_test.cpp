#include <gtest/gtest.h>

#include "core/working/step.h"

namespace wardchalk::rest_test {
namespace {

Number n(std::int64_t over, std::int64_t under = 1) { return Number::ratio(over, under); }

const Syringe ten{n(10), n(2, 10), SyringeKind::oral};
const Syringe five{n(5), n(2, 10), SyringeKind::oral};

/// 12.9 mL in a full 10 mL syringe and one of 5 mL, whose marks are 0.2 mL apart.
Measuring pair() {
  Measuring both;
  both.exact = {n(129, 10), Unit::mL};
  both.measured = n(128, 10);
  both.passedOver = n(13);
  both.syringe = five;
  both.syringes = 2;
  both.step = n(2, 10);
  both.below = n(128, 10);
  both.above = n(13);
  both.full = ten;
  return both;
}

TEST(RestOfAPair, isWhatTheFullSyringeLeaves) {
  const Measuring rest = restOf(pair());
  EXPECT_FALSE(rest.full);
  EXPECT_EQ(rest.exact, (Quantity{n(29, 10), Unit::mL}));
  EXPECT_EQ(rest.measured, n(28, 10));
  EXPECT_EQ(rest.passedOver, n(3));
  EXPECT_EQ(rest.below, n(28, 10));
  EXPECT_EQ(rest.above, n(3));
  EXPECT_EQ(rest.syringe, five);
  EXPECT_EQ(rest.step, n(2, 10));
}

TEST(RestOfAPair, hasNoMeasureWhereThePairHasNone) {
  Measuring both = pair();
  both.measured.reset();
  both.passedOver.reset();
  EXPECT_FALSE(restOf(both).measured);
  EXPECT_FALSE(restOf(both).passedOver);
}

}  // namespace
}  // namespace wardchalk::rest_test
