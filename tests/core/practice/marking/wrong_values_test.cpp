#include "core/practice/marking/wrong_values.h"

#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/unit/conversion.h"
#include "tests/core/practice/marking/marking_cases.h"
#include "tests/support/case_text.h"

// Which figures a mistake leads to, and in which list they stand: the first is the one by which problems are
// refused where two mistakes could not be told apart.

namespace wardchalk::wrong_values_test {
namespace {

/// What the weight of seven pounds and some ounces comes to by this mistake, in pounds: "7.8".
std::string poundsBy(MistakeId mistake, const std::string& ounces) {
  const Case given =
      test::caseOf("order.dose=10 mg; reference.high=5 mg/kg/dose; child.weight=7 lb " + ounces);
  const Worksheet key = workOut(given, exactRules());
  const Number inPound = *converted(Number(1), Unit::lb, Unit::kg);
  std::string text;
  for (const WrongValue& wrong : wrongValues(key, StepId::weight, {}).values)
    if (wrong.mistake == mistake) text += (text.empty() ? "" : " ") + exactText(wrong.value / inPound);
  return text;
}

TEST(WrongValues, ofOuncesBehindThePointAreAmongThoseThatAreKeptApart) {
  EXPECT_EQ(poundsBy(MistakeId::ouncesAsDecimals, "8 oz"), "7.8");
  EXPECT_EQ(poundsBy(MistakeId::ouncesAsDecimals, "9.5 oz"), "7.95");
  EXPECT_EQ(poundsBy(MistakeId::ouncesAsDecimals, "10 oz"), "7.1");
  EXPECT_EQ(poundsBy(MistakeId::ouncesAsDecimals, "12 oz"), "7.12");
}

/// √(height × weight ÷ 3131) with the root drawn of the constant alone: 44 × 42 ÷ √3131.
TEST(WrongValues, ofARootOfTheConstantAreByThatOfTheHousehold) {
  const Problem problem = test::casePowder();
  const Number over = Number(44 * 42) * Number(44 * 42);
  bool found = false;
  for (const WrongValue& wrong : wrongValues(problem.key, StepId::bsa, {}, Rare::sought).rare)
    found = found || (wrong.mistake == MistakeId::rootOfBottomOnly &&
                      (wrong.value * wrong.value * Number(3131) - over).absolute() < Number::powerOfTen(-9));
  EXPECT_TRUE(found);
}

}  // namespace
}  // namespace wardchalk::wrong_values_test
