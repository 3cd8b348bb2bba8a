#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

#include "core/check/slips/slip.h"
#include "core/check/work_out.h"
#include "core/child/size_slip.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// The slips that would explain an order outside the reference (R12): which are named, and when none is.

namespace wardchalk::test::slips_test {
namespace {

/// A child of whom nothing but the size is known, so that no growth table rules a slip of the size out.
const std::string child = "child.weight=17.2 kg; child.height=103 cm; ";
/// A child whose size the growth tables judge.
const std::string aged = child + "child.age=4 year 2 month; child.sex=female; ";

std::string slipsIn(const Worksheet& sheet) {
  std::string text;
  for (const Finding& finding : sheet.findings)
    if (finding.code == FindingCode::possibleSlip)
      text.append(text.empty() ? "" : " ").append(idOf(*finding.argument<Slip>("slip")));
  return text;
}

Worksheet sheetOf(const std::string& text) { return workOut(caseOf(text), exactRules()); }

struct Row {
  const char* name;
  std::string inputs;
  const char* slips;
};

class Slips : public testing::TestWithParam<Row> {};

TEST_P(Slips, areThoseThatExplainTheOrder) {
  const Row& row = GetParam();
  const Worksheet sheet = sheetOf(row.inputs);
  EXPECT_EQ(slipsIn(sheet), row.slips);
  for (const Finding& finding : sheet.findings)
    EXPECT_TRUE(finding.code != FindingCode::possibleSlip || finding.severity == Severity::note);
}

const std::string perM2 = aged + "reference.high=120 mg/m2/dose; reference.schedule=every 12 h; ";  // 84 mg
const std::string perKgDay = aged + "reference.low=20 mg/kg/day; reference.high=30 mg/kg/day; ";
const std::string twice = "order.schedule=every 12 h; ";
const std::string flat = "reference.high=84 mg/dose; reference.schedule=every 12 h; " + twice;

/// 400 mg, of which two are within 800 mg in 24 h: of a tenth all of the order's would be given.
const std::string open = "order.as_needed=true; reference.high=84 mg/dose; order.dose=400 mg; ";

INSTANTIATE_TEST_SUITE_P(
    AsNeeded, Slips,
    testing::Values(
        Row{"all of the smaller doses fit",
            open + "order.schedule=every 12 h; reference.schedule=every 12 h; reference.low=30 mg/dose; "
                   "reference.max_per_day=800 mg",
            "order-ten-times-too-much"},
        Row{"so many of the smaller doses are too much",
            open + "order.schedule=every 2 h; reference.schedule=every 6 h; reference.low=30 mg/dose; "
                   "reference.max_per_day=800 mg",
            ""}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Order, Slips,
    testing::Values(
        Row{"ten times too much", perM2 + twice + "order.dose=800 mg", "order-ten-times-too-much"},
        Row{"ten times too little", perM2 + twice + "order.dose=8 mg", "order-ten-times-too-little"},
        Row{"ten times exactly the limit", perM2 + twice + "order.dose=840 mg", "order-ten-times-too-much"},
        Row{"ten times exactly 90 percent", perM2 + twice + "order.dose=756 mg", "order-ten-times-too-much"},
        Row{"a hair under ten times 90 percent", perM2 + twice + "order.dose=755.9 mg", ""},
        Row{"a hair over ten times the limit", perM2 + twice + "order.dose=840.1 mg", ""},
        Row{"a hundred times too much", perM2 + twice + "order.dose=8000 mg", "order-hundred-times-too-much"},
        Row{"a hundred times too little", perM2 + twice + "order.dose=0.8 mg",
            "order-hundred-times-too-little"},
        Row{"grams for milligrams", perM2 + twice + "order.dose=80 g", "order-thousand-times-too-much"},
        Row{"micrograms for milligrams", perM2 + twice + "order.dose=80 mcg",
            "order-thousand-times-too-little"},
        Row{"ten thousand times is no known slip", perM2 + twice + "order.dose=800000 mg", ""},
        Row{"a day's amount as each dose", perM2 + twice + "order.dose=168 mg", "day-as-dose"},
        Row{"a day's amount of three doses",
            perKgDay + "reference.schedule=every 8 h; order.schedule=every 8 h; order.dose=500 mg",
            "day-as-dose"},
        Row{"once a day there is nothing to divide",
            aged + "reference.high=84 mg/dose; reference.schedule=daily; order.schedule=daily; "
                   "order.dose=168 mg",
            ""},
        Row{"each dose as the day's amount", perM2 + twice + "order.dose=80 mg/day", "dose-as-day"},
        Row{"divided once too often", perM2 + twice + "order.dose=40 mg", "divided-twice"},
        Row{"kg in place of m2", perM2 + twice + "order.dose=2060 mg", "kg-for-m2"},
        Row{"kg in place of m2 written in the order", perM2 + twice + "order.dose=120 mg/kg", "kg-for-m2"},
        Row{"m2 in place of kg", perKgDay + twice + "order.dose=15 mg/day", "m2-for-kg"},
        Row{"m2 in place of kg written in the order", perKgDay + twice + "order.dose=30 mg/m2/day",
            "m2-for-kg"},
        Row{"each kg in an order that is the whole dose", perKgDay + twice + "order.dose=500 mg/kg/day",
            "size-counted-twice"},
        Row{"a figure for each kg, on which both papers agree, was not meant for each m2",
            perKgDay + twice + "order.dose=550 mg/kg/day", ""},
        Row{"multiplied by the weight again", perKgDay + twice + "order.dose=4300 mg", "size-counted-twice"},
        Row{"the figure for each kg as the whole dose", perKgDay + twice + "order.dose=25 mg/day",
            "per-size-as-total"},
        Row{"worked out with pounds",
            aged + "reference.high=10 mg/kg/dose; reference.schedule=every 24 h; "
                   "order.schedule=every 24 h; order.dose=379 mg",
            "order-from-pounds"},
        Row{"another schedule than the reference's", perM2 + "order.schedule=every 6 h; order.dose=80 mg",
            "schedule-not-of-reference"},
        Row{"weekly given daily",
            aged + "reference.high=15 mg/m2/week; reference.schedule=weekly; order.schedule=daily; "
                   "order.dose=10 mg",
            "schedule-not-of-reference"},
        Row{"another schedule of the order per day, too much in one dose",
            aged + "reference.high=30 mg/kg/day; reference.schedule=every 6 h; order.schedule=every 12 h; "
                   "order.dose=500 mg/day",
            "schedule-not-of-reference"},
        Row{"a rate ten times too fast",
            aged + "reference.high=5 mcg/kg/min; order.dose=50 mcg/kg/min; order.schedule=continuous",
            "order-ten-times-too-much"},
        Row{"a rate a thousand times too slow between low and high",
            aged + "reference.low=2 mcg/kg/min; reference.high=5 mcg/kg/min; order.dose=0.003 mcg/kg/min",
            "order-thousand-times-too-little"},
        Row{"over a maximum alone", perKgDay + twice + "order.dose=2500 mg; reference.max_per_dose=250 mg",
            "order-ten-times-too-much"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    OtherPapers, Slips,
    testing::Values(
        Row{"pounds as kg, no age known",
            "child.weight=37.9 kg; reference.high=10 mg/kg/dose; reference.schedule=every 12 h; " + twice +
                "order.dose=170 mg",
            "pounds-as-kg"},
        Row{"pounds as kg that the size check asks about itself",
            "child.age=4 year; child.sex=male; child.weight=37.9 kg; child.height=103 cm; "
            "reference.high=10 mg/kg/dose; reference.schedule=every 12 h; " +
                twice + "order.dose=170 mg",
            ""},
        Row{"a likely weight is not taken for pounds",
            aged + "reference.high=10 mg/kg/dose; reference.schedule=every 24 h; "
                   "order.schedule=every 24 h; order.dose=78 mg",
            ""},
        Row{"a weight already in pounds was not entered as kg",
            "child.weight=38 lb; reference.high=10 mg/kg/dose; reference.schedule=every 24 h; "
            "order.schedule=every 24 h; order.dose=76 mg",
            ""},
        Row{"weight ten times too much, or the order ten times too little",
            "child.weight=172 kg; reference.high=10 mg/kg/dose; reference.schedule=every 24 h; "
            "order.schedule=every 24 h; order.dose=170 mg",
            "order-ten-times-too-little weight-ten-times-too-much"},
        Row{"weight ten times too little, or the order ten times too much",
            "child.weight=1720 g; reference.high=10 mg/kg/dose; reference.schedule=every 24 h; "
            "order.schedule=every 24 h; order.dose=170 mg",
            "order-ten-times-too-much weight-ten-times-too-little"},
        Row{"a weight in two parts is not ten times too much",
            "child.weight=379 lb 4 oz; reference.high=10 mg/kg/dose; reference.schedule=every 24 h; "
            "order.schedule=every 24 h; order.dose=170 mg",
            "order-ten-times-too-little"},
        Row{"an unlikely weight with a slip that leaves the dose outside",
            "child.age=4 year; child.sex=male; child.weight=37.9 kg; child.height=103 cm; "
            "reference.high=10 mg/kg/dose; reference.schedule=every 12 h; " +
                twice + "order.dose=3700 mg",
            "order-ten-times-too-much"},
        Row{"an implausible weight that was swapped explains all",
            "child.age=4 year; child.sex=male; child.weight=103 kg; child.height=17.2 cm; "
            "reference.high=10 mg/kg/dose; reference.schedule=every 12 h; " +
                twice + "order.dose=170 mg",
            ""},
        Row{"charted surface ten times too much",
            aged + "child.bsa=7 m2; reference.high=120 mg/m2/dose; reference.schedule=every 12 h; " + twice +
                "order.dose=80 mg",
            "order-ten-times-too-little bsa-ten-times-too-much"},
        Row{"charted surface ten times too little",
            aged + "child.bsa=0.07 m2; reference.high=120 mg/m2/dose; reference.schedule=every 12 h; " +
                twice + "order.dose=80 mg",
            "order-ten-times-too-much bsa-ten-times-too-little"},
        Row{"a charted surface that agrees is not ten times too little",
            aged + "child.bsa=0.7 m2; reference.high=120 mg/m2/dose; reference.schedule=every 12 h; " +
                twice + "order.dose=800 mg",
            "order-ten-times-too-much"},
        Row{"the label is in 5 mL", flat + "order.dose=2 mL; stock.kind=liquid; stock.strength=200 mg/mL",
            "label-per-5-as-per-1"},
        Row{"the label is in 1 mL", flat + "order.dose=2 mL; stock.kind=liquid; stock.strength=40 mg/5 mL",
            "label-per-1-as-per-more"},
        // 210 mg made up to 5 mL: 2 mL hold 84 mg, and 5 mg/kg are 86 mg for 17.2 kg
        Row{"a powder made up, ordered in mL",
            "child.weight=1.72 kg; reference.high=5 mg/kg/dose; reference.schedule=every 12 h; " + twice +
                "order.dose=2 mL; stock.kind=powder; stock.content=210 mg; stock.final_volume=5 mL",
            "order-ten-times-too-much weight-ten-times-too-little"},
        Row{"the label says nothing of an order in mg",
            flat + "order.dose=400 mg; stock.kind=liquid; stock.strength=200 mg/mL", ""},
        Row{"the order's size stands in each kg and so does the limit",
            "child.weight=172 kg; reference.high=10 mg/kg/dose; reference.max_per_dose=300 mg; "
            "reference.schedule=every 24 h; order.schedule=every 24 h; order.dose=10 mg/kg",
            "weight-ten-times-too-much"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    None, Slips,
    testing::Values(
        Row{"at the limit", perM2 + twice + "order.dose=84 mg", ""},
        Row{"in range, though another schedule would do as well",
            perM2 + "order.schedule=daily; order.dose=84 mg", ""},
        Row{"a little over", perM2 + twice + "order.dose=88 mg", ""},
        Row{"a little under", perM2 + twice + "order.dose=70 mg", ""},
        Row{"over in concentration alone",
            aged + flat + "order.dose=84 mg; infusion.volume=5 mL; reference.max_concentration=1 mg/mL", ""},
        Row{"outside a band alone", aged + flat + "order.dose=84 mg; reference.age_from=10 year", ""},
        Row{"units that do not meet", perM2 + twice + "order.dose=840 units", ""},
        Row{"a dose against a rate", aged + twice + "order.dose=840 mg; reference.high=5 mg/kg/h", ""},
        Row{"over a maximum while the limit is not known",
            twice + "order.dose=840 mg; reference.high=120 mg/m2/dose; reference.max_per_dose=100 mg", ""},
        Row{"much under a ceiling is within it", aged + flat + "reference.limit_only=true; order.dose=8.4 mg",
            ""},
        Row{"an order given once has no low end under a day's reference, and no point is guessed",
            aged + "reference.high=30 mg/kg/day; reference.low=1 mg/kg/day; order.schedule=once; "
                   "order.dose=40000 mg",
            ""},
        Row{"over the ceiling by a point", aged + flat + "reference.limit_only=true; order.dose=840 mg",
            "order-ten-times-too-much"},
        Row{"over a ceiling so that a tenth is far below",
            aged + flat + "reference.limit_only=true; order.dose=300 mg", ""}),
    NameOfRow());

TEST(Slips, areNeverMoreThanTwoAndAskOfTwoPapersWhereTheyCan) {
  const std::string inputs =
      "child.weight=40 kg; reference.low=1 mg/kg/dose; reference.high=100 mg/kg/dose; "
      "reference.schedule=every 24 h; order.schedule=every 12 h; order.dose=6000 mg";
  EXPECT_EQ(slipsIn(sheetOf(inputs)), "order-ten-times-too-much weight-ten-times-too-little");
  const std::string noOther =
      "reference.low=1 mg/dose; reference.high=1000 mg/dose; reference.schedule=every 24 h; "
      "order.schedule=every 12 h; order.dose=4000 mg";
  EXPECT_EQ(slipsIn(sheetOf(noOther)), "order-ten-times-too-much order-thousand-times-too-much");
}

// The height may be in inches, and the charted surface is what the dose was worked out with.
TEST(Slips, areNotThoseOfAHeightThatNothingUses) {
  const Worksheet sheet = sheetOf(
      "child.age=4 year 2 month; child.sex=female; child.height=40 cm; child.bsa=0.7 m2; "
      "reference.high=120 mg/m2/dose; reference.schedule=every 12 h; " +
      twice + "order.dose=800 mg");
  ASSERT_TRUE(std::ranges::any_of(sheet.findings, [](const Finding& finding) {
    return finding.check == CheckId::size && finding.argument<SizeSlip>("slip");
  }));
  EXPECT_EQ(slipsIn(sheet), "order-ten-times-too-much");
}

TEST(Slips, areNotSoughtWhileAFieldIsChanged) {
  const Case inputs = caseOf(perM2 + twice + "order.dose=800 mg");
  EXPECT_EQ(slipsIn(workOut(inputs, exactRules(), Withheld(path::dose))), "");
}

TEST(Slips, leaveVerdictAndDecidingFindingAlone) {
  const Worksheet sheet = sheetOf(perM2 + twice + "order.dose=800 mg");
  EXPECT_EQ(sheet.verdict, VerdictKind::unsafe);
  EXPECT_EQ(sheet.because(), "over-single");
  EXPECT_FALSE(sheet.give);
}

TEST(Slips, followTheHouseRuleForPounds) {
  const std::string inputs =
      aged +
      "reference.low=9.99 mg/kg/dose; reference.high=10 mg/kg/dose; reference.schedule=every 24 h; "
      "order.schedule=every 24 h; order.dose=378.4 mg";
  EXPECT_EQ(slipsIn(workOut(caseOf(inputs), rulesOf("pounds=trade"))), "order-from-pounds");
  EXPECT_EQ(slipsIn(workOut(caseOf(inputs), exactRules())), "");
}

/// Every slip of the catalogue asks a question, sends the nurse to a paper or a person, and names no figure
/// but what was entered.
TEST(Slips, eachAsksAndNamesOnlyWhatWasEntered) {
  const std::set<std::string> calls = {"ask the prescriber", "Weigh the child again", "Check the chart",
                                       "Read the label"};
  for (const SlipInfo& info : slipTable) {
    const std::vector<Argument> arguments = {{"slip", info.slip},
                                             {"entered", Told{"ENTERED"}},
                                             {"size", Unit::kg},
                                             {"reference", Told{"SCHEDULE"}}};
    const std::string said =
        sentence(Finding{FindingCode::possibleSlip, Severity::note, {}, info.field, arguments});
    EXPECT_NE(said.find('?'), std::string::npos) << said;
    EXPECT_NE(said.find(" fit the reference."), std::string::npos) << said;
    EXPECT_TRUE(std::any_of(calls.begin(), calls.end(), [&](const std::string& call) {
      return said.find(call) != std::string::npos;
    })) << said;
    EXPECT_EQ(said.find('{'), std::string::npos) << said;
    const bool ofLabel = info.field == path::strength;  // "in 5 mL" is what the label may say
    EXPECT_TRUE(ofLabel || said.find_first_of("0123456789") == std::string::npos) << said;
  }
}

TEST(Slips, thatAreSlipsOfSizeAsWellBearTheSameId) {
  EXPECT_EQ(idOf(Slip::poundsAsKg), idOf(SizeSlip::poundsAsKg));
  EXPECT_EQ(idOf(Slip::weightTenTimesTooMuch), idOf(SizeSlip::weightTenTimesTooMuch));
  EXPECT_EQ(idOf(Slip::weightTenTimesTooLittle), idOf(SizeSlip::weightTenTimesTooLittle));
}

}  // namespace
}  // namespace wardchalk::test::slips_test
