#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "core/unit/print.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "core/working/step.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// The low end of a day against one dose that is ordered once or as needed: by the reference's own schedule
// one dose of its day is a share of it.
//
// On paper, for 18 kg: 40 mg/kg × 18 kg = 720 mg and 50 mg/kg × 18 kg = 900 mg in a day. A dose is
//
//   among     1      3      4      5      6
//   low     720    240    180    144    120 mg       of which the house lets pass from 97 %: 698.4, 232.8,
//   174.6 … high    900    300    225    180    150 mg       of which 90 %: 810, 270, 202.5, 162, 135 mg

namespace wardchalk::test::share_of_day_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* low;     ///< how the check of the low end stands, with the dose and the bound that it compared
  const char* judged;  ///< the verdict and what decides it
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

std::string statusOf(const Check& check) {
  std::string text(idOf(check.status));
  if (check.why) text.append(" ").append(idOf(*check.why));
  if (!check.isMade()) return text;
  return text + " " + printed(std::get<Quantity>(check.value)) + "/" +
         printed(std::get<Quantity>(check.limit));
}

std::string judgedOf(const Worksheet& sheet) {
  return std::string(idOf(sheet.verdict)) + " " + std::string(sheet.because());
}

class ShareOfADay : public testing::TestWithParam<Row> {};

TEST_P(ShareOfADay, IsAskedAbout) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), exactRules());
  EXPECT_EQ(statusOf(sheet.check(CheckId::low)), GetParam().low);
  EXPECT_EQ(judgedOf(sheet), GetParam().judged);
}

class ShareOfADayInClass : public testing::TestWithParam<Row> {};

TEST_P(ShareOfADayInClass, IsAskedAbout) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), classroomRules());
  EXPECT_EQ(statusOf(sheet.check(CheckId::low)), GetParam().low);
  EXPECT_EQ(judgedOf(sheet), GetParam().judged);
}

const std::string child = "child.weight=18 kg; ";
const std::string high = child + "reference.high=50 mg/kg/day; ";
const std::string low = high + "reference.low=40 mg/kg/day; ";
const std::string every8 = "reference.schedule=every 8 h; ";
const std::string every6to8 = "reference.schedule=every 6 to 8 h; ";
const std::string once = "order.schedule=once; ";
const std::string day = low + every8 + once;     ///< a stated low end: 240 mg
const std::string usual = high + every8 + once;  ///< none: 90 % of 300 mg
const std::string mL = "stock.kind=liquid; stock.strength=25 mg/mL; ";

INSTANTIATE_TEST_SUITE_P(
    Once, ShareOfADay,
    testing::Values(
        Row{"a tenth", day + "order.dose=24 mg", "outside 24 mg/240 mg", "ask below-low"},
        Row{"just below", day + "order.dose=232 mg", "outside 232 mg/240 mg", "ask below-low"},
        Row{"below by what the house lets pass", day + "order.dose=233 mg", "outside 233 mg/240 mg", "safe "},
        Row{"at", day + "order.dose=240 mg", "within 240 mg/240 mg", "safe "},
        Row{"above", day + "order.dose=241 mg", "within 241 mg/240 mg", "safe "},
        Row{"too much is not asked about", day + "order.dose=301 mg", "within 301 mg/240 mg",
            "unsafe over-single"},
        Row{"no low end, just below 90 percent", usual + "order.dose=269 mg", "outside 269 mg/270 mg",
            "ask below-usual"},
        Row{"no low end, at 90 percent", usual + "order.dose=270 mg", "within 270 mg/270 mg", "safe "},
        Row{"for each kg", day + "order.dose=1 mg/kg", "outside 18 mg/240 mg", "ask below-low"},
        Row{"a day's total in one dose", day + "order.dose=24 mg/day", "outside 24 mg/240 mg",
            "ask below-low"},
        Row{"as needed as well", day + "order.dose=24 mg; order.as_needed=true", "outside 24 mg/240 mg",
            "ask below-low"},
        Row{"in mL", day + mL + "order.dose=1 mL", "outside 25 mg/240 mg", "ask below-low"},
        Row{"in mL, at", day + mL + "order.dose=9.6 mL", "within 240 mg/240 mg", "safe "},
        Row{"by tablets",
            day + "stock.kind=solid; stock.strength=120 mg/tablet; stock.divides_into=2; order.dose=180 mg",
            "outside 180 mg/240 mg", "ask below-low"},
        Row{"by tablets, at",
            day + "stock.kind=solid; stock.strength=120 mg/tablet; stock.divides_into=2; order.dose=240 mg",
            "within 240 mg/240 mg", "safe "}),
    NameOfRow());

