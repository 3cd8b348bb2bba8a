#include "core/words/case_facts.h"

#include <gtest/gtest.h>

#include <initializer_list>
#include <utility>

#include "core/record/case_entry.h"

namespace wardchalk::case_facts_test {
namespace {

std::vector<Fact> factsOf(std::initializer_list<std::pair<const char*, const char*>> entries) {
  Case inputs;
  for (const auto& [path, text] : entries) EXPECT_TRUE(setEntry(inputs, path, text)) << path;
  return caseFacts(inputs);
}

TEST(CaseFacts, areEmptyForAnEmptyCase) { EXPECT_TRUE(factsOf({}).empty()); }

TEST(CaseFacts, sayEveryPaperAsItWasEntered) {
  const std::vector<Fact> expected = {
      {"child", "4 years 2 months, 103 cm, 17.2 kg, charted BSA 0.7 m²"},
      {"order", "Plover 80 mg by mouth every 12 hours, as needed"},
      {"reference", "100 mg to 120 mg per m² per dose, by mouth every 12 hours"},
      {"for", "2 years and over, under 12 years, up to 40 kg"},
      {"maximum", "200 mg per dose, 400 mg per day"},
      {"on hand", "25 mg in 1 mL"}};
  EXPECT_EQ(factsOf({{"child.age", "4 year 2 month"},
                     {"child.height", "103 cm"},
                     {"child.weight", "17.2 kg"},
                     {"child.bsa", "0.7 m2"},
                     {"order.medicine", "Plover"},
                     {"order.dose", "80 mg"},
                     {"order.route", "oral"},
                     {"order.schedule", "every 12 h"},
                     {"order.as_needed", "true"},
                     {"reference.low", "100 mg/m2/dose"},
                     {"reference.high", "120 mg/m2/dose"},
                     {"reference.schedule", "every 12 h"},
                     {"reference.route", "oral"},
                     {"reference.age_from", "2 year"},
                     {"reference.age_below", "12 year"},
                     {"reference.weight_up_to", "40 kg"},
                     {"reference.max_per_dose", "200 mg"},
                     {"reference.max_per_day", "400 mg"},
                     {"stock.kind", "liquid"},
                     {"stock.strength", "25 mg/1 mL"}}),
            expected);
}

TEST(CaseFacts, sayWhatAPowderIsMixedOfAndHowItRuns) {
  const std::vector<Fact> expected = {
      {"on hand", "vial of 200 mg, diluent 4.8 mL, displacement 0.2 mL, 5 mL after mixing"},
      {"infusion", "50 mL over 30 min, 20 drops/mL"}};
  EXPECT_EQ(factsOf({{"stock.kind", "powder"},
                     {"stock.content", "200 mg"},
                     {"stock.diluent", "4.8 mL"},
                     {"stock.displacement", "0.2 mL"},
                     {"stock.final_volume", "5 mL"},
                     {"infusion.volume", "50 mL"},
                     {"infusion.over", "30 min"},
                     {"infusion.drop_factor", "20 drop/mL"}}),
            expected);
}

}  // namespace
}  // namespace wardchalk::case_facts_test
