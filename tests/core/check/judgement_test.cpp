#include "core/check/judgement.h"

#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// The verdict that other comparisons would give, and what stands beside a verdict.

namespace wardchalk::test::judgement_test {
namespace {

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string range = often + "reference.low=100 mg/dose; reference.high=200 mg/dose; ";

struct Row {
  const char* name;
  std::string inputs;
  const char* rules;
  const char* asItIs;    ///< by what its own checks hold
  const char* allHolds;  ///< had everything held
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs << " | " << row.rules; }

class VerdictWhere : public testing::TestWithParam<Row> {};

TEST_P(VerdictWhere, FollowsWhatHolds) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(GetParam().rules));
  const auto own = [&](CheckId id) -> std::optional<bool> {
    const Check& check = sheet.check(id);
    return check.isMade() ? std::optional(check.status == CheckStatus::within) : std::nullopt;
  };
  EXPECT_EQ(idOf(verdictWhere(sheet, own)), GetParam().asItIs);
  EXPECT_EQ(idOf(sheet.verdict), GetParam().asItIs);
  EXPECT_EQ(idOf(verdictWhere(sheet, [](CheckId) { return std::optional(true); })), GetParam().allHolds);
}

INSTANTIATE_TEST_SUITE_P(
    Table, VerdictWhere,
    testing::Values(
        Row{"within", range + "order.dose=150 mg", "", "safe", "safe"},
        Row{"over", range + "order.dose=201 mg", "", "unsafe", "safe"},
        Row{"below", range + "order.dose=90 mg", "", "ask", "safe"},
        Row{"a little below", range + "order.dose=98 mg", "ask_low_percent=97", "safe", "safe"},
        Row{"over within the grace", range + "order.dose=205 mg", "grace_percent=5", "ask", "ask"},
        Row{"over within the grace and over a maximum",
            range + "order.dose=205 mg; reference.max_per_dose=204 mg", "grace_percent=5", "unsafe", "safe"},
        Row{"below and asked about otherwise", range + "order.dose=90 mg; reference.schedule=every 8 h", "",
            "ask", "ask"},
        Row{"too many doses",
            range + "order.dose=150 mg; order.max_doses_per_day=2; reference.max_doses_per_day=1", "",
            "unsafe", "safe"},
        Row{"outside a band", range + "order.dose=90 mg; child.weight=30 kg; reference.weight_up_to=20 kg",
            "", "not-covered", "not-covered"}),
    NameOfRow());

std::string beside(const std::string& inputs, bool questionsStand) {
  const Worksheet sheet = workOut(caseOf(inputs), exactRules());
  std::string text(sheet.because());
  for (const Finding* finding : findingsBeside(sheet, questionsStand))
    text.append(" ").append(idOf(finding->code));
  return text;
}

// Of a size that nobody can have, what is too little by it says nothing; what the papers lack is told.
TEST(FindingsBeside, LeaveOutWhatRestsOnASizeThatCannotBe) {
  const std::string perKg =
      often +
      "child.age=4 year 2 month; child.sex=female; child.height=103 cm; reference.high=5 mg/kg/dose; ";
  EXPECT_EQ(beside(perKg + "child.weight=172 kg; order.dose=80 mg", false),
            "size-implausible source-not-stated");
  EXPECT_EQ(beside(perKg + "child.weight=37.9 kg; order.dose=80 mg", false),
            "weight-unlikely below-usual source-not-stated");
  EXPECT_EQ(beside(perKg + "child.weight=37.9 kg; order.dose=80 mg", true),
            "weight-unlikely source-not-stated");
}

}  // namespace
}  // namespace wardchalk::test::judgement_test
