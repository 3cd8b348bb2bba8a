#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// Orders that are a rate, and what is set on a pump or a drip.

namespace wardchalk::test::rate_test {
namespace {

Worksheet worked(const std::string& inputs, const char* rules = "many_units=3") {
  return workOut(caseOf(inputs), rulesOf(rules));
}

const std::string byWeight = "child.weight=14.3 kg; order.route=intravenous; order.dose=5 mcg/kg/min; ";

struct ScheduleRow {
  const char* name;
  const char* schedules;
  const char* asked;  ///< the sentence; empty: not asked
};
void PrintTo(const ScheduleRow& row, std::ostream* out) { *out << row.schedules; }

class ScheduleOfARate : public testing::TestWithParam<ScheduleRow> {};

TEST_P(ScheduleOfARate, IsAskedAboutWhereTheReferenceGivesDoses) {
  const Worksheet sheet = worked(byWeight + "reference.high=10 mcg/kg/min; " + GetParam().schedules);
  const Finding* finding = sheet.finding(FindingCode::scheduleDiffers);
  EXPECT_EQ(finding ? sentence(*finding) : "", GetParam().asked);
  if (!finding) return;
  EXPECT_EQ(sheet.verdict, VerdictKind::ask);
  EXPECT_EQ(sheet.check(CheckId::schedule).status, CheckStatus::outside);
}

INSTANTIATE_TEST_SUITE_P(
    Continuous, ScheduleOfARate,
    testing::Values(
        ScheduleRow{"both run on", "order.schedule=continuous; reference.schedule=continuous", ""},
        ScheduleRow{"the reference does not say", "order.schedule=continuous", ""},
        ScheduleRow{"the order does not say", "reference.schedule=every 8 h", ""},
        ScheduleRow{"the reference in doses", "order.schedule=continuous; reference.schedule=every 8 h",
                    "Ordered to run on, and the reference gives it in doses: continuously ordered; the "
                    "reference says every 8 hours."},
        ScheduleRow{"the reference once", "order.schedule=continuous; reference.schedule=once",
                    "Ordered to run on, and the reference gives it in doses: continuously ordered; the "
                    "reference says once."},
        ScheduleRow{"the reference weekly", "order.schedule=continuous; reference.schedule=weekly",
                    "Ordered to run on, and the reference gives it in doses: continuously ordered; the "
                    "reference says weekly."}),
    NameOfRow());

const std::string inBag =
    "child.weight=1 kg; order.route=intravenous; order.schedule=continuous; "
    "stock.kind=liquid; stock.strength=1 mg/1 mL; ";

std::string askedOfRate(const Worksheet& sheet) {
  const Finding* finding = sheet.finding(FindingCode::roundingChangesRate);
  return finding ? sentence(*finding) : "";
}

// 0.03 mL/h: 0 is no rate, and 0.1 mL/h is over the limit.
TEST(RateThatCannotBeSet, saysSoAndTellsNoChange) {
  const Worksheet sheet = worked(inBag + "order.dose=0.03 mg/h; reference.high=0.05 mg/h");
  EXPECT_EQ(askedOfRate(sheet),
            "No rate that can be set keeps every check: 0.03 mL/h lies between 0 mL/h and 0.1 mL/h. Ask the "
            "pharmacist.");
  ASSERT_TRUE(sheet.rate && sheet.rate->mlPerHour && !sheet.rate->mlPerHour->measured);
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::brief);
  EXPECT_NE(json.find(R"("mL_per_h":{"exact":"3/100"})"), std::string::npos) << json;
}

TEST(RateThatCannotBeSet, ofAnInfusionSaysSo) {
  const Worksheet sheet = worked(
      "order.dose=5 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=5 mg/dose; "
      "reference.schedule=every 8 h; reference.min_infusion_time=60 h; stock.kind=liquid; stock.strength=5 "
      "mg/1 mL; infusion.volume=3 mL; infusion.over=60 h");
  EXPECT_EQ(askedOfRate(sheet),
            "No rate that can be set keeps every check: 0.05 mL/h lies between 0 mL/h and 0.1 mL/h. Ask the "
            "pharmacist.");
}

TEST(RateThatCanBeSet, andChangesTooMuchTellsHow) {
  const Worksheet sheet = worked(inBag + "order.dose=0.14 mg/h; reference.high=0.14 mg/h");
  EXPECT_EQ(askedOfRate(sheet),
            "No rate that can be set is close enough: 0.14 mL/h to 0.1 mL/h changes it by 28.6 %. Ask "
            "whether that is acceptable.");
}

AmountWords settled(const Worksheet& sheet) {
  return amountWords(Shown(sheet, answersBy(sheet, {Answer::prescriber})));
}

struct SaidRow {
  const char* name;
  const char* more;  ///< of 1 mg in 1 mL in a bag
  const char* measure;
  const char* rounding;
};
void PrintTo(const SaidRow& row, std::ostream* out) { *out << row.more; }

class RateThatIsSet : public testing::TestWithParam<SaidRow> {};

TEST_P(RateThatIsSet, SaysWhatRoundingChanges) {
  const AmountWords words = settled(worked(inBag + GetParam().more));
  EXPECT_EQ(words.measure, GetParam().measure);
  EXPECT_EQ(words.rounding, GetParam().rounding);
}

INSTANTIATE_TEST_SUITE_P(
    InBag, RateThatIsSet,
    testing::Values(
        SaidRow{"as it is", "order.dose=11.2 mg/h; reference.high=20 mg/h", "Run at 11.2 mL/h",
                "no rounding needed"},
        SaidRow{"to the nearest", "order.dose=11.25 mg/h; reference.high=20 mg/h", "Run at 11.3 mL/h",
                "11.25 mL/h rounded to 11.3 mL/h; the rate changes by 0.4 %"},
        SaidRow{
            "forced down by the limit", "order.dose=11.25 mg/h; reference.high=11.25 mg/h",
            "Run at 11.2 mL/h",
            "11.25 mL/h rounded to 11.2 mL/h, since 11.3 mL/h would not pass every check; the rate changes "
            "by 0.4 %"},
        SaidRow{
            "forced up by the low end",
            "order.dose=11.24 mg/h; reference.low=11.24 mg/h; reference.high=20 mg/h", "Run at 11.3 mL/h",
            "11.24 mL/h rounded to 11.3 mL/h, since 11.2 mL/h would not pass every check; the rate changes "
            "by 0.5 %"},
        SaidRow{
            "in drops far off",
            "order.dose=11.25 mg/h; reference.high=11.25 mg/h; infusion.drop_factor=20 drop/mL",
            "Run at 11.2 mL/h, or 3 drops/min (20 % less, since 4 drops/min would not pass every check)",
            "11.25 mL/h rounded to 11.2 mL/h, since 11.3 mL/h would not pass every check; the rate changes "
            "by 0.4 %"},
        SaidRow{"in drops more",
                "order.dose=11.2 mg/h; reference.high=20 mg/h; infusion.drop_factor=20 drop/mL",
                "Run at 11.2 mL/h, or 4 drops/min (7.1 % more)", "no rounding needed"},
        SaidRow{"in drops exactly",
                "order.dose=12 mg/h; reference.high=20 mg/h; infusion.drop_factor=20 drop/mL",
                "Run at 12 mL/h, or 4 drops/min", "no rounding needed"},
        SaidRow{"in drops alone",
                "order.dose=0.03 mg/h; reference.high=0.03 mg/h; infusion.drop_factor=2000 drop/mL",
                "Run at 1 drop/min", ""}),
    NameOfRow());

// The nearer rate would run it in too fast.
TEST(RateOfAnInfusion, saysThatALimitForcedItDown) {
  const Worksheet sheet = worked(
      "order.dose=80 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=80 mg/dose; "
      "reference.schedule=every 8 h; reference.min_infusion_time=45 min; stock.kind=liquid; "
      "stock.strength=10 "
      "mg/1 mL; infusion.volume=50 mL; infusion.over=45 min; infusion.drop_factor=20 drop/mL");
  EXPECT_EQ(settled(sheet).run,
            "Make it up to 50 mL in total (add 42 mL), then run it over 45 min: 66.6 mL/h (0.1 % less, since "
            "66.7 mL/h would not pass every check), or 22 drops/min (1 % less); this gives 80 mg in ≈ 45.05 "
            "min");
  EXPECT_EQ(reason(*sheet.step(StepId::rate), sheet), "66.7 mL/h would not pass every check");
}

// A least time and a least concentration are no limits of which there could be so many percent.
// 96 mg in 32 min are 3 mg/min, all that it may be: 93.75 mL/h goes down, although half goes up.
TEST(RateOfAnInfusion, goesDownWhereMoreWouldRunTooFast) {
  const std::string infused =
      "order.dose=96 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=100 mg/dose; "
      "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=10 mg/mL; infusion.volume=50 mL; "
      "infusion.over=32 min; ";
  const auto flow = [&](const char* most) { return *worked(infused + most).rate->mlPerHour; };
  EXPECT_EQ(*flow("").measured, Number::ratio(938, 10));
  EXPECT_EQ(*flow("reference.max_infusion_rate=3 mg/min").measured, Number::ratio(937, 10));
  EXPECT_EQ(*flow("reference.max_infusion_rate=3 mg/min").passedOver, Number::ratio(938, 10));
  EXPECT_EQ(*flow("reference.max_infusion_rate=3.1 mg/min").measured, Number::ratio(938, 10));
}

TEST(LeastOfAnInfusion, isNoLimitToBePassed) {
  for (const char* over : {"45 min", "30 min", "20 min"}) {
    const Worksheet sheet = worked(
        std::string("order.dose=80 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=80 "
                    "mg/dose; reference.schedule=every 8 h; reference.min_infusion_time=30 min; "
                    "reference.min_concentration=1 mg/mL; reference.max_concentration=5 mg/mL; "
                    "infusion.volume=50 mL; infusion.over=") +
        over);
    EXPECT_EQ(reason(*sheet.step(StepId::compareInfusionTime), sheet),
              "the reference states a shortest time");
    EXPECT_EQ(reason(*sheet.step(StepId::compareConcentrationLow), sheet),
              "the reference states a least concentration");
    EXPECT_EQ(reason(*sheet.step(StepId::compareConcentration), sheet), "32 % of the limit");
  }
}

struct WrittenRow {
  const char* name;
  std::string inputs;
  const char* said;
};
void PrintTo(const WrittenRow& row, std::ostream* out) { *out << row.inputs; }

class RateAsWritten : public testing::TestWithParam<WrittenRow> {};

TEST_P(RateAsWritten, StandsBesideWhatIsCompared) {
  EXPECT_EQ(verdictReason(worked(GetParam().inputs)), GetParam().said);
}

const std::string infused =
    "child.weight=20 kg; order.dose=300 mg; order.schedule=every 8 h; order.route=intravenous; "
    "reference.high=15 mg/kg/dose; reference.schedule=every 8 h; infusion.volume=50 mL; infusion.over=10 "
    "min; ";

INSTANTIATE_TEST_SUITE_P(
    PerSize, RateAsWritten,
    testing::Values(
        WrittenRow{"within", byWeight + "order.schedule=continuous; reference.high=10 mcg/kg/min",
                   "5 mcg/kg/min (71.5 mcg/min) ordered; safe up to 10 mcg/kg/min (143 mcg/min)."},
        WrittenRow{
            "over", byWeight + "order.schedule=continuous; reference.high=4 mcg/kg/min",
            "Over by 25 %: 5 mcg/kg/min (71.5 mcg/min) ordered; safe up to 4 mcg/kg/min (57.2 mcg/min)."},
        WrittenRow{
            "over a limit in other terms", byWeight + "order.schedule=continuous; reference.high=3.432 mg/h",
            "Over by 25 %: 5 mcg/kg/min (71.5 mcg/min) ordered; safe up to 4 mcg/kg/min (57.2 mcg/min)."},
        WrittenRow{
            "too little",
            byWeight + "order.schedule=continuous; reference.low=8 mcg/kg/min; reference.high=10 mcg/kg/min",
            "Too little by this reference: 5 mcg/kg/min (71.5 mcg/min) ordered; the reference says at least "
            "8 mcg/kg/min (114.4 mcg/min) (this is 62.5 % of it)."},
        WrittenRow{"flat",
                   "child.weight=15 kg; order.dose=1.5 mg/h; order.schedule=continuous; "
                   "reference.high=1 mcg/kg/min",
                   "Over by 66.7 %: 1.5 mg/h ordered; safe up to 0.9 mg/h."},
        WrittenRow{"a dose that runs in too fast", infused + "reference.max_infusion_rate=1 mg/kg/min",
                   "Too fast: 1.5 mg/kg/min (30 mg/min); maximum rate 1 mg/kg/min (20 mg/min). Run it over "
                   "at least 15 min, then check again."},
        WrittenRow{
            "a flat rate of running in", infused + "reference.max_infusion_rate=20 mg/min",
            "Too fast: 30 mg/min; maximum rate 20 mg/min. Run it over at least 15 min, then check again."}),
    NameOfRow());

struct VolumeRow {
  const char* name;
  const char* more;   ///< of 99.6 mg, which are 9.96 mL: 10 mL by the marks of the syringe
  const char* asked;  ///< the sentence; empty: the volume holds it
};
void PrintTo(const VolumeRow& row, std::ostream* out) { *out << row.more; }

class VolumeOfAnInfusion : public testing::TestWithParam<VolumeRow> {};

TEST_P(VolumeOfAnInfusion, HoldsWhatIsMeasured) {
  const Worksheet sheet = worked(
      std::string("child.weight=20 kg; order.dose=99.6 mg; order.schedule=every 6 h; "
                  "order.route=intravenous; reference.high=5.2 mg/kg/dose; reference.schedule=every 6 h; "
                  "stock.kind=liquid; stock.strength=10 mg/mL; infusion.over=30 min; ") +
      GetParam().more);
  const Finding* finding = sheet.finding(FindingCode::volumeSmallerThanDrug);
  EXPECT_EQ(finding ? sentence(*finding) : "", GetParam().asked);
  ASSERT_TRUE(sheet.give);
  EXPECT_EQ(sheet.rate.has_value(), !finding);
}

INSTANTIATE_TEST_SUITE_P(
    Rounded, VolumeOfAnInfusion,
    testing::Values(
        VolumeRow{"less than the dose", "infusion.volume=9.95 mL",
                  "The infusion of 9.95 mL cannot hold 9.96 mL of medicine. Check the volume."},
        VolumeRow{"as much as the dose", "infusion.volume=9.96 mL",
                  "The infusion of 9.96 mL cannot hold the 10 mL of medicine that is measured. Check the "
                  "volume."},
        VolumeRow{"less than is measured", "infusion.volume=9.99 mL",
                  "The infusion of 9.99 mL cannot hold the 10 mL of medicine that is measured. Check the "
                  "volume."},
        VolumeRow{"in litres", "infusion.volume=0.00998 L",
                  "The infusion of 9.98 mL cannot hold the 10 mL of medicine that is measured. Check the "
                  "volume."},
        VolumeRow{"as much as is measured", "infusion.volume=10 mL", ""},
        VolumeRow{"rounded down by the limit", "reference.max_per_dose=99.7 mg; infusion.volume=9.96 mL",
                  ""}),
    NameOfRow());

struct FlowRow {
  const char* name;
  const char* infusion;  ///< beside a rate of 5.625 mL/h
  const char* asked;     ///< the sentence; empty: they agree
};
void PrintTo(const FlowRow& row, std::ostream* out) { *out << row.infusion; }

class FlowBesideARate : public testing::TestWithParam<FlowRow> {};

TEST_P(FlowBesideARate, IsAskedAboutWhereItIsAnother) {
  const Worksheet sheet =
      worked(std::string("child.weight=15 kg; order.route=intravenous; order.dose=5 mcg/kg/min; "
                         "reference.high=10 mcg/kg/min; stock.kind=liquid; stock.strength=40 mg/50 mL; ") +
             GetParam().infusion);
  const Finding* finding = sheet.finding(FindingCode::flowDiffers);
  EXPECT_EQ(finding ? sentence(*finding) : "", GetParam().asked);
  EXPECT_EQ(sheet.rate.has_value(), !finding);
  EXPECT_EQ(sheet.step(StepId::rate) != nullptr, !finding);
  EXPECT_EQ(idOf(sheet.verdict), finding ? "ask" : "safe");
}

INSTANTIATE_TEST_SUITE_P(
    Entered, FlowBesideARate,
    testing::Values(
        FlowRow{"the same", "infusion.volume=45 mL; infusion.over=8 h", ""},
        FlowRow{"nearly the same", "infusion.volume=50 mL; infusion.over=8.9 h", ""},
        FlowRow{"5 % more", "infusion.volume=189 mL; infusion.over=32 h", ""},
        FlowRow{"5 % less", "infusion.volume=171 mL; infusion.over=32 h", ""},
        FlowRow{
            "a little more than 5 % less", "infusion.volume=170.9 mL; infusion.over=32 h",
            "170.9 mL over 32 h runs at ≈ 5.341 mL/h, and the ordered rate is 5.625 mL/h of what is in the "
            "bag. Check the volume, the run time and the label."},
        FlowRow{"more than four times as much", "infusion.volume=50 mL; infusion.over=2 h",
                "50 mL over 2 h runs at 25 mL/h, and the ordered rate is 5.625 mL/h of what is in the bag. "
                "Check the volume, the run time and the label."},
        FlowRow{
            "in litres and minutes", "infusion.volume=0.05 L; infusion.over=120 min",
            "0.05 L over 120 min runs at 25 mL/h, and the ordered rate is 5.625 mL/h of what is in the bag. "
            "Check the volume, the run time and the label."},
        FlowRow{"a volume alone", "infusion.volume=50 mL", ""},
        FlowRow{"a time alone", "infusion.over=2 h", ""},
        FlowRow{"drops alone", "infusion.drop_factor=64 drop/mL", ""}),
    NameOfRow());

// How far apart they may be is the house's.
TEST(FlowsApart, AreHeldToWhatRoundingMayChange) {
  const std::string rate =
      "order.dose=10 mg/h; reference.high=10 mg/h; stock.kind=liquid; stock.strength=1 mg/mL; "
      "infusion.volume=103 mL; infusion.over=10 h";
  EXPECT_FALSE(worked(rate, "ask_rounding_percent=3").finding(FindingCode::flowDiffers));
  EXPECT_TRUE(worked(rate, "ask_rounding_percent=2.9").finding(FindingCode::flowDiffers));
}

}  // namespace
}  // namespace wardchalk::test::rate_test
