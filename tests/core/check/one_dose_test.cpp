#include <gtest/gtest.h>

#include <initializer_list>
#include <string>
#include <tuple>

#include "core/check/work_out.h"
#include "core/unit/print.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// What is not said (R15): an order and a reference that do not say how often, by both values of their rules.

namespace wardchalk::test::one_dose_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* needed;   ///< verdict and what decides it, then the checks named below that were made
  const char* oneDose;  ///< the same where one dose is judged
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

/// "unsafe over-max-daily; max-daily 90 mg/80 mg": a check that was not made says why in brackets where that
/// is the schedule.
std::string judged(const Worksheet& sheet) {
  std::string text(idOf(sheet.verdict));
  if (!sheet.because().empty()) text.append(" ").append(sheet.because());
  for (const CheckId id :
       {CheckId::single, CheckId::maxSingle, CheckId::maxDaily, CheckId::maxDoses, CheckId::low}) {
    const Check& check = sheet.check(id);
    if (check.isMade())
      text.append("; ")
          .append(idOf(id))
          .append(" ")
          .append(printed(std::get<Quantity>(check.value)))
          .append("/")
          .append(printed(std::get<Quantity>(check.limit)));
    else if (check.why == WhyNot::noOrderSchedule)
      text.append("; ").append(idOf(id)).append(" ?");
  }
  return text;
}

class UnscheduledOrder : public testing::TestWithParam<Row> {};

TEST_P(UnscheduledOrder, IsJudgedByTheRule) {
  const Case inputs = caseOf(GetParam().inputs);
  EXPECT_EQ(judged(workOut(inputs, exactRules())), GetParam().needed);
  const Worksheet sheet = workOut(inputs, rulesOf("order_schedule_missing=one-dose"));
  EXPECT_EQ(judged(sheet), GetParam().oneDose);
  EXPECT_FALSE(sheet.orderedDay);
  const bool told = sheet.finding(FindingCode::oneDoseJudged) != nullptr;
  for (const CheckId id : {CheckId::daily, CheckId::period, CheckId::schedule})
    EXPECT_EQ(sheet.check(id).why == WhyNot::noOrderSchedule, told) << idOf(id);
  EXPECT_FALSE(sheet.finding(FindingCode::scheduleUnknown) || sheet.finding(FindingCode::divisionUnknown));
  const bool safe = sheet.verdict == VerdictKind::safe;
  EXPECT_EQ(verdictTitle(sheet) == "SAFE for one dose, by this reference", safe);
}

const std::string perDose = "order.dose=80 mg; reference.high=84 mg/dose; ";
const std::string perDay = "order.dose=80 mg; reference.high=336 mg/day; reference.schedule=every 6 to 8 h; ";

INSTANTIATE_TEST_SUITE_P(
    PerDose, UnscheduledOrder,
    testing::Values(
        Row{"within", perDose, "undecided order.schedule; single 80 mg/84 mg; low 80 mg/75.6 mg",
            "safe; single 80 mg/84 mg; low 80 mg/75.6 mg"},
        Row{"over", "order.dose=85 mg; reference.high=84 mg/dose",
            "unsafe over-single; single 85 mg/84 mg; low 85 mg/75.6 mg",
            "unsafe over-single; single 85 mg/84 mg; low 85 mg/75.6 mg"},
        Row{"too little", "order.dose=40 mg; reference.high=84 mg/dose",
            "undecided order.schedule; single 40 mg/84 mg; low 40 mg/75.6 mg",
            "ask below-usual; single 40 mg/84 mg; low 40 mg/75.6 mg"},
        Row{"a day's maximum that one dose keeps", perDose + "reference.max_per_day=100 mg",
            "undecided order.schedule; single 80 mg/84 mg; max-daily ?",
            "safe; single 80 mg/84 mg; max-daily ?; low 80 mg/75.6 mg"},
        Row{"a day's maximum that one dose passes", perDose + "reference.max_per_day=79 mg",
            "unsafe over-max-daily; single 80 mg/84 mg; max-daily 80 mg/79 mg",
            "unsafe over-max-daily; single 80 mg/84 mg; max-daily 80 mg/79 mg; low 80 mg/71.1 mg"},
        Row{"a day's maximum by the order's most doses",
            perDose + "reference.max_per_day=320 mg; order.max_doses_per_day=4",
            "undecided order.schedule; single 80 mg/84 mg; max-daily 320 mg/320 mg",
            "safe; single 80 mg/84 mg; max-daily 320 mg/320 mg; low 80 mg/72 mg"},
        Row{"a day's maximum passed by them",
            perDose + "reference.max_per_day=319 mg; order.max_doses_per_day=4",
            "unsafe over-max-daily; single 80 mg/84 mg; max-daily 320 mg/319 mg",
            "unsafe over-max-daily; single 80 mg/84 mg; max-daily 320 mg/319 mg; low 80 mg/71.775 mg"},
        Row{"most doses of the reference alone", perDose + "reference.max_doses_per_day=1",
            "undecided order.schedule; single 80 mg/84 mg; max-doses ?; low 80 mg/75.6 mg",
            "safe; single 80 mg/84 mg; max-doses ?; low 80 mg/75.6 mg"},
        Row{"as many as allowed", perDose + "reference.max_doses_per_day=4; order.max_doses_per_day=4",
            "undecided order.schedule; single 80 mg/84 mg; max-doses 4 doses/4 doses; low 80 mg/75.6 mg",
            "safe; single 80 mg/84 mg; max-doses 4 doses/4 doses; low 80 mg/75.6 mg"},
        Row{"more than allowed", perDose + "reference.max_doses_per_day=3; order.max_doses_per_day=4",
            "unsafe over-max-doses; single 80 mg/84 mg; max-doses 4 doses/3 doses; low 80 mg/75.6 mg",
            "unsafe over-max-doses; single 80 mg/84 mg; max-doses 4 doses/3 doses; low 80 mg/75.6 mg"},
        Row{"as needed", perDose + "order.as_needed=true",
            "undecided order.schedule; single 80 mg/84 mg; low 80 mg/75.6 mg",
            "safe; single 80 mg/84 mg; low 80 mg/75.6 mg"},
        Row{"a maximum in one dose", perDose + "reference.max_per_dose=79 mg",
            "unsafe over-max-single; single 80 mg/84 mg; max-single 80 mg/79 mg; low 80 mg/71.1 mg",
            "unsafe over-max-single; single 80 mg/84 mg; max-single 80 mg/79 mg; low 80 mg/71.1 mg"}),
    NameOfRow());