// Of a range of times the most leave the least for one dose.
INSTANTIATE_TEST_SUITE_P(
    HowOften, ShareOfADay,
    testing::Values(Row{"a range of times, below the least", low + every6to8 + once + "order.dose=174 mg",
                        "outside 174 mg/180 mg", "ask below-low"},
                    Row{"a range of times, at the least", low + every6to8 + once + "order.dose=180 mg",
                        "within 180 mg/180 mg", "safe "},
                    Row{"a range of times and no low end, below",
                        high + every6to8 + once + "order.dose=202 mg", "outside 202 mg/202.5 mg",
                        "ask below-usual"},
                    Row{"every 5 h is five times",
                        low + "reference.schedule=every 5 h; " + once + "order.dose=144 mg",
                        "within 144 mg/144 mg", "safe "},
                    Row{"once a day", low + "reference.schedule=daily; " + once + "order.dose=698 mg",
                        "outside 698 mg/720 mg", "ask below-low"},
                    Row{"every other day is one dose",
                        low + "reference.schedule=every 48 h; " + once + "order.dose=720 mg",
                        "within 720 mg/720 mg", "safe "},
                    Row{"once, below", low + "reference.schedule=once; " + once + "order.dose=240 mg",
                        "outside 240 mg/720 mg", "ask below-low"},
                    Row{"once, at", low + "reference.schedule=once; " + once + "order.dose=720 mg",
                        "within 720 mg/720 mg", "safe "}),
    NameOfRow());

// 600 mg in a day are 200 mg in one of three doses, 150 mg in one of four.
INSTANTIATE_TEST_SUITE_P(
    Maxima, ShareOfADay,
    testing::Values(
        Row{"in one dose, at", day + "reference.max_per_dose=200 mg; order.dose=200 mg",
            "within 200 mg/200 mg", "safe "},
        Row{"in one dose, below", day + "reference.max_per_dose=200 mg; order.dose=190 mg",
            "outside 190 mg/200 mg", "ask below-low"},
        Row{"in one dose, over", day + "reference.max_per_dose=200 mg; order.dose=201 mg",
            "within 201 mg/200 mg", "unsafe over-max-single"},
        Row{"in one dose and no low end", usual + "reference.max_per_dose=200 mg; order.dose=180 mg",
            "within 180 mg/180 mg", "safe "},
        Row{"in one dose and no low end, below", usual + "reference.max_per_dose=200 mg; order.dose=179 mg",
            "outside 179 mg/180 mg", "ask below-usual"},
        Row{"in a day, at", day + "reference.max_per_day=600 mg; order.dose=200 mg", "within 200 mg/200 mg",
            "safe "},
        Row{"in a day, below", day + "reference.max_per_day=600 mg; order.dose=190 mg",
            "outside 190 mg/200 mg", "ask below-low"},
        Row{"in a day, whatever the order says how many",
            day + "reference.max_per_day=600 mg; order.max_doses_per_day=1; order.dose=200 mg",
            "within 200 mg/200 mg", "safe "},
        Row{"in a day, shared as needed",
            low + every8 +
                "reference.max_per_day=600 mg; order.schedule=every 6 h; order.as_needed=true; "
                "order.max_doses_per_day=4; order.dose=150 mg",
            "within 150 mg/150 mg", "ask schedule-differs"},
        Row{"for each kg and no weight",
            "reference.low=720 mg/day; reference.high=900 mg/day; reference.max_per_dose=10 mg/kg; " +
                every8 + once + "order.dose=24 mg",
            "not-checked missing", "undecided child.weight"}),
    NameOfRow());

