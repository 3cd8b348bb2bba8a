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

class WeightOlderThan : public testing::TestWithParam<Day> {};
TEST_P(WeightOlderThan, isATimeInOurSpellingOrNone) {
  const std::string json = R"({"format":"wardchalk.house-rules","version":1,"weight_older_than":)";
  const Result<HouseRules> rules = readRules(json + GetParam().json + "}");
  EXPECT_EQ(rules ? ruleText(*rules, "weight_older_than")
                  : std::string(idOf(rules.refusal().code)) + " at " + rules.refusal().path,
            GetParam().outcome);
  if (!rules) return;
  const std::string written = writeRules(*rules);
  EXPECT_EQ(written.find("weight_older_than") == std::string::npos, !rules->weightOlderThan) << written;
  EXPECT_EQ(*readRules(written), *rules);
}

INSTANTIATE_TEST_SUITE_P(
    Times, WeightOlderThan,
    testing::Values(Day{"months", R"("3 month")", "3 month"},
                    Day{"parts", R"("1 year 2 month")", "1 year 2 month"}, Day{"null", "null", "none"},
                    Day{"none", R"("none")", "none"}, Day{"none of it", R"("0 day")", "0 day"},
                    Day{"another spelling", R"("3 months")", "unit-unknown at weight_older_than"},
                    Day{"no unit", R"("3")", "unit-missing at weight_older_than"},
                    Day{"a weight", R"("3 kg")", "weight-here at weight_older_than"},
                    Day{"today", R"("today")", "number-missing at weight_older_than"},
                    Day{"nothing", R"("")", "empty at weight_older_than"},
                    Day{"a number", "3", "type-wrong at weight_older_than"}),
    test::NameOfRow());

}  // namespace
}  // namespace wardchalk::rules_file_test