// 336 mg a day: 112 mg in one of three doses; the low end is shared among four.
INSTANTIATE_TEST_SUITE_P(
    PerTime, UnscheduledOrder,
    testing::Values(
        Row{"a day's amount shared", perDay, "undecided order.schedule; single 80 mg/112 mg",
            "safe; single 80 mg/112 mg; low 80 mg/75.6 mg"},
        Row{"a low end shared", perDay + "reference.low=332 mg/day",
            "undecided order.schedule; single 80 mg/112 mg",
            "ask below-low; single 80 mg/112 mg; low 80 mg/83 mg"},
        Row{"a low end lowered by the day's maximum",
            perDay + "reference.low=324 mg/day; reference.max_per_day=320 mg",
            "undecided order.schedule; single 80 mg/112 mg; max-daily ?",
            "safe; single 80 mg/112 mg; max-daily ?; low 80 mg/80 mg"},
        Row{"by the day's maximum and the order's most doses",
            perDay + "reference.low=324 mg/day; reference.max_per_day=240 mg; order.max_doses_per_day=3",
            "undecided order.schedule; single 80 mg/112 mg; max-daily 240 mg/240 mg",
            "safe; single 80 mg/112 mg; max-daily 240 mg/240 mg; low 80 mg/80 mg"},
        Row{"by a maximum in one dose", perDay + "reference.low=324 mg/day; reference.max_per_dose=80 mg",
            "undecided order.schedule; single 80 mg/112 mg; max-single 80 mg/80 mg",
            "safe; single 80 mg/112 mg; max-single 80 mg/80 mg; low 80 mg/80 mg"},
        Row{"a day's amount that nobody divides", "order.dose=80 mg; reference.high=336 mg/day",
            "undecided order.schedule", "undecided order.schedule"},
        Row{"a day's amount once", "order.dose=80 mg; reference.high=84 mg/day; reference.schedule=once",
            "undecided order.schedule; single 80 mg/84 mg; max-doses ?",
            "safe; single 80 mg/84 mg; max-doses ?; low 80 mg/75.6 mg"},
        Row{"a week's amount", "order.dose=80 mg; reference.high=84 mg/week; reference.schedule=weekly",
            "undecided order.schedule; single 80 mg/84 mg", "safe; single 80 mg/84 mg"},
        Row{"a week's amount that nobody divides", "order.dose=80 mg; reference.high=84 mg/week",
            "undecided order.schedule", "undecided order.schedule"},
        Row{"an order per day",
            "order.dose=240 mg/day; reference.high=84 mg/dose; reference.schedule=every 8 h",
            "undecided order.schedule", "undecided order.schedule"},
        Row{"an order per day over the day's maximum",
            "order.dose=240 mg/day; reference.high=84 mg/dose; reference.schedule=every 8 h; "
            "reference.max_per_day=239 mg",
            "unsafe over-max-daily; max-daily 240 mg/239 mg",
            "unsafe over-max-daily; max-daily 240 mg/239 mg"},
        Row{"an order per day within it",
            "order.dose=240 mg/day; reference.high=84 mg/dose; reference.schedule=every 8 h; "
            "reference.max_per_day=240 mg",
            "undecided order.schedule; max-daily 240 mg/240 mg",
            "undecided order.schedule; max-daily 240 mg/240 mg"}),
    NameOfRow());

