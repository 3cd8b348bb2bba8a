#include <gtest/gtest.h>

#include <string>

#include "core/check/shown.h"
#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/unit/print.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// How many doses are given in 24 h (R14): what the reference allows, what an order as needed leaves open, and
// what the day's totals are then made of.

namespace wardchalk::test::most_doses_test {
namespace {

Worksheet most(const std::string& text) { return workOut(caseOf(text), exactRules()); }

/// "outside 4/3, 240 mg, ask max-doses-open": the check with its counts, what is counted in 24 h, the
/// verdict.
std::string judged(const Worksheet& sheet) {
  const Check& check = sheet.check(CheckId::maxDoses);
  std::string text(idOf(check.status));
  if (check.why && !check.isMade()) text.append(" ").append(idOf(*check.why));
  if (check.isMade())
    text.append(" ")
        .append(exactText(std::get<Quantity>(check.value).value))
        .append("/")
        .append(exactText(std::get<Quantity>(check.limit).value));
  text.append(", ").append(sheet.orderedDay ? printed(*sheet.orderedDay) : "no day");
  text.append(", ").append(idOf(sheet.verdict));
  if (!sheet.because().empty()) text.append(" ").append(sheet.because());
  return text;
}

struct Row {
  const char* name;
  std::string inputs;
  const char* judged;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

class MostDosesIn24h : public testing::TestWithParam<Row> {};

TEST_P(MostDosesIn24h, AreJudgedByTheRule) {
  const Worksheet sheet = most(GetParam().inputs);
  EXPECT_EQ(judged(sheet), GetParam().judged);
  const bool outside = sheet.check(CheckId::maxDoses).status == CheckStatus::outside;
  const bool told = sheet.finding(FindingCode::overMaxDoses) || sheet.finding(FindingCode::maxDosesOpen);
  EXPECT_EQ(outside, told);
}

const std::string single = "order.dose=80 mg; reference.high=84 mg/dose; ";
const std::string sixHourly = "order.schedule=every 6 h; ";
const std::string both = single + sixHourly + "reference.schedule=every 6 h; ";
const std::string silent = single + sixHourly;
const std::string needed = "order.as_needed=true; ";
const std::string perDay = "order.dose=80 mg; " + sixHourly + needed;

INSTANTIATE_TEST_SUITE_P(
    Stated, MostDosesIn24h,
    testing::Values(
        Row{"none stated", both, "not-checked no-maximum, 320 mg, safe"},
        Row{"as many as allowed", both + "reference.max_doses_per_day=4", "within 4/4, 320 mg, safe"},
        Row{"one more than allowed", both + "reference.max_doses_per_day=3",
            "outside 4/3, 320 mg, unsafe over-max-doses"},
        Row{"lowered by the order", both + "reference.max_doses_per_day=3; order.max_doses_per_day=3",
            "within 3/3, 240 mg, safe"},
        Row{"lowered by the order too little",
            both + "reference.max_doses_per_day=2; order.max_doses_per_day=3",
            "outside 3/2, 240 mg, unsafe over-max-doses"},
        Row{"no schedule, several allowed", silent + "reference.max_doses_per_day=4",
            "within 4/4, 320 mg, safe"},
        Row{"no schedule, fewer allowed", silent + "reference.max_doses_per_day=3",
            "outside 4/3, 320 mg, unsafe over-max-doses"},
        Row{"no schedule, one allowed", single + "order.schedule=every 24 h; reference.max_doses_per_day=1",
            "within 1/1, 80 mg, ask schedule-unknown"},
        Row{"no schedule, two allowed", single + "order.schedule=every 24 h; reference.max_doses_per_day=2",
            "within 1/2, 80 mg, safe"},
        Row{"no schedule, less than daily",
            single + "order.schedule=every 36 h; reference.max_doses_per_day=2",
            "within 1/2, 80 mg, ask schedule-unknown"},
        Row{"an odd interval is rounded up",
            single + "order.schedule=every 5 h; reference.max_doses_per_day=5",
            "within 5/5, 400 mg, ask interval-odd"},
        Row{"an odd interval over", single + "order.schedule=every 5 h; reference.max_doses_per_day=4",
            "outside 5/4, 400 mg, unsafe over-max-doses"},
        Row{"a range counts at its most",
            single + "order.schedule=every 4 to 6 h; reference.max_doses_per_day=5",
            "outside 6/5, 480 mg, unsafe over-max-doses"},
        Row{"weekly",
            single + "order.schedule=weekly; reference.schedule=weekly; reference.max_doses_per_day=1",
            "within 1/1, 80 mg, safe"},
        Row{"a reference per day",
            "order.dose=80 mg; order.schedule=every 6 h; reference.high=336 mg/day; reference.schedule=every "
            "6 h; "
            "reference.max_doses_per_day=3",
            "outside 4/3, 320 mg, unsafe over-max-doses"},
        Row{"a reference per week",
            "order.dose=80 mg; order.schedule=daily; reference.high=560 mg/week; reference.schedule=daily; "
            "reference.max_doses_per_day=1",
            "within 1/1, 80 mg, safe"},
        Row{"no schedule ordered", single + "reference.max_doses_per_day=3",
            "not-checked no-order-schedule, no day, undecided order.schedule"},
        Row{"no schedule ordered and none stated", single,
            "not-checked no-maximum, no day, undecided order.schedule"},
        Row{"the dose is missing", sixHourly + "reference.high=84 mg/dose; reference.max_doses_per_day=3",
            "outside 4/3, no day, unsafe over-max-doses"},
        Row{"a rate",
            "order.dose=2 mg/h; order.schedule=continuous; reference.high=3 mg/h; "
            "reference.max_doses_per_day=1",
            "does-not-apply, no day, safe"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Once, MostDosesIn24h,
    testing::Values(
        Row{"an order once", single + "order.schedule=once; reference.max_doses_per_day=1",
            "within 1/1, 80 mg, safe"},
        Row{"an order once, several allowed", single + "order.schedule=once; reference.max_doses_per_day=4",
            "within 1/4, 80 mg, safe"},
        Row{"an order once, none stated", single + "order.schedule=once",
            "not-checked no-maximum, 80 mg, safe"},
        Row{"an order once as needed", single + needed + "order.schedule=once; reference.max_per_day=60 mg",
            "not-checked no-maximum, 80 mg, unsafe over-max-daily"},
        Row{"both once", single + "order.schedule=once; reference.schedule=once", "within 1/1, 80 mg, safe"},
        Row{"a reference once that says more",
            single + "order.schedule=once; reference.schedule=once; "
                     "reference.max_doses_per_day=4",
            "within 1/1, 80 mg, safe"},
        Row{"repeated under a reference once", single + "order.schedule=every 12 h; reference.schedule=once",
            "outside 2/1, 160 mg, unsafe over-max-doses"},
        Row{"repeated under a reference once that says more",
            single + "order.schedule=every 12 h; reference.schedule=once; reference.max_doses_per_day=4",
            "outside 2/1, 160 mg, unsafe over-max-doses"},
        Row{"daily under a reference once", single + "order.schedule=daily; reference.schedule=once",
            "within 1/1, 80 mg, ask schedule-differs"},
        Row{"as needed under a reference once", silent + needed + "reference.schedule=once",
            "outside 4/1, 80 mg, ask schedule-differs"},
        Row{"as needed under a day's amount once",
            perDay + "reference.high=160 mg/day; reference.schedule=once",
            "outside 4/1, 80 mg, ask schedule-differs"},
        Row{"as needed over a day's amount once",
            perDay + "reference.high=79 mg/day; reference.schedule=once",
            "not-checked as-needed, 320 mg, unsafe over-daily"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    AsNeeded, MostDosesIn24h,
    testing::Values(
        Row{"nothing says how many", both + needed, "not-checked no-maximum, 320 mg, safe"},
        Row{"as many as fit", both + needed + "reference.max_doses_per_day=4", "within 4/4, 320 mg, safe"},
        Row{"more fit", both + needed + "reference.max_doses_per_day=5", "within 4/5, 320 mg, safe"},
        Row{"fewer fit", both + needed + "reference.max_doses_per_day=3",
            "outside 4/3, 240 mg, ask max-doses-open"},
        Row{"one fits", both + needed + "reference.max_doses_per_day=1",
            "outside 4/1, 80 mg, ask max-doses-open"},
        Row{"the order says more than fit",
            both + needed + "reference.max_doses_per_day=3; order.max_doses_per_day=4",
            "outside 4/3, 320 mg, unsafe over-max-doses"},
        Row{"the order says as many as fit",
            both + needed + "reference.max_doses_per_day=3; order.max_doses_per_day=3",
            "within 3/3, 240 mg, safe"},
        Row{"the order says fewer",
            both + needed + "reference.max_doses_per_day=3; order.max_doses_per_day=2",
            "within 2/3, 160 mg, safe"},
        Row{"the order's own most never lowers by the maximum",
            both + needed + "order.max_doses_per_day=4; reference.max_per_day=319 mg",
            "not-checked no-maximum, 320 mg, unsafe over-max-daily"},
        Row{"the day's maximum holds all", both + needed + "reference.max_per_day=320 mg",
            "within 4/4, 320 mg, safe"},
        Row{"the day's maximum holds one fewer", both + needed + "reference.max_per_day=319 mg",
            "outside 4/3, 240 mg, ask max-doses-open"},
        Row{"the day's maximum in grams", both + needed + "reference.max_per_day=0.319 g",
            "outside 4/3, 240 mg, ask max-doses-open"},
        Row{"the day's maximum holds just one", both + needed + "reference.max_per_day=80 mg",
            "outside 4/1, 80 mg, ask max-doses-open"},
        Row{"the day's maximum holds none", both + needed + "reference.max_per_day=79 mg",
            "not-checked as-needed, 320 mg, unsafe over-max-daily"},
        Row{"none is held, whatever is allowed",
            both + needed + "reference.max_per_day=79 mg; reference.max_doses_per_day=3",
            "not-checked as-needed, 320 mg, unsafe over-max-daily"},
        Row{"the fewest of both: the most doses",
            both + needed + "reference.max_per_day=319 mg; reference.max_doses_per_day=2",
            "outside 4/2, 160 mg, ask max-doses-open"},
        Row{"the fewest of both: the day's maximum",
            both + needed + "reference.max_per_day=160 mg; reference.max_doses_per_day=3",
            "outside 4/2, 160 mg, ask max-doses-open"},
        Row{"for each kg, exactly",
            "child.weight=7 kg; order.dose=10 mg/kg; reference.high=10 mg/kg/dose; reference.schedule=every "
            "6 h; " +
                sixHourly + needed + "reference.max_per_day=40 mg/kg",
            "within 4/4, 280 mg, safe"},
        Row{"a day's amount that is shared",
            perDay + "reference.high=336 mg/day; reference.schedule=every 6 h", "within 4/4, 320 mg, safe"},
        Row{"a day's amount by an odd interval, of which fewer fit",
            "order.dose=480 mg/day; order.schedule=every 5 h; " + needed +
                "reference.high=480 mg/day; reference.schedule=every 5 h; reference.max_per_day=390 mg",
            "outside 5/4, 384 mg, ask max-doses-open"},
        Row{"a day's amount shared among fewer",
            perDay + "reference.high=300 mg/day; reference.schedule=every 8 h",
            "outside 4/3, 240 mg, ask schedule-differs"},
        Row{"a day's amount that nobody shares", perDay + "reference.high=336 mg/day",
            "not-checked no-maximum, 320 mg, safe"},
        Row{"a day's amount that nobody shares, and a maximum",
            perDay + "reference.high=336 mg/day; reference.max_per_day=300 mg",
            "outside 4/3, 240 mg, ask max-doses-open"},
        Row{"an amount per dose is no amount of the day",
            single + "order.schedule=every 4 h; reference.schedule=every 6 h; " + needed,
            "not-checked no-maximum, 480 mg, unsafe over-daily"},
        Row{"daily",
            single + needed + "order.schedule=daily; reference.schedule=daily; reference.max_doses_per_day=1",
            "within 1/1, 80 mg, safe"},
        Row{"weekly",
            single + needed +
                "order.schedule=weekly; reference.schedule=weekly; reference.max_doses_per_day=1",
            "within 1/1, 80 mg, safe"},
        Row{"weekly, and the day's maximum holds one",
            single + needed + "order.schedule=weekly; reference.schedule=weekly; reference.max_per_day=80 mg",
            "within 1/1, 80 mg, safe"},
        Row{"an odd interval", single + needed + "order.schedule=every 5 h; reference.max_doses_per_day=4",
            "outside 5/4, 320 mg, ask max-doses-open"},
        Row{"the order per day",
            "order.dose=320 mg/day; reference.high=84 mg/dose; reference.schedule=every 6 h; " + sixHourly +
                needed + "reference.max_per_day=319 mg",
            "outside 4/3, 240 mg, ask max-doses-open"},
        Row{"the order per day, and all fit",
            "order.dose=320 mg/day; reference.high=84 mg/dose; reference.schedule=every 6 h; " + sixHourly +
                needed + "reference.max_per_day=320 mg",
            "within 4/4, 320 mg, safe"},
        Row{"the order per kg and day",
            "child.weight=8 kg; order.dose=40 mg/kg/day; reference.high=84 mg/dose; reference.schedule=every "
            "6 h; " +
                sixHourly + needed + "reference.max_doses_per_day=3",
            "outside 4/3, 240 mg, ask max-doses-open"},
        Row{"each dose, or per day, weekly",
            "order.dose=80 mg/day; reference.high=84 mg/dose; order.schedule=weekly; " + needed +
                "reference.max_doses_per_day=1",
            "within 1/1, no day, undecided basis-does-not-fit"},
        Row{"no schedule ordered", single + needed + "reference.max_doses_per_day=3",
            "not-checked no-order-schedule, no day, undecided order.schedule"},
        Row{"the weight of the maximum is missing", both + needed + "reference.max_per_day=20 mg/kg",
            "not-checked no-size, 320 mg, undecided child.weight"},
        Row{"as far as it is known",
            both + needed + "reference.max_per_day=20 mg/kg; reference.max_doses_per_day=3",
            "outside 4/3, 240 mg, undecided child.weight"},
        Row{"the dose is missing",
            sixHourly + needed +
                "reference.high=84 mg/dose; reference.max_per_day=240 mg; reference.max_doses_per_day=3",
            "outside 4/3, no day, undecided order.dose"}),
    NameOfRow());

TEST(MostDoses, TheDaysLimitIsMadeOfTheFewerDoses) {
  EXPECT_EQ(printed(most(both + "reference.max_doses_per_day=3").limitDay->amount), "252 mg");
  EXPECT_EQ(printed(most(both + "reference.max_doses_per_day=4").limitDay->amount), "336 mg");
  EXPECT_EQ(printed(most(both + "reference.max_doses_per_day=5").limitDay->amount), "336 mg");
  EXPECT_EQ(printed(most(silent + "reference.max_doses_per_day=5").limitDay->amount), "420 mg");
  EXPECT_FALSE(most(silent).limitDay);
  const Worksheet sheet = most(both + "reference.max_doses_per_day=3");
  const auto& chain = std::get<Solved>(sheet.step(StepId::limitDay)->body).chain;
  EXPECT_EQ(chain.factors.back().over.origin.text(), "reference.max_doses_per_day");
  EXPECT_EQ(tag(chain.factors.back().over.origin, sheet), "reference: most doses");
}

TEST(MostDoses, WhatIsAskedOfAnOpenOrderIsToldWithItsNumber) {
  const Worksheet sheet = most(both + needed + "reference.max_per_day=319 mg");
  const Finding& finding = *sheet.finding(FindingCode::maxDosesOpen);
  EXPECT_EQ(finding.field, "order.max_doses_per_day");
  EXPECT_EQ(finding.check, CheckId::maxDoses);
  EXPECT_EQ(*finding.argument<Number>("c"), Number(3));
  EXPECT_EQ(sentence(finding),
            "As needed, and the order does not say how many doses in 24 h: at most 3 fit. Ask the "
            "prescriber, then enter the most doses in 24 h.");
  EXPECT_EQ(reason(*sheet.step(StepId::compareMaxDoses), sheet),
            "as needed: 3 doses of 80 mg fit into 319 mg in 24 h");
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::whole);
  EXPECT_NE(json.find(R"("arguments":{"c":"3"})"), std::string::npos);
}

TEST(MostDoses, AnOpenOrderIsSettledByTheEntryAlone) {
  const std::string open =
      both + needed +
      "reference.max_doses_per_day=3; order.route=oral; stock.kind=liquid; stock.strength=10 mg/mL";
  const Worksheet sheet = most(open);
  ASSERT_EQ(questionsOf(sheet), std::vector{FindingCode::maxDosesOpen});
  ASSERT_TRUE(sheet.give && sheet.give->afterAsking);
  EXPECT_TRUE(whatSettles(FindingCode::maxDosesOpen).empty());
  for (std::size_t way = 0; way < answerIds.size(); ++way) {
    Answers answers;
    answers.given = {{FindingCode::maxDosesOpen, static_cast<Answer>(way)}};
    const Shown seen(sheet, answers);
    EXPECT_TRUE(seen.waits()) << answerIds[way];
    EXPECT_FALSE(seen->give) << answerIds[way];
    EXPECT_EQ(amountWords(seen).measure, "") << answerIds[way];
    EXPECT_EQ(amountWords(seen).none,
              "No amount yet: ask how many doses may be given in 24 h, then enter that number.");
  }
  const Worksheet entered = most(open + "; order.max_doses_per_day=3");
  EXPECT_TRUE(questionsOf(entered).empty());
  EXPECT_EQ(amountWords(entered).measure, "Measure 8 mL");
}

/// Whether each dose or the day's amount is meant is asked before what is missing to work either out.
TEST(DayOrDose, IsAskedWithoutTheChildsSize) {
  const std::string weekly = "order.dose=10 mg/kg/day; order.schedule=weekly; reference.high=10 mg/kg/dose";
  EXPECT_EQ(most(weekly).because(), "basis-does-not-fit");
  EXPECT_EQ(most(weekly + "; child.weight=20 kg").because(), "basis-does-not-fit");
  EXPECT_EQ(most("order.dose=10 mg/kg/day; order.schedule=daily; reference.high=10 mg/kg/dose").because(),
            "child.weight");
}

TEST(MostDoses, TooManyAreToldWithBothNumbers) {
  const Worksheet scheduled = most(both + "reference.max_doses_per_day=3");
  EXPECT_EQ(sentence(*scheduled.finding(FindingCode::overMaxDoses)),
            "Too many: 4 doses in 24 h ordered; the reference allows up to 3 doses.");
  EXPECT_EQ(scheduled.finding(FindingCode::overMaxDoses)->field, "order.schedule");
  const Worksheet capped = most(both + "reference.max_doses_per_day=1; order.max_doses_per_day=2");
  EXPECT_EQ(sentence(*capped.finding(FindingCode::overMaxDoses)),
            "Too many: 2 doses in 24 h ordered; the reference allows up to 1 dose.");
  EXPECT_EQ(capped.finding(FindingCode::overMaxDoses)->field, "order.max_doses_per_day");
}

/// The low end, the week's total and the share of a day keep the order's own number.
TEST(MostDoses, NothingElseCountsFewerDoses) {
  const Worksheet sheet = most(
      both + needed + "reference.low=80 mg/dose; reference.max_per_day=319 mg; order.max_doses_per_day=4");
  const Worksheet open = most(both + needed + "reference.low=80 mg/dose; reference.max_per_day=319 mg");
  EXPECT_EQ(std::get<Quantity>(sheet.check(CheckId::low).limit).value,
            std::get<Quantity>(open.check(CheckId::low).limit).value);
  const Worksheet shared = most(perDay + "reference.high=336 mg/day; reference.max_per_day=300 mg");
  EXPECT_EQ(std::get<Quantity>(shared.check(CheckId::single).limit).value, Number(84));
  const Worksheet week = most("order.dose=80 mg; " + sixHourly + needed +
                              "reference.high=2240 mg/week; reference.max_doses_per_day=3");
  EXPECT_EQ(std::get<Quantity>(week.check(CheckId::period).value).value, Number(2240));
  EXPECT_EQ(printed(*week.orderedDay), "240 mg");
}

/// 8.39 mL holds 83.9 mg, of which three are within 251.8 mg and three of 84 mg are not.
TEST(MostDoses, MeasuringKeepsTheDoseWithinTheDayByTheCountOfTheOrderedDose) {
  const std::string measured =
      "order.dose=83.9 mg; order.route=oral; reference.high=84 mg/dose; reference.schedule=every 6 h; " +
      sixHourly + needed + "stock.kind=liquid; stock.strength=10 mg/mL; reference.max_per_day=";
  EXPECT_EQ(*most(measured + "251.8 mg").give->measured, Number::ratio(82, 10));
  EXPECT_EQ(*most(measured + "252 mg").give->measured, Number::ratio(84, 10));
  EXPECT_EQ(*most(measured + "251.7 mg").finding(FindingCode::maxDosesOpen)->argument<Number>("c"),
            Number(3));
}

struct UseRow {
  const char* name;
  std::string inputs;
  const char* use;
};

/// Wherever an amount stands, the lower of the two numbers stands with it, and that it is as needed.
TEST(MostDoses, StandWithTheAmount) {
  const std::string measured = both + "order.route=oral; stock.kind=liquid; stock.strength=10 mg/mL; ";
  for (const UseRow& row : {
           UseRow{"neither", "", "by mouth every 6 hours"},
           UseRow{"as needed alone", needed, "by mouth every 6 hours, as needed"},
           UseRow{"of the reference", "reference.max_doses_per_day=4",
                  "by mouth every 6 hours, no more than 4 doses in 24 h"},
           UseRow{"of the order", "order.max_doses_per_day=2",
                  "by mouth every 6 hours, no more than 2 doses in 24 h"},
           UseRow{"the lower, of the order",
                  needed + "order.max_doses_per_day=2; reference.max_doses_per_day=4",
                  "by mouth every 6 hours, as needed, no more than 2 doses in 24 h"},
           UseRow{"the lower, of the reference",
                  needed + "order.max_doses_per_day=4; reference.max_doses_per_day=4",
                  "by mouth every 6 hours, as needed, no more than 4 doses in 24 h"},
           UseRow{"one", needed + "order.max_doses_per_day=1; reference.max_doses_per_day=4",
                  "by mouth every 6 hours, as needed, no more than 1 dose in 24 h"},
       }) {
    const Worksheet sheet = most(measured + row.inputs);
    ASSERT_TRUE(sheet.give && sheet.give->measured) << row.name;
    EXPECT_EQ(amountWords(sheet).when, row.use) << row.name;
  }
  const std::string once =
      single +
      "order.route=oral; order.schedule=once; reference.max_doses_per_day=4; stock.kind=liquid; "
      "stock.strength=10 mg/mL";
  EXPECT_EQ(amountWords(most(once)).when, "by mouth once");
}

TEST(MostDoses, AreMissedOnTheFlagOnlyWhereTheOrderIsAsNeeded) {
  const std::string missed = "most doses in 24 h";
  EXPECT_EQ(checksNotMade(most(both)).find(missed), std::string::npos);
  EXPECT_NE(checksNotMade(most(both + needed)).find(missed), std::string::npos);
  EXPECT_EQ(checksNotMade(most(both + needed + "reference.max_doses_per_day=4")).find(missed),
            std::string::npos);
  EXPECT_EQ(checksNotMade(most(both + needed)),
            "NOT checked: maximum, most doses in 24 h, age and size bands, route, whether "
            "the size is likely");
}

}  // namespace
}  // namespace wardchalk::test::most_doses_test
