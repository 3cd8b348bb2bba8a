#include <gtest/gtest.h>

#include <string>

#include "core/check/shown.h"
#include "core/check/usable_volume.h"
#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// An order that is unsafe by how it is prepared alone (R19), and least volumes as they are told.

namespace wardchalk::test::as_prepared_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* title;
  const char* change;  ///< what to change; empty where something else is unsafe too
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

class AsPrepared : public testing::TestWithParam<Row> {};

TEST_P(AsPrepared, SaysWhatToChange) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), exactRules());
  EXPECT_EQ(verdictTitle(sheet), GetParam().title);
  EXPECT_EQ(sheet.remedy ? remedyText(*sheet.remedy) : "", GetParam().change);
  EXPECT_FALSE(sheet.give || sheet.rate);
  const std::string none = amountWords(sheet).none;
  if (!sheet.remedy) {
    EXPECT_EQ(none.find("No amount as prepared"), std::string::npos) << none;
    return;
  }
  EXPECT_NE(verdictReason(sheet).find(GetParam().change), std::string::npos) << verdictReason(sheet);
  EXPECT_NE(none.find(GetParam().change), std::string::npos) << none;
  EXPECT_TRUE(none.ends_with("ask the prescriber or the pharmacist to change it.")) << none;
}

const std::string order =
    "order.dose=300 mg; order.schedule=every 6 h; reference.schedule=every 6 h; reference.high=300 mg/dose; "
    "reference.source=Bench list; ";
const std::string strong =
    order + "infusion.volume=50 mL; infusion.over=30 min; reference.max_concentration=5 mg/mL; ";