/// Without a dose there is no order that could be judged for one: both entries are wanting, as ever.
TEST(OneDose, WantsADose) {
  const Case inputs = caseOf("reference.high=84 mg/dose; reference.schedule=every 12 h");
  const Worksheet sheet = workOut(inputs, rulesOf("order_schedule_missing=one-dose"));
  const Worksheet exact = workOut(inputs, exactRules());
  EXPECT_FALSE(sheet.finding(FindingCode::oneDoseJudged));
  ASSERT_EQ(sheet.needs.size(), exact.needs.size());
  for (std::size_t i = 0; i < sheet.needs.size(); ++i) EXPECT_EQ(sheet.needs[i].path, exact.needs[i].path);
  for (const Check& check : exact.checks)
    EXPECT_EQ(sheet.check(check.id).status, check.status) << idOf(check.id);
}

TEST(OneDose, IsNeverMeasuredAboveTheDaysMaximum) {
  const std::string order =
      "order.dose=80 mg; order.route=oral; reference.high=84 mg/dose; stock.kind=liquid; stock.strength=25.4 "
      "mg/mL; ";
  const HouseRules rules = rulesOf("order_schedule_missing=one-dose");
  const Worksheet free = workOut(caseOf(order), rules);
  const Worksheet bound = workOut(caseOf(order + "reference.max_per_day=80 mg"), rules);
  EXPECT_EQ(free.give->measured, Number::ratio(32, 10));
  EXPECT_EQ(bound.give->measured, Number(3));
}

struct SilentRow {
  const char* name;
  const char* inputs;
  FindingCode code;
};

TEST(SilentReference, IsAskedAboutOrNoted) {
  for (const SilentRow& row :
       {SilentRow{"how often", "order.dose=80 mg; order.schedule=every 12 h; reference.high=84 mg/dose",
                  FindingCode::scheduleUnknown},
        SilentRow{"how divided", "order.dose=80 mg; order.schedule=daily; reference.high=84 mg/day",
                  FindingCode::divisionUnknown}}) {
    const Worksheet asked = workOut(caseOf(row.inputs), exactRules());
    const Worksheet noted = workOut(caseOf(row.inputs), rulesOf("reference_schedule_missing=note"));
    EXPECT_EQ(asked.because(), idOf(row.code)) << row.name;
    EXPECT_EQ(noted.verdict, VerdictKind::safe) << row.name;
    EXPECT_EQ(noted.finding(row.code)->severity, Severity::note) << row.name;
    EXPECT_EQ(verdictTitle(noted), "SAFE by this reference") << row.name;
  }
}

/// A day's low end says nothing of one dose where nobody says how often; of a range of times one dose may be
/// as little as the most of them leave, 164 mg of 656 mg.
TEST(LowEndOfADay, IsSaidToBeUncheckedWhereNoRangeIsHeldAgainstTheDose) {
  const std::string day = "child.weight=16.4 kg; reference.low=40 mg/kg/day; reference.high=50 mg/kg/day; ";
  const std::string dose =
      "child.weight=16.4 kg; reference.low=1 mg/kg/dose; reference.high=2 mg/kg/dose; "
      "reference.schedule=every 8 h; ";
  for (const auto& [inputs, reason, listed] :
       std::initializer_list<std::tuple<std::string, const char*, bool>>{
           {day + "order.dose=25 mg; order.schedule=once", "25 mg ordered; safe up to 820 mg per dose.",
            true},
           {day + "order.dose=25 mg; order.schedule=every 8 h; order.as_needed=true",
            "25 mg ordered; safe up to ≈ 273.3 mg per dose.", true},
           {day + "reference.schedule=every 8 h; order.dose=250 mg; order.schedule=once",
            "250 mg ordered; safe range ≈ 218.7 to ≈ 273.3 mg per dose.", false},
           {day + "reference.schedule=every 8 h; order.dose=250 mg; order.schedule=every 8 h",
            "250 mg ordered; safe range ≈ 218.7 to ≈ 273.3 mg per dose.", false},
           {day + "reference.schedule=every 6 to 8 h; order.dose=180 mg; order.schedule=once",
            "180 mg ordered; safe up to ≈ 273.3 mg per dose.", false},
           {day + "reference.schedule=every 6 to 8 h; order.dose=180 mg; order.schedule=every 8 h; "
                  "order.as_needed=true",
            "180 mg ordered; safe up to ≈ 273.3 mg per dose.", false},
           {dose + "order.dose=25 mg; order.schedule=once",
            "25 mg ordered; safe range 16.4 to 32.8 mg per dose.", false}}) {
    const Worksheet sheet = workOut(caseOf(inputs), rulesOf("reference_schedule_missing=note"));
    EXPECT_EQ(sheet.verdict, VerdictKind::safe) << inputs;
    EXPECT_EQ(verdictReason(sheet), reason) << inputs;
    EXPECT_EQ(checksNotMade(sheet).find("minimum dose") != std::string::npos, listed) << inputs;
  }
}

}  // namespace
}  // namespace wardchalk::test::one_dose_test
