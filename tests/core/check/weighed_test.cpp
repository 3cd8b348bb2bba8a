#include <gtest/gtest.h>

#include <string>

#include "core/check/answers.h"
#include "core/check/work_out.h"
#include "core/words/sentences.h"
#include "core/words/working_text.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// When and how the child was weighed (R27): what is asked about, and what stands with every verdict.

namespace wardchalk::test::weighed_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* rules;
  const char* asked;  ///< the sentence; empty where nothing is asked
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs << " | " << row.rules; }

class OldWeight : public testing::TestWithParam<Row> {};

TEST_P(OldWeight, IsAskedAboutWhereTheHouseWants) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(GetParam().rules));
  const Finding* finding = sheet.finding(FindingCode::weightOld);
  EXPECT_EQ(finding ? sentence(*finding) : "", GetParam().asked);
  EXPECT_EQ(sheet.because(), finding ? "weight-old" : "");
}

const std::string perKg =
    "child.weight=17.2 kg; order.dose=80 mg; order.schedule=every 12 h; reference.high=5 mg/kg/dose; "
    "reference.schedule=every 12 h; ";
const std::string flat =
    "child.weight=17.2 kg; order.dose=80 mg; order.schedule=every 12 h; reference.high=84 mg/dose; "
    "reference.schedule=every 12 h; ";
constexpr const char* quarter = "weight_older_than=3 month";
constexpr const char* unknown =
    "It is not stated when the weight of 17.2 kg was taken; the house limit is 3 months. Weigh the child "
    "again, or enter when it was taken.";

// 3 months are 91.3125 days.
INSTANTIATE_TEST_SUITE_P(
    Weights, OldWeight,
    testing::Values(
        Row{"no rule", perKg + "child.weighed=9 year", "", ""}, Row{"no rule and not stated", perKg, "", ""},
        Row{"today", perKg + "child.weighed=today", quarter, ""},
        Row{"as old as may be", perKg + "child.weighed=3 month", quarter, ""},
        Row{"as old in days", perKg + "child.weighed=91 day", quarter, ""},
        Row{"a day older", perKg + "child.weighed=92 day", quarter,
            "The weight of 17.2 kg was taken 92 days ago; the house limit is 3 months. Weigh the child "
            "again."},
        Row{"much older", perKg + "child.weighed=1 year 2 month", quarter,
            "The weight of 17.2 kg was taken 1 year 2 months ago; the house limit is 3 months. Weigh the "
            "child again."},
        Row{"not stated", perKg, quarter, unknown},
        Row{"none but today", perKg + "child.weighed=1 day", "weight_older_than=0 day",
            "The weight of 17.2 kg was taken 1 day ago; the house limit is 0 days. Weigh the child again."},
        Row{"nothing uses it", flat, quarter, ""},
        Row{"a maximum uses it", flat + "reference.max_per_day=100 mg/kg", quarter, unknown},
        Row{"a band uses it", flat + "reference.weight_from=10 kg", quarter, unknown},
        Row{"a surface uses it", flat + "child.height=103 cm; reference.bsa_from=0.5 m2", quarter, unknown},
        Row{"behind a charted surface", flat + "child.bsa=0.7 m2; reference.bsa_from=0.5 m2", quarter, ""},
        Row{"no weight",
            "child.bsa=0.7 m2; order.dose=80 mg; order.schedule=every 12 h; reference.high=120 mg/m2/dose; "
            "reference.schedule=every 12 h",
            quarter, ""}),
    NameOfRow());

TEST(OldWeight, LeadsAndIsSettledByWeighingAgain) {
  const Worksheet sheet =
      workOut(caseOf(perKg + "reference.low=4.9 mg/kg/dose; child.weighed=1 year"), rulesOf(quarter));
  EXPECT_EQ(sheet.because(), "weight-old");
  EXPECT_TRUE(sentence(*sheet.finding(FindingCode::belowLow)).starts_with("Too little by the size entered:"));
  EXPECT_EQ(whatSettles(FindingCode::weightOld), std::vector{Answer::weighedAgain});
  const Worksheet over =
      workOut(caseOf(perKg + "reference.max_per_dose=70 mg; child.weighed=1 year"), rulesOf(quarter));
  EXPECT_TRUE(verdictReason(over).ends_with("check the weight of 17.2 kg first.")) << verdictReason(over);
}

struct SaidRow {
  const char* name;
  std::string inputs;
  const char* said;
};
void PrintTo(const SaidRow& row, std::ostream* out) { *out << row.inputs; }
class WeightUsed : public testing::TestWithParam<SaidRow> {};

TEST_P(WeightUsed, StandsWithTheVerdict) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), exactRules());
  const std::string said = GetParam().said;
  EXPECT_EQ(weightUsed(sheet), said);
  EXPECT_NE(workingText(sheet).find(said), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(
    Weights, WeightUsed,
    testing::Values(
        SaidRow{"nothing odd", perKg, ""},
        SaidRow{"measured today", perKg + "child.weight_method=measured; child.weighed=today", ""},
        SaidRow{"estimated", perKg + "child.weight_method=estimated", "By an estimated weight."},
        SaidRow{"estimated today", perKg + "child.weight_method=estimated; child.weighed=today",
                "By an estimated weight."},
        SaidRow{"some time ago", perKg + "child.weighed=3 month", "By a weight taken 3 months ago."},
        SaidRow{"charted some time ago", perKg + "child.weight_method=charted; child.weighed=6 week",
                "By a weight taken 6 weeks ago."},
        SaidRow{"estimated some time ago", perKg + "child.weight_method=estimated; child.weighed=1 week",
                "By a weight estimated 1 week ago."},
        SaidRow{"nothing uses it", flat + "child.weight_method=estimated; child.weighed=3 month", ""},
        SaidRow{"beside an unsafe order",
                perKg + "reference.max_per_dose=70 mg; child.weight_method=estimated",
                "By an estimated weight."}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::weighed_test
