// What the household constant and 2.2 lb in 1 kg do to the results. All figures were computed once in another
// program from the exact constants; 3131 is read in an encyclopaedia article and study notes, 2.2 in every
// nursing text.
#include <gtest/gtest.h>

#include <iostream>

#include "core/check/work_out.h"
#include "core/child/surface_formula.h"
#include "core/number/decimal_text.h"
#include "tests/support/case_text.h"
#include "tests/support/figures.h"

namespace wardchalk::test::household_test {

namespace {

const Number cmPerInch = Number::ratio(254, 100);
const Number kgPerPound = Number::ratio(45359237, 100000000);

/// The divisor for inches and pounds that Mosteller's 3600 becomes.
Number divisor(const Number& kgInPound) { return Number(mostellerMetric) / (cmPerInch * kgInPound); }

Number weightOf(const std::string& weight, const std::string& rules) {
  return workOut(caseOf("child.weight=" + weight), rulesOf(rules)).weight->kg;
}

Number surfaceOf(const std::string& height, const std::string& weight, const std::string& rules) {
  return workOut(caseOf("child.height=" + height + "; child.weight=" + weight), rulesOf(rules)).bsa->m2;
}

}  // namespace

TEST(HouseholdConstant, isNeitherTheExactOneNorThatOfTwoPointTwo) {
  EXPECT_EQ(divisor(kgPerPound).rounded(2), *readDecimal("3124.66"));
  EXPECT_EQ(divisor(Number::ratio(10, 22)).rounded(2), *readDecimal("3118.11"));
  EXPECT_EQ((Number(mostellerHousehold) * cmPerInch / Number(mostellerMetric)).rounded(4),
            *readDecimal("2.2091"));
}

/// By how many percent the root of a ratio is off 1, in 3 decimals.
std::string percentOff(const Number& ratio) {
  const Number root = ratio.rootRounded(12);
  return exactText(((root - Number(1)).absolute() * Number(100)).rounded(3));
}

TEST(HouseholdConstant, makesTheSurfaceATenthOfAPercentLow) {
  const Number ratio = divisor(kgPerPound) / Number(mostellerHousehold);
  EXPECT_LT(ratio, Number(1));
  EXPECT_EQ(percentOff(ratio), "0.101");
  const Number trade = divisor(kgPerPound) / divisor(Number::ratio(10, 22));
  EXPECT_GT(trade, Number(1));
  EXPECT_EQ(percentOff(trade), "0.105");
}

// Worksheets carry it: with every digit kept, the surface of the same child is low by as much.
TEST(HouseholdConstant, makesTheWorksheetLowByAsMuch) {
  const Number household = surfaceOf("42 in", "70 lb", "bsa_decimals=none");
  const Number exact = surfaceOf("106.68 cm", "70 lb", "bsa_decimals=none");
  EXPECT_EQ(((exact - household) * Number(100) / exact).rounded(3), *readDecimal("0.101"));
}

// Whole inches 18 to 72 and whole pounds 5 to 220 with a body-mass index of 11 to 35.
TEST(HouseholdConstant, movesTheSecondDecimalInAboutAnEighthOfChildren) {
  int pairs = 0;
  int byHousehold = 0;
  int byTrade = 0;
  for (int in = 18; in <= 72; ++in) {
    const Number cm = Number(in) * cmPerInch;
    for (int lb = 5; lb <= 220; ++lb) {
      const Number bmi = Number(lb) * kgPerPound * Number(10000) / (cm * cm);
      if (bmi < Number(11) || bmi > Number(35)) continue;
      ++pairs;
      const std::string pounds = std::to_string(lb) + " lb";
      const Number exact = surfaceOf(exactText(cm) + " cm", pounds, "");
      const Number household = surfaceOf(std::to_string(in) + " in", pounds, "");
      const Number trade = surfaceOf(exactText(cm) + " cm", pounds, "pounds=trade");
      byHousehold += household == exact ? 0 : 1;
      byTrade += trade == exact ? 0 : 1;
      EXPECT_LE((household - exact).absolute(), Number::ratio(1, 100)) << in << " in, " << lb << " lb";
      EXPECT_LE((trade - exact).absolute(), Number::ratio(1, 100)) << in << " in, " << lb << " lb";
    }
  }
  EXPECT_EQ(pairs, 4145);
  EXPECT_EQ(percentText(Number(byHousehold), Number(pairs)), "13.5");
  EXPECT_EQ(percentText(Number(byTrade), Number(pairs)), "13.2");
}

// Dividing by 2.2 makes the weight 0.210 % high: 44 lb are 20 and 19.958 kg, 99 lb 45 and 44.906 kg.
TEST(TradePound, makesWeightsHigh) {
  EXPECT_EQ(weightOf("44 lb", "pounds=trade"), Number(20));
  EXPECT_EQ(weightOf("44 lb", "").rounded(3), *readDecimal("19.958"));
  EXPECT_EQ(weightOf("99 lb", "pounds=trade"), Number(45));
  EXPECT_EQ(weightOf("99 lb", "").rounded(3), *readDecimal("44.906"));
  const Number high = weightOf("44 lb", "pounds=trade") / weightOf("44 lb", "") - Number(1);
  EXPECT_EQ((high * Number(100)).rounded(3), *readDecimal("0.21"));
}

TEST(TradePound, changesTheTenthOfAKilogramInFortySevenOfNinetySixWeights) {
  int changed = 0;
  for (int lb = 5; lb <= 100; ++lb) {
    const std::string pounds = std::to_string(lb) + " lb";
    if (weightOf(pounds, "kilogram_decimals=1") != weightOf(pounds, "pounds=trade; kilogram_decimals=1"))
      ++changed;
  }
  EXPECT_EQ(changed, 47);
}

}  // namespace wardchalk::test::household_test
