#include "core/record/rules_file.h"

#include <gtest/gtest.h>

#include <string>

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

struct Rule {
  const char* name;
  const char* key;
  std::string json;
  const char* outcome;  ///< what it then is, or why it is refused
};
void PrintTo(const Rule& row, std::ostream* out) { *out << row.key << ": " << row.json.substr(0, 60); }

class RuleOfAFile : public testing::TestWithParam<Rule> {};
TEST_P(RuleOfAFile, isReadAsItStandsOrRefused) {
  const Result<HouseRules> rules = readRules(R"({"format":"wardchalk.house-rules","version":1,")" +
                                             std::string(GetParam().key) + "\":" + GetParam().json + "}");
  EXPECT_EQ(rules ? ruleText(*rules, GetParam().key)
                  : std::string(idOf(rules.refusal().code)) + " at " + rules.refusal().path,
            GetParam().outcome);
  if (!rules) return;
  EXPECT_EQ(*readRules(writeRules(*rules)), *rules);
}

INSTANTIATE_TEST_SUITE_P(
    Rules, RuleOfAFile,
    testing::Values(
        Rule{"a word as a number", "pounds", "2.2", "word-unknown at pounds"},
        Rule{"a word that is none", "pounds", R"("metric")", "word-unknown at pounds"},
        Rule{"no word of pounds", "pounds", R"("")", "word-unknown at pounds"},
        Rule{"no word of rounding", "round_to", R"("")", "word-unknown at round_to"},
        Rule{"no word of a schedule", "order_schedule_missing", R"("")",
             "word-unknown at order_schedule_missing"},
        Rule{"no word of a reference", "reference_schedule_missing", R"("")",
             "word-unknown at reference_schedule_missing"},
        Rule{"no word of a size", "size_without_age", R"("")", "word-unknown at size_without_age"},
        Rule{"no word of a system", "unit_system", R"("")", "word-unknown at unit_system"},
        Rule{"a count as a word", "many_units", R"("3")", "type-wrong at many_units"},
        Rule{"no whole number", "many_units", "2.5", "value-out-of-range at many_units"},
        Rule{"an exponent", "many_units", "1e1", "value-out-of-range at many_units"},
        Rule{"below the least", "many_units", "0", "value-out-of-range at many_units"},
        Rule{"above the most", "many_units", "101", "value-out-of-range at many_units"},
        Rule{"more than any number", "many_units", "99999999999999999999",
             "value-out-of-range at many_units"},
        Rule{"below nothing", "many_units", "-1", "value-out-of-range at many_units"},
        Rule{"no decimals by null", "kilogram_decimals", "null", "none"},
        Rule{"no decimals by a word", "kilogram_decimals", R"("none")", "none"},
        Rule{"decimals by another word", "kilogram_decimals", R"("all")", "type-wrong at kilogram_decimals"},
        Rule{"a percent as text", "ask_below_percent", R"("90")", "type-wrong at ask_below_percent"},
        Rule{"a percent below nothing", "ask_below_percent", "-5", "sign at ask_below_percent"},
        Rule{"more than a hundred", "ask_below_percent", "100.5", "value-out-of-range at ask_below_percent"},
        Rule{"a name as a number", "agreed_by", "5", "type-wrong at agreed_by"},
        Rule{"a name that is too long", "agreed_by", "\"" + std::string(501, 'x') + "\"",
             "too-long at agreed_by"},
        Rule{"a name that hides something", "agreed_by", "\"a\u202Eb\"", "unseen-character at agreed_by"},
        Rule{"a formula as a number", "bsa_formula", "1", "word-unknown at bsa_formula"},
        Rule{"a formula that is none", "bsa_formula", R"("boyd")", "word-unknown at bsa_formula"},
        Rule{"a volume as a number", "smallest_volume", "0.1", "type-wrong at smallest_volume"},
        Rule{"a volume in litres", "smallest_volume", R"("0.0005 L")", "0.5 mL"},
        Rule{"a volume in another spelling", "smallest_volume", R"("0.1 ml")",
             "unit-unknown at smallest_volume"},
        Rule{"a volume of weight", "smallest_volume", R"("0.1 mg")", "dose-here at smallest_volume"},
        Rule{"no system by null", "unit_system", "null", "none"},
        Rule{"no system by a word", "unit_system", R"("none")", "none"},
        Rule{"a system", "unit_system", R"("household")", "household"},
        Rule{"a system that is none", "unit_system", R"("imperial")", "word-unknown at unit_system"},
        Rule{"a system as a number", "unit_system", "1", "word-unknown at unit_system"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Syringes, RuleOfAFile,
    testing::Values(
        Rule{"none", "syringes", "[]", "type-wrong at syringes"},
        Rule{"no list", "syringes", R"("1 mL")", "type-wrong at syringes"},
        Rule{"one as text", "syringes", R"(["1 mL"])", "type-wrong at syringes[0]"},
        Rule{"without marks", "syringes", R"([{"holds":"1 mL","kind":"oral"}])",
             "key-missing at syringes[0]"},
        Rule{"with something else", "syringes",
             R"([{"holds":"1 mL","marks":"0.1 mL","kind":"oral","colour":"red"}])",
             "key-unknown at syringes[0].colour"},
        Rule{"with no word of its kind", "syringes", R"([{"holds":"1 mL","marks":"0.1 mL","kind":""}])",
             "word-unknown at syringes[0].kind"},
        Rule{"marks further apart than it holds", "syringes",
             R"([{"holds":"1 mL","marks":"2 mL","kind":"oral"}])", "value-out-of-range at syringes[0].marks"},
        Rule{
            "the second of two", "syringes",
            R"([{"holds":"1 mL","marks":"0.1 mL","kind":"oral"},{"holds":"1 mg","marks":"2 mL","kind":"oral"}])",
            "dose-here at syringes[1].holds"},
        Rule{"one that is read", "syringes", R"([{"holds":"1 mL","marks":"0.1 mL","kind":"oral"}])", ""}),
    test::NameOfRow());

TEST(RuleNumbers, areNoneInQuotes) {
  for (const std::string key :
       {"rate_decimals", "kilogram_decimals", "many_units", "grace_percent", "ask_below_percent"}) {
    const auto rules = readRules(R"({"format":"wardchalk.house-rules","version":1,")" + key + R"(":"5"})");
    ASSERT_FALSE(rules) << key;
    EXPECT_EQ(idOf(rules.refusal().code), "type-wrong") << key;
    EXPECT_EQ(rules.refusal().path, key);
  }
}

struct Limit {
  const char* name;
  const char* key;
  const char* last;    ///< what may just be
  const char* beyond;  ///< and what may not
};

class RuleLimit : public ::testing::TestWithParam<Limit> {};

TEST_P(RuleLimit, isHeld) {
  HouseRules rules = exactRules();
  ASSERT_TRUE(setRule(rules, GetParam().key, GetParam().last));
  EXPECT_EQ(ruleText(rules, GetParam().key), GetParam().last);
  EXPECT_FALSE(setRule(rules, GetParam().key, GetParam().beyond));
  EXPECT_EQ(ruleText(rules, GetParam().key), GetParam().last);
}

INSTANTIATE_TEST_SUITE_P(Numbers, RuleLimit,
                         ::testing::Values(Limit{"kilograms", "kilogram_decimals", "6", "7"},
                                           Limit{"fewest of a surface", "bsa_decimals", "2", "1"},
                                           Limit{"most of a surface", "bsa_decimals", "4", "5"},
                                           Limit{"below 1 mL", "volume_decimals_below_1_mL", "4", "5"},
                                           Limit{"from 1 mL", "volume_decimals_from_1_mL", "4", "5"},
                                           Limit{"rates", "rate_decimals", "4", "5"},
                                           Limit{"fewest units", "many_units", "1", "0"},
                                           Limit{"most units", "many_units", "100", "101"},
                                           Limit{"least idle time", "idle_minutes", "1", "0"},
                                           Limit{"most idle time", "idle_minutes", "120", "121"},
                                           Limit{"rounding", "ask_rounding_percent", "10", "10.1"},
                                           Limit{"grace", "grace_percent", "10", "10.1"}),
                         test::NameOfRow());

}  // namespace
}  // namespace wardchalk::rules_file_test
