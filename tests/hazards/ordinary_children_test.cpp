// Children of ordinary size at every age: the program stays quiet about them, and about none of them when
// their size is mistaken (H03, H05, H38).
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <vector>

#include "core/check/work_out.h"
#include "core/child/growth.h"
#include "core/number/decimal_text.h"
#include "tests/support/case_text.h"
#include "tests/support/figures.h"
#include "tests/support/random_case.h"

namespace wardchalk::test::ordinary_children_test {

namespace {

struct Ordinary {
  Sex sex;
  int months;
  std::string kg;
  std::string cm;
};

/// The median of the tables at an age, as a scale and a measuring board show it.
Ordinary median(Sex sex, int months) {
  const GrowthAge age{static_cast<double>(months), months < infantMonths};
  return {sex, months, decimal(std::llround(valueAt(weightCurve(sex, age), 0) * 10), 1),
          decimal(std::llround(valueAt(statureCurve(sex, age), 0)), 0)};
}

/// Girls and boys from 1 month to 17 years: each month of the first year, then each third month.
const std::vector<Ordinary>& children() {
  static const std::vector<Ordinary> all = [] {
    std::vector<Ordinary> made;
    for (const Sex sex : {Sex::female, Sex::male})
      for (int months = 1; months <= 17 * 12; months += months < 12 ? 1 : 3)
        made.push_back(median(sex, months));
    return made;
  }();
  return all;
}

std::string sizeText(const Ordinary& child, const std::string& kg, const std::string& cm) {
  return "child.age=" + std::to_string(child.months) +
         " month; child.sex=" + (child.sex == Sex::female ? "female" : "male") + "; child.weight=" + kg +
         " kg; child.height=" + cm + " cm";
}

Worksheet sizeOf(const Ordinary& child, const std::string& kg, const std::string& cm) {
  return workOut(caseOf(sizeText(child, kg, cm)), exactRules());
}

bool isFlagged(const Worksheet& sheet) { return unmet(sheet, "check.size=outside").empty(); }

}  // namespace

// Doses at 95 % of the limit, by weight and by surface, per dose and per day: none of them is a reason to
// stop or to ask.
TEST(OrdinaryChildren, aUsualOrderIsSafeWithoutAQuestion) {
  constexpr const char* bases[] = {"10 mg/kg/dose", "30 mg/kg/day", "120 mg/m2/dose", "300 mg/m2/day"};
  constexpr const char* orders[] = {"9.5 mg/kg", "28.5 mg/kg/day", "114 mg/m2", "285 mg/m2/day"};
  int worked = 0;
  int stopped = 0;
  for (const Ordinary& child : children())
    for (std::size_t i = 0; i < std::size(bases); ++i) {
      const Worksheet sheet = workOut(
          caseOf(sizeText(child, child.kg, child.cm) +
                 "; order.medicine=Plover; order.route=oral; order.dose=" + orders[i] +
                 "; order.schedule=every 8 h; reference.schedule=every 8 h; reference.high=" + bases[i] +
                 "; reference.source=Bench list; stock.kind=liquid; stock.strength=25 mg/mL"),
          exactRules());
      ++worked;
      stopped += sheet.verdict == VerdictKind::safe ? 0 : 1;
    }
  std::cout << worked << " usual orders, " << stopped << " stopped or asked about\n";
  EXPECT_GE(worked, 100);
  EXPECT_LE(stopped * 100, worked * 2) << "at most 2 in a hundred";
}

TEST(OrdinaryChildren, H03_poundsTakenForKilogramsAreFlaggedAtEveryAge) {
  for (const Ordinary& child : children()) {
    const Number pounds = (*readDecimal(child.kg) * Number(22) / Number(10)).rounded(1);
    EXPECT_TRUE(isFlagged(sizeOf(child, exactText(pounds), child.cm))) << child.months << " months";
  }
}

// The formula multiplies the two, so that no look at the surface finds a swap; the size check does, every
// time.
TEST(OrdinaryChildren, H05_aSwapLeavesTheSurfaceAndIsFlagged) {
  for (const Ordinary& child : children()) {
    const Worksheet right = sizeOf(child, child.kg, child.cm);
    const Worksheet swapped = sizeOf(child, child.cm, child.kg);
    EXPECT_FALSE(isFlagged(right)) << child.months << " months";
    EXPECT_TRUE(isFlagged(swapped)) << child.months << " months";
    ASSERT_TRUE(right.bsa && swapped.bsa);
    EXPECT_EQ(right.bsa->m2, swapped.bsa->m2);
  }
}

}  // namespace wardchalk::test::ordinary_children_test
