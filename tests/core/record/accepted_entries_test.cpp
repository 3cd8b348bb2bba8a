#include <gtest/gtest.h>

#include <string>

#include "core/number/decimal_text.h"
#include "core/record/case_entry.h"
#include "tests/core/test_names.h"

// Entries that are read, with their exact values. `value` is written by describe() below from what stands in
// the case: numbers in lowest terms, so that nothing is hidden by rounding.

namespace wardchalk::accepted_entries_test {
namespace {

std::string describe(const Quantity& quantity) {
  const std::string unit = quantity.unit == Unit::bodyG ? "g of the child" : std::string(idOf(quantity.unit));
  return quantity.value.rationalText() + " " + unit;
}

std::string describe(const MixedQuantity& mixed) {
  std::string text;
  for (const Quantity& part : mixed.parts) text.append(text.empty() ? "" : " + ").append(describe(part));
  return text;
}

std::string describe(const Age& age) { return describe(age.written); }

std::string describe(const DoseAmount& dose) {
  std::string text = describe(dose.amount);
  if (dose.perSize != PerSize::none) text.append(" per ").append(idOf(unitOf(dose.perSize)));
  if (dose.perTime != PerTime::none) text.append(" per ").append(idOf(unitOf(dose.perTime)));
  return text;
}

std::string describe(const Strength& strength) {
  return describe(strength.amount) + " in " + describe(strength.in);
}

std::string describe(const Schedule& schedule) {
  if (!schedule.isRepeated()) return schedule.text;
  return schedule.fewest.rationalText() + " to " + schedule.most.rationalText() + " a day";
}

std::string describe(Route route) { return std::string(idOf(route)); }
std::string describe(Sex sex) { return sex == Sex::female ? "female" : "male"; }
std::string describe(int count) { return std::to_string(count); }

std::string describe(WeightMethod method) {
  switch (method) {
    case WeightMethod::measured:
      return "measured";
    case WeightMethod::estimated:
      return "estimated";
    case WeightMethod::charted:
      return "charted";
  }
  return {};
}

std::string describe(StockKind kind) {
  switch (kind) {
    case StockKind::liquid:
      return "liquid";
    case StockKind::powder:
      return "powder";
    case StockKind::solid:
      return "solid";
  }
  return {};
}

template <typename T>
std::string described(const std::optional<T>& value) {
  return value ? describe(*value) : "absent";
}

std::string yesNo(bool value) { return value ? "yes" : "no"; }

/// What stands in the case for the entry.
struct Look {
  const char* path;
  std::string (*of)(const Case& inputs);
};

constexpr Look looks[] = {
    {"title", [](const Case& c) { return c.title; }},
    {"child.age", [](const Case& c) { return described(c.child.age); }},
    {"child.sex", [](const Case& c) { return described(c.child.sex); }},
    {"child.height", [](const Case& c) { return described(c.child.height); }},
    {"child.weight", [](const Case& c) { return described(c.child.weight); }},
    {"child.bsa", [](const Case& c) { return described(c.child.bsa); }},
    {"child.weighed", [](const Case& c) { return described(c.child.weighed); }},
    {"child.weight_method", [](const Case& c) { return described(c.child.weightMethod); }},
    {"child.born_early", [](const Case& c) { return yesNo(c.child.bornEarly); }},
    {"child.size_confirmed", [](const Case& c) { return yesNo(c.child.sizeConfirmed); }},
    {"order.medicine", [](const Case& c) { return c.order.medicine; }},
    {"order.dose", [](const Case& c) { return described(c.order.dose); }},
    {"order.route", [](const Case& c) { return described(c.order.route); }},
    {"order.schedule", [](const Case& c) { return described(c.order.schedule); }},
    {"order.as_needed", [](const Case& c) { return yesNo(c.order.asNeeded); }},
    {"order.max_doses_per_day", [](const Case& c) { return described(c.order.maxDosesPerDay); }},
    {"reference.medicine", [](const Case& c) { return c.reference.medicine; }},
    {"reference.also_called",
     [](const Case& c) {
       std::string names;
       for (const std::string& name : c.reference.alsoCalled) names.append("[").append(name).append("]");
       return names;
     }},
    {"reference.max_doses_per_day", [](const Case& c) { return described(c.reference.maxDosesPerDay); }},
    {"reference.low", [](const Case& c) { return described(c.reference.low); }},
    {"reference.high", [](const Case& c) { return described(c.reference.high); }},
    {"reference.limit_only", [](const Case& c) { return yesNo(c.reference.limitOnly); }},
    {"reference.schedule", [](const Case& c) { return described(c.reference.schedule); }},
    {"reference.route", [](const Case& c) { return described(c.reference.route); }},
    {"reference.max_per_dose", [](const Case& c) { return described(c.reference.maxPerDose); }},
    {"reference.max_per_day", [](const Case& c) { return described(c.reference.maxPerDay); }},
    {"reference.age_from", [](const Case& c) { return described(c.reference.age.from); }},
    {"reference.age_over", [](const Case& c) { return described(c.reference.age.over); }},
    {"reference.age_below", [](const Case& c) { return described(c.reference.age.below); }},
    {"reference.age_up_to", [](const Case& c) { return described(c.reference.age.upTo); }},
    {"reference.weight_from", [](const Case& c) { return described(c.reference.weight.from); }},
    {"reference.weight_over", [](const Case& c) { return described(c.reference.weight.over); }},
    {"reference.weight_below", [](const Case& c) { return described(c.reference.weight.below); }},
    {"reference.weight_up_to", [](const Case& c) { return described(c.reference.weight.upTo); }},
    {"reference.bsa_from", [](const Case& c) { return described(c.reference.bsa.from); }},
    {"reference.bsa_over", [](const Case& c) { return described(c.reference.bsa.over); }},
    {"reference.bsa_below", [](const Case& c) { return described(c.reference.bsa.below); }},
    {"reference.bsa_up_to", [](const Case& c) { return described(c.reference.bsa.upTo); }},
    {"reference.max_concentration", [](const Case& c) { return described(c.reference.maxConcentration); }},
    {"reference.min_concentration", [](const Case& c) { return described(c.reference.minConcentration); }},
    {"reference.min_infusion_time", [](const Case& c) { return described(c.reference.minInfusionTime); }},
    {"reference.max_infusion_rate", [](const Case& c) { return described(c.reference.maxInfusionRate); }},
    {"reference.source", [](const Case& c) { return c.reference.source; }},
    {"reference.second_check_required", [](const Case& c) { return yesNo(c.reference.secondCheckRequired); }},
    {"stock.kind", [](const Case& c) { return described(c.stock.kind); }},
    {"stock.strength", [](const Case& c) { return described(c.stock.strength); }},
    {"stock.content", [](const Case& c) { return described(c.stock.content); }},
    {"stock.diluent", [](const Case& c) { return described(c.stock.diluent); }},
    {"stock.final_volume", [](const Case& c) { return described(c.stock.finalVolume); }},
    {"stock.displacement", [](const Case& c) { return described(c.stock.displacement); }},
    {"stock.divides_into", [](const Case& c) { return described(c.stock.dividesInto); }},
    {"infusion.volume", [](const Case& c) { return described(c.infusion.volume); }},
    {"infusion.over", [](const Case& c) { return described(c.infusion.over); }},
    {"infusion.drop_factor", [](const Case& c) { return described(c.infusion.dropFactor); }},
};

std::string lookAt(const Case& inputs, std::string_view path) {
  for (const Look& look : looks)
    if (look.path == path) return look.of(inputs);
  return "no such entry";
}

struct Row {
  const char* name;
  const char* path;
  const char* text;
  const char* value;
};

class ReadsEntry : public ::testing::TestWithParam<Row> {};

TEST_P(ReadsEntry, exactlyAndNothingElse) {
  const Row& row = GetParam();
  Case inputs;
  const auto refusal = setEntry(inputs, row.path, row.text).refusalIfAny();
  ASSERT_FALSE(refusal) << row.text << ": " << idOf(refusal->code);
  EXPECT_EQ(lookAt(inputs, row.path), row.value);
  for (const Look& look : looks)
    EXPECT_TRUE(std::string_view(look.path) == row.path || look.of(inputs) == look.of(Case{})) << look.path;
}

INSTANTIATE_TEST_SUITE_P(
    Child, ReadsEntry,
    ::testing::Values(Row{"age in parts", "child.age", "4 year 2 month", "4 year + 2 month"},
                      Row{"age in years", "child.age", "4 year", "4 year"},
                      Row{"age with decimals", "child.age", "4.5 year", "9/2 year"},
                      Row{"day of birth", "child.age", "0 day", "0 day"},
                      Row{"age in weeks", "child.age", "6 week", "6 week"},
                      Row{"age in months", "child.age", "23 month", "23 month"},
                      Row{"age in three parts", "child.age", "1 year 2 month 3 day",
                          "1 year + 2 month + 3 day"},
                      Row{"weeks and days", "child.age", "2 week 6 day", "2 week + 6 day"},
                      Row{"no years", "child.age", "0 year 6 month", "0 year + 6 month"},
                      Row{"female", "child.sex", "female", "female"},
                      Row{"male", "child.sex", "male", "male"}, Row{"cm", "child.height", "103 cm", "103 cm"},
                      Row{"cm with decimals", "child.height", "103.5 cm", "207/2 cm"},
                      Row{"m", "child.height", "1.03 m", "103/100 m"},
                      Row{"m and cm", "child.height", "1 m 3 cm", "1 m + 3 cm"},
                      Row{"in", "child.height", "41 in", "41 in"}, Row{"ft", "child.height", "3 ft", "3 ft"},
                      Row{"ft and in", "child.height", "3 ft 5 in", "3 ft + 5 in"},
                      Row{"ft and part of an in", "child.height", "3 ft 5.5 in", "3 ft + 11/2 in"},
                      Row{"kg", "child.weight", "17.2 kg", "86/5 kg"},
                      Row{"g is of the child", "child.weight", "3500 g", "3500 g of the child"},
                      Row{"kg and g", "child.weight", "3 kg 500 g", "3 kg + 500 g of the child"},
                      Row{"lb", "child.weight", "37 lb", "37 lb"},
                      Row{"lb and oz", "child.weight", "37 lb 4 oz", "37 lb + 4 oz"},
                      Row{"lb and part of an oz", "child.weight", "8 lb 3.5 oz", "8 lb + 7/2 oz"},
                      Row{"lb and most oz", "child.weight", "8 lb 15.9 oz", "8 lb + 159/10 oz"},
                      Row{"oz", "child.weight", "131 oz", "131 oz"},
                      Row{"trailing zero typed", "child.weight", "17.20 kg", "86/5 kg"},
                      Row{"whole with decimals, then oz", "child.weight", "8.0 lb 3 oz", "8 lb + 3 oz"},
                      Row{"no lb", "child.weight", "0 lb 12 oz", "0 lb + 12 oz"},
                      Row{"surface", "child.bsa", "0.71 m2", "71/100 m2"},
                      Row{"surface with its sign", "child.bsa", "0.71 m²", "71/100 m2"},
                      Row{"weighed today", "child.weighed", "today", "0 day"},
                      Row{"weighed in capitals", "child.weighed", " TODAY ", "0 day"},
                      Row{"weighed no days ago", "child.weighed", "0 month", "0 day"},
                      Row{"weighed months ago", "child.weighed", "3 month", "3 month"},
                      Row{"weighed ago", "child.weighed", "3 months ago", "3 month"},
                      Row{"weighed in parts", "child.weighed", "1 year 2 month", "1 year + 2 month"},
                      Row{"measured", "child.weight_method", "measured", "measured"},
                      Row{"estimated", "child.weight_method", "estimated", "estimated"},
                      Row{"charted", "child.weight_method", "charted", "charted"},
                      Row{"born early", "child.born_early", "true", "yes"},
                      Row{"not born early", "child.born_early", "false", "no"},
                      Row{"size confirmed", "child.size_confirmed", "true", "yes"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Order, ReadsEntry,
    ::testing::Values(
        Row{"flat", "order.dose", "80 mg", "80 mg"}, Row{"per kg", "order.dose", "4 mg/kg", "4 mg per kg"},
        Row{"per m2", "order.dose", "120 mg/m2", "120 mg per m2"},
        Row{"per m2 with its sign", "order.dose", "120 mg/m²", "120 mg per m2"},
        Row{"per day", "order.dose", "240 mg/day", "240 mg per day"},
        Row{"per kg and day", "order.dose", "30 mg/kg/day", "30 mg per kg per day"},
        Row{"the other way round", "order.dose", "30 mg/day/kg", "30 mg per kg per day"},
        Row{"per dose said", "order.dose", "80 mg/dose", "80 mg per dose"},
        Row{"per kg and dose", "order.dose", "4 mg/kg/dose", "4 mg per kg per dose"},
        Row{"in mL", "order.dose", "5 mL", "5 mL"},
        Row{"mL per kg", "order.dose", "0.5 mL/kg", "1/2 mL per kg"},
        Row{"mL per day", "order.dose", "15 mL/day", "15 mL per day"},
        Row{"rate", "order.dose", "0.1 mcg/kg/min", "1/10 mcg per kg per min"},
        Row{"rate per h", "order.dose", "5 mg/h", "5 mg per h"},
        Row{"rate per m2", "order.dose", "5 mg/m2/h", "5 mg per m2 per h"},
        Row{"g", "order.dose", "0.5 g", "1/2 g"}, Row{"mcg", "order.dose", "50 mcg", "50 mcg"},
        Row{"units", "order.dose", "100 units/kg", "100 units per kg"},
        Row{"mmol", "order.dose", "0.5 mmol/kg", "1/2 mmol per kg"},
        Row{"mEq", "order.dose", "1 mEq/kg/day", "1 mEq per kg per day"},
        Row{"1000 without a comma", "order.dose", "1000 mg", "1000 mg"},
        Row{"thirty digits", "order.dose", "0.00000000000000000000000000001 mg",
            "1/100000000000000000000000000000 mg"},
        Row{"medicine", "order.medicine", "Plover", "Plover"},
        Row{"medicine with spaces and letters of all kinds", "order.medicine", "Dunlin – forte  é 💊",
            "Dunlin – forte  é 💊"},
        Row{"no medicine", "order.medicine", "", ""}, Row{"oral", "order.route", "oral", "oral"},
        Row{"enteral", "order.route", "enteral", "enteral"},
        Row{"intravenous", "order.route", "intravenous", "intravenous"},
        Row{"intramuscular", "order.route", "intramuscular", "intramuscular"},
        Row{"subcutaneous", "order.route", "subcutaneous", "subcutaneous"},
        Row{"rectal", "order.route", "rectal", "rectal"}, Row{"inhaled", "order.route", "inhaled", "inhaled"},
        Row{"topical", "order.route", "topical", "topical"},
        Row{"as needed", "order.as_needed", "true", "yes"},
        Row{"most doses", "order.max_doses_per_day", "4", "4"},
        Row{"fewest most doses", "order.max_doses_per_day", "1", "1"},
        Row{"most most doses", "order.max_doses_per_day", "96", "96"},
        Row{"most doses of the reference", "reference.max_doses_per_day", "4", "4"},
        Row{"fewest of the reference", "reference.max_doses_per_day", "1", "1"},
        Row{"most of the reference", "reference.max_doses_per_day", "24", "24"},
        Row{"medicine of the reference", "reference.medicine", " Plover  forte", " Plover  forte"},
        Row{"no medicine of the reference", "reference.medicine", "", ""},
        Row{"one other name", "reference.also_called", "Grey plover", "[Grey plover]"},
        Row{"other names", "reference.also_called", " Grey plover ;Brand, new; ; Brand;",
            "[Grey plover][Brand, new][Brand]"},
        Row{"no other name", "reference.also_called", ";", ""}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Schedules, ReadsEntry,
    ::testing::Values(Row{"every 12 h", "order.schedule", "every 12 h", "2 to 2 a day"},
                      Row{"every 4 to 6 h", "order.schedule", "every 4 to 6 h", "4 to 6 a day"},
                      Row{"every 5 h", "order.schedule", "every 5 h", "24/5 to 24/5 a day"},
                      Row{"3 times a day", "order.schedule", "3 times a day", "3 to 3 a day"},
                      Row{"2 to 3 times a day", "order.schedule", "2 to 3 times a day", "2 to 3 a day"},
                      Row{"once", "order.schedule", "once", "once"},
                      Row{"every 2 day", "order.schedule", "every 2 day", "1/2 to 1/2 a day"},
                      Row{"2 times a week", "order.schedule", "2 times a week", "2/7 to 2/7 a day"},
                      Row{"weekly", "order.schedule", "weekly", "1/7 to 1/7 a day"},
                      Row{"continuous", "order.schedule", "continuous", "continuous"},
                      Row{"BID", "order.schedule", "BID", "2 to 2 a day"},
                      Row{"TID", "order.schedule", "TID", "3 to 3 a day"},
                      Row{"QID", "order.schedule", "QID", "4 to 4 a day"},
                      Row{"bd", "order.schedule", "bd", "2 to 2 a day"},
                      Row{"tds", "order.schedule", "tds", "3 to 3 a day"},
                      Row{"qds", "order.schedule", "qds", "4 to 4 a day"},
                      Row{"q6h", "order.schedule", "q6h", "4 to 4 a day"},
                      Row{"q4 hyphen 6h", "order.schedule", "q4-6h", "4 to 6 a day"},
                      Row{"q4 dash 6h", "order.schedule", "q4–6h", "4 to 6 a day"},
                      Row{"daily", "order.schedule", "daily", "1 to 1 a day"},
                      Row{"every other day", "order.schedule", "every other day", "1/2 to 1/2 a day"},
                      Row{"reference", "reference.schedule", "every 8 h", "3 to 3 a day"},
                      Row{"reference once", "reference.schedule", "once", "once"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Reference, ReadsEntry,
    ::testing::Values(
        Row{"low", "reference.low", "240 mg/m2/day", "240 mg per m2 per day"},
        Row{"per dose", "reference.high", "60 mg/kg/dose", "60 mg per kg per dose"},
        Row{"per week", "reference.high", "15 mg/m2/week", "15 mg per m2 per week"},
        Row{"per min", "reference.high", "10 mcg/kg/min", "10 mcg per kg per min"},
        Row{"flat", "reference.high", "500 mg/dose", "500 mg per dose"},
        Row{"per h", "reference.high", "1 mg/kg/h", "1 mg per kg per h"},
        Row{"units", "reference.high", "20 units/kg/h", "20 units per kg per h"},
        Row{"sign of m2", "reference.high", "120 mg/m²/dose", "120 mg per m2 per dose"},
        Row{"18 mg per kg and day", "reference.high", "18 mg/kg/day", "18 mg per kg per day"},
        Row{"4 mcg per kg and min", "reference.high", "4 mcg/kg/min", "4 mcg per kg per min"},
        Row{"limit only", "reference.limit_only", "true", "yes"},
        Row{"second check required", "reference.second_check_required", "true", "yes"},
        Row{"second check not required", "reference.second_check_required", "false", "no"},
        Row{"route", "reference.route", "intravenous", "intravenous"},
        Row{"most in a dose", "reference.max_per_dose", "300 mg", "300 mg per dose"},
        Row{"most in a dose by weight", "reference.max_per_dose", "20 mg/kg", "20 mg per kg per dose"},
        Row{"most in a dose said", "reference.max_per_dose", "300 mg/dose", "300 mg per dose"},
        Row{"most in a day", "reference.max_per_day", "1 g", "1 g per day"},
        Row{"most in a day said", "reference.max_per_day", "90 mg/kg/day", "90 mg per kg per day"},
        Row{"most in a day per m2", "reference.max_per_day", "2 mg/m2", "2 mg per m2 per day"},
        Row{"age from", "reference.age_from", "1 month", "1 month"},
        Row{"age over", "reference.age_over", "28 day", "28 day"},
        Row{"age below", "reference.age_below", "15 year", "15 year"},
        Row{"age up to", "reference.age_up_to", "12 year", "12 year"},
        Row{"weight from", "reference.weight_from", "5 kg", "5 kg"},
        Row{"weight over", "reference.weight_over", "2500 g", "2500 g of the child"},
        Row{"weight below", "reference.weight_below", "88 lb", "88 lb"},
        Row{"weight up to", "reference.weight_up_to", "40 kg", "40 kg"},
        Row{"surface from", "reference.bsa_from", "0.5 m2", "1/2 m2"},
        Row{"surface over", "reference.bsa_over", "0.5 m2", "1/2 m2"},
        Row{"surface below", "reference.bsa_below", "1.5 m2", "3/2 m2"},
        Row{"surface up to", "reference.bsa_up_to", "1.73 m²", "173/100 m2"},
        Row{"most concentrated", "reference.max_concentration", "5 mg/mL", "5 mg in 1 mL"},
        Row{"least concentrated", "reference.min_concentration", "10 mcg/2 mL", "10 mcg in 2 mL"},
        Row{"per litre", "reference.max_concentration", "40 mmol/L", "40 mmol in 1 L"},
        Row{"shortest time", "reference.min_infusion_time", "30 min", "30 min"},
        Row{"shortest time in h", "reference.min_infusion_time", "0.5 h", "1/2 h"},
        Row{"fastest rate", "reference.max_infusion_rate", "1 mg/kg/min", "1 mg per kg per min"},
        Row{"fastest rate, flat", "reference.max_infusion_rate", "50 mg/min", "50 mg per min"},
        Row{"source", "reference.source", "Ward list, 3rd edition, p. 12", "Ward list, 3rd edition, p. 12"},
        Row{"title", "title", "Medicine Plover, bench 3", "Medicine Plover, bench 3"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    StockAndInfusion, ReadsEntry,
    ::testing::Values(Row{"liquid", "stock.kind", "liquid", "liquid"},
                      Row{"powder", "stock.kind", "powder", "powder"},
                      Row{"solid", "stock.kind", "solid", "solid"},
                      Row{"in 5 mL", "stock.strength", "120 mg/5 mL", "120 mg in 5 mL"},
                      Row{"in 1 mL", "stock.strength", "25 mg/mL", "25 mg in 1 mL"},
                      Row{"in 1 mL said", "stock.strength", "25 mg/1 mL", "25 mg in 1 mL"},
                      Row{"in part of a mL", "stock.strength", "20 mg/0.8 mL", "20 mg in 4/5 mL"},
                      Row{"per tablet", "stock.strength", "2 mg/tablet", "2 mg in 1 tablet"},
                      Row{"per capsule", "stock.strength", "500 mcg/capsule", "500 mcg in 1 capsule"},
                      Row{"bag", "stock.strength", "40 mg/50 mL", "40 mg in 50 mL"},
                      Row{"units in a mL", "stock.strength", "100 units/mL", "100 units in 1 mL"},
                      Row{"in litres", "stock.strength", "20 mEq/0.5 L", "20 mEq in 1/2 L"},
                      Row{"content", "stock.content", "200 mg", "200 mg"},
                      Row{"content in units", "stock.content", "600000 units", "600000 units"},
                      Row{"diluent", "stock.diluent", "4.8 mL", "24/5 mL"},
                      Row{"final volume", "stock.final_volume", "5 mL", "5 mL"},
                      Row{"displacement", "stock.displacement", "0.2 mL", "1/5 mL"},
                      Row{"divides into 4", "stock.divides_into", "4", "4"},
                      Row{"divides into 2", "stock.divides_into", "2", "2"},
                      Row{"infusion volume", "infusion.volume", "50 mL", "50 mL"},
                      Row{"infusion litres", "infusion.volume", "0.5 L", "1/2 L"},
                      Row{"infusion time", "infusion.over", "30 min", "30 min"},
                      Row{"infusion hours", "infusion.over", "1.5 h", "3/2 h"},
                      Row{"drop factor", "infusion.drop_factor", "20 drop/mL", "20 drop"}),
    test::NameOfRow());

}  // namespace
}  // namespace wardchalk::accepted_entries_test
