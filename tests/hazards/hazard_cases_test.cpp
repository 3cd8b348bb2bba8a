// What the program does with each hazard that shows in a worksheet, one row or test for each way of looking
// at it. The names begin with the hazard's number; resources/handbook/hazards.md tells what each hazard is.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/record/case_entry.h"
#include "core/words/amount_words.h"
#include "core/words/read_back.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"
#include "tests/support/csv.h"
#include "tests/support/figures.h"

namespace wardchalk::test::hazard_cases_test {

namespace {

/// 120 mg/m² × 0.70 m² = 84 mg in one dose; 80 mg are 3.2 mL.
constexpr const char* plain =
    "child.height=103 cm; child.weight=17.2 kg; order.medicine=Plover; order.route=oral; order.dose=80 mg; "
    "order.schedule=every 12 h; reference.high=120 mg/m2/dose; reference.schedule=every 12 h; "
    "reference.source=Bench list, p. 4; stock.kind=liquid; stock.strength=25 mg/mL";

/// The plain case with entries replaced; an entry without text is taken out.
std::vector<WrittenEntry> changed(std::string_view changes) {
  std::vector<WrittenEntry> entries = entriesOf(plain);
  for (const WrittenEntry& entry : entriesOf(changes)) entries = with(entries, entry.path, entry.text);
  std::erase_if(entries, [](const WrittenEntry& entry) { return entry.text.empty(); });
  return entries;
}

Worksheet worked(std::string_view changes, std::string_view rules = "") {
  return workOut(caseOf(changed(changes)), rulesOf(rules));
}

}  // namespace

struct HazardRow {
  const char* name;
  std::string changes;
  const char* expect;
  const char* rules = "";
};

class HazardCase : public testing::TestWithParam<HazardRow> {};

TEST_P(HazardCase, isMet) {
  const HazardRow& row = GetParam();
  const Worksheet sheet = worked(row.changes, row.rules);
  for (const std::string& expectation : partsOf(row.expect)) EXPECT_EQ(unmet(sheet, expectation), "");
}

// 38 in are 96.52 cm; 20 kg × 10 mg/kg = 200 mg; 60 kg × 15 mg/kg = 900 mg; 120 mg/m² × 0.70 m² = 84 mg and
// 100 mg/m² × 0.70 m² = 70 mg, of which 62.3 mg are 89 %. Surfaces by Python's decimal module: √(103 × 38 ×
// 0.45359237 ÷ 3600) = 0.702250…, √(40.5 × 2.54 × 17.2 ÷ 3600) = 0.701063…, √(41 × 37.25 ÷ 3131) = 0.698415….
INSTANTIATE_TEST_SUITE_P(
    Sizes, HazardCase,
    testing::Values(
        HazardRow{"H03 pounds taken for kilograms", "child.age=4 year 2 month; child.weight=37.9 kg",
                  "check.size=outside; verdict=ask; finding=weight-unlikely"},
        HazardRow{"H05 weight and height swapped",
                  "child.age=4 year 2 month; child.height=17.2 cm; child.weight=103 kg",
                  "bsa=0.7 m2; check.size=outside; verdict=undecided; finding=size-implausible"},
        HazardRow{"H06 cm and kg", "", "bsa~0.701506 m2", "bsa_decimals=none"},
        HazardRow{"H06 cm and lb", "child.weight=38 lb", "bsa~0.70225 m2", "bsa_decimals=none"},
        HazardRow{"H06 in and kg", "child.height=40.5 in", "bsa~0.701063 m2", "bsa_decimals=none"},
        HazardRow{"H06 in and lb", "child.height=41 in; child.weight=37.25 lb", "bsa~0.698415 m2",
                  "bsa_decimals=none"},
        HazardRow{"H06 inches taken for cm",
                  "child.age=3 year 2 month; child.height=38 cm; child.weight=14.5 kg",
                  "check.size=outside; finding=size-implausible; give=absent"},
        HazardRow{"H06 the same inches", "child.age=3 year 2 month; child.height=38 in; child.weight=14.5 kg",
                  "check.size=within"},
        HazardRow{"H07 charted 4 percent over", "child.bsa=0.7295 m2",
                  "check.bsa-charted=within; bsa=0.7295 m2; verdict=safe"},
        HazardRow{"H07 charted 4 percent under", "child.bsa=0.6735 m2",
                  "check.bsa-charted=within; bsa=0.6735 m2; verdict=safe"},
        HazardRow{"H07 charted 6 percent over", "child.bsa=0.7436 m2; order.dose=84 mg",
                  "check.bsa-charted=outside; verdict=ask; because=bsa-differs"},
        HazardRow{"H07 charted 6 percent under", "child.bsa=0.6594 m2; order.dose=79 mg",
                  "check.bsa-charted=outside; verdict=ask; because=bsa-differs"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Orders, HazardCase,
    testing::Values(
        HazardRow{"H08 a figure per m2 taken per kg", "reference.high=12 mg/kg/dose; order.dose=84 mg",
                  "verdict=ask"},
        HazardRow{"H08 a figure per kg taken per m2", "reference.high=5 mg/m2/dose; order.dose=86 mg",
                  "check.single=outside; verdict=unsafe"},
        HazardRow{"H11 too often",
                  "child.weight=20 kg; reference.high=10 mg/kg/dose; reference.schedule=every 6 h; "
                  "order.dose=200 mg; order.schedule=every 4 h",
                  "check.single=within; check.daily=outside; check.schedule=outside; verdict=unsafe; "
                  "because=over-daily"},
        HazardRow{"H11 too seldom", "order.schedule=every 24 h",
                  "check.single=within; check.schedule=outside; verdict=ask"},
        HazardRow{"H12 a total typed per kg",
                  "child.weight=38.6 kg; child.height=145 cm; order.dose=160 mg/kg; "
                  "reference.high=5 mg/kg/dose; stock.kind=solid; stock.strength=160 mg/tablet",
                  "ordered.dose=6176 mg; verdict=unsafe; because=over-single; give=absent"},
        HazardRow{"H13 no schedule",
                  "order.schedule=", "verdict=undecided; because=order.schedule; give=absent"},
        HazardRow{"H13 no dose", "order.dose=", "verdict=undecided; because=order.dose; give=absent"},
        HazardRow{"H13 no reference",
                  "reference.high=", "verdict=undecided; because=reference.high; give=absent"},
        HazardRow{"H13 no weight", "child.weight=", "verdict=undecided; because=child.weight; give=absent"},
        HazardRow{"H13 no height", "child.height=", "verdict=undecided; because=child.height; give=absent"},
        HazardRow{"H13 no kind of stock", "stock.kind=; stock.strength=", "verdict=safe; give=absent"},
        HazardRow{"H13 no strength", "stock.strength=", "verdict=safe; give=absent"},
        HazardRow{"H13 no route", "order.route=", "check.route=not-checked; verdict=safe; measured=3.2 mL"},
        HazardRow{"H14 an order in mL without a strength", "order.dose=3.2 mL; stock.strength=",
                  "verdict=undecided; because=stock.strength; give=absent"},
        HazardRow{"H14 an order in mL", "order.dose=3.2 mL",
                  "ordered.dose=80 mg; verdict=safe; measured=3.2 mL"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Limits, HazardCase,
    testing::Values(
        HazardRow{"H20 over the maximum though right per kg",
                  "child.weight=60 kg; child.height=165 cm; reference.high=15 mg/kg/dose; "
                  "reference.max_per_dose=500 mg; order.dose=900 mg",
                  "check.single=within; check.max-single=outside; verdict=unsafe; because=over-max-single"},
        HazardRow{"H20 no maximum stated is no pass",
                  "child.weight=60 kg; child.height=165 cm; reference.high=15 mg/kg/dose; order.dose=900 mg",
                  "check.max-single=not-checked; check.max-daily=not-checked; verdict=safe"},
        HazardRow{"H22 at the low end", "reference.low=100 mg/m2/dose; order.dose=70 mg",
                  "check.low=within; verdict=safe"},
        HazardRow{"H22 89 percent of the low end", "reference.low=100 mg/m2/dose; order.dose=62.3 mg",
                  "check.low=outside; verdict=ask; because=below-low"},
        HazardRow{"H22 a tenth of one dose of a day, once",
                  "child.weight=16.4 kg; child.height=; reference.low=40 mg/kg/day; "
                  "reference.high=50 mg/kg/day; reference.schedule=every 8 h; order.dose=25 mg; "
                  "order.schedule=once",
                  "check.low=outside; verdict=ask; because=below-low"},
        HazardRow{"H22 a tenth of it as needed",
                  "child.weight=16.4 kg; child.height=; reference.low=40 mg/kg/day; "
                  "reference.high=50 mg/kg/day; reference.schedule=every 8 h; order.dose=25 mg; "
                  "order.schedule=every 8 h; order.as_needed=true",
                  "check.low=outside; verdict=ask; because=below-low"},
        HazardRow{"H22 too much comes before too little",
                  "reference.low=100 mg/m2/dose; order.dose=60 mg; reference.max_per_dose=50 mg",
                  "verdict=unsafe; because=over-max-single"},
        HazardRow{"H23 another route", "reference.route=intravenous",
                  "verdict=not-covered; because=not-covered-route; give=absent"},
        HazardRow{"H23 no source", "reference.source=", "finding=source-not-stated"},
        HazardRow{"H24 at the limit where binary arithmetic fails",
                  "child.weight=2.3 kg; child.height=; reference.high=0.1 mg/kg/dose; order.dose=0.23 mg; "
                  "stock.strength=0.1 mg/mL",
                  "limit.dose=0.23 mg; check.single=within; verdict=safe"},
        HazardRow{"H24 just over it",
                  "child.weight=2.3 kg; child.height=; reference.high=0.1 mg/kg/dose; order.dose=0.2301 mg",
                  "check.single=outside; verdict=unsafe"},
        HazardRow{
            "H24 rounding the surface early moves the limit",
            "child.height=90 cm; child.weight=16.05 kg; reference.high=1000 mg/m2/dose; order.dose=600 mg",
            "bsa=0.63 m2; limit.dose=630 mg"},
        HazardRow{"H24 a measured amount is judged again", "order.dose=84 mg; stock.strength=26.1 mg/mL",
                  "verdict=safe; give~3.2184 mL; measured=3.2 mL"}),
    NameOfRow());

// What was taken for one medicine and is ordered as another, by every way that a nurse comes to it.
INSTANTIATE_TEST_SUITE_P(
    OtherMedicines, HazardCase,
    testing::Values(
        HazardRow{"H43 the medicine was changed after the reference was taken",
                  "reference.medicine=Plover; order.medicine=Heron",
                  "check.medicine=outside; check.single=not-checked; limit.dose=absent; verdict=not-covered; "
                  "because=not-covered-medicine; give=absent"},
        HazardRow{"H43 the reference was taken before the medicine was typed",
                  "reference.medicine=Plover; order.medicine=",
                  "check.medicine=not-checked; verdict=undecided; because=order.medicine; give=absent"},
        HazardRow{"H43 the name was emptied to a blank", "reference.medicine=Plover; order.medicine=\u00A0",
                  "verdict=undecided; because=order.medicine; give=absent"},
        HazardRow{"H43 too much by another medicine's reference",
                  "reference.medicine=Plover; order.medicine=Heron; order.dose=840 mg",
                  "check.single=not-checked; verdict=not-covered; because=not-covered-medicine"},
        HazardRow{"H43 a form that reads alike", "reference.medicine=Plover2; order.medicine=Plover\u00B2",
                  "verdict=not-covered; because=not-covered-medicine; give=absent"},
        HazardRow{"H43 a name within the name", "reference.medicine=Plover forte",
                  "verdict=not-covered; because=not-covered-medicine; give=absent"},
        HazardRow{"H43 the same in other writing", "reference.medicine= PL\u00D3VER ",
                  "check.medicine=within; verdict=safe; measured=3.2 mL"},
        HazardRow{"H43 by another name of the ward's",
                  "reference.medicine=Dotterel; reference.also_called=plover",
                  "check.medicine=within; verdict=safe; measured=3.2 mL"},
        HazardRow{"H43 nothing is said of what it is for", "", "check.medicine=not-checked; verdict=safe"}),
    NameOfRow());

// Every 6 h is four in 24 h; three of 80 mg are within 300 mg.
INSTANTIATE_TEST_SUITE_P(
    MostDoses, HazardCase,
    testing::Values(
        HazardRow{"H47 more than the reference allows",
                  "order.schedule=every 6 h; reference.schedule=every 6 h; reference.max_doses_per_day=3",
                  "check.max-doses=outside; verdict=unsafe; because=over-max-doses; give=absent"},
        HazardRow{"H47 as needed without how many",
                  "order.schedule=every 6 h; reference.schedule=every 6 h; order.as_needed=true; "
                  "reference.max_per_day=300 mg",
                  "ordered.day=240 mg; check.max-doses=outside; check.max-daily=within; verdict=ask; "
                  "because=max-doses-open"},
        HazardRow{"H47 as needed with how many",
                  "order.schedule=every 6 h; reference.schedule=every 6 h; order.as_needed=true; "
                  "order.max_doses_per_day=3; reference.max_per_day=300 mg",
                  "ordered.day=240 mg; verdict=safe; measured=3.2 mL"},
        HazardRow{"H47 as needed and nobody says how many",
                  "order.schedule=every 6 h; reference.schedule=every 6 h; order.as_needed=true",
                  "ordered.day=320 mg; check.max-doses=not-checked; verdict=safe"}),
    NameOfRow());

// The day before a band's edge, on it and after it. 1 month is 30.4375 days.
INSTANTIATE_TEST_SUITE_P(
    Bands, HazardCase,
    testing::Values(
        HazardRow{"H21 the day before 29 days",
                  "child.age=28 day; child.size_confirmed=true; reference.age_from=29 day",
                  "verdict=not-covered"},
        HazardRow{"H21 on 29 days", "child.age=29 day; reference.age_from=29 day", "check.age-band=within"},
        HazardRow{"H21 the day after 29 days", "child.age=30 day; reference.age_from=29 day",
                  "check.age-band=within"},
        HazardRow{"H21 the day before 1 month",
                  "child.age=30 day; child.size_confirmed=true; reference.age_from=1 month",
                  "verdict=not-covered"},
        HazardRow{"H21 the day after 1 month", "child.age=31 day; reference.age_from=1 month",
                  "check.age-band=within"},
        HazardRow{"H21 the month before 2 years",
                  "child.height=88 cm; child.weight=12.5 kg; order.dose=60 mg; child.age=23 month; "
                  "reference.age_from=2 year",
                  "verdict=not-covered"},
        HazardRow{"H21 on 2 years",
                  "child.height=88 cm; child.weight=12.5 kg; order.dose=60 mg; child.age=24 month; "
                  "reference.age_from=2 year",
                  "check.age-band=within"},
        HazardRow{"H21 below leaves out the edge",
                  "child.height=88 cm; child.weight=12.5 kg; order.dose=60 mg; child.age=24 month; "
                  "reference.age_below=2 year",
                  "verdict=not-covered"},
        HazardRow{"H21 over leaves out the edge",
                  "child.height=88 cm; child.weight=12.5 kg; order.dose=60 mg; child.age=24 month; "
                  "reference.age_over=2 year",
                  "verdict=not-covered"},
        HazardRow{"H21 over takes the month after",
                  "child.height=88 cm; child.weight=12.5 kg; order.dose=60 mg; child.age=25 month; "
                  "reference.age_over=2 year",
                  "check.age-band=within"},
        HazardRow{"H21 up to a year holds all of it", "child.age=4 year 11 month; reference.age_up_to=4 year",
                  "check.age-band=within"},
        HazardRow{"H21 and no more", "child.age=5 year 0 month; reference.age_up_to=4 year",
                  "verdict=not-covered"},
        HazardRow{"H21 an age not fine enough", "child.age=4 year; reference.age_from=54 month",
                  "verdict=undecided; because=child.age; give=absent"},
        HazardRow{"H21 no age", "reference.age_from=2 year",
                  "verdict=undecided; because=child.age; give=absent"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Amounts, HazardCase,
    testing::Values(
        HazardRow{"H18 powder without its final volume",
                  "stock.kind=powder; stock.strength=; stock.content=200 mg; stock.diluent=4.8 mL",
                  "verdict=safe; strength=absent; give=absent"},
        HazardRow{"H18 final volume less than the liquid added",
                  "stock.kind=powder; stock.strength=; stock.content=200 mg; stock.diluent=5 mL; "
                  "stock.final_volume=4.8 mL",
                  "finding=final-smaller-than-diluent; give=absent"},
        HazardRow{"H19 the powder's own volume counts",
                  "stock.kind=powder; stock.strength=; stock.content=100 mg; stock.diluent=4.8 mL; "
                  "stock.displacement=0.2 mL",
                  "strength=20 mg/mL; give=4 mL"},
        HazardRow{"H19 left out it is told",
                  "stock.kind=powder; stock.strength=; stock.content=100 mg; stock.diluent=4.8 mL; "
                  "stock.final_volume=4.8 mL",
                  "finding=displacement-ignored"},
        HazardRow{"H19 two strengths more than 5 percent apart",
                  "stock.kind=powder; stock.strength=; stock.content=100 mg; stock.diluent=4.5 mL; "
                  "stock.displacement=0.2 mL; "
                  "stock.final_volume=5 mL",
                  "finding=strength-differs; verdict=ask; give=absent"},
        HazardRow{"H25 too little to measure", "stock.strength=800 mg/0.9 mL",
                  "verdict=ask; finding=too-small-to-measure; give=0.09 mL; measured=absent"},
        HazardRow{"H25 the least that is measured", "stock.strength=800 mg/mL",
                  "verdict=safe; measured=0.1 mL"},
        HazardRow{"H40 38 and a half tablets",
                  "order.dose=1925 mg; reference.high=2000 mg/dose; stock.kind=solid; stock.strength=50 "
                  "mg/tablet; stock.divides_into=2",
                  "measured=38.5 tablet; finding=many-units; verdict=ask"},
        HazardRow{
            "H40 three tablets",
            "order.dose=150 mg; reference.high=150 mg/dose; stock.kind=solid; stock.strength=50 mg/tablet",
            "measured=3 tablet; finding!=many-units; verdict=safe"},
        HazardRow{
            "H40 half a capsule",
            "order.dose=75 mg; reference.high=75 mg/dose; stock.kind=solid; stock.strength=50 mg/capsule",
            "finding=not-measurable; measured=absent; verdict=ask"},
        HazardRow{"H40 many vials",
                  "order.dose=84 mg; stock.kind=powder; stock.strength=; stock.content=20 mg; "
                  "stock.final_volume=2 mL",
                  "measured=8.4 mL; finding=many-units; verdict=ask"}),
    NameOfRow());

constexpr const char* infused =
    "order.route=intravenous; infusion.volume=50 mL; infusion.over=30 min; infusion.drop_factor=20 drop/mL";

INSTANTIATE_TEST_SUITE_P(
    Infusions, HazardCase,
    testing::Values(HazardRow{"H27 in minutes", infused, "flow=100 mL; drops.measured=33 drop; verdict=safe"},
                    HazardRow{"H27 the same in hours",
                              "order.route=intravenous; infusion.volume=50 mL; infusion.over=0.5 h; "
                              "infusion.drop_factor=20 drop/mL",
                              "flow=100 mL; drops.measured=33 drop; verdict=safe"},
                    HazardRow{"H27 the whole volume runs and not volume and drug",
                              "order.route=intravenous; infusion.volume=60 mL; infusion.over=1 h",
                              "flow=60 mL; flow.measured=60 mL"},
                    HazardRow{
                        "H28 too concentrated",
                        "order.route=intravenous; infusion.volume=15.9 mL; infusion.over=30 min; "
                        "reference.max_concentration=5 mg/mL",
                        "check.concentration=outside; verdict=unsafe; because=too-concentrated; give=absent"},
                    HazardRow{"H28 at the greatest concentration",
                              "order.route=intravenous; infusion.volume=16 mL; infusion.over=30 min; "
                              "reference.max_concentration=5 mg/mL",
                              "check.concentration=within; verdict=safe"},
                    HazardRow{"H28 too dilute",
                              "order.route=intravenous; infusion.volume=50 mL; infusion.over=30 min; "
                              "reference.min_concentration=2 mg/mL",
                              "check.concentration-low=outside; verdict=ask; because=too-dilute"}),
    NameOfRow());

const std::string atARate =
    "order.dose=4.5 mg/h; order.schedule=continuous; order.route=intravenous; reference.high=10 mg/h; "
    "reference.schedule=; stock.strength=40 mg/50 mL; ";

INSTANTIATE_TEST_SUITE_P(
    Rates, HazardCase,
    testing::Values(HazardRow{"H27 a rate faster than the medicine may run in",
                              atARate + "reference.max_infusion_rate=4 mg/h",
                              "check.infusion-rate=outside; verdict=unsafe; because=too-fast; flow=absent"},
                    HazardRow{"H27 a rate of too much in 24 h", atARate + "reference.max_per_day=100 mg",
                              "check.max-daily=outside; verdict=unsafe; because=over-max-daily; flow=absent"},
                    HazardRow{"H27 a rate and another flow",
                              atARate + "infusion.volume=50 mL; infusion.over=2 h",
                              "finding=flow-differs; verdict=ask; flow=absent"},
                    HazardRow{"H28 a bag that is too strong",
                              atARate + "reference.max_concentration=0.5 mg/mL",
                              "check.concentration=outside; verdict=unsafe; because=too-concentrated"}),
    NameOfRow());

// All nine pairs of units of order and label: half a milligram of 0.25 mg in 1 mL is 2 mL in every one.
TEST(Hazards, H02_everyPairOfMassUnitsGivesTheSameAmount) {
  const std::array<std::string, 3> orders = {"500 mcg", "0.5 mg", "0.0005 g"};
  const std::array<std::string, 3> labels = {"250 mcg/mL", "0.25 mg/mL", "0.00025 g/mL"};
  for (const std::string& order : orders)
    for (const std::string& label : labels) {
      const Worksheet sheet =
          worked("reference.high=0.5 mg/dose; order.dose=" + order + "; stock.strength=" + label);
      EXPECT_EQ(unmet(sheet, "give=2 mL"), "") << order << " of " << label;
      EXPECT_EQ(unmet(sheet, "verdict=safe"), "") << order << " of " << label;
      const auto give = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                     [](const Step& step) { return step.id == StepId::give; });
      ASSERT_NE(give, sheet.steps.end());
      const bool sameUnit =
          order.substr(order.find(' ')) == label.substr(label.find(' '), label.find('/') - label.find(' '));
      EXPECT_EQ(std::get<Solved>(give->body).chain.factors.size() > 2, !sameUnit)
          << "the conversion is a factor";
    }
}

// 60 mg/kg in 24 h × 20 kg = 1,200 mg: in 1, 2, 3, 4 and 6 doses. Dose and total both stand.
TEST(Hazards, H09_doseAndTotalStandForEveryNumberOfDoses) {
  for (const int n : {1, 2, 3, 4, 6}) {
    const std::string times = std::to_string(n) + (n == 1 ? " time a day" : " times a day");
    const std::string each = std::to_string(1200 / n) + " mg";
    const Worksheet sheet =
        worked("child.weight=20 kg; reference.high=60 mg/kg/day; reference.schedule=" + times +
               "; order.schedule=" + times + "; order.dose=" + each);
    for (const std::string& expectation :
         {"ordered.dose=" + each, std::string("ordered.day=1200 mg"), "limit.dose=" + each,
          std::string("limit.day=1200 mg"), std::string("check.single=within"),
          std::string("check.daily=within"), std::string("verdict=safe")})
      EXPECT_EQ(unmet(sheet, expectation), "") << times;
    const Worksheet asOne =
        worked("child.weight=20 kg; reference.high=60 mg/kg/day; reference.schedule=" + times +
               "; order.schedule=" + times + "; order.dose=1200 mg");
    EXPECT_EQ(asOne.verdict, n == 1 ? VerdictKind::safe : VerdictKind::unsafe)
        << "a day's amount as one dose, " << times;
  }
}

TEST(Hazards, H12_theEntryIsReadBackAsASentence) {
  const Case inputs = caseOf(changed("order.dose=160 mg/kg"));
  EXPECT_EQ(readBack("order.dose", inputs, exactRules()), "160 mg per kg per dose");
}

// An entry without its unit, size or time is refused; the unit is never filled in.
TEST(Hazards, H13_noEntryIsReadWithoutItsUnitOrBasis) {
  const std::pair<const char*, const char*> entries[] = {{"child.weight", "17.2"},
                                                         {"child.height", "103"},
                                                         {"child.age", "4"},
                                                         {"child.bsa", "0.7"},
                                                         {"order.dose", "80"},
                                                         {"reference.high", "120 mg"},
                                                         {"reference.high", "120/m2"},
                                                         {"reference.high", "120 mg/m2"},
                                                         {"reference.low", "5"},
                                                         {"reference.max_per_dose", "300"},
                                                         {"stock.strength", "25"},
                                                         {"stock.strength", "120 mg"},
                                                         {"stock.strength", "120 mg/"},
                                                         {"stock.content", "200"},
                                                         {"stock.diluent", "5"},
                                                         {"infusion.volume", "50"},
                                                         {"infusion.over", "30"},
                                                         {"infusion.drop_factor", "20"}};
  for (const auto& [path, text] : entries) {
    Case inputs;
    EXPECT_FALSE(setEntry(inputs, path, text)) << path << ": " << text;
    EXPECT_EQ(inputs, Case{});
  }
}

TEST(Hazards, H16_aLabelIsReadBackPerMillilitre) {
  const Case inputs = caseOf(changed("stock.strength=250 mg/5 mL"));
  EXPECT_EQ(readBack("stock.strength", inputs, exactRules()), "50 mg per mL");
}

TEST(Hazards, H18_H19_whatIsWantingAfterMixingIsNamed) {
  const Worksheet sheet =
      worked("stock.kind=powder; stock.strength=; stock.content=200 mg; stock.diluent=4.8 mL");
  EXPECT_NE(amountWords(sheet).none.find("final volume after mixing, or the displacement"),
            std::string::npos);
}

struct SyringeForVolume {
  const char* mlPerDose;
  const char* holds;
  int count;
  const char* measured;
};

// Each volume in the smallest syringe that holds it, to its marks. Marks: nursing texts; see Conventions.
TEST(Hazards, H25_eachVolumeHasTheSmallestSyringeThatHoldsIt) {
  constexpr SyringeForVolume rows[] = {
      {"0.1", "1", 1, "0.1"}, {"0.55", "1", 1, "0.55"}, {"1", "1", 1, "1"},    {"1.1", "3", 1, "1.1"},
      {"3", "3", 1, "3"},     {"3.2", "5", 1, "3.2"},   {"5", "5", 1, "5"},    {"5.2", "10", 1, "5.2"},
      {"10", "10", 1, "10"},  {"11", "20", 1, "11"},    {"20", "20", 1, "20"}, {"21", "60", 1, "21"},
      {"60", "60", 1, "60"}};
  for (const SyringeForVolume& row : rows) {
    const Worksheet sheet = worked("stock.strength=80 mg/" + std::string(row.mlPerDose) + " mL");
    ASSERT_TRUE(sheet.give && sheet.give->measured && sheet.give->syringe) << row.mlPerDose;
    EXPECT_EQ(exactText(sheet.give->syringe->holdsMl), row.holds) << row.mlPerDose;
    EXPECT_EQ(sheet.give->syringes, row.count) << row.mlPerDose;
    EXPECT_EQ(exactText(*sheet.give->measured), row.measured) << row.mlPerDose;
  }
  const Worksheet two =
      worked("stock.strength=80 mg/61 mL");  // a full one, and the rest in the smallest (R20)
  ASSERT_TRUE(two.give && two.give->pair);
  EXPECT_EQ(exactText(two.give->pair->full.holdsMl), "60");
  EXPECT_EQ(exactText(two.give->pair->of.holdsMl), "1");
  EXPECT_EQ(exactText(*two.give->measured), "61");
}

TEST(Hazards, H27_theBackCheckDeliversTheDose) {
  const Worksheet sheet = worked(infused);
  ASSERT_TRUE(sheet.rate && sheet.rate->delivered);
  EXPECT_EQ(sheet.rate->delivered->amount.value, sheet.give->doseGiven->value);
  EXPECT_NE(amountWords(sheet).run.find("this gives 80 mg in 30 min"), std::string::npos);
}

// The volume that would be needed stands also where the infusion is too concentrated.
TEST(Hazards, H28_theLeastVolumeIsToldWhenTooConcentrated) {
  const Worksheet sheet = worked(
      "order.route=intravenous; infusion.volume=10 mL; infusion.over=30 min; reference.max_concentration=5 "
      "mg/mL");
  EXPECT_NE(verdictReason(sheet).find("It needs at least 16 mL."), std::string::npos);
}

}  // namespace wardchalk::test::hazard_cases_test
