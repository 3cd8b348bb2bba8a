#include "core/medicine/case.h"

#include <gtest/gtest.h>

#include <initializer_list>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/record/case_entry.h"
#include "tests/core/test_names.h"

namespace wardchalk::case_test {
namespace {

using Entries = std::vector<std::pair<const char*, const char*>>;

/// A case with these entries; the test fails if one cannot be read.
Case caseOf(const Entries& entries) {
  Case inputs;
  for (const auto& [path, text] : entries) {
    const auto refusal = setEntry(inputs, path, text).refusalIfAny();
    EXPECT_FALSE(refusal) << path << ": " << text << ": " << (refusal ? idOf(refusal->code) : "");
  }
  return inputs;
}

struct Row {
  const char* name;
  Entries entries;
  const char* code = "";  // empty: they go together
  const char* path = "";
};

class Contradiction : public ::testing::TestWithParam<Row> {};

TEST_P(Contradiction, isNamedWithTheEntryToChange) {
  const Row& row = GetParam();
  const auto refusal = contradictionIn(caseOf(row.entries));
  ASSERT_EQ(refusal.has_value(), *row.code != '\0');
  if (!refusal) return;
  EXPECT_EQ(idOf(refusal->code), row.code);
  EXPECT_EQ(refusal->path, row.path);
}

constexpr const char* low = "reference.low";
constexpr const char* high = "reference.high";

INSTANTIATE_TEST_SUITE_P(
    LowEnd, Contradiction,
    ::testing::Values(
        Row{"nothing entered", {}}, Row{"low below high", {{low, "5 mg/kg/day"}, {high, "10 mg/kg/day"}}},
        Row{"low is high", {{low, "10 mg/kg/day"}, {high, "10 mg/kg/day"}}},
        Row{"low is high in another unit", {{low, "1000 mcg/kg/day"}, {high, "1 mg/kg/day"}}},
        Row{"low alone", {{low, "10 mg/kg/day"}}}, Row{"high alone", {{high, "10 mg/kg/day"}}},
        Row{"low above high", {{low, "10.001 mg/kg/day"}, {high, "10 mg/kg/day"}}, "low-above-high", low},
        Row{"low above high in another unit",
            {{low, "0.2 g/m2/day"}, {high, "120 mg/m2/day"}},
            "low-above-high",
            low},
        Row{"low smaller digits, larger unit",
            {{low, "1 mg/kg/dose"}, {high, "500 mcg/kg/dose"}},
            "low-above-high",
            low},
        Row{"per kg and per m2", {{low, "5 mg/kg/day"}, {high, "10 mg/m2/day"}}, "low-basis-differs", low},
        Row{"per dose and per day",
            {{low, "5 mg/kg/dose"}, {high, "10 mg/kg/day"}},
            "low-basis-differs",
            low},
        Row{"flat and per kg", {{low, "5 mg/day"}, {high, "10 mg/kg/day"}}, "low-basis-differs", low},
        Row{"units and mg", {{low, "5 units/kg/day"}, {high, "10 mg/kg/day"}}, "low-basis-differs", low},
        Row{"mmol and mEq", {{low, "1 mmol/kg/day"}, {high, "2 mEq/kg/day"}}, "low-basis-differs", low},
        Row{"low with limit only",
            {{low, "5 mg/kg/day"}, {high, "10 mg/kg/day"}, {"reference.limit_only", "true"}},
            "low-with-limit-only",
            "reference.limit_only"},
        Row{"low with limit only and no high",
            {{low, "5 mg/kg/day"}, {"reference.limit_only", "true"}},
            "low-with-limit-only",
            "reference.limit_only"},
        Row{"limit only", {{high, "10 mg/kg/day"}, {"reference.limit_only", "true"}}}),
    test::NameOfRow());

constexpr const char* backwards = "band-backwards";

INSTANTIATE_TEST_SUITE_P(
    Bands, Contradiction,
    ::testing::Values(
        Row{"age in order", {{"reference.age_from", "1 month"}, {"reference.age_below", "12 year"}}},
        Row{"age from above below",
            {{"reference.age_from", "12 year"}, {"reference.age_below", "1 month"}},
            backwards,
            "reference.age_below"},
        Row{"age from above up to",
            {{"reference.age_from", "12 year"}, {"reference.age_up_to", "1 year"}},
            backwards,
            "reference.age_up_to"},
        Row{"age over above below",
            {{"reference.age_over", "2 year"}, {"reference.age_below", "23 month"}},
            backwards,
            "reference.age_below"},
        Row{"age over above up to",
            {{"reference.age_over", "3 year"}, {"reference.age_up_to", "1 year"}},
            backwards,
            "reference.age_up_to"},
        Row{"age from at below holds nothing",
            {{"reference.age_from", "12 year"}, {"reference.age_below", "12 year"}},
            backwards,
            "reference.age_below"},
        Row{"age from at below in other units",
            {{"reference.age_from", "24 month"}, {"reference.age_below", "2 year"}},
            backwards,
            "reference.age_below"},
        Row{"age from at up to holds that year",
            {{"reference.age_from", "12 year"}, {"reference.age_up_to", "12 year"}}},
        Row{"age from inside the year up to",
            {{"reference.age_from", "12 year 6 month"}, {"reference.age_up_to", "12 year"}}},
        Row{"age from the end of the year up to",
            {{"reference.age_from", "13 year"}, {"reference.age_up_to", "12 year"}},
            backwards,
            "reference.age_up_to"},
        Row{"age from at up to in days",
            {{"reference.age_from", "28 day"}, {"reference.age_up_to", "28 day"}}},
        Row{"age over at up to in days",
            {{"reference.age_over", "28 day"}, {"reference.age_up_to", "28 day"}},
            backwards,
            "reference.age_up_to"},
        Row{"age one edge alone", {{"reference.age_below", "0 day"}}},
        Row{"weight in order", {{"reference.weight_from", "5 kg"}, {"reference.weight_below", "40 kg"}}},
        Row{"weight backwards",
            {{"reference.weight_from", "40 kg"}, {"reference.weight_below", "5 kg"}},
            backwards,
            "reference.weight_below"},
        Row{"weight backwards in other units",
            {{"reference.weight_over", "10 lb"}, {"reference.weight_up_to", "4500 g"}},
            backwards,
            "reference.weight_up_to"},
        Row{"weight of lb and oz in order",
            {{"reference.weight_over", "9 lb 14 oz"}, {"reference.weight_up_to", "4500 g"}}},
        Row{"weight from at up to",
            {{"reference.weight_from", "10 kg"}, {"reference.weight_up_to", "10 kg"}}},
        Row{"weight over at up to",
            {{"reference.weight_over", "10 kg"}, {"reference.weight_up_to", "10 kg"}},
            backwards,
            "reference.weight_up_to"},
        Row{"surface in order", {{"reference.bsa_from", "0.5 m2"}, {"reference.bsa_up_to", "1 m2"}}},
        Row{"surface backwards",
            {{"reference.bsa_from", "0.51 m2"}, {"reference.bsa_up_to", "0.5 m2"}},
            backwards,
            "reference.bsa_up_to"},
        Row{"surface backwards below",
            {{"reference.bsa_over", "0.5 m2"}, {"reference.bsa_below", "0.5 m2"}},
            backwards,
            "reference.bsa_below"},
        Row{"both lower edges, one too high",
            {{"reference.bsa_from", "0.2 m2"},
             {"reference.bsa_over", "0.9 m2"},
             {"reference.bsa_below", "0.5 m2"}},
            backwards,
            "reference.bsa_below"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Stock, Contradiction,
    ::testing::Values(
        Row{"liquid per mL", {{"stock.kind", "liquid"}, {"stock.strength", "120 mg/5 mL"}}},
        Row{"powder per mL", {{"stock.kind", "powder"}, {"stock.strength", "40 mg/mL"}}},
        Row{"solid per tablet", {{"stock.kind", "solid"}, {"stock.strength", "2 mg/tablet"}}},
        Row{"strength alone", {{"stock.strength", "2 mg/tablet"}}},
        Row{"liquid per tablet",
            {{"stock.kind", "liquid"}, {"stock.strength", "2 mg/tablet"}},
            "strength-shape",
            "stock.strength"},
        Row{"powder per capsule",
            {{"stock.kind", "powder"}, {"stock.strength", "2 mg/capsule"}},
            "strength-shape",
            "stock.strength"},
        Row{"solid per mL",
            {{"stock.kind", "solid"}, {"stock.strength", "2 mg/mL"}},
            "strength-shape",
            "stock.strength"},
        Row{"capsule cut in two",
            {{"stock.kind", "solid"}, {"stock.strength", "2 mg/capsule"}, {"stock.divides_into", "2"}},
            "capsule-divides",
            "stock.divides_into"},
        Row{"capsule whole",
            {{"stock.kind", "solid"}, {"stock.strength", "2 mg/capsule"}, {"stock.divides_into", "1"}}},
        Row{"tablet cut in four",
            {{"stock.kind", "solid"}, {"stock.strength", "2 mg/tablet"}, {"stock.divides_into", "4"}}}),
    test::NameOfRow());

struct Most {
  const char* name;
  Entries entries;
  std::optional<int> doses;
};

class MostDoses : public ::testing::TestWithParam<Most> {};

TEST_P(MostDoses, areTheFewerOfOrderAndReference) {
  EXPECT_EQ(mostDosesOf(caseOf(GetParam().entries)), GetParam().doses);
}

constexpr const char* ofOrder = "order.max_doses_per_day";
constexpr const char* ofReference = "reference.max_doses_per_day";

INSTANTIATE_TEST_SUITE_P(
    Table, MostDoses,
    ::testing::Values(
        Most{"neither says", {}, std::nullopt}, Most{"the order alone says", {{ofOrder, "3"}}, 3},
        Most{"the reference alone says", {{ofReference, "4"}}, 4},
        Most{"the order says fewer", {{ofOrder, "3"}, {ofReference, "4"}}, 3},
        Most{"the reference says fewer", {{ofOrder, "4"}, {ofReference, "2"}}, 2},
        Most{"a reference for one dose", {{"reference.schedule", "once"}}, 1},
        Most{"a reference for one dose and an order for more",
             {{"reference.schedule", "once"}, {ofOrder, "4"}},
             1},
        Most{"a repeated reference says its own",
             {{"reference.schedule", "every 6 h"}, {ofReference, "3"}},
             3},
        Most{"an order by rate", {{"order.dose", "5 mcg/kg/min"}, {ofReference, "4"}}, std::nullopt},
        Most{"an order for one dose", {{"order.schedule", "once"}, {ofReference, "4"}}, std::nullopt},
        Most{"a repeated order", {{"order.schedule", "every 6 h"}, {ofReference, "3"}}, 3}),
    test::NameOfRow());

}  // namespace
}  // namespace wardchalk::case_test
