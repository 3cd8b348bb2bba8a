#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// Where the pounds decide (R17): told both ways, and the verdict stays.

namespace wardchalk::test::pounds_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* rules;
  const char* told;  ///< the check and the sentence; empty where nothing is told
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs << " | " << row.rules; }

class PoundsDecide : public testing::TestWithParam<Row> {};

TEST_P(PoundsDecide, AreToldBothWays) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(GetParam().rules));
  std::string told;
  for (const Finding& finding : sheet.findings) {
    const auto* by = finding.argument<ArgumentWord>("by");
    if (finding.code != FindingCode::roundingDecides || !by) continue;
    EXPECT_EQ(finding.severity, Severity::note);
    told.append(idOf(*finding.check)).append(": ").append(sentence(finding));
  }
  EXPECT_EQ(told, GetParam().told);
  EXPECT_TRUE(told.empty() || sheet.verdict == VerdictKind::unsafe);
}

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string perKg = often + "child.weight=22 lb; reference.high=5 mg/kg/dose; ";

// 22 lb are 10 kg, or 9.97903214 kg by 0.45359237 kg in 1 lb.
INSTANTIATE_TEST_SUITE_P(
    Pounds, PoundsDecide,
    testing::Values(
        Row{"one dose", perKg + "order.dose=50 mg", "",
            "single: Pounds decide: 50 mg ordered, safe up to ≈ 49.9 mg by exact pounds and 50 mg by 2.2 lb "
            "per kg. The verdict stays."},
        Row{"one dose and the weight in ounces alone",
            often + "child.weight=352 oz; reference.high=5 mg/kg/dose; order.dose=50 mg", "",
            "single: Pounds decide: 50 mg ordered, safe up to ≈ 49.9 mg by exact pounds and 50 mg by 2.2 lb "
            "per kg. The verdict stays."},
        Row{"over by both", perKg + "order.dose=50.1 mg", "", ""},
        Row{"within by both", perKg + "order.dose=49.8 mg", "", ""},
        Row{"taught pounds", perKg + "order.dose=50 mg", "pounds=trade", ""},
        Row{"the same weight in kg",
            often + "child.weight=9.97903214 kg; reference.high=5 mg/kg/dose; order.dose=50 mg", "", ""},
        Row{"a day alone",
            "child.weight=22 lb; order.dose=50 mg; order.schedule=every 6 h; reference.high=20 mg/kg/day; "
            "reference.schedule=every 8 h",
            "",
            "daily: Pounds decide: 200 mg ordered, safe up to ≈ 199.6 mg by exact pounds and 200 mg by 2.2 "
            "lb per kg. The verdict stays."},
        Row{"a maximum in one dose",
            often + "child.weight=22 lb; order.dose=50 mg; reference.high=60 mg/dose; "
                    "reference.max_per_dose=5 mg/kg",
            "",
            "max-single: Pounds decide: 50 mg ordered, safe up to ≈ 49.9 mg by exact pounds and 50 mg by 2.2 "
            "lb per kg. The verdict stays."},
        Row{"a maximum in 24 h",
            often + "child.weight=22 lb; order.dose=50 mg; reference.high=60 mg/dose; "
                    "reference.max_per_day=10 mg/kg",
            "",
            "max-daily: Pounds decide: 100 mg ordered, safe up to ≈ 99.79 mg by exact pounds and 100 mg by "
            "2.2 lb per kg. The verdict stays."},
        Row{"an order per kg moves alike", perKg + "order.dose=5.01 mg/kg", "", ""},
        Row{"a surface in inches and pounds has its own constant",
            often +
                "child.weight=37 lb; child.height=41 in; order.dose=84 mg; reference.high=120 mg/m2/dose; ",
            "bsa_decimals=none", ""},
        Row{"a surface of cm and pounds",
            often + "child.weight=22 lb; child.height=90 cm; order.dose=50 mg; reference.high=100 mg/m2/dose",
            "bsa_decimals=none",
            "single: Pounds decide: 50 mg ordered, safe up to ≈ 49.95 mg by exact pounds and 50 mg by 2.2 lb "
            "per kg. The verdict stays."},
        Row{"flat", often + "child.weight=22 lb; order.dose=50 mg; reference.high=49 mg/dose", "", ""}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::pounds_test
