#include "core/words/fact_words.h"

#include <gtest/gtest.h>

#include "core/medicine/paths.h"
#include "core/record/case_entry.h"

namespace wardchalk::fact_words_test {
namespace {

struct Row {
  const char* name;
  std::string_view path;
  std::string_view entry;
  std::string words;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class FactWords : public testing::TestWithParam<Row> {};

TEST_P(FactWords, sayTheEntryAsItWasUnderstood) {
  Case inputs;
  ASSERT_TRUE(setEntry(inputs, GetParam().path, GetParam().entry));
  EXPECT_EQ(factWords(GetParam().path, inputs, exactRules()), GetParam().words);
}

// Conversions: 37 lb 4 oz = 37.25 × 0.45359237 kg = 16.8963157825 kg; 41 in = 104.14 cm (GNU units 2.22).
INSTANTIATE_TEST_SUITE_P(
    Entries, FactWords,
    testing::Values(Row{"kilograms", path::weight, "17.2 kg", "17.2 kg"},
                    Row{"allDigits", path::weight, "17.234567 kg", "17.234567 kg"},
                    Row{"poundsAndOunces", path::weight, "37 lb 4 oz", "37 lb 4 oz (≈ 16.9 kg)"},
                    Row{"feetAndInches", path::height, "3 ft 5 in", "3 ft 5 in (= 104.14 cm)"},
                    Row{"age", path::age, "4 year 2 month", "4 years 2 months"},
                    Row{"choice", path::route, "oral", "oral"}, Row{"sex", path::sex, "female", "female"},
                    Row{"method", path::weightMethod, "estimated", "estimated"},
                    Row{"weighedToday", path::weighed, "today", "today"},
                    Row{"weighedAgo", path::weighed, "3 month", "3 months ago"},
                    Row{"kind", path::stockKind, "powder", "powder"},
                    Row{"flag", path::asNeeded, "true", "yes"}, Row{"count", path::maxDosesPerDay, "4", "4"},
                    Row{"orderUnsaid", path::dose, "80 mg", "80 mg per dose"},
                    Row{"doseKeepsItsDigits", path::dose, "0.123456 mg", "0.123456 mg per dose"},
                    Row{"thousands", path::high, "1200 mg/m2/day", "1,200 mg per m² per day"},
                    Row{"rate", path::high, "0.1 mcg/kg/min", "0.1 mcg per kg per minute"},
                    Row{"schedule", path::schedule, "q12h",
                        "every 12 hours (2 doses in 24 h, one every 12 h)"},
                    Row{"perMillilitre", path::strength, "25 mg/1 mL", "25 mg in 1 mL"},
                    Row{"perFive", path::strength, "120 mg/5 mL", "120 mg in 5 mL (24 mg per mL)"},
                    Row{"drops", path::dropFactor, "20 drop/mL", "20 drops/mL"},
                    Row{"band", path::ageBelow, "12 month", "12 months"},
                    Row{"concentration", path::maxConcentration, "5 mg/mL", "5 mg in 1 mL"},
                    Row{"freeText", path::source, "Bench list, p. 4", "Bench list, p. 4"}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(FactWords, anAbsentEntryHasNone) {
  for (const CaseEntry& entry : caseEntries())
    EXPECT_EQ(factWords(entry.path, Case{}, exactRules()), "") << entry.path;
}

/// No entry is forgotten on paper.
TEST(FactWords, everyEntryOfACaseHasThem) {
  Case kinds;
  ASSERT_TRUE(setEntry(kinds, path::stockKind, "solid"));
  for (const CaseEntry& entry : caseEntries()) {
    bool said = false;
    for (const std::string_view text :
         {"2", "true", "oral", "female", "measured", "liquid", "3 mg/kg/dose", "every 6 h", "5 mg/mL", "4 mL",
          "30 min", "20 drop/mL", "90 cm", "12 kg", "5 year", "0.6 m2", "100 mg", "3 mg/min"}) {
      Case inputs = kinds;
      if (!setEntry(inputs, entry.path, text)) continue;
      said = said || !factWords(entry.path, inputs, exactRules()).empty();
    }
    EXPECT_TRUE(said) << entry.path;
  }
}

}  // namespace
}  // namespace wardchalk::fact_words_test
