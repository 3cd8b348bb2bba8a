#include "core/practice/making/problem_draw.h"

#include <gtest/gtest.h>

#include <array>
#include <map>

#include "core/child/growth.h"
#include "core/practice/making/problem_child.h"
#include "core/practice/making/problem_names.h"
#include "core/practice/making/problem_numbers.h"
#include "core/practice/making/problem_site.h"
#include "core/practice/making/problem_units.h"

namespace wardchalk::problem_draw_test {
namespace {

TEST(ProblemDraw, isSplitMix64) {
  // First values of the seed 1234567. Source: the task "Pseudo-random numbers/Splitmix64" of Rosetta Code,
  // from memory.
  ProblemDraw draw(1234567);
  for (const std::uint64_t expected : {6457827717110365317U, 3203168211198807973U, 9817491932198370423U,
                                       4593380528125082431U, 16408922859458223821U})
    EXPECT_EQ(draw.next(), expected);
}

TEST(ProblemDraw, reachesBothEndsAndNothingBeyond) {
  ProblemDraw draw(1);
  std::array<int, 5> seen{};
  for (int i = 0; i < 5000; ++i) {
    const std::int64_t drawn = draw.between(3, 7);
    ASSERT_GE(drawn, 3);
    ASSERT_LE(drawn, 7);
    ++seen[static_cast<std::size_t>(drawn - 3)];
  }
  for (const int times : seen) EXPECT_NEAR(times, 1000, 150);
}

TEST(InventedMedicines, areFortyOrMoreThatDiffer) {
  const auto names = inventedMedicines();
  EXPECT_GE(names.size(), 40U);
  for (std::size_t i = 1; i < names.size(); ++i) EXPECT_LT(names[i - 1], names[i]);
}

TEST(ProblemChild, isOrdinaryForAgeAndSex) {
  ProblemDraw draw(7);
  for (int i = 0; i < 3000; ++i) {
    const ProblemChild child = drawProblemChild(draw, 1, 215);
    const GrowthAge age{child.months + 0.5, child.months < 24};
    const double kg = static_cast<double>(child.kgTenths) / 10;
    // Between about the 3rd and the 97th centile.
    EXPECT_LT(std::abs(modifiedZ(weightCurve(child.sex, age), kg)), 1.9) << child.months;
    EXPECT_LT(std::abs(modifiedZ(statureCurve(child.sex, age), static_cast<double>(child.cm))), 1.9)
        << child.months;
  }
}

TEST(ProblemChild, hasMonthsBesideYearsSoThatTheAgeIsOneAge) {
  EXPECT_EQ((ProblemChild{Sex::male, 23, 120, 86}.ageText()), "23 month");
  EXPECT_EQ((ProblemChild{Sex::male, 50, 160, 103}.ageText()), "4 year 2 month");
  ProblemDraw draw(3);
  for (int i = 0; i < 500; ++i) EXPECT_NE(drawProblemChild(draw, 24, 24).months, 24);
}

TEST(DecimalText, hasNoZeroAtTheEnd) {
  EXPECT_EQ(decimalText(12500), "12.5");
  EXPECT_EQ(decimalText(3000), "3");
  EXPECT_EQ(decimalText(250), "0.25");
  EXPECT_EQ(decimalText(1200000), "1200");
}

TEST(RoundNumberIn, liesBetweenAndIsAMultipleOfAUsualStep) {
  ProblemDraw draw(11);
  for (std::int64_t least = 10; least < 3000000; least = least * 21 / 17 + 3) {
    const auto drawn = roundNumberIn(draw, least, least * 104 / 100 + 20);
    ASSERT_TRUE(drawn) << least;
    EXPECT_GE(*drawn, least);
    EXPECT_LE(*drawn, least * 104 / 100 + 20);
    EXPECT_EQ(*drawn % 5, 0);
  }
  EXPECT_FALSE(roundNumberIn(draw, 1, 9));
}

TEST(LabelFor, givesAMeasurableVolumeOfAnotherAmount) {
  ProblemDraw draw(5);
  int found = 0;
  for (const std::int64_t labelMl : {1000, 2000, 5000})
    for (std::int64_t dose = 5000; dose < 900000; dose += 2500) {
      const auto label = labelFor(draw, {dose, 200, 20000, labelMl, 200000});
      if (!label) continue;
      ++found;
      EXPECT_NE(label->amount, dose);
      EXPECT_EQ(label->mL, labelMl);
      EXPECT_LE(label->amount, 200 * labelMl);
      EXPECT_EQ(dose * label->mL % label->amount, 0);
      EXPECT_TRUE(isOnEveryMark(dose * label->mL / label->amount));
    }
  EXPECT_GT(found, 400);
}

TEST(DrawLabelMl, isMostly5mLByMouth) {
  ProblemDraw draw(6);
  std::map<std::int64_t, int> swallowed, injected;
  for (int i = 0; i < 1000; ++i) {
    ++swallowed[drawLabelMl(draw, true)];
    ++injected[drawLabelMl(draw, false)];
  }
  EXPECT_GT(swallowed[5000], 500);
  EXPECT_GT(swallowed[1000], 150);
  EXPECT_GT(injected[1000] + injected[2000] + injected[5000], 700);
  for (const auto& labels : {swallowed, injected}) EXPECT_FALSE(labels.contains(10000));
}

struct SiteRowOf {
  std::string_view route;
  int months;
  std::optional<std::int64_t> most;
};

TEST(MostInOnePlace, growsWithAge) {
  for (const SiteRowOf& row : {
           SiteRowOf{"intramuscular", 0, 500},
           SiteRowOf{"intramuscular", 17, 500},
           SiteRowOf{"intramuscular", 18, 1000},
           SiteRowOf{"intramuscular", 71, 1000},
           SiteRowOf{"intramuscular", 72, 1500},
           SiteRowOf{"intramuscular", 215, 1500},
           SiteRowOf{"subcutaneous", 35, 500},
           SiteRowOf{"subcutaneous", 36, 1000},
           SiteRowOf{"subcutaneous", 215, 1000},
           SiteRowOf{"intravenous", 8, std::nullopt},
           SiteRowOf{"oral", 8, std::nullopt},
           SiteRowOf{"", 8, std::nullopt},
       })
    EXPECT_EQ(mostInOnePlace(row.route, row.months), row.most) << row.route << " " << row.months;
}

TEST(UnitFor, putsNoSaltIntoTissue) {
  ProblemDraw draw(9);
  for (const std::string_view route : {"intramuscular", "subcutaneous"})
    for (int i = 0; i < 500; ++i) EXPECT_FALSE(isSalt(unitFor(draw, route)));
}

TEST(IsOnEveryMark, followsTheUsualSyringes) {
  for (const std::int64_t mL : {250, 1000, 1100, 2900, 3200, 9800, 10000, 15000})
    EXPECT_TRUE(isOnEveryMark(mL)) << mL;
  for (const std::int64_t mL : {255, 1050, 3100, 9900, 15500}) EXPECT_FALSE(isOnEveryMark(mL)) << mL;
}

TEST(HouseholdFigures, areTheNearest) {
  EXPECT_EQ(poundsFor(169), 37);  // 37.26
  EXPECT_EQ(ouncesFor(169), 596);
  EXPECT_EQ(inchesFor(103), 41);         // 40.55
  EXPECT_EQ(surfaceFor(103, 169), 695);  // √0.48353
}

}  // namespace
}  // namespace wardchalk::problem_draw_test
