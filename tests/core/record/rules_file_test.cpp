#include "core/record/rules_file.h"

#include <gtest/gtest.h>

#include "tests/core/test_names.h"

namespace wardchalk::rules_file_test {
namespace {

struct Day {
  const char* name;
  const char* json;
  const char* outcome;
};

class AgreedOn : public testing::TestWithParam<Day> {};
TEST_P(AgreedOn, isADayOfTheCalendar) {
  const std::string json = R"({"format":"wardchalk.house-rules","version":1,"agreed_on":)";
  const Result<HouseRules> rules = readRules(json + GetParam().json + "}");
  EXPECT_EQ(rules ? rules->agreedOn : std::string(idOf(rules.refusal().code)) + " at " + rules.refusal().path,
            GetParam().outcome);
}

INSTANTIATE_TEST_SUITE_P(
    Days, AgreedOn,
    testing::Values(Day{"none", R"("")", ""}, Day{"a day", R"("2026-10-01")", "2026-10-01"},
                    Day{"a leap day", R"("2028-02-29")", "2028-02-29"},
                    Day{"no leap day", R"("2026-02-29")", "date-unknown at agreed_on"},
                    Day{"a thirteenth month", R"("2026-13-01")", "date-unknown at agreed_on"},
                    Day{"another order", R"("01.10.2026")", "date-shape at agreed_on"},
                    Day{"words", R"("last spring")", "date-shape at agreed_on"},
                    Day{"a blank", R"(" ")", "date-shape at agreed_on"},
                    Day{"a number", "2026", "type-wrong at agreed_on"}),
    test::NameOfRow());

TEST(AgreedOn, isHeldToTheSameInTheEditor) {
  HouseRules rules = exactRules();
  EXPECT_TRUE(setRule(rules, "agreed_on", "2026-10-01"));
  EXPECT_FALSE(setRule(rules, "agreed_on", "2026-10-32"));
  EXPECT_EQ(rules.agreedOn, "2026-10-01");
  EXPECT_TRUE(setRule(rules, "agreed_on", ""));
}

}  // namespace
}  // namespace wardchalk::rules_file_test
