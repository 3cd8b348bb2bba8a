#include "core/child/growth.h"

#include <gtest/gtest.h>

#include <cmath>

namespace wardchalk::growth_test {
namespace {

constexpr GrowthTable tables[] = {GrowthTable::infantWeight, GrowthTable::infantLength, GrowthTable::weight,
                                  GrowthTable::stature};
constexpr Sex sexes[] = {Sex::female, Sex::male};

/// CDC's worked examples are of body mass index. The girl's curve at 200 months lies between the rows 199.5
/// and 200.5 of the data file bmiagerev.csv (CDC/NCHS 2000 Growth Charts).
constexpr GrowthCurve girlsIndexAt200Months{(-2.175176987 - 2.183317362) / 2, (20.72660728 + 20.76355011) / 2,
                                            (0.14823412 + 0.148122614) / 2};

// Source: CDC, "Modified z-scores in the CDC growth charts", examples 1 and 2, worked there with L, M and S
// cut to three figures; hence the margin.
TEST(ModifiedZ, givesTheWorkedExamples) {
  EXPECT_NEAR(modifiedZ(girlsIndexAt200Months, 333), 49.2, 0.15);
  EXPECT_NEAR(modifiedZ(girlsIndexAt200Months, 12), -4.1, 0.05);
}

// Same source: the plain z of 33 is 1.97. Read backwards, 1.97 away from the median is 33.
TEST(ValueAt, givesTheWorkedExample) { EXPECT_NEAR(valueAt(girlsIndexAt200Months, 1.97), 33, 0.05); }

TEST(ValueAt, aPowerOfZeroIsTheLimitOfSmallPowers) {
  EXPECT_DOUBLE_EQ(valueAt({0, 10, 0.12}, 1.5), 10 * std::exp(0.18));
  EXPECT_NEAR(valueAt({1e-5, 10, 0.12}, 1.5), valueAt({0, 10, 0.12}, 1.5), 1e-4);
  EXPECT_NEAR(valueAt({-1e-5, 10, 0.12}, -3), valueAt({0, 10, 0.12}, -3), 1e-4);
}

// 10 (1 + 0.18 L)^(1/L), by Python: 11.972172662 at L = 5e-6, 11.972173437 at 1e-6. The limit, 10 e^0.18,
// is 11.972173631.
TEST(ValueAt, aPowerCountsFromAMillionthOn) {
  EXPECT_NEAR(valueAt({1e-6, 10, 0.12}, 1.5), 11.972173437, 2e-8);
  EXPECT_NEAR(valueAt({5e-6, 10, 0.12}, 1.5), 11.972172662, 1e-7);
  EXPECT_DOUBLE_EQ(valueAt({5e-7, 10, 0.12}, 1.5), 10 * std::exp(0.18));
}

TEST(ValueAt, aPowerOfOneIsTheNormalCurve) { EXPECT_DOUBLE_EQ(valueAt({1, 50, 0.04}, -2), 46); }

TEST(ModifiedZ, isMinusTwoZeroAndTwoWhereTheCurveIs) {
  for (const GrowthTable table : tables)
    for (const Sex sex : sexes)
      for (const GrowthRow& row : growthRows(table, sex))
        for (const double z : {-2.0, 0.0, 2.0})
          EXPECT_NEAR(modifiedZ(row.curve, valueAt(row.curve, z)), z, 1e-9) << row.ageMonths;
}

/// The plain z has a ceiling where the power is negative; this has none.
TEST(ModifiedZ, growsWithTheValueWithoutACeiling) {
  const GrowthCurve boyOf9 = weightCurve(Sex::male, {108, false});
  EXPECT_NEAR(modifiedZ(boyOf9, 280), 31.85, 0.005);  // worked from the tables by another program
  EXPECT_NEAR(modifiedZ(boyOf9, 2800) / modifiedZ(boyOf9, 280), 11, 0.2);
}

TEST(GrowthTables, riseInAgeAndInMedian) {
  for (const GrowthTable table : tables)
    for (const Sex sex : sexes) {
      const auto rows = growthRows(table, sex);
      for (std::size_t i = 1; i < rows.size(); ++i) {
        EXPECT_GT(rows[i].ageMonths, rows[i - 1].ageMonths);
        EXPECT_GT(rows[i].curve.median, rows[i - 1].curve.median) << rows[i].ageMonths;
      }
    }
}

TEST(GrowthCurves, lieOnARowAndBetweenRows) {
  const GrowthCurve onRow = weightCurve(Sex::female, {24.5, false});
  const GrowthCurve next = weightCurve(Sex::female, {25.5, false});
  const GrowthCurve quarter = weightCurve(Sex::female, {24.75, false});
  EXPECT_EQ(onRow.median, growthRows(GrowthTable::weight, Sex::female)[1].curve.median);
  EXPECT_DOUBLE_EQ(quarter.power, onRow.power * 0.75 + next.power * 0.25);
  EXPECT_DOUBLE_EQ(quarter.median, onRow.median * 0.75 + next.median * 0.25);
  EXPECT_DOUBLE_EQ(quarter.variation, onRow.variation * 0.75 + next.variation * 0.25);
}

TEST(GrowthCurves, infantTablesServeBelow24Months) {
  for (const Sex sex : sexes) {
    const double lying = statureCurve(sex, {24, true}).median;
    const double standing = statureCurve(sex, {24, false}).median;
    EXPECT_EQ(standing, growthRows(GrowthTable::stature, sex).front().curve.median);
    // Lying is longer than standing by about 0.8 cm in these charts (Vital Health Stat 11(246), 2002).
    EXPECT_NEAR(lying - standing, 0.8, 0.15);
    EXPECT_NEAR(weightCurve(sex, {24, true}).median, weightCurve(sex, {24, false}).median, 0.1);
  }
}

TEST(GrowthCurves, endWithTheirTables) {
  EXPECT_EQ(weightCurve(Sex::male, {240, false}).median, weightCurve(Sex::male, {300, false}).median);
  EXPECT_EQ(statureCurve(Sex::male, {0, true}).median, statureCurve(Sex::male, {-1, true}).median);
}

TEST(HeightAge, isTheAgeOfThatMedian) {
  for (const Sex sex : sexes)
    for (const GrowthAge age :
         {GrowthAge{0.3, true}, GrowthAge{7, true}, GrowthAge{23.9, true}, GrowthAge{26, false},
          GrowthAge{72.49, false}, GrowthAge{150.2, false}, GrowthAge{239, false}}) {
      const GrowthAge found = heightAge(sex, statureCurve(sex, age).median);
      EXPECT_NEAR(found.months, age.months, 1e-6);
      EXPECT_EQ(found.infant, age.infant) << age.months;
    }
}

TEST(HeightAge, stopsAtTheEndsOfTheTables) {
  for (const Sex sex : sexes) {
    EXPECT_EQ(heightAge(sex, 1).months, 0);
    EXPECT_TRUE(heightAge(sex, 1).infant);
    EXPECT_EQ(heightAge(sex, 260).months, 240);
    EXPECT_FALSE(heightAge(sex, 260).infant);
  }
}

TEST(HeightAge, isTheYoungestWhereLyingAndStandingOverlap) {
  const double standing = statureCurve(Sex::male, {24, false}).median;
  EXPECT_LT(heightAge(Sex::male, standing).months, 24);
  EXPECT_TRUE(heightAge(Sex::male, standing).infant);
  const double lying = statureCurve(Sex::male, {24, true}).median + 1e-6;
  EXPECT_FALSE(heightAge(Sex::male, lying).infant);
  EXPECT_GT(heightAge(Sex::male, lying).months, 24);
}

struct Worked {
  Sex sex;
  double months, kg, cm, weight, height, age, weightForHeight;
};

// Worked from the same tables by another program (Python), to the hundredth.
TEST(GrowthScores, areThoseOfAnotherProgram) {
  for (const Worked& row : {Worked{Sex::male, 30, 29.8, 92, 9.44, 0.27, 31.47, 9.07},
                            Worked{Sex::female, 72, 20.5, 115, 0.06, 0.05, 72.49, 0.04},
                            Worked{Sex::female, 72, 45.2, 115, 5.34, 0.05, 72.49, 5.27},
                            Worked{Sex::female, 72, 9.3, 115, -4.86, 0.05, 72.49, -4.87},
                            Worked{Sex::male, 108, 280, 133, 31.85, -0.09, 106.86, 32.52},
                            Worked{Sex::female, 180, 114.6, 162, 3.81, 0.02, 181.87, 3.77},
                            Worked{Sex::female, 180, 23.6, 162, -4.33, 0.02, 181.87, -4.41}}) {
    const GrowthAge age{row.months, false};
    EXPECT_NEAR(modifiedZ(weightCurve(row.sex, age), row.kg), row.weight, 0.0051);
    EXPECT_NEAR(modifiedZ(statureCurve(row.sex, age), row.cm), row.height, 0.0051);
    EXPECT_NEAR(heightAge(row.sex, row.cm).months, row.age, 0.0051);
    EXPECT_NEAR(modifiedZ(weightCurve(row.sex, heightAge(row.sex, row.cm)), row.kg), row.weightForHeight,
                0.0051);
  }
}

}  // namespace
}  // namespace wardchalk::growth_test
