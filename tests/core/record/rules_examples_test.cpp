#include "core/record/rules_examples.h"

#include <gtest/gtest.h>

#include "core/record/rules_file.h"

namespace wardchalk::rules_examples_test {
namespace {

struct Row {
  const char* key;
  const char* text;
  const char* example;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.key << " " << row.text; }

class RuleExample : public ::testing::TestWithParam<Row> {};
TEST_P(RuleExample, isWorkedOutByTheRule) {
  const auto& [key, text, example] = GetParam();
  HouseRules rules = exactRules();
  ASSERT_TRUE(setRule(rules, key, text));
  EXPECT_EQ(ruleText(rules, key), text);
  EXPECT_EQ(ruleExample(key, rules), example);
}
INSTANTIATE_TEST_SUITE_P(
    Rules, RuleExample,
    ::testing::Values(
        Row{"pounds", "exact", "37 lb becomes ≈ 16.78 kg."},
        Row{"pounds", "trade", "37 lb becomes ≈ 16.82 kg."},
        Row{"kilogram_decimals", "1", "17.25 kg becomes 17.3 kg."},
        Row{"kilogram_decimals", "0", "17.25 kg becomes 17 kg."},
        Row{"kilogram_decimals", "2", "17.255 kg becomes 17.26 kg."},
        Row{"kilogram_decimals", "none", "17.25 kg stays 17.25 kg."},
        Row{"bsa_decimals", "2", "A child of 103 cm and 17.2 kg has 0.70 m²."},
        Row{"bsa_decimals", "3", "A child of 103 cm and 17.2 kg has 0.702 m²."},
        Row{"unit_system", "none",
            "17.2 typed as a weight is asked about: kg or lb? 103 typed as a height has a unit only where "
            "the "
            "user chose one."},
        Row{"unit_system", "metric",
            "17.2 typed as a weight is 17.2 kg, 103 typed as a height is 103 cm; kg and cm stand in the "
            "empty "
            "lines."},
        Row{"unit_system", "household",
            "41 typed as a height is 41 in; 37 typed as a weight is asked about: kg or lb?"},
        Row{"round_to", "marks", "3.14 mL is measured as 3.2 mL in a syringe of 5 mL."},
        Row{"round_to", "decimals", "3.14 mL is measured as 3.1 mL in a syringe of 5 mL."},
        Row{"volume_decimals_below_1_mL", "2", "0.347 mL is measured as 0.35 mL in a syringe of 1 mL."},
        Row{"volume_decimals_below_1_mL", "1", "0.347 mL is measured as 0.3 mL in a syringe of 1 mL."},
        Row{"rate_decimals", "1", "50 mL over 45 min runs at 66.7 mL/h."},
        Row{"rate_decimals", "0", "50 mL over 45 min runs at 67 mL/h."},
        Row{"ask_below_percent", "90", "89 mg ordered where 100 mg is recommended: asked about."},
        Row{"ask_below_percent", "89.5", "89 mg ordered where 100 mg is recommended: asked about."},
        Row{"ask_below_percent", "0", "No dose is asked about for being too little."},
        Row{"ask_low_percent", "97", "96 mg ordered where the reference begins at 100 mg: asked about."},
        Row{"ask_low_percent", "96.5", "96 mg ordered where the reference begins at 100 mg: asked about."},
        Row{"ask_low_percent", "0", "No dose is asked about for being too little."},
        Row{"ask_rounding_percent", "5", "1.13 mL measured as 1.1 mL (2.7 %): not asked about."},
        Row{"ask_rounding_percent", "2", "1.13 mL measured as 1.1 mL (2.7 %): asked about."},
        Row{"bsa_differs_percent", "5",
            "0.75 m² on the chart of a child of 103 cm and 17.2 kg: asked about."},
        Row{"bsa_differs_percent", "10",
            "0.75 m² on the chart of a child of 103 cm and 17.2 kg: not asked about."},
        Row{"weight_older_than", "none", "A weight is not asked about, however old it is."},
        Row{"weight_older_than", "3 month", "A weight of 92 days ago: asked about."},
        Row{"weight_older_than", "1 week", "A weight of 8 days ago: asked about."},
        Row{"grace_percent", "0", "Any dose over the reference is unsafe."},
        Row{"grace_percent", "5", "105 mg ordered where up to 100 mg is safe: asked about."},
        Row{"grace_percent", "2.5", "102.5 mg ordered where up to 100 mg is safe: asked about."},
        Row{"reference_schedule_missing", "ask",
            "80 mg every 12 hours where the reference says 84 mg per dose: asked about."},
        Row{"reference_schedule_missing", "note",
            "80 mg every 12 hours where the reference says 84 mg per dose: not asked about."},
        Row{"order_schedule_missing", "needed",
            "80 mg ordered without how often, where up to 84 mg per dose is safe: NO VERDICT: enter how "
            "often it is ordered."},
        Row{"order_schedule_missing", "one-dose",
            "80 mg ordered without how often, where up to 84 mg per dose is safe: SAFE for one dose, by this "
            "reference."},
        Row{"size_without_age", "ask", "A child of 103 cm and 40 kg without an age: asked about."},
        Row{"size_without_age", "note", "A child of 103 cm and 40 kg without an age: not asked about."},
        Row{"many_units", "3", "3 tablets: not asked about. 4 tablets: asked about."},
        Row{"smallest_volume", "0.1 mL", "0.08 mL is asked about: too small to measure."},
        Row{"idle_minutes", "5", "After 5 minutes without a key the entries are covered."},
        Row{"idle_minutes", "1", "After 1 minute without a key the entries are covered."}));

TEST(RuleExamples, standForEveryRuleThatReckons) {
  for (const char* key : {"pounds",
                          "kilogram_decimals",
                          "bsa_formula",
                          "bsa_decimals",
                          "round_to",
                          "volume_decimals_below_1_mL",
                          "volume_decimals_from_1_mL",
                          "rate_decimals",
                          "ask_below_percent",
                          "ask_low_percent",
                          "ask_rounding_percent",
                          "bsa_differs_percent",
                          "weight_older_than",
                          "grace_percent",
                          "reference_schedule_missing",
                          "order_schedule_missing",
                          "size_without_age",
                          "many_units",
                          "smallest_volume",
                          "syringes",
                          "idle_minutes"})
    EXPECT_FALSE(ruleExample(key, exactRules()).empty()) << key;
  EXPECT_TRUE(ruleExample("name", exactRules()).empty());
}

// Whatever may be set, the example is still worked out.
TEST(RuleExamples, surviveTheEndsOfEveryRange) {
  for (const auto& [key, text] :
       {std::pair{"kilogram_decimals", "6"}, std::pair{"volume_decimals_below_1_mL", "0"},
        std::pair{"volume_decimals_from_1_mL", "0"}, std::pair{"rate_decimals", "4"},
        std::pair{"ask_below_percent", "100"}, std::pair{"ask_low_percent", "0"},
        std::pair{"ask_rounding_percent", "0"}, std::pair{"many_units", "100"},
        std::pair{"smallest_volume", "1000 mL"}, std::pair{"bsa_formula", "haycock"},
        std::pair{"bsa_decimals", "none"}}) {
    HouseRules rules = exactRules();
    ASSERT_TRUE(setRule(rules, key, text)) << key;
    for (const char* one : {"kilogram_decimals", "bsa_decimals", "round_to", "volume_decimals_below_1_mL",
                            "rate_decimals", "ask_below_percent", "ask_low_percent", "size_without_age",
                            "ask_rounding_percent", "many_units", "smallest_volume", "syringes"})
      EXPECT_FALSE(ruleExample(one, rules).empty()) << key << " " << one;
  }
}

TEST(SetRule, refusesAndSaysWhy) {
  for (const auto& [key, text, code] : {std::tuple{"ask_below_percent", "7,5", RefusalCode::comma},
                                        std::tuple{"ask_below_percent", "101", RefusalCode::valueOutOfRange},
                                        std::tuple{"ask_below_percent", "", RefusalCode::empty},
                                        std::tuple{"many_units", "", RefusalCode::empty},
                                        std::tuple{"many_units", "0", RefusalCode::valueOutOfRange},
                                        std::tuple{"smallest_volume", "0.1", RefusalCode::unitMissing},
                                        std::tuple{"idle_minutes", "121", RefusalCode::valueOutOfRange},
                                        std::tuple{"colour", "red", RefusalCode::keyUnknown}}) {
    HouseRules rules = exactRules();
    const auto refusal = setRule(rules, key, text).refusalIfAny();
    ASSERT_TRUE(refusal) << key << " " << text;
    EXPECT_EQ(refusal->code, code) << key << " " << text;
    EXPECT_EQ(refusal->path, key);
    EXPECT_EQ(rules, exactRules());
  }
}

TEST(ReadSyringe, readsBothFiguresOrSaysWhichIsWrong) {
  const Result<Syringe> read = readSyringe("2.5 mL", "0.1 mL", SyringeKind::injection);
  ASSERT_TRUE(read);
  EXPECT_EQ(*read, (Syringe{Number::ratio(5, 2), Number::ratio(1, 10), SyringeKind::injection}));
  EXPECT_EQ(readSyringe("2,5 mL", "0.1 mL", SyringeKind::oral).refusal().path, "syringes.holds");
  EXPECT_EQ(readSyringe("1 mL", "2 mL", SyringeKind::oral).refusal().path, "syringes.marks");
}

}  // namespace
}  // namespace wardchalk::rules_examples_test
