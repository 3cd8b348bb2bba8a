#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/words/amount_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// Whether a tablet may be cut (R21): asked where it makes a difference, never assumed.

namespace wardchalk::test::scored_test {
namespace {

struct Row {
  const char* name;
  const char* dose;  ///< of tablets of 100 mg
  const char*
      unknown;  ///< the tablets to give while nobody says whether they may be cut; "?" where it is asked
  const char* whole;  ///< "none": not measurable
  const char* halves;
  const char* quarters;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.dose; }

Worksheet tablets(const std::string& dose, const std::string& stock) {
  return workOut(caseOf("order.dose=" + dose +
                        "; order.schedule=every 12 h; order.route=oral; reference.high=1000 mg/dose; "
                        "reference.limit_only=true; reference.schedule=every 12 h; stock.kind=solid; " +
                        stock),
                 exactRules());
}

std::string given(const Worksheet& sheet) {
  const bool asked = std::ranges::any_of(sheet.needs, [](const Need& need) {
    return need.path == "stock.divides_into" && need.forWhat == Need::For::amount;
  });
  const bool none = sheet.finding(FindingCode::notMeasurable) != nullptr;
  if (asked) {
    EXPECT_FALSE(none || sheet.give->measured || !sheet.give->neighbours.empty() ||
                 sheet.step(StepId::device));
    EXPECT_EQ(amountWords(sheet).none,
              "No amount yet: is this tablet scored, and may it be cut? Not if coated or slow-release.");
    return "?";
  }
  if (none) return "none";
  return sheet.give->measured ? exactText(*sheet.give->measured) : "nothing";
}

class Scored : public testing::TestWithParam<Row> {};

TEST_P(Scored, IsAskedWhereItMakesADifference) {
  const Row& row = GetParam();
  const std::string tablet = "stock.strength=100 mg/tablet";
  EXPECT_EQ(given(tablets(row.dose, tablet)), row.unknown);
  EXPECT_EQ(given(tablets(row.dose, tablet + "; stock.divides_into=1")), row.whole);
  EXPECT_EQ(given(tablets(row.dose, tablet + "; stock.divides_into=2")), row.halves);
  EXPECT_EQ(given(tablets(row.dose, tablet + "; stock.divides_into=4")), row.quarters);
  EXPECT_EQ(given(tablets(row.dose, "stock.strength=100 mg/capsule")), row.whole);
}

INSTANTIATE_TEST_SUITE_P(
    Tablets, Scored,
    testing::Values(Row{"H55 a half", "50 mg", "?", "none", "0.5", "0.5"},
                    Row{"H55 a quarter", "25 mg", "?", "none", "none", "0.25"},
                    Row{"H55 one and a half", "150 mg", "?", "none", "1.5", "1.5"},
                    Row{"three quarters", "75 mg", "?", "none", "none", "0.75"},
                    Row{"one", "100 mg", "1", "1", "1", "1"}, Row{"three", "300 mg", "3", "3", "3", "3"},
                    Row{"near one", "98 mg", "1", "1", "1", "1"},
                    Row{"near a half", "51 mg", "?", "none", "0.5", "0.5"},
                    Row{"near nothing that can be cut", "60 mg", "none", "none", "none", "none"},
                    Row{"far below a quarter", "5 mg", "none", "none", "none", "none"},
                    Row{"at five percent", "105 mg", "1", "1", "1", "1"},
                    Row{"over five percent", "106 mg", "none", "none", "none", "none"},
                    Row{"where finer is nearer", "515 mg", "?", "5", "5", "5.25"}),
    NameOfRow());

TEST(ScoredTablets, AreNamedAfterTheStrength) {
  const Worksheet sheet = tablets("50 mg", "stock.strength=100 mg/tablet");
  ASSERT_EQ(sheet.needs.size(), 1U);
  EXPECT_EQ(sheet.verdict, VerdictKind::safe);
  EXPECT_TRUE(tablets("50 mg", "").give == std::nullopt);
}

}  // namespace
}  // namespace wardchalk::test::scored_test
