#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/words/sentences.h"
#include "core/words/working_text.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"
#include "tests/support/failed_sheet.h"
#include "tests/support/golden_cases.h"

// That a chain which does not come out in the units wanted ends in such a worksheet is shown by papers in
// units that no reader lets through, and by changing the program itself: tests/mutation. And what is said
// then, wherever it is said.

namespace wardchalk::not_worked_out_test {
namespace {

constexpr std::string_view told = "This program could not work it out; do not use it for this order.";

struct Spoilt {
  const char* name;
  std::string inputs;
  void (*spoil)(Case& given);
};
void PrintTo(const Spoilt& row, std::ostream* out) { *out << row.inputs; }

class SpoiltCase : public testing::TestWithParam<Spoilt> {};

TEST_P(SpoiltCase, isNotWorkedOutAndShowsNothing) {
  Case given = test::caseOf(GetParam().inputs);
  EXPECT_NE(workOut(given, exactRules()).because(), "not-worked-out");
  GetParam().spoil(given);
  const Worksheet sheet = workOut(given, exactRules());
  EXPECT_EQ(sheet.because(), "not-worked-out");
  EXPECT_EQ(sheet.verdict, VerdictKind::undecided);
  EXPECT_EQ(sheet.findings.size(), 1U);
  EXPECT_TRUE(sheet.steps.empty() && sheet.needs.empty());
  EXPECT_FALSE(sheet.give || sheet.rate || sheet.remedy || sheet.minimumVolume || sheet.strength);
  EXPECT_FALSE(sheet.orderedDose || sheet.orderedDay || sheet.limitDose || sheet.limitDay);
  for (const Check& check : sheet.checks) {
    EXPECT_EQ(check.status, CheckStatus::notChecked) << idOf(check.id);
    EXPECT_EQ(check.why, WhyNot::notWorkedOut) << idOf(check.id);
  }
}

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string perM2 = often + "child.bsa=0.8 m2; order.dose=100 mg/m2; reference.high=120 mg/m2/dose; ";
const std::string flat = often + "order.dose=80 mg; reference.high=84 mg/dose; ";
const std::string infused =
    flat + "stock.kind=liquid; stock.strength=40 mg/mL; infusion.volume=50 mL; infusion.over=30 min; ";
const std::string running =
    "child.weight=15 kg; order.dose=5 mg/h; order.schedule=continuous; reference.high=6 mg/h; "
    "stock.kind=liquid; stock.strength=40 mg/50 mL; ";

void surfaceInKg(Case& given) { given.child.bsa->unit = Unit::kg; }
void timeInMl(Case& given) { given.infusion.over->unit = Unit::mL; }
void dropsInMg(Case& given) { given.infusion.dropFactor->unit = Unit::mg; }
void dayPerDose(Case& given) { given.reference.maxPerDay->perTime = PerTime::dose; }
void labelOfMl(Case& given) { given.stock.strength->amount.unit = Unit::mL; }
void contentInMl(Case& given) { given.stock.content->unit = Unit::mL; }

INSTANTIATE_TEST_SUITE_P(
    R24, SpoiltCase,
    testing::Values(
        Spoilt{"a surface in kg", perM2, surfaceInKg},
        Spoilt{"a surface in kg under a day's amount",
               often + "child.bsa=0.8 m2; order.dose=100 mg/m2/day; reference.high=120 mg/m2/day",
               surfaceInKg},
        Spoilt{"a time in mL", infused, timeInMl},
        Spoilt{"a time in mL against the least", infused + "reference.min_infusion_time=20 min", timeInMl},
        Spoilt{"a least time in mL", infused + "reference.min_infusion_time=20 min",
               [](Case& given) { given.reference.minInfusionTime->unit = Unit::mL; }},
        Spoilt{"a concentration per minute", infused + "reference.max_concentration=5 mg/mL",
               [](Case& given) { given.reference.maxConcentration->in.unit = Unit::min; }},
        Spoilt{"how fast for each dose", infused + "reference.max_infusion_rate=5 mg/min",
               [](Case& given) { given.reference.maxInfusionRate->perTime = PerTime::dose; }},
        Spoilt{"drops in mg", infused + "infusion.drop_factor=20 drops/mL", dropsInMg},
        Spoilt{"an order for each week", flat,
               [](Case& given) { given.order.dose->perTime = PerTime::week; }},
        Spoilt{"a day's maximum for each dose", flat + "reference.max_per_day=200 mg", dayPerDose},
        Spoilt{"a day's maximum for each dose as needed",
               flat + "order.as_needed=true; reference.max_per_day=200 mg", dayPerDose},
        Spoilt{"a dose's maximum for each day", flat + "reference.max_per_dose=83 mg",
               [](Case& given) { given.reference.maxPerDose->perTime = PerTime::day; }},
        Spoilt{"a dose's maximum for each day below the low end",
               flat + "reference.low=82 mg/dose; reference.max_per_dose=81 mg",
               [](Case& given) { given.reference.maxPerDose->perTime = PerTime::day; }},
        Spoilt{"a label of mL in mL", infused, labelOfMl},
        Spoilt{"mL of powder",
               flat + "stock.kind=powder; stock.content=500 mg; stock.diluent=4 mL; "
                      "stock.displacement=1 mL",
               contentInMl},
        Spoilt{"a rate and a day's maximum for each dose",
               running + "reference.low=1 mg/h; reference.max_per_day=200 mg", dayPerDose},
        Spoilt{"a rate and drops in mg", running + "infusion.drop_factor=20 drops/mL", dropsInMg},
        Spoilt{"a rate and an infusion in mg", running + "infusion.volume=50 mL; infusion.over=10 h",
               [](Case& given) { given.infusion.volume->unit = Unit::mg; }},
        Spoilt{"a rate and how fast for each dose", running + "reference.max_infusion_rate=6 mg/h",
               [](Case& given) { given.reference.maxInfusionRate->perTime = PerTime::dose; }}),
    test::NameOfRow());

Worksheet failedSheet() { return test::failedSheet(test::goldenCases().front().given); }

TEST(NotWorkedOut, isUndecidedAndSaysWhy) {
  const Worksheet sheet = failedSheet();
  EXPECT_EQ(sheet.because(), "not-worked-out");
  EXPECT_EQ(usualSeverity(FindingCode::notWorkedOut), Severity::undecided);
  EXPECT_EQ(verdictTitle(sheet), "NO VERDICT");
  EXPECT_EQ(verdictReason(sheet), told);
}

TEST(NotWorkedOut, listsNoChecksNotMade) { EXPECT_EQ(checksNotMade(failedSheet()), ""); }

TEST(NotWorkedOut, standsInTheTextWithNoStepAndNoAmount) {
  const std::string text = workingText(failedSheet());
  EXPECT_NE(text.find(told), std::string::npos) << text;
  EXPECT_EQ(text.find("Give"), std::string::npos) << text;
  EXPECT_NE(text.find("No amount: this program could not work it out."), std::string::npos) << text;
}

TEST(NotWorkedOut, standsInTheFileWithNoNumber) {
  std::string json;
  writeWorksheet(json, failedSheet(), WorksheetExtent::whole);
  EXPECT_NE(json.find(R"("verdict":"undecided")"), std::string::npos) << json;
  EXPECT_NE(json.find(R"("not-worked-out")"), std::string::npos) << json;
  for (const std::string_view key : {"\"give\"", "\"limit_dose\"", "\"ordered\"", "\"strength\"", "\"rate\""})
    EXPECT_EQ(json.find(std::string(key) + ":{"), std::string::npos) << key << json;
}

TEST(NotWorkedOut, outweighsEveryOtherFinding) {
  for (std::size_t i = 0; i < findingIds.size(); ++i)
    EXPECT_LE(FindingCode::notWorkedOut, static_cast<FindingCode>(i));
}

}  // namespace
}  // namespace wardchalk::not_worked_out_test
