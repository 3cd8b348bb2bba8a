#include "core/words/case_facts.h"

#include <gtest/gtest.h>

#include <cctype>
#include <initializer_list>
#include <set>
#include <string_view>
#include <utility>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "core/words/fact_words.h"
#include "core/words/given_words.h"
#include "tests/support/golden_cases.h"

namespace wardchalk::case_facts_test {
namespace {

std::vector<Fact> factsOf(std::initializer_list<std::pair<const char*, const char*>> entries) {
  Case inputs;
  for (const auto& [path, text] : entries) EXPECT_TRUE(setEntry(inputs, path, text)) << path;
  return caseFacts(inputs);
}

TEST(CaseFacts, areEmptyForAnEmptyCase) { EXPECT_TRUE(factsOf({}).empty()); }

TEST(CaseFacts, sayEveryPaperAsItWasEntered) {
  const std::vector<Fact> expected = {{"child", "4 years 2 months, 103 cm, 17.2 kg, charted BSA 0.7 m²"},
                                      {"order", "Plover 80 mg by mouth every 12 hours, as needed"},
                                      {"reference", "100 to 120 mg per m² per dose, by mouth every 12 hours"},
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

std::string maximumOf(std::initializer_list<std::pair<const char*, const char*>> entries) {
  std::string text;
  for (const Fact& fact : factsOf(entries))
    text.append(fact.label).append(" ").append(fact.text).append("; ");
  return text;
}

TEST(CaseFacts, sayEveryLimitOfAnInfusionInShort) {
  EXPECT_EQ(maximumOf({{"reference.max_infusion_rate", "6 mcg/kg/min"}}), "maximum 6 mcg/kg/min; ");
  EXPECT_EQ(maximumOf({{"reference.max_infusion_rate", "5.25 mg/h"}}), "maximum 5.25 mg/h; ");
  EXPECT_EQ(maximumOf({{"reference.max_concentration", "5 mg/mL"}}), "maximum 5 mg/mL; ");
  EXPECT_EQ(maximumOf({{"reference.max_concentration", "5 mg/2 mL"}}), "maximum 5 mg in 2 mL; ");
  EXPECT_EQ(maximumOf({{"reference.min_concentration", "0.12345 mg/mL"}}), "minimum 0.12345 mg/mL; ");
  EXPECT_EQ(maximumOf({{"reference.min_infusion_time", "30 min"}}), "minimum over 30 min; ");
  EXPECT_EQ(maximumOf({{"reference.max_per_dose", "20 mg"},
                       {"reference.max_per_day", "109.1 mg"},
                       {"reference.max_doses_per_day", "3"},
                       {"reference.max_infusion_rate", "6 mcg/kg/min"},
                       {"reference.max_concentration", "1 mg/mL"},
                       {"reference.min_concentration", "0.5 mg/mL"},
                       {"reference.min_infusion_time", "30 min"}}),
            "maximum 20 mg per dose, 109.1 mg per day, no more than 3 doses in 24 h, 6 mcg/kg/min, 1 mg/mL; "
            "minimum 0.5 mg/mL, over 30 min; ");
}

TEST(CaseFacts, sayASharedUnitOfARangeOnceAndTwoUnitsInFull) {
  const auto range = [](const char* low, const char* high) {
    return maximumOf({{"reference.low", low}, {"reference.high", high}});
  };
  EXPECT_EQ(range("4 mcg/kg/min", "10 mcg/kg/min"), "reference 4 to 10 mcg/kg/min; ");
  EXPECT_EQ(range("900 mcg/kg/dose", "1.2 mg/kg/dose"), "reference 900 mcg to 1.2 mg per kg per dose; ");
  EXPECT_EQ(range("1000 mg/day", "1500 mg/day"), "reference 1,000 to 1,500 mg per day; ");
  EXPECT_EQ(range("0.12345 mg/kg/h", "0.2 mg/kg/h"), "reference 0.12345 to 0.2 mg/kg/h; ");
  EXPECT_EQ(maximumOf({{"reference.high", "10 mcg/kg/min"}}), "reference 10 mcg/kg/min; ");
  EXPECT_EQ(maximumOf({{"reference.low", "4 mcg/kg/min"}}), "");
}

// What is worked with is looked up above it.

void addFields(std::set<std::string_view>& fields, const Term& term) {
  if (term.origin.kind == Origin::Kind::field) fields.insert(term.origin.name);
}

void addFields(std::set<std::string_view>& fields, const Chain& chain) {
  for (const Factor& factor : chain.factors) {
    addFields(fields, factor.over);
    addFields(fields, factor.under);
  }
}

/// The fields that the numbers and the comparisons of a working come from.
std::set<std::string_view> fieldsOf(const Worksheet& sheet) {
  std::set<std::string_view> fields;
  for (const Step& step : sheet.steps) {
    if (const auto* solved = std::get_if<Solved>(&step.body)) addFields(fields, solved->chain);
    if (const auto* surface = std::get_if<SurfaceByFormula>(&step.body)) {
      addFields(fields, surface->height);
      addFields(fields, surface->weight);
    }
    const auto* comparison = std::get_if<Comparison>(&step.body);
    if (!comparison) continue;
    for (const Side* side : {&comparison->left, &comparison->right}) {
      addFields(fields, side->term);
      if (side->chain) addFields(fields, *side->chain);
    }
  }
  return fields;
}

bool isPartOfNumber(char c) { return std::isdigit(static_cast<unsigned char>(c)) || c == '.' || c == ','; }

/// What tells of a field wherever it stands: each of its numbers, or all of it where it has none. How a dose
/// is given is said in words of its own.
std::vector<std::string> piecesOf(std::string_view field, const Case& given) {
  if (field == path::route || (field == path::schedule && given.order.schedule->isContinuous()))
    return {givenWords(given.order.route, given.order.schedule)};
  if (field == path::referenceRoute ||
      (field == path::referenceSchedule && given.reference.schedule->isContinuous()))
    return {givenWords(given.reference.route, given.reference.schedule)};
  const std::string text = enteredWords(field, given);
  std::vector<std::string> pieces;
  for (std::size_t at = 0; at < text.size();) {
    std::size_t end = at;
    while (end < text.size() && isPartOfNumber(text[end])) ++end;
    if (end > at) pieces.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return pieces.empty() ? std::vector<std::string>{text} : pieces;
}

bool standsIn(const std::string& strip, const std::string& piece) {
  for (std::size_t at = strip.find(piece); at != std::string::npos; at = strip.find(piece, at + 1)) {
    const bool begins = at == 0 || !isPartOfNumber(strip[at - 1]);
    const std::size_t after = at + piece.size();
    const bool ends = after + 1 >= strip.size() || !isPartOfNumber(strip[after]) ||
                      !std::isdigit(static_cast<unsigned char>(strip[after + 1]));
    if (begins && ends) return true;
  }
  return false;
}

TEST(CaseFacts, sayEveryFieldThatAWorkingUses) {
  std::set<std::string_view> seen;
  for (const test::GoldenCase& golden : test::goldenCases()) {
    const Worksheet sheet = workOut(golden.given, golden.rules);
    std::string strip;
    for (const Fact& fact : caseFacts(sheet.given)) strip.append(fact.text).append("; ");
    for (const std::string_view field : fieldsOf(sheet)) {
      seen.insert(field);
      for (const std::string& piece : piecesOf(field, sheet.given))
        EXPECT_TRUE(standsIn(strip, piece))
            << golden.name << ": " << field << " " << piece << " in " << strip;
    }
  }
  for (const char* field : {"reference.max_concentration", "reference.min_concentration",
                            "reference.max_infusion_rate", "reference.min_infusion_time", "child.weight"})
    EXPECT_TRUE(seen.contains(field)) << field;
}

}  // namespace
}  // namespace wardchalk::case_facts_test
