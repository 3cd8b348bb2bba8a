// The growth tables against the published files they come from, and their centiles as published.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iostream>

#include "core/child/growth.h"
#include "tests/support/csv.h"

namespace wardchalk::test::growth_points_test {

namespace {

struct Named {
  const char* name;
  const char* file;
  GrowthTable table;
};
constexpr std::array named = {
    Named{"infant-weight-for-age", "infant_weight_for_age", GrowthTable::infantWeight},
    Named{"infant-length-for-age", "infant_length_for_age", GrowthTable::infantLength},
    Named{"weight-for-age", "weight_for_age", GrowthTable::weight},
    Named{"stature-for-age", "stature_for_age", GrowthTable::stature}};

GrowthTable tableNamed(const std::string& name) {
  return std::find_if(named.begin(), named.end(), [&](const Named& each) { return name == each.name; })
      ->table;
}

Sex sexNamed(const std::string& name) { return name == "female" ? Sex::female : Sex::male; }

/// Quantiles of the normal distribution, from mathematical tables.
double normalAt(const std::string& point) {
  if (point == "P3") return -1.880793608151251;
  if (point == "P5") return -1.6448536269514722;
  if (point == "P95") return 1.6448536269514722;
  if (point == "P97") return 1.880793608151251;
  return 0;
}

const GrowthRow& rowAt(GrowthTable table, Sex sex, double months) {
  const auto rows = growthRows(table, sex);
  return *std::find_if(rows.begin(), rows.end(),
                       [&](const GrowthRow& row) { return row.ageMonths == months; });
}

}  // namespace

TEST(GrowthTables, areThoseOfThePublishedFiles) {
  for (const Named& each : named) {
    std::size_t at[2] = {0, 0};
    for (const Row& row : readCsv(sourceFile("resources/growth/" + std::string(each.file) + ".csv"))) {
      const Sex sex = sexNamed(row.at("sex"));
      const auto rows = growthRows(each.table, sex);
      const std::size_t i = at[static_cast<std::size_t>(sex)]++;
      ASSERT_LT(i, rows.size()) << each.name;
      EXPECT_EQ(rows[i].ageMonths, std::stod(row.at("age_months"))) << each.name;
      EXPECT_EQ(rows[i].curve.power, std::stod(row.at("L"))) << each.name << " " << rows[i].ageMonths;
      EXPECT_EQ(rows[i].curve.median, std::stod(row.at("M"))) << each.name << " " << rows[i].ageMonths;
      EXPECT_EQ(rows[i].curve.variation, std::stod(row.at("S"))) << each.name << " " << rows[i].ageMonths;
    }
    for (const Sex sex : {Sex::female, Sex::male})
      EXPECT_EQ(at[static_cast<std::size_t>(sex)], growthRows(each.table, sex).size()) << each.name;
  }
}

// L, M and S are published to about 9 figures, so centiles worked from them meet the published ones to about
// 3e-7. The 3rd and 97th centile of infant length lie up to 1.5e-5 cm away: there the file itself is coarser.
TEST(GrowthTables, giveThePublishedCentiles) {
  const std::vector<Row> points = readCsv(sourceFile("tests/evidence/growth_checks.csv"));
  EXPECT_EQ(points.size(), 234U);
  double farthest = 0;
  for (const Row& row : points) {
    const GrowthRow& known =
        rowAt(tableNamed(row.at("table")), sexNamed(row.at("sex")), std::stod(row.at("age_months")));
    const double expected = std::stod(row.at("value"));
    const double value = valueAt(known.curve, normalAt(row.at("point")));
    farthest = std::max(farthest, std::abs(value - expected));
    const double margin = row.at("table") == "infant-length-for-age" ? 2e-5 : 5e-7;
    EXPECT_NEAR(value, expected, margin) << row.at("source") << " at " << row.at("age_months");
  }
  std::cout << "  " << points.size() << " published points; largest deviation " << farthest << "\n";
}

}  // namespace wardchalk::test::growth_points_test
