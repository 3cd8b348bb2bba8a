#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/work_out.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// What a reference states beside a rate: how fast the medicine may run in, the most of it in 24 h, how strong
// the bag may be. Each is judged, or named as not checked.

namespace wardchalk::test::rate_limits_test {
namespace {

/// 75 mcg/min, which is 4.5 mg/h and 108 mg in 24 h, from a bag of 0.8 mg/mL.
const std::string usual =
    "child.weight=15 kg; order.route=intravenous; order.dose=5 mcg/kg/min; order.schedule=continuous; "
    "reference.high=10 mcg/kg/min; stock.kind=liquid; stock.strength=40 mg/50 mL";

/// The usual case with some entries replaced, added or, by "none", taken away.
Worksheet worked(const std::string& more, const char* rules = "many_units=3") {
  std::vector<WrittenEntry> entries = entriesOf(usual);
  for (const WrittenEntry& entry : entriesOf(more))
    entries = with(std::move(entries), entry.path, entry.text);
  std::erase_if(entries, [](const WrittenEntry& entry) { return entry.text == "none"; });
  return workOut(caseOf(entries), rulesOf(rules));
}

/// How a check came out: "within", "outside", or why it was not made.
std::string outcomeOf(const Check& check) {
  std::string outcome(idOf(check.status));
  if (!check.isMade() && check.why) outcome.append(": ").append(idOf(*check.why));
  return outcome;
}

/// Whether a check stands in the list of those that were not made: "NOT checked: rate, maximum in 24 h".
bool isNamed(const std::string& list, const std::string& name) {
  return list.ends_with(": " + name) || list.ends_with(", " + name) ||
         list.find(": " + name + ",") != std::string::npos ||
         list.find(", " + name + ",") != std::string::npos;
}

struct Row {
  const char* name;
  const char* more;
  CheckId check;
  const char* outcome;
  const char* verdict;
  const char* because = "";
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.more; }

class LimitOfARate : public testing::TestWithParam<Row> {};

TEST_P(LimitOfARate, IsJudgedOrNamed) {
  const Worksheet sheet = worked(GetParam().more);
  const Check& check = sheet.check(GetParam().check);
  EXPECT_EQ(outcomeOf(check), GetParam().outcome);
  EXPECT_EQ(idOf(sheet.verdict), GetParam().verdict);
  EXPECT_EQ(sheet.because(), GetParam().because);
  EXPECT_EQ(isNamed(checksNotMade(sheet), checkName(check.id)),
            check.status == CheckStatus::notChecked && check.why != WhyNot::otherMedicine);
}

INSTANTIATE_TEST_SUITE_P(
    HowFast, LimitOfARate,
    testing::Values(
        Row{"not stated", "title=a", CheckId::infusionRate, "not-checked: not-stated", "safe"},
        Row{"below", "reference.max_infusion_rate=6 mcg/kg/min", CheckId::infusionRate, "within", "safe"},
        Row{"at the limit", "reference.max_infusion_rate=5 mcg/kg/min", CheckId::infusionRate, "within",
            "safe"},
        Row{"a hair over", "reference.max_infusion_rate=4.9999 mcg/kg/min", CheckId::infusionRate, "outside",
            "unsafe", "too-fast"},
        Row{"far over", "reference.max_infusion_rate=1 mcg/kg/min", CheckId::infusionRate, "outside",
            "unsafe", "too-fast"},
        Row{"per hour at the limit", "reference.max_infusion_rate=0.3 mg/kg/h", CheckId::infusionRate,
            "within", "safe"},
        Row{"per hour over", "reference.max_infusion_rate=0.299 mg/kg/h", CheckId::infusionRate, "outside",
            "unsafe", "too-fast"},
        Row{"flat at the limit", "reference.max_infusion_rate=75 mcg/min", CheckId::infusionRate, "within",
            "safe"},
        Row{"flat per hour over", "reference.max_infusion_rate=4.4 mg/h", CheckId::infusionRate, "outside",
            "unsafe", "too-fast"},
        Row{"60 times too fast by the unit of time", "reference.max_infusion_rate=5 mcg/kg/h",
            CheckId::infusionRate, "outside", "unsafe", "too-fast"},
        Row{"a flat order without a weight",
            "child.weight=none; order.dose=4.5 mg/h; reference.high=10 mg/h; "
            "reference.max_infusion_rate=5 mcg/kg/min",
            CheckId::infusionRate, "not-checked: no-size", "undecided", "child.weight"},
        Row{"a flat order and a limit per kg",
            "order.dose=4.6 mg/h; reference.high=10 mg/h; reference.max_infusion_rate=5 mcg/kg/min",
            CheckId::infusionRate, "outside", "unsafe", "too-fast"},
        Row{"units against mg", "reference.max_infusion_rate=5 units/kg/min", CheckId::infusionRate,
            "not-checked: missing", "undecided", "units-do-not-meet"},
        Row{"units",
            "order.dose=4 units/h; reference.high=6 units/h; stock.strength=50 units/50 mL; "
            "reference.max_infusion_rate=0.05 units/min",
            CheckId::infusionRate, "outside", "unsafe", "too-fast"},
        Row{"although the reference's own rate is missing",
            "reference.high=none; reference.max_infusion_rate=1 mcg/kg/min", CheckId::infusionRate, "outside",
            "unsafe", "too-fast"},
        Row{"without anything in hand",
            "stock.kind=none; stock.strength=none; "
            "reference.max_infusion_rate=1 mcg/kg/min",
            CheckId::infusionRate, "outside", "unsafe", "too-fast"},
        Row{"of another medicine",
            "order.medicine=Plover; reference.medicine=Godwit; reference.max_infusion_rate=1 mcg/kg/min",
            CheckId::infusionRate, "not-checked: other-medicine", "not-covered", "not-covered-medicine"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    InADay, LimitOfARate,
    testing::Values(
        Row{"not stated", "title=a", CheckId::maxDaily, "not-checked: no-maximum", "safe"},
        Row{"below", "reference.max_per_day=120 mg", CheckId::maxDaily, "within", "safe"},
        Row{"at the limit", "reference.max_per_day=108 mg", CheckId::maxDaily, "within", "safe"},
        Row{"a hair over", "reference.max_per_day=107.99 mg", CheckId::maxDaily, "outside", "unsafe",
            "over-max-daily"},
        Row{"by weight at the limit", "reference.max_per_day=7.2 mg/kg", CheckId::maxDaily, "within", "safe"},
        Row{"by weight over", "reference.max_per_day=7.1 mg/kg", CheckId::maxDaily, "outside", "unsafe",
            "over-max-daily"},
        Row{"by weight without one",
            "child.weight=none; order.dose=4.5 mg/h; reference.high=10 mg/h; reference.max_per_day=7.2 mg/kg",
            CheckId::maxDaily, "not-checked: no-size", "undecided", "child.weight"},
        Row{"by surface", "child.bsa=0.65 m2; reference.max_per_day=166 mg/m2", CheckId::maxDaily, "outside",
            "unsafe", "over-max-daily"},
        Row{"ordered per hour at the limit",
            "order.dose=0.3 mg/kg/h; reference.high=1 mg/kg/h; reference.max_per_day=108 mg",
            CheckId::maxDaily, "within", "safe"},
        Row{"no schedule said", "order.schedule=none; reference.max_per_day=100 mg", CheckId::maxDaily,
            "outside", "unsafe", "over-max-daily"},
        Row{"units in grams' place", "reference.max_per_day=100 units", CheckId::maxDaily,
            "not-checked: missing", "undecided", "units-do-not-meet"},
        Row{"units",
            "order.dose=4 units/h; reference.high=6 units/h; reference.max_per_day=95 units; "
            "stock.strength=50 units/50 mL",
            CheckId::maxDaily, "outside", "unsafe", "over-max-daily"},
        Row{"for a stated time at the limit",
            "order.schedule=none; infusion.over=4 h; reference.max_per_day=18 mg", CheckId::maxDaily,
            "within", "safe"},
        Row{"for a stated time over", "order.schedule=none; infusion.over=4 h; reference.max_per_day=17.9 mg",
            CheckId::maxDaily, "outside", "unsafe", "over-max-daily"},
        Row{"for minutes", "order.schedule=none; infusion.over=30 min; reference.max_per_day=2.25 mg",
            CheckId::maxDaily, "within", "safe"},
        Row{"for longer than a day", "order.schedule=none; infusion.over=36 h; reference.max_per_day=108 mg",
            CheckId::maxDaily, "within", "safe"},
        Row{"for longer than a day over",
            "order.schedule=none; infusion.over=36 h; reference.max_per_day=107 mg", CheckId::maxDaily,
            "outside", "unsafe", "over-max-daily"},
        Row{"continuously and for a stated time", "infusion.over=4 h; reference.max_per_day=50 mg",
            CheckId::maxDaily, "within", "ask", "run-time-open"},
        Row{"continuously and for a stated time, all day too",
            "infusion.over=4 h; reference.max_per_day=108 mg", CheckId::maxDaily, "within", "safe"},
        Row{"continuously and for too long a stated time", "infusion.over=4 h; reference.max_per_day=17 mg",
            CheckId::maxDaily, "outside", "unsafe", "over-max-daily"},
        Row{"although the reference gives doses", "reference.high=10 mg/kg/dose; reference.max_per_day=50 mg",
            CheckId::maxDaily, "outside", "undecided", "basis-does-not-fit"},
        Row{"of another medicine",
            "order.medicine=Plover; reference.medicine=Godwit; reference.max_per_day=1 mg", CheckId::maxDaily,
            "not-checked: other-medicine", "not-covered", "not-covered-medicine"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    InTheBag, LimitOfARate,
    testing::Values(
        Row{"not stated", "title=a", CheckId::concentration, "not-checked: not-stated", "safe"},
        Row{"at the limit", "reference.max_concentration=0.8 mg/mL", CheckId::concentration, "within",
            "safe"},
        Row{"in other units at the limit", "reference.max_concentration=800 mcg/mL", CheckId::concentration,
            "within", "safe"},
        Row{"a hair over", "reference.max_concentration=0.7999 mg/mL", CheckId::concentration, "outside",
            "unsafe", "too-concentrated"},
        Row{"per litre over", "reference.max_concentration=0.5 g/1 L", CheckId::concentration, "outside",
            "unsafe", "too-concentrated"},
        Row{"nothing in hand", "stock.kind=none; stock.strength=none; reference.max_concentration=0.5 mg/mL",
            CheckId::concentration, "not-checked: missing", "safe"},
        Row{"a vial and no bag",
            "stock.kind=powder; stock.strength=none; stock.content=40 mg; stock.final_volume=50 mL; "
            "reference.max_concentration=0.5 mg/mL",
            CheckId::concentration, "not-checked: missing", "safe"},
        Row{"a label that the vial contradicts",
            "stock.kind=powder; stock.content=40 mg; stock.final_volume=40 mL; "
            "reference.max_concentration=0.5 mg/mL",
            CheckId::concentration, "not-checked: missing", "ask", "strength-differs"},
        Row{"units against mg", "reference.max_concentration=5 units/mL", CheckId::concentration,
            "not-checked: missing", "undecided", "units-do-not-meet"},
        Row{"before the dose is known to fit", "child.weight=none; reference.max_concentration=0.5 mg/mL",
            CheckId::concentration, "outside", "unsafe", "too-concentrated"},
        Row{"weak enough and not too weak", "reference.min_concentration=0.8 mg/mL",
            CheckId::concentrationLow, "within", "safe"},
        Row{"too weak", "reference.min_concentration=1 mg/mL", CheckId::concentrationLow, "outside", "ask",
            "too-dilute"},
        Row{"least not stated", "title=a", CheckId::concentrationLow, "not-checked: not-stated", "safe"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    OfADose, LimitOfARate,
    testing::Values(
        Row{"no shortest time", "title=a", CheckId::infusionTime, "does-not-apply: is-a-rate", "safe"},
        Row{"a shortest time and no run time", "reference.min_infusion_time=30 min", CheckId::infusionTime,
            "not-checked: missing", "safe"},
        Row{"a shortest time that is kept", "infusion.over=30 min; reference.min_infusion_time=30 min",
            CheckId::infusionTime, "within", "safe"},
        Row{"a run time that is too short", "infusion.over=20 min; reference.min_infusion_time=30 min",
            CheckId::infusionTime, "outside", "unsafe", "too-fast"},
        Row{"no most in one dose", "title=a", CheckId::maxSingle, "does-not-apply", "safe"},
        Row{"the most in one dose", "reference.max_per_dose=1 mg; reference.max_per_day=108 mg",
            CheckId::maxSingle, "not-checked: is-a-rate", "safe"}),
    NameOfRow());

// The low end is never above what the maxima let be given: no larger rate is reached for that they forbid.
struct LowRow {
  const char* name;
  const char* more;
  const char* status;
  const char* expected;  ///< what is told; empty: nothing
};
void PrintTo(const LowRow& row, std::ostream* out) { *out << row.more; }

class LowEndOfARate : public testing::TestWithParam<LowRow> {};

TEST_P(LowEndOfARate, IsNotAboveWhatTheMaximaAllow) {
  const Worksheet sheet = worked(std::string("reference.low=6 mcg/kg/min; ") + GetParam().more);
  EXPECT_EQ(outcomeOf(sheet.check(CheckId::low)), GetParam().status);
  const Finding* finding = sheet.finding(FindingCode::belowLow);
  EXPECT_EQ(finding ? sentence(*finding) : "", GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    WithMaxima, LowEndOfARate,
    testing::Values(
        LowRow{
            "none", "title=a", "outside",
            "Too little by this reference: 5 mcg/kg/min (75 mcg/min) ordered; the reference says at least 6 "
            "mcg/kg/min (90 mcg/min) (this is 83.3 % of it)."},
        LowRow{"a greatest rate that is as little", "reference.max_infusion_rate=5 mcg/kg/min", "within", ""},
        LowRow{"a greatest rate between", "reference.max_infusion_rate=0.33 mg/kg/h", "outside",
               "Too little by this reference: 5 mcg/kg/min (75 mcg/min) ordered; the reference says at least "
               "5.5 mcg/kg/min (82.5 mcg/min) (this is 90.9 % of it)."},
        LowRow{"a most in 24 h that is as little", "reference.max_per_day=108 mg", "within", ""},
        LowRow{
            "a most in 24 h that the stated time leaves room for",
            "reference.max_per_day=108 mg; infusion.over=4 h; order.schedule=none", "outside",
            "Too little by this reference: 5 mcg/kg/min (75 mcg/min) ordered; the reference says at least 6 "
            "mcg/kg/min (90 mcg/min) (this is 83.3 % of it)."},
        LowRow{"a maximum that cannot be worked out", "reference.max_per_day=108 mg/m2",
               "not-checked: missing", ""}),
    NameOfRow());

// A rounded rate keeps every limit that the ordered rate kept: the nearer setting is passed over.
struct SetRow {
  const char* name;
  const char* more;
  const char* measure;
};
void PrintTo(const SetRow& row, std::ostream* out) { *out << row.more; }

class RoundedRate : public testing::TestWithParam<SetRow> {};

TEST_P(RoundedRate, KeepsEveryLimit) {
  const Worksheet sheet = worked(GetParam().more);
  ASSERT_EQ(idOf(sheet.verdict), "safe");
  EXPECT_EQ(amountWords(Shown(sheet, {})).measure, GetParam().measure);
}

INSTANTIATE_TEST_SUITE_P(
    Pump, RoundedRate,
    testing::Values(SetRow{"to the nearest", "order.dose=5.05 mcg/kg/min", "Run at 5.7 mL/h"},
                    SetRow{"below the greatest rate",
                           "order.dose=5.05 mcg/kg/min; reference.max_infusion_rate=5.05 mcg/kg/min",
                           "Run at 5.6 mL/h"},
                    SetRow{"to the greatest rate itself",
                           "order.dose=5.05 mcg/kg/min; reference.max_infusion_rate=4.56 mg/h",
                           "Run at 5.7 mL/h"},
                    SetRow{"below the most in 24 h",
                           "order.dose=5.05 mcg/kg/min; reference.max_per_day=109.1 mg", "Run at 5.6 mL/h"},
                    SetRow{"to the most in 24 h itself",
                           "order.dose=5.05 mcg/kg/min; reference.max_per_day=109.44 mg", "Run at 5.7 mL/h"},
                    SetRow{"below the most in 24 h although it is to end sooner",
                           "order.dose=5.05 mcg/kg/min; reference.max_per_day=109.1 mg; infusion.over=4 h",
                           "Run at 5.6 mL/h"},
                    SetRow{"for a stated time alone",
                           "order.dose=5.05 mcg/kg/min; reference.max_per_day=18.2 mg; infusion.over=4 h; "
                           "order.schedule=none",
                           "Run at 5.6 mL/h"}),
    NameOfRow());

struct SaidRow {
  const char* name;
  const char* more;
  const char* said;
};
void PrintTo(const SaidRow& row, std::ostream* out) { *out << row.more; }

class SaidOfARate : public testing::TestWithParam<SaidRow> {};

TEST_P(SaidOfARate, NamesTheLimitThatCounts) {
  EXPECT_EQ(verdictReason(worked(GetParam().more)), GetParam().said);
}

INSTANTIATE_TEST_SUITE_P(
    Reason, SaidOfARate,
    testing::Values(
        SaidRow{"safe by the rate that is fullest", "reference.max_infusion_rate=6 mcg/kg/min",
                "5 mcg/kg/min (75 mcg/min) ordered; maximum rate 6 mcg/kg/min (90 mcg/min)."},
        SaidRow{"safe by the reference that is fullest", "reference.max_infusion_rate=20 mcg/kg/min",
                "5 mcg/kg/min (75 mcg/min) ordered; safe up to 10 mcg/kg/min (150 mcg/min)."},
        SaidRow{"safe by the day that is fullest", "reference.max_per_day=120 mg",
                "108,000 mcg in 24 h ordered; maximum 120,000 mcg in 24 h."},
        SaidRow{"too fast", "reference.max_infusion_rate=1 mcg/kg/min",
                "Too fast: 5 mcg/kg/min (75 mcg/min); maximum rate 1 mcg/kg/min (15 mcg/min)."},
        SaidRow{"too fast in hours", "reference.max_infusion_rate=3 mg/h",
                "Too fast: 4,500 mcg/h; maximum rate 3,000 mcg/h."},
        SaidRow{"over in 24 h", "reference.max_per_day=100 mg",
                "Over the maximum by 8 % in 24 h: 108,000 mcg ordered; maximum 100,000 mcg."},
        SaidRow{"too concentrated", "reference.max_concentration=0.5 mg/mL",
                "Too concentrated: 0.8 mg/mL in the bag or syringe; maximum 0.5 mg/mL. Ask the pharmacist."},
        SaidRow{"for how long", "infusion.over=4 h; reference.max_per_day=50 mg",
                "Ordered continuously, and a run time of 4 h is entered: all day it would give 108,000 mcg; "
                "maximum 50,000 mcg in 24 h. Ask the prescriber how long it runs in 24 h."}),
    NameOfRow());

// The day of a rate is a step of the working, by its own time.
TEST(DayOfARate, IsWorkedWhereItIsHeldAgainstSomething) {
  EXPECT_FALSE(worked("title=a").step(StepId::orderedDay));
  const Worksheet sheet = worked("reference.max_per_day=120 mg");
  ASSERT_TRUE(sheet.step(StepId::orderedDay) && sheet.orderedDay && sheet.limitDay);
  EXPECT_EQ(*sheet.orderedDay, (Quantity{Number(108000), Unit::mcg}));
  EXPECT_EQ(sheet.limitDay->setBy, SetBy::maxPerDay);
  EXPECT_FALSE(sheet.orderedDose || sheet.limitDose);
}

// Pounds decide about a day's maximum of a rate as they do of doses (R17).
TEST(DayOfARate, TellsBothPounds) {
  const Worksheet sheet = worked(
      "child.weight=33 lb; order.dose=4.5 mg/h; reference.high=10 mg/h; reference.max_per_day=7.2 mg/kg");
  EXPECT_EQ(sheet.check(CheckId::maxDaily).status, CheckStatus::outside);
  const Finding* finding = sheet.finding(FindingCode::roundingDecides);
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->check, CheckId::maxDaily);
}

// A ten-fold rate that is over the greatest rate alone is no explanation that leaves it over.
TEST(SlipOfARate, FitsTheGreatestRateToo) {
  const auto slips = [](const char* more) {
    const Worksheet sheet = worked(more);
    return std::ranges::count(sheet.findings, FindingCode::possibleSlip,
                              [](const Finding& finding) { return finding.code; });
  };
  const std::string ten = "order.dose=95 mcg/kg/min; ";
  EXPECT_EQ(slips(ten.c_str()), 1);
  EXPECT_EQ(slips((ten + "reference.max_infusion_rate=9 mcg/kg/min").c_str()), 0);
  EXPECT_EQ(slips((ten + "reference.max_infusion_rate=9.5 mcg/kg/min").c_str()), 1);
}

}  // namespace
}  // namespace wardchalk::test::rate_limits_test