INSTANTIATE_TEST_SUITE_P(
    Volume, AsPrepared,
    testing::Values(
        Row{"too concentrated", strong, "UNSAFE as prepared",
            "Make it up to at least 60 mL, then check again."},
        Row{"rounded up to a whole mL",
            order + "infusion.volume=50 mL; reference.max_concentration=5.99 mg/mL", "UNSAFE as prepared",
            "Make it up to at least 51 mL, then check again."},
        Row{"rounded up below 10 mL", order + "infusion.volume=9 mL; reference.max_concentration=33 mg/mL",
            "UNSAFE as prepared", "Make it up to at least 9.1 mL, then check again."},
        Row{"rounded up to 10 mL", order + "infusion.volume=9 mL; reference.max_concentration=30.1 mg/mL",
            "UNSAFE as prepared", "Make it up to at least 10 mL, then check again."},
        Row{"for each kg", strong + "child.weight=20 kg", "UNSAFE as prepared",
            "Make it up to at least 60 mL (3 mL/kg), then check again."},
        Row{"with a greatest volume", strong + "reference.min_concentration=1 mg/mL", "UNSAFE as prepared",
            "Make it up to at least 60 mL, at most 300 mL, then check again."},
        Row{"a greatest volume rounded down", strong + "reference.min_concentration=4.6 mg/mL",
            "UNSAFE as prepared", "Make it up to at least 60 mL, at most 65 mL, then check again."},
        Row{"one volume alone", strong + "reference.min_concentration=5 mg/mL", "UNSAFE as prepared",
            "Make it up to at least 60 mL, at most 60 mL, then check again."},
        Row{"no volume keeps both", strong + "reference.min_concentration=6 mg/mL", "UNSAFE as prepared",
            "No volume fits both concentrations: one needs at least 60 mL, the other at most 50 mL. Ask the "
            "pharmacist."},
        Row{"no whole mL keeps both",
            order + "infusion.volume=50 mL; reference.max_concentration=5.96 mg/mL; "
                    "reference.min_concentration=5.9 mg/mL",
            "UNSAFE as prepared",
            "No volume fits both concentrations: one needs at least 51 mL, the other at most 50 mL. Ask the "
            "pharmacist."},
        Row{"other units", order + "infusion.volume=0.05 L; reference.max_concentration=5 g/L",
            "UNSAFE as prepared", "Make it up to at least 60 mL, then check again."},
        Row{"at the limit", order + "infusion.volume=60 mL; reference.max_concentration=5 mg/mL",
            "SAFE by this reference", ""}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Time, AsPrepared,
    testing::Values(
        Row{"too short", order + "infusion.over=30 min; reference.min_infusion_time=1 h",
            "UNSAFE as prepared", "Run it over at least 60 min, then check again."},
        Row{"too fast by the rate", order + "infusion.over=30 min; reference.max_infusion_rate=7 mg/min",
            "UNSAFE as prepared", "Run it over at least 43 min, then check again."},
        Row{"the longer of both, by the rate",
            order + "infusion.over=30 min; reference.max_infusion_rate=5 mg/min; "
                    "reference.min_infusion_time=45 min",
            "UNSAFE as prepared", "Run it over at least 60 min, then check again."},
        Row{"the longer of both, by the time",
            order +
                "infusion.over=50 min; reference.max_infusion_rate=7 mg/min; reference.min_infusion_time=1 h",
            "UNSAFE as prepared", "Run it over at least 60 min, then check again."},
        Row{"a time in parts of a minute", order + "infusion.over=5 min; reference.min_infusion_time=7.5 min",
            "UNSAFE as prepared", "Run it over at least 8 min, then check again."},
        Row{"a rate per kg and hour",
            order + "child.weight=20 kg; infusion.over=30 min; reference.max_infusion_rate=15 mg/kg/h",
            "UNSAFE as prepared", "Run it over at least 60 min, then check again."},
        Row{"both", strong + "reference.min_infusion_time=40 min", "UNSAFE as prepared",
            "Make it up to at least 60 mL and run it over at least 40 min, then check again."},
        Row{"both with all there is",
            strong +
                "child.weight=20 kg; reference.min_concentration=1 mg/mL; reference.min_infusion_time=40 min",
            "UNSAFE as prepared",
            "Make it up to at least 60 mL (3 mL/kg), at most 300 mL, and run it over at least 40 min, then "
            "check "
            "again."}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    NotAlone, AsPrepared,
    testing::Values(
        Row{"over as well", strong + "reference.max_per_dose=299 mg", "UNSAFE by this reference", ""},
        Row{"too often as well", strong + "reference.max_doses_per_day=3", "UNSAFE by this reference", ""},
        Row{"not covered as well", strong + "child.age=4 year 2 month; reference.age_from=5 year",
            "UNSAFE by this reference", ""},
        Row{"an entry missing", strong + "reference.age_from=5 year", "UNSAFE by this reference", ""},
        Row{"the limit's size missing", strong + "reference.max_per_day=60 mg/kg", "UNSAFE by this reference",
            ""}),
    NameOfRow());

/// What is asked beside it follows: it will be asked when the volume is right.
TEST(AsPreparedBeside, TheFirstQuestionFollows) {
  const Worksheet sheet = workOut(caseOf(strong + "reference.low=315 mg/dose; reference.high=400 mg/dose; "
                                                  "order.route=oral; stock.kind=solid"),
                                  exactRules());
  EXPECT_TRUE(verdictReason(sheet).ends_with(
      "then check again. Too little by this reference: 300 mg per dose ordered; the reference says at least "
      "315 mg per dose (this is 95.2 % of it)."))
      << verdictReason(sheet);
}

TEST(AsPreparedBeside, ASizeInDoubtIsNamedOnce) {
  const Worksheet sheet =
      workOut(caseOf(strong + "child.age=4 year 2 month; child.height=103 cm; child.weight=37.9 kg; "
                              "reference.max_per_day=40 mg/kg"),
              exactRules());
  const std::string reason = verdictReason(sheet);
  EXPECT_NE(reason.find("A weight of 37.9 kg is unlikely at this age."), std::string::npos) << reason;
  EXPECT_EQ(reason.find("in doubt too"), std::string::npos) << reason;
}

struct VolumeRow {
  const char* exact;
  const char* up;
  const char* down;
};

TEST(UsableVolume, IsNeverLessAndNeverMore) {
  for (const VolumeRow& row :
       {VolumeRow{"60", "60", "60"}, VolumeRow{"60.001", "61", "60"}, VolumeRow{"9.9", "9.9", "9.9"},
        VolumeRow{"9.91", "10", "9.9"}, VolumeRow{"9.999", "10", "9.9"}, VolumeRow{"10", "10", "10"},
        VolumeRow{"10.01", "11", "10"}, VolumeRow{"0.05", "0.1", "0"}, VolumeRow{"0.3", "0.3", "0.3"}}) {
    const Number exact = *readDecimal(row.exact);
    EXPECT_EQ(exactText(roundedUpVolume(exact)), row.up) << row.exact;
    EXPECT_EQ(exactText(roundedDownVolume(exact)), row.down) << row.exact;
  }
}

/// Wherever a least volume is told it is rounded up; the exact one stays in files.
TEST(LeastVolume, IsRoundedUpInStepFindingAndFile) {
  const Worksheet sheet =
      workOut(caseOf(order + "infusion.volume=50 mL; reference.max_concentration=5.99 mg/mL"), exactRules());
  const Step* step = sheet.step(StepId::volume);
  ASSERT_TRUE(step);
  EXPECT_EQ(conclusion(*step), "51 mL per dose");
  EXPECT_EQ(equalsSign(*step), "≈");
  EXPECT_EQ(reason(*step, sheet), "rounded up: less would be too concentrated");
  EXPECT_NE(sentence(*sheet.finding(FindingCode::tooConcentrated)).find("It needs at least 51 mL."),
            std::string::npos);
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::whole);
  EXPECT_NE(json.find(R"("minimum":{"exact":"30000/599","unit":"mL","shown":"51 mL"})"), std::string::npos);
  EXPECT_NE(json.find(R"("rounding":{"rule":"up","decimals":0})"), std::string::npos);
}

}  // namespace
}  // namespace wardchalk::test::as_prepared_test
