#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/record/rules_file.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// Over the reference within the house grace (R16): asked about, where that is all that is wrong.

namespace wardchalk::test::grace_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* rules;
  const char* judged;  ///< the verdict and what decides it
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs << " | " << row.rules; }

class Grace : public testing::TestWithParam<Row> {};

TEST_P(Grace, IsGivenByTheRule) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(GetParam().rules));
  EXPECT_EQ(std::string(idOf(sheet.verdict)).append(" ").append(sheet.because()), GetParam().judged);
  const bool graced = sheet.finding(FindingCode::overWithinGrace) != nullptr;
  const bool over = sheet.finding(FindingCode::overSingle) || sheet.finding(FindingCode::overDaily) ||
                    sheet.finding(FindingCode::overPeriod);
  EXPECT_FALSE(graced && over);
  EXPECT_TRUE(!graced || sheet.check(CheckId::single).status == CheckStatus::outside ||
              sheet.check(CheckId::daily).status == CheckStatus::outside ||
              sheet.check(CheckId::period).status == CheckStatus::outside);
}

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string over5 = often + "order.dose=105 mg; reference.high=100 mg/dose; ";
constexpr const char* five = "grace_percent=5";

INSTANTIATE_TEST_SUITE_P(
    Over, Grace,
    testing::Values(
        Row{"no grace", over5, "", "unsafe over-single"},
        Row{"at the grace", over5, five, "ask over-within-grace"},
        Row{"just over it", often + "order.dose=105.001 mg; reference.high=100 mg/dose", five,
            "unsafe over-single"},
        Row{"a grace with decimals", often + "order.dose=102.5 mg; reference.high=100 mg/dose",
            "grace_percent=2.5", "ask over-within-grace"},
        Row{"the day alone",
            "order.dose=100 mg; order.schedule=every 12 h; reference.high=196 mg/day; "
            "reference.schedule=2 times a day",
            five, "ask over-within-grace"},
        Row{"the day further",
            "order.dose=100 mg; order.schedule=every 6 h; reference.high=100 mg/dose; "
            "reference.schedule=every 8 h",
            five, "unsafe over-daily"},
        Row{"the week",
            "order.dose=103 mg; order.schedule=weekly; reference.high=100 mg/week; reference.schedule=weekly",
            five, "ask over-within-grace"},
        Row{"within", often + "order.dose=100 mg; reference.high=100 mg/dose", five, "safe "},
        Row{"a limit alone", over5 + "reference.limit_only=true", five, "unsafe over-single"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Beside, Grace,
    testing::Values(
        Row{"a maximum in one dose", over5 + "reference.max_per_dose=104 mg", five, "unsafe over-single"},
        Row{"a maximum in 24 h", over5 + "reference.max_per_day=209 mg", five, "unsafe over-single"},
        Row{"a maximum that it keeps", over5 + "reference.max_per_dose=105 mg", five,
            "ask over-within-grace"},
        Row{"too many doses", over5 + "reference.max_doses_per_day=1", five, "unsafe over-daily"},
        Row{"too concentrated", over5 + "infusion.volume=50 mL; reference.max_concentration=2 mg/mL", five,
            "unsafe over-single"},
        Row{"a maximum alone has none",
            often + "order.dose=101 mg; reference.high=200 mg/dose; "
                    "reference.max_per_dose=100 mg; reference.limit_only=true",
            five, "unsafe over-max-single"},
        Row{"a size in doubt",
            often + "child.age=4 year; child.weight=37.9 kg; order.dose=193 mg; reference.high=5 mg/kg/dose",
            five, "unsafe over-single"},
        Row{"a size in doubt that nothing uses", over5 + "child.age=4 year; child.weight=37.9 kg", five,
            "ask over-within-grace"},
        Row{"another route", over5 + "order.route=oral; reference.route=rectal", five,
            "not-covered not-covered-route"},
        Row{"a schedule that differs",
            "order.dose=105 mg; reference.high=100 mg/dose; order.schedule=every 24 h; "
            "reference.schedule=every 12 h",
            five, "ask over-within-grace"},
        Row{"a strength in doubt",
            over5 + "stock.kind=powder; stock.strength=100 mg/mL; stock.content=500 mg; "
                    "stock.final_volume=4 mL",
            five, "ask strength-differs"},
        Row{"an entry missing", over5 + "reference.age_from=2 year", five, "undecided child.age"},
        Row{"a rate", "order.dose=105 mg/h; order.schedule=continuous; reference.high=100 mg/h", five,
            "unsafe over-rate"}),
    NameOfRow());

TEST(GraceWords, NameEachTotalAndTheGrace) {
  const Worksheet sheet = workOut(caseOf(over5), rulesOf(five));
  EXPECT_EQ(verdictReason(sheet),
            "Over the reference, within the house grace of 5 %: 105 mg per dose, safe up to 100 mg (over "
            "by 5 %); 210 mg in 24 h, safe up to 200 mg (over by 5 %). Ask the prescriber.");
  EXPECT_FALSE(std::get<Comparison>(sheet.step(StepId::compareSingle)->body).holds);
}

/// Of 105 mg, 4.2 mL of 25.1 mg/mL would be 105.42 mg: more than is ordered.
TEST(GraceAmount, IsNeverAboveTheOrder) {
  const std::string stock = "order.route=oral; stock.kind=liquid; stock.strength=25.1 mg/mL; ";
  const Worksheet graced = workOut(caseOf(over5 + stock), rulesOf("grace_percent=10"));
  const Worksheet safe =
      workOut(caseOf(often + "order.dose=105 mg; reference.high=110 mg/dose; " + stock), exactRules());
  EXPECT_EQ(exactText(*safe.give->measured), "4.2");
  EXPECT_EQ(exactText(*graced.give->measured), "4");
}

TEST(GraceRule, IsAtMostTenPercent) {
  HouseRules rules = exactRules();
  EXPECT_TRUE(setRule(rules, "grace_percent", "10"));
  for (const char* text : {"10.01", "11", "-1", "", "5 %", "none"})
    EXPECT_FALSE(setRule(rules, "grace_percent", text)) << text;
  EXPECT_FALSE(setRule(rules, "ask_rounding_percent", "10.1"));
  EXPECT_TRUE(setRule(rules, "ask_rounding_percent", "10"));
}

}  // namespace
}  // namespace wardchalk::test::grace_test
