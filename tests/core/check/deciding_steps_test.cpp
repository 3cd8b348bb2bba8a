#include "core/check/deciding_steps.h"

#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// Which steps of a working decide: what does not hold or is fullest, what is set or measured, and all that
// these rest on.

namespace wardchalk::test::deciding_steps_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* steps;
  const char* rules = "";
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs << " | " << row.rules; }

class Deciding : public testing::TestWithParam<Row> {};

TEST_P(Deciding, AreThoseThatTheVerdictRestsOn) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(GetParam().rules));
  std::string steps;
  for (const StepId id : decidingSteps(sheet)) {
    EXPECT_TRUE(sheet.step(id)) << idOf(id);
    steps.append(steps.empty() ? "" : " ").append(idOf(id));
  }
  EXPECT_EQ(steps, GetParam().steps);
}

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string perKg = often + "child.weight=17.2 kg; reference.high=5 mg/kg/dose; ";  // 86 mg
const std::string liquid = "stock.kind=liquid; stock.strength=25 mg/mL; ";
const std::string pumped =
    "order.dose=5 mg/h; order.schedule=continuous; reference.high=6 mg/h; stock.kind=liquid; "
    "stock.strength=10 mg/50 mL; ";

INSTANTIATE_TEST_SUITE_P(
    Table, Deciding,
    testing::Values(
        Row{"the fullest and the amount", perKg + liquid + "order.dose=80 mg",
            "limit-dose compare-single give"},
        Row{"the fullest alone where there is no amount", perKg + "order.dose=80 mg",
            "limit-dose compare-single"},
        Row{"all that are over and what they rest on", perKg + liquid + "order.dose=200 mg",
            "limit-day limit-dose ordered-day compare-single compare-daily"},
        Row{"what is too little and the amount", perKg + liquid + "order.dose=40 mg",
            "limit-dose compare-low give"},
        Row{"a maximum that is the fullest rests on nothing",
            perKg + "order.dose=80 mg; reference.max_per_dose=81 mg", "compare-max-single"},
        Row{"pounds and inches of a surface by powers",
            often + "child.weight=37 lb; child.height=40 in; reference.high=120 mg/m2/dose; order.dose=80 mg",
            "height weight bsa limit-dose compare-single", "bsa_formula=haycock"},
        Row{"pounds and inches under a root",
            often + "child.weight=37 lb; child.height=40 in; reference.high=120 mg/m2/dose; order.dose=80 mg",
            "bsa limit-dose compare-single"},
        Row{"a flow in place of an amount", pumped, "compare-rate rate"},
        Row{"both flows", pumped + "infusion.drop_factor=20 drops/mL", "compare-rate rate drops"},
        Row{"everything where nothing is decided", "child.weight=37 lb", "weight"},
        Row{"nothing where there is nothing", "child.weight=17 kg", ""}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::deciding_steps_test
