#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// Why a check is not made, and what is wanting for it: papers that hold less than the check needs, or that do
// not go together.

namespace wardchalk::test::why_not_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  CheckId check;
  const char* status;  ///< with the reason
  const char* judged;  ///< the verdict and what decides it
  const char* rules = "";
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs << " | " << row.rules; }

class NotMade : public testing::TestWithParam<Row> {};

std::string statusOf(const Check& check) {
  return std::string(idOf(check.status)) + (check.why ? " " + std::string(idOf(*check.why)) : "");
}

TEST_P(NotMade, SaysWhyAndWhatIsWanting) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(GetParam().rules));
  const Check& check = sheet.check(GetParam().check);
  EXPECT_EQ(statusOf(check), GetParam().status);
  EXPECT_EQ(std::string(idOf(sheet.verdict)) + " " + std::string(sheet.because()), GetParam().judged);
  EXPECT_EQ(check.isMade(), sheet.step(stepOf(check.id)) != nullptr);
}

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string flat = often + "order.dose=80 mg; reference.high=84 mg/dose; ";
const std::string weekly = "order.dose=10 mg; order.schedule=weekly; ";
const std::string needed = "order.dose=80 mg; order.schedule=every 6 h; order.as_needed=true; ";

using enum CheckId;

INSTANTIATE_TEST_SUITE_P(
    Bands, NotMade,
    testing::Values(Row{"a band of weight and no weight", flat + "reference.weight_from=10 kg", weightBand,
                        "not-checked no-size", "undecided child.weight"},
                    Row{"over an age in whole years", flat + "child.age=2 years; reference.age_over=2 years",
                        ageBand, "not-checked missing", "undecided child.age"},
                    Row{"over an age that is not reached",
                        flat + "child.age=1 year; reference.age_over=2 years", ageBand, "outside",
                        "not-covered not-covered-age"},
                    Row{"over an age that is passed", flat + "child.age=3 years; reference.age_over=2 years",
                        ageBand, "within", "safe "}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    OfAWeek, NotMade,
    testing::Values(
        Row{"for each m2 and no size", weekly + "reference.schedule=weekly; reference.high=20 mg/m2/week",
            period, "not-checked no-size", "undecided child.height"},
        Row{"a reference that does not say how often", weekly + "reference.high=10 mg/dose", period,
            "not-checked no-schedule", "ask schedule-unknown"},
        Row{"a reference for one dose", weekly + "reference.high=10 mg/dose; reference.schedule=once", period,
            "not-checked no-schedule", "ask schedule-differs"},
        Row{"for each kg and no weight", weekly + "reference.high=1 mg/kg/dose; reference.schedule=weekly",
            period, "not-checked no-size", "undecided child.weight"},
        // the week's amount in the one dose
        Row{"one dose under an amount a week",
            "order.dose=30 mg; order.schedule=once; "
            "reference.high=30 mg/week",
            single, "within", "safe "},
        Row{"one dose over an amount a week",
            "order.dose=30.1 mg; order.schedule=once; "
            "reference.high=30 mg/week",
            single, "outside", "unsafe over-single"},
        Row{"one dose under an amount a week that is given once",
            "order.dose=30 mg; order.schedule=once; reference.high=30 mg/week; reference.schedule=once",
            single, "within", "safe "},
        Row{"one dose under an amount a week in two",
            "order.dose=30 mg; order.schedule=once; reference.high=30 mg/week; "
            "reference.schedule=2 times a week",
            single, "outside", "unsafe over-single"},
        Row{"at the low end of a week",
            weekly + "reference.schedule=weekly; reference.low=10 mg/week; reference.high=30 mg/week", low,
            "within", "safe "},
        Row{"below the low end of a week",
            weekly + "reference.schedule=weekly; reference.low=11 mg/week; reference.high=30 mg/week", low,
            "outside", "ask below-low"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Infusions, NotMade,
    testing::Values(Row{"a concentration and no volume",
                        flat + "infusion.over=30 min; reference.max_concentration=5 "
                               "mg/mL",
                        concentration, "not-checked missing", "safe "},
                    Row{"a concentration and no weight",
                        often + "order.dose=5 mg/kg; reference.high=84 mg/dose; infusion.volume=50 mL; "
                                "reference.max_concentration=5 mg/mL",
                        concentration, "not-checked missing", "undecided child.weight"},
                    Row{"a concentration in another unit",
                        flat + "infusion.volume=50 mL; reference.max_concentration=5 units/mL", concentration,
                        "not-checked missing", "undecided units-do-not-meet"},
                    Row{"how fast and no time",
                        flat + "infusion.volume=50 mL; reference.max_infusion_rate=5 mg/min", infusionRate,
                        "not-checked missing", "safe "},
                    Row{"how fast and no weight of the order",
                        often + "order.dose=5 mg/kg; reference.high=84 mg/dose; infusion.over=30 min; "
                                "reference.max_infusion_rate=5 mg/min",
                        infusionRate, "not-checked missing", "undecided child.weight"},
                    Row{"how fast for each kg and no weight",
                        flat + "infusion.over=30 min; reference.max_infusion_rate=1 mg/kg/min", infusionRate,
                        "not-checked no-size", "undecided child.weight"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Maxima, NotMade,
    testing::Values(Row{"a low end under a maximum for each kg and no weight",
                        flat + "reference.max_per_dose=10 mg/kg", low, "not-checked missing",
                        "undecided child.weight"},
                    Row{"as needed and no reference", needed, maxDoses, "not-checked no-maximum",
                        "undecided reference.high"},
                    Row{"as needed under a day that is not shared", needed + "reference.high=500 mg/day",
                        maxDoses, "not-checked no-maximum", "safe "},
                    Row{"as needed under a day for each kg and no weight",
                        needed + "reference.high=50 mg/kg/day; reference.schedule=every 6 h", maxDoses,
                        "not-checked no-size", "undecided child.weight"},
                    Row{"as needed under a maximum and a day for each kg and no weight",
                        needed +
                            "reference.high=50 mg/kg/day; reference.schedule=every 6 h; order.dose=4 mL; "
                            "reference.max_per_day=500 mg",
                        maxDoses, "not-checked no-size", "undecided stock.strength"},
                    Row{"as needed in mL and no strength",
                        needed + "order.dose=4 mL; reference.high=500 mg/day; reference.schedule=every 6 h",
                        maxDoses, "not-checked missing", "undecided stock.strength"},
                    Row{"as needed in mL, a maximum and no strength",
                        needed + "order.dose=4 mL; reference.high=80 mg/dose; reference.max_per_day=500 mg",
                        maxDoses, "not-checked missing", "undecided stock.strength"},
                    Row{"as needed under a day that runs on",
                        needed + "reference.high=500 mg/day; reference.schedule=continuous", maxDoses,
                        "not-checked missing", "undecided basis-does-not-fit"},
                    Row{"for one dose and no reference", "order.dose=80 mg", single, "not-checked missing",
                        "undecided reference.high", "order_schedule_missing=one-dose"}),
    NameOfRow());

const std::string running = "order.schedule=continuous; ";

INSTANTIATE_TEST_SUITE_P(
    Rates, NotMade,
    testing::Values(
        Row{"a day's maximum and no weight",
            running + "order.dose=5 mg/kg/h; reference.high=6 mg/kg/h; reference.max_per_day=100 mg",
            maxDaily, "not-checked no-size", "undecided child.weight"},
        Row{"how fast and no weight of the order",
            running + "order.dose=5 mg/kg/h; reference.high=6 mg/kg/h; reference.max_infusion_rate=10 mg/min",
            infusionRate, "not-checked no-size", "undecided child.weight"},
        Row{"a low end for each kg and no weight",
            running + "order.dose=5 mg/h; reference.low=1 mg/kg/h; reference.high=6 mg/kg/h", low,
            "not-checked no-size", "undecided child.weight"},
        Row{"no low end and no weight", running + "order.dose=5 mg/h; reference.high=6 mg/kg/h", low,
            "not-checked not-stated", "undecided child.weight"},
        Row{"a low end under a dose",
            running + "order.dose=5 mg/h; reference.low=80 mg/dose; reference.high=84 mg/dose", low,
            "not-checked missing", "undecided basis-does-not-fit"},
        Row{"a rate in doses",
            "order.dose=5 mg/h; order.schedule=every 8 h; reference.high=6 mg/h; "
            "reference.schedule=every 8 h",
            schedule, "not-checked missing", "undecided basis-does-not-fit"},
        Row{"a run time and a rate in doses",
            "order.dose=5 mg/h; order.schedule=every 8 h; reference.high=6 mg/h; infusion.over=4 h; "
            "reference.max_per_day=100 mg",
            maxDaily, "within", "undecided basis-does-not-fit"},
        Row{"a reference for each kg and no weight", running + "order.dose=5 mg/h; reference.high=6 mg/kg/h",
            CheckId::rate, "not-checked no-size", "undecided child.weight"},
        // nobody says whether the run time is that of one bag or of the day: then nothing is asked
        Row{"a run time and no schedule",
            "order.dose=5 mg/h; reference.high=6 mg/h; infusion.over=4 h; reference.max_per_day=100 mg",
            maxDaily, "within", "safe "}),
    NameOfRow());

struct BasisRow {
  const char* name;
  const char* inputs;
  const char* field;
  ArgumentWord reason;
};
void PrintTo(const BasisRow& row, std::ostream* out) { *out << row.inputs; }

class Basis : public testing::TestWithParam<BasisRow> {};

TEST_P(Basis, ThatDoesNotFitIsToldAndExplainedByNoSlip) {
  const Worksheet sheet =
      workOut(caseOf(std::string("child.weight=15 kg; ") + GetParam().inputs), rulesOf(""));
  EXPECT_EQ(sheet.because(), "basis-does-not-fit");
  ASSERT_TRUE(sheet.deciding);
  const Finding& told = sheet.findings[*sheet.deciding];
  EXPECT_EQ(told.field, GetParam().field);
  EXPECT_EQ(*told.argument<ArgumentWord>("reason"), GetParam().reason);
  EXPECT_FALSE(sheet.finding(FindingCode::possibleSlip));
  EXPECT_FALSE(sheet.give || sheet.rate);
}

INSTANTIATE_TEST_SUITE_P(
    R8, Basis,
    testing::Values(BasisRow{"runs on without a rate",
                             "order.dose=80 mg; order.schedule=continuous; reference.high=100 mg/dose",
                             "order.dose", ArgumentWord::continuousWithoutRate},
                    BasisRow{
                        "a rate in doses",
                        "order.dose=5 mcg/kg/min; order.schedule=every 8 h; reference.high=10 mcg/kg/min",
                        "order.schedule", ArgumentWord::rateWithDoses},
                    BasisRow{"the reference runs on without a rate",
                             "order.dose=800 mg; order.schedule=every 8 h; reference.high=100 mg/dose; "
                             "reference.schedule=continuous",
                             "reference.schedule", ArgumentWord::continuousWithoutRate},
                    BasisRow{"a day's reference that runs on",
                             "order.dose=800 mg; order.schedule=every 8 h; reference.high=100 mg/day; "
                             "reference.schedule=continuous",
                             "reference.schedule", ArgumentWord::continuousWithoutRate}),
    NameOfRow());

struct NeedRow {
  const char* name;
  std::string inputs;
  const char* wanting;  ///< for the amount; nothing where an amount is given
};
void PrintTo(const NeedRow& row, std::ostream* out) { *out << row.inputs; }

class Amount : public testing::TestWithParam<NeedRow> {};

TEST_P(Amount, IsNotGivenWhileSomethingIsWanting) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(""));
  std::string wanting;
  for (const Need& need : sheet.needs) {
    EXPECT_EQ(need.forWhat, Need::For::amount) << need.path;
    wanting.append(wanting.empty() ? "" : " ").append(need.path);
  }
  EXPECT_EQ(wanting, GetParam().wanting);
  EXPECT_FALSE(sheet.give && sheet.rate);
  EXPECT_EQ(idOf(sheet.verdict), "safe");
}

const std::string liquid = "stock.kind=liquid; stock.strength=10 mg/mL; ";

INSTANTIATE_TEST_SUITE_P(
    Stock, Amount,
    testing::Values(
        NeedRow{"a powder and nothing else", flat + "stock.kind=powder", "stock.content"},
        NeedRow{"how long and not how much", flat + liquid + "infusion.over=30 min", "infusion.volume"},
        NeedRow{"how much and not how long", flat + liquid + "infusion.volume=50 mL", "infusion.over"},
        NeedRow{"a rate and a tablet",
                "order.dose=5 mg/h; order.schedule=continuous; reference.high=6 mg/h; "
                "stock.strength=5 mg/tablet",
                "stock.kind stock.strength"}),
    NameOfRow());

TEST(AmountOfATablet, IsNotGivenAsALiquid) {
  Case given = caseOf(flat + "stock.kind=solid; stock.strength=80 mg/tablet");
  EXPECT_TRUE(workOut(given, exactRules()).give);
  given.stock.kind = StockKind::liquid;  // no reader lets it through
  const Worksheet sheet = workOut(given, exactRules());
  EXPECT_EQ(idOf(sheet.verdict), "safe");
  EXPECT_FALSE(sheet.give || sheet.step(StepId::give));
}

TEST(OrderInMl, IsNotJudgedByATablet) {
  const Worksheet sheet =
      workOut(caseOf(often + "order.dose=4 mL; reference.high=84 mg/dose; stock.strength=250 mg/tablet"),
              rulesOf(""));
  EXPECT_EQ(sheet.because(), "stock.strength");
  EXPECT_FALSE(sheet.check(CheckId::single).isMade());
}

TEST(OrderInMl, IsNotJudgedByAPowderThatNobodyMixed) {
  const Worksheet sheet = workOut(caseOf(often + "order.dose=4 mL; reference.high=84 mg/dose; "
                                                 "stock.kind=powder; stock.content=500 mg"),
                                  rulesOf(""));
  EXPECT_EQ(sheet.because(), "stock.strength");
  EXPECT_FALSE(sheet.check(CheckId::single).isMade());
}

/// The ends of a range of intervals: every 6 h divides the day, and every 5 h does not.
TEST(IntervalOdd, IsAskedAboutWhereEitherEndIs) {
  const auto told = [](const std::string& schedule) {
    const Worksheet sheet = workOut(
        caseOf("order.dose=80 mg; reference.high=84 mg/dose; order.schedule=" + schedule), rulesOf(""));
    return sheet.finding(FindingCode::intervalOdd) != nullptr;
  };
  EXPECT_TRUE(told("every 5 to 6 h"));
  EXPECT_TRUE(told("every 4 to 5 h"));
  EXPECT_FALSE(told("every 4 to 6 h"));
}

}  // namespace
}  // namespace wardchalk::test::why_not_test
