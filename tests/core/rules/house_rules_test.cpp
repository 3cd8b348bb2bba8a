#include "core/rules/house_rules.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/number/decimal_text.h"

namespace wardchalk::house_rules_test {
namespace {

TEST(ExactRules, areTheDocumentedDefaults) {
  const HouseRules& rules = exactRules();
  EXPECT_EQ(rules.name, "exact");
  EXPECT_EQ(rules.pounds, Pounds::exact);
  EXPECT_EQ(rules.kilogramDecimals, std::nullopt);
  EXPECT_EQ(rules.bsaFormula, BsaFormula::mosteller);
  EXPECT_EQ(rules.bsaDecimals, 2);
  EXPECT_EQ(rules.roundTo, RoundTo::marks);
  EXPECT_EQ(rules.volumeDecimalsBelow1Ml, 2);
  EXPECT_EQ(rules.volumeDecimalsFrom1Ml, 1);
  EXPECT_EQ(rules.rateDecimals, 1);
  EXPECT_EQ(rules.askBelowPercent, Number(90));
  EXPECT_EQ(rules.askLowPercent, Number(97));
  EXPECT_EQ(rules.askRoundingPercent, Number(5));
  EXPECT_EQ(rules.bsaDiffersPercent, Number(5));
  EXPECT_EQ(rules.sizeWithoutAge, SizeWithoutAge::ask);
  EXPECT_EQ(rules.manyUnits, 3);
  EXPECT_EQ(rules.smallestVolume, (Quantity{Number::ratio(1, 10), Unit::mL}));
  EXPECT_EQ(rules.idleMinutes, 5);
  EXPECT_EQ(rules.agreedBy, "");
  EXPECT_EQ(rules.agreedOn, "");
}

TEST(ClassroomRules, differFromExactOnesInWhatIsTaughtAndInWhatIsAsked) {
  HouseRules rules = classroomRules();
  EXPECT_EQ(rules.name, "classroom");
  EXPECT_EQ(rules.pounds, Pounds::trade);
  EXPECT_EQ(rules.kilogramDecimals, 2);
  EXPECT_EQ(rules.roundTo, RoundTo::decimals);
  EXPECT_EQ(rules.referenceScheduleMissing, ReferenceScheduleMissing::note);
  EXPECT_EQ(rules.orderScheduleMissing, OrderScheduleMissing::oneDose);
  EXPECT_EQ(rules.sizeWithoutAge, SizeWithoutAge::note);
  EXPECT_EQ(rules.askRoundingPercent, Number(6));
  EXPECT_EQ(rules.manyUnits, 5);
  EXPECT_EQ(rules.smallestVolume, (Quantity{Number::ratio(2, 100), Unit::mL}));
  rules.name = "exact";
  rules.pounds = Pounds::exact;
  rules.kilogramDecimals.reset();
  rules.roundTo = RoundTo::marks;
  rules.referenceScheduleMissing = ReferenceScheduleMissing::ask;
  rules.orderScheduleMissing = OrderScheduleMissing::needed;
  rules.sizeWithoutAge = SizeWithoutAge::ask;
  rules.askRoundingPercent = Number(5);
  rules.manyUnits = 3;
  rules.smallestVolume = {Number::ratio(1, 10), Unit::mL};
  EXPECT_EQ(rules, exactRules());
}

TEST(Syringes, areTheUsualOnesOfEachKind) {
  std::vector<std::string> oral;
  std::vector<std::string> injection;
  for (const Syringe& syringe : exactRules().syringes)
    (syringe.kind == SyringeKind::oral ? oral : injection)
        .push_back(exactText(syringe.holdsMl) + "/" + exactText(syringe.marksMl));
  const std::vector<std::string> usual = {"1/0.01", "3/0.1", "5/0.2", "10/0.2", "20/1", "60/1"};
  EXPECT_EQ(oral, usual);
  EXPECT_EQ(injection, usual);
}

TEST(Syringes, eachHoldsAWholeNumberOfMarks) {
  for (const Syringe& syringe : exactRules().syringes)
    EXPECT_TRUE((syringe.holdsMl / syringe.marksMl).isWhole());
}

TEST(BsaWorkingDecimals, areTwentyWhereAllDigitsAreKept) {
  HouseRules rules = exactRules();
  EXPECT_EQ(bsaWorkingDecimals(rules), 2);
  rules.bsaDecimals = 4;
  EXPECT_EQ(bsaWorkingDecimals(rules), 4);
  rules.bsaDecimals.reset();
  EXPECT_EQ(bsaWorkingDecimals(rules), 20);
}

}  // namespace
}  // namespace wardchalk::house_rules_test
