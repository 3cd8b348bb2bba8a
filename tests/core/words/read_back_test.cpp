#include "core/words/read_back.h"

#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "tests/support/case_text.h"

namespace wardchalk::read_back_test {
namespace {

struct Row {
  const char* name;
  std::string_view path;
  std::string_view entry;
  std::string line;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class ReadBack : public testing::TestWithParam<Row> {};

TEST_P(ReadBack, saysWhatWasUnderstood) {
  Case inputs;
  ASSERT_TRUE(setEntry(inputs, GetParam().path, GetParam().entry));
  EXPECT_EQ(readBack(GetParam().path, inputs, exactRules()), GetParam().line);
}

// Conversions: 37 lb 4 oz = 37.25 × 0.45359237 kg = 16.8963157825 kg; 41 in = 104.14 cm (GNU units 2.22).
INSTANTIATE_TEST_SUITE_P(
    Entries, ReadBack,
    testing::Values(Row{"kilograms", path::weight, "17.2 kg", "17.2 kilograms"},
                    Row{"poundsAndOunces", path::weight, "37 lb 4 oz", "≈ 16.9 kg"},
                    Row{"grams", path::weight, "3450 g", "= 3.45 kg"},
                    Row{"feetAndInches", path::height, "3 ft 5 in", "= 104.14 cm"},
                    Row{"centimetres", path::height, "103 cm", "103 centimetres"},
                    Row{"age", path::age, "4 year 2 month", "4 years 2 months"},
                    Row{"everyTwelveHours", path::schedule, "every 12 h", "2 doses in 24 h, one every 12 h"},
                    Row{"shorthand", path::schedule, "q6h", "4 doses in 24 h, one every 6 h"},
                    Row{"every24Hours", path::schedule, "every 24 h", "1 dose in 24 h"},
                    Row{"everyRange", path::schedule, "every 4 to 6 h", "4 to 6 doses in 24 h"},
                    Row{"timesADayHasNoInterval", path::schedule, "3 times a day", "3 doses in 24 h"},
                    Row{"everyFiveHours", path::schedule, "every 5 h", "4.8 doses in 24 h, one every 5 h"},
                    Row{"once", path::schedule, "once", "one dose, not repeated"},
                    Row{"weekly", path::schedule, "weekly", "1 dose per week"},
                    Row{"twiceAWeek", path::referenceSchedule, "2 times a week", "2 doses per week"},
                    Row{"everySecondDay", path::schedule, "every 2 day", "1 dose every 2 days"},
                    Row{"continuous", path::schedule, "continuous", "runs continuously"},
                    Row{"eachDose", path::dose, "80 mg/dose", "80 mg per dose"},
                    Row{"eachDoseUnsaid", path::dose, "80 mg", "80 mg per dose"},
                    Row{"forEachKg", path::dose, "160 mg/kg/dose", "160 mg per kg per dose"},
                    Row{"referenceInADay", path::high, "1200 mg/m2/day", "1,200 mg per m² per day"},
                    Row{"maximum", path::maxPerDay, "2 g", "2 g per day"},
                    Row{"strength", path::strength, "120 mg/5 mL", "24 mg per mL"},
                    Row{"tablet", path::strength, "2 mg/tablet", "2 mg per tablet"},
                    Row{"freeTextSaysAll", path::medicine, "Plover", ""}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(ReadBackOfWeight, followsTheHouseRuleForPounds) {
  Case inputs;
  ASSERT_TRUE(setEntry(inputs, path::weight, "22 lb"));
  EXPECT_EQ(readBack(path::weight, inputs, classroomRules()), "= 10 kg");
}

TEST(ReadBack, anAbsentEntryIsNotReadBack) {
  for (const CaseEntry& entry : caseEntries())
    EXPECT_EQ(readBack(entry.path, Case{}, exactRules()), "") << entry.path;
}

TEST(ForThisChild, isSaidOfADoseForEachKgOrM2) {
  const auto said = [](std::string_view path, const std::string& inputs) {
    return forThisChild(
        path, workOut(test::caseOf("child.weight=17.2 kg; order.dose=80 mg; " + inputs), exactRules()));
  };
  const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
  EXPECT_EQ(said(path::high, often + "reference.high=5 mg/kg/dose"), "86 mg for this child");
  EXPECT_EQ(said(path::high, often + "reference.high=10 mg/kg/day"), "172 mg in 24 h for this child");
  EXPECT_EQ(said(path::low, often + "reference.low=2 mg/kg/dose; reference.high=5 mg/kg/dose"),
            "34.4 mg for this child");
  EXPECT_EQ(said(path::low, often + "reference.low=5 mg/kg/day; reference.high=10 mg/kg/day"),
            "86 mg in 24 h for this child");
  EXPECT_EQ(said(path::low, often + "reference.high=5 mg/kg/dose"), "");
  EXPECT_EQ(said(path::high, often + "reference.high=84 mg/dose"), "");
  EXPECT_EQ(said(path::high, often + "reference.high=0.1 g/dose"), "");      // a step, and for no size
  EXPECT_EQ(said(path::high, often + "reference.high=120 mg/m2/dose"), "");  // no height
}

}  // namespace
}  // namespace wardchalk::read_back_test
