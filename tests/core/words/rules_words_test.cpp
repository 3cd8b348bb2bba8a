#include "core/words/rules_words.h"

#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"

namespace wardchalk::rules_words_test {
namespace {

Worksheet worked(std::initializer_list<std::pair<std::string_view, std::string_view>> entries,
                 HouseRules rules) {
  Case inputs;
  for (const auto& [path, entry] : entries) EXPECT_TRUE(setEntry(inputs, path, entry)) << path;
  return workOut(inputs, rules);
}

std::string rulesOf(const Worksheet& sheet) {
  std::string text;
  for (const std::string& line : rulesWords(sheet)) text += line + "\n";
  return text;
}

TEST(RulesWords, nameWhatTheWorkingUses) {
  HouseRules rules = classroomRules();
  rules.agreedBy = "the school";
  rules.agreedOn = "2026-09-01";
  const std::string text = rulesOf(worked({{path::height, "103 cm"},
                                           {path::weight, "37 lb"},
                                           {path::dose, "80 mg"},
                                           {path::schedule, "daily"},
                                           {path::high, "120 mg/m2/dose"},
                                           {path::infusionOver, "30 min"},
                                           {path::stockKind, "liquid"}},
                                          rules));
  for (const char* part :
       {"Mosteller, rounded to 2 decimals", "2.2 lb = 1 kg", "Kilograms are rounded once, to ",
        "Amounts are rounded to 2 decimals below 1 mL and 1 from 1 mL; mL/h to ",
        "under 90 % of the recommended dose or 97 % of a stated low end", "over 6 %", "under 0.02 mL",
        "over 5 tablets", "where no age is stated", "Agreed by the school on 2026-09-01."})
    EXPECT_NE(text.find(part), std::string::npos) << part << " is not in\n" << text;
}

TEST(RulesWords, leaveOutWhatTheWorkingDoesNotUse) {
  const std::string text =
      rulesOf(worked({{path::weight, "17.2 kg"}, {path::stockKind, "liquid"}}, exactRules()));
  for (const char* part : {"Agreed", "lb", "Mosteller", "mL/h", "charted", "Kilograms"})
    EXPECT_EQ(text.find(part), std::string::npos) << part << " is in\n" << text;
}

TEST(RulesWords, nameWhatTheHouseAddedOrLeftOut) {
  HouseRules rules = exactRules();
  rules.weightOlderThan = MixedQuantity{{{Number(3), Unit::month}}};
  rules.gracePercent = Number(5);
  rules.bsaDecimals.reset();
  const std::string text = rulesOf(worked({{path::height, "103 cm"},
                                           {path::weight, "37 lb"},
                                           {path::dose, "80 mg/h"},
                                           {path::high, "120 mg/m2/h"},
                                           {path::stockKind, "liquid"}},
                                          rules));
  for (const char* part : {"A weight older than 3 months is asked about.",
                           "Up to 5 % over a reference is asked about and not unsafe.", "mL/h to 1; drops",
                           "with all its digits.", "1 lb = 0.45359237 kg. Kilograms are not rounded."})
    EXPECT_NE(text.find(part), std::string::npos) << part << " is not in\n" << text;
}

// A set that was changed never goes by the name of one that is shipped.
TEST(RulesTitle, isTheSetsOwn) {
  const auto titled = [](auto change) {
    HouseRules rules = exactRules();
    change(rules);
    return rulesTitle(rules);
  };
  EXPECT_EQ(titled([](HouseRules&) {}), "exact");
  EXPECT_EQ(titled([](HouseRules& rules) { rules.agreedBy = "the ward"; }), "exact");
  EXPECT_EQ(titled([](HouseRules& rules) { rules.rateDecimals = 0; }), "exact, changed");
  EXPECT_EQ(titled([](HouseRules& rules) { rules.name = "ward 5"; }), "ward 5");
  EXPECT_EQ(titled([](HouseRules& rules) { rules.name.clear(); }), "without a name");
}

TEST(RulesProvenance, isStatedOrSaidToBeWanting) {
  HouseRules rules = exactRules();
  EXPECT_EQ(rulesProvenance(rules), "As shipped with the program, not agreed by a ward.");
  rules.name = "ward 5";
  EXPECT_EQ(rulesProvenance(rules), "It is not stated who agreed these rules.");
  rules.agreedBy = "the pharmacy";
  EXPECT_EQ(rulesProvenance(rules), "Agreed by the pharmacy.");
  rules = classroomRules();
  EXPECT_EQ(rulesProvenance(rules), "As shipped with the program, not agreed by a ward.");
  rules.rateDecimals = 0;  // goes by a name that is shipped, and is another set
  EXPECT_EQ(rulesProvenance(rules), "It is not stated who agreed these rules.");
}

}  // namespace
}  // namespace wardchalk::rules_words_test