const std::string needed = "order.as_needed=true; ";
const std::string often = "order.schedule=every 8 h; " + needed;    // as often as the reference
const std::string seldom = "order.schedule=every 12 h; " + needed;  // less
const std::string more = "order.schedule=every 4 h; " + needed;     // six times: more

INSTANTIATE_TEST_SUITE_P(
    AsNeeded, ShareOfADay,
    testing::Values(
        Row{"as often, a tenth", low + every8 + often + "order.dose=24 mg", "outside 24 mg/240 mg",
            "ask below-low"},
        Row{"as often, at", low + every8 + often + "order.dose=240 mg", "within 240 mg/240 mg", "safe "},
        Row{"as often and no low end, below", high + every8 + often + "order.dose=269 mg",
            "outside 269 mg/270 mg", "ask below-usual"},
        Row{"as often and no low end, at", high + every8 + often + "order.dose=270 mg",
            "within 270 mg/270 mg", "safe "},
        Row{"less often, below", low + every8 + seldom + "order.dose=232 mg", "outside 232 mg/240 mg",
            "ask below-low"},
        Row{"less often, at", low + every8 + seldom + "order.dose=240 mg", "within 240 mg/240 mg", "safe "},
        Row{"more often, at what reaches the day", low + every8 + more + "order.dose=120 mg",
            "within 120 mg/120 mg", "ask schedule-differs"},
        Row{"more often, below that", low + every8 + more + "order.dose=116 mg", "outside 116 mg/120 mg",
            "ask below-low"},
        Row{"more often with four at most, at",
            low + every8 + more + "order.max_doses_per_day=4; order.dose=180 mg", "within 180 mg/180 mg",
            "ask schedule-differs"},
        Row{"more often with four at most, below",
            low + every8 + more + "order.max_doses_per_day=4; order.dose=174 mg", "outside 174 mg/180 mg",
            "ask below-low"},
        Row{"two at most of three that the reference gives",
            low + every8 + often + "order.max_doses_per_day=2; order.dose=240 mg", "within 240 mg/240 mg",
            "safe "},
        Row{"two at most, and the day is not reached by them",
            low + every8 + often + "order.max_doses_per_day=2; order.dose=232 mg", "outside 232 mg/240 mg",
            "ask below-low"},
        Row{"a range of times", low + every6to8 + often + "order.dose=180 mg", "within 180 mg/180 mg",
            "safe "},
        Row{"every 5 h is five times",
            low + every8 + "order.schedule=every 5 h; " + needed + "order.dose=144 mg",
            "within 144 mg/144 mg", "ask schedule-differs"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    NothingToShareBy, ShareOfADay,
    testing::Values(
        Row{"once, a day that nobody divides", low + once + "order.dose=24 mg", "does-not-apply once-only",
            "ask division-unknown"},
        Row{"as needed, a day that nobody divides", low + often + "order.dose=24 mg",
            "does-not-apply as-needed", "safe "},
        Row{"once, a week",
            child + "reference.low=4 mg/kg/week; reference.high=5 mg/kg/week; reference.schedule=weekly; " +
                once + "order.dose=7 mg",
            "does-not-apply once-only", "safe "},
        Row{"as needed, a week",
            child +
                "reference.low=4 mg/kg/week; reference.high=5 mg/kg/week; reference.schedule=weekly; "
                "order.schedule=weekly; " +
                needed + "order.dose=7 mg",
            "does-not-apply as-needed", "safe "},
        Row{"once, a day that runs on", low + "reference.schedule=continuous; " + once + "order.dose=24 mg",
            "does-not-apply once-only", "undecided basis-does-not-fit"},
        Row{"a limit alone", high + every8 + "reference.limit_only=true; " + once + "order.dose=24 mg",
            "not-checked limit-only", "safe "},
        Row{"no weight",
            "reference.low=40 mg/kg/day; reference.high=50 mg/kg/day; " + every8 + once + "order.dose=24 mg",
            "not-checked no-size", "undecided child.weight"},
        Row{"as needed, and nobody says how often", low + every8 + needed + "order.dose=24 mg",
            "not-checked missing", "undecided order.schedule"}),
    NameOfRow());

// A class judges an order that does not say how often for one dose; its reference need not say so either.
INSTANTIATE_TEST_SUITE_P(
    InClass, ShareOfADayInClass,
    testing::Values(Row{"once, below", day + "order.dose=232 mg", "outside 232 mg/240 mg", "ask below-low"},
                    Row{"once, at", day + "order.dose=240 mg", "within 240 mg/240 mg", "safe "},
                    Row{"as needed, below", low + every8 + often + "order.dose=232 mg",
                        "outside 232 mg/240 mg", "ask below-low"},
                    Row{"once, a day that nobody divides", low + once + "order.dose=24 mg",
                        "does-not-apply once-only", "safe "},
                    Row{"nobody says how often", low + every8 + "order.dose=232 mg", "outside 232 mg/240 mg",
                        "ask below-low"},
                    Row{"as needed, and nobody says how often", low + every8 + needed + "order.dose=232 mg",
                        "outside 232 mg/240 mg", "ask below-low"},
                    Row{"as needed, six at most, at",
                        low + every8 + needed + "order.max_doses_per_day=6; order.dose=120 mg",
                        "within 120 mg/120 mg", "safe "},
                    Row{"as needed, two at most",
                        low + every8 + needed + "order.max_doses_per_day=2; order.dose=232 mg",
                        "outside 232 mg/240 mg", "ask below-low"},
                    Row{"a day that runs on", low + "reference.schedule=continuous; order.dose=24 mg",
                        "not-checked missing", "undecided basis-does-not-fit"}),
    NameOfRow());

/// The step says what the day is shared among, and by whom.
TEST(OneOfADay, IsShownWithWhereItComesFrom) {
  struct Shown {
    std::string inputs;
    StaticText from;
    Number among;
    const char* reason;
  };
  for (const Shown& shown :
       {Shown{day + "order.dose=24 mg", path::referenceSchedule, Number(3),
              "the reference gives a minimum; its day is shared among the most doses that it gives"},
        Shown{low + every8 + more + "order.max_doses_per_day=4; order.dose=24 mg", path::maxDosesPerDay,
              Number(4),
              "the reference gives a minimum; the day is shared among the most doses ordered in 24 h"},
        Shown{
            high + every8 + more + "order.dose=24 mg", path::schedule, Number(6),
            "asked about below 90 % of the recommended dose; the day is shared among the most doses ordered "
            "in 24 h"},
        Shown{day + "order.dose=233 mg", path::referenceSchedule, Number(3),
              "97.1 % of the minimum; the house asks below 97 %; its day is shared among the most doses that "
              "it gives"}}) {
    const Worksheet sheet = workOut(caseOf(shown.inputs), exactRules());
    const Step* step = sheet.step(StepId::compareLow);
    ASSERT_TRUE(step) << shown.inputs;
    const auto& right = std::get<Comparison>(step->body).right;
    ASSERT_TRUE(right.chain) << shown.inputs;
    const Term& doses = right.chain->factors.at(1).under;
    EXPECT_EQ(doses.value, shown.among) << shown.inputs;
    EXPECT_EQ(doses.origin, Origin::field(shown.from)) << shown.inputs;
    EXPECT_EQ(reason(*step, sheet), shown.reason);
  }
}

/// 241 mg of 26 mg in 1 mL are 9.27 mL: the nearer mark at 9.2 mL would be 239.2 mg, below the share.
TEST(OneOfADay, IsKeptByWhatIsMeasured) {
  const Worksheet sheet = workOut(caseOf(day + "order.dose=241 mg; order.route=oral; stock.kind=liquid; "
                                               "stock.strength=26 mg/mL"),
                                  exactRules());
  ASSERT_TRUE(sheet.give && sheet.give->measured);
  EXPECT_EQ(*sheet.give->measured, Number::ratio(94, 10));
}

}  // namespace
}  // namespace wardchalk::test::share_of_day_test
