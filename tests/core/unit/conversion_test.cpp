#include "core/unit/conversion.h"

#include <gtest/gtest.h>

#include <map>
#include <set>
#include <string>

#include "tests/core/test_names.h"

namespace wardchalk::conversion_test {
namespace {

Number n(std::int64_t over, std::int64_t under = 1) { return Number::ratio(over, under); }

/// How many of `to` one `from` comes to, from outside the code under test.
struct Fact {
  const char* name;
  Unit from;
  Unit to;
  const char* count;   // in lowest terms
  const char* source;  // where this figure was taken from for the test
};

constexpr Fact facts[] = {
    {"mcg-per-mg", Unit::mg, Unit::mcg, "1000", "SI prefix micro, 10^-6; units 2.22: units -t mg ug"},
    {"mg-per-g", Unit::g, Unit::mg, "1000", "SI prefix milli, 10^-3; units 2.22: units -t g mg"},
    {"g-per-kg", Unit::kg, Unit::bodyG, "1000", "SI prefix kilo; units 2.22: units -t kg g"},
    {"oz-per-lb", Unit::lb, Unit::oz, "16", "units 2.22: units -t lb oz"},
    {"cm-per-m", Unit::m, Unit::cm, "100", "SI prefix centi; units 2.22: units -t m cm"},
    {"cm-per-in", Unit::in, Unit::cm, "127/50", "2.54 exactly: 16 CFR 500.19; units 2.22: units -t inch cm"},
    {"in-per-ft", Unit::ft, Unit::in, "12", "units 2.22: units -t ft inch"},
    {"mL-per-L", Unit::L, Unit::mL, "1000", "SI prefix milli; units 2.22: units -t L mL"},
    {"min-per-h", Unit::h, Unit::min, "60",
     "SI Brochure, 9th edition, table 8; units 2.22: units -t hour min"},
    {"h-per-day", Unit::day, Unit::h, "24",
     "SI Brochure, 9th edition, table 8; units 2.22: units -t day hour"},
    {"day-per-week", Unit::week, Unit::day, "7", "units 2.22: units -t week day"},
    {"month-per-year", Unit::year, Unit::month, "12", "common practice, no source"},
    {"day-per-month", Unit::month, Unit::day, "487/16", "365.25 / 12 days, by hand: 30.4375"},
};

class ConversionFact : public ::testing::TestWithParam<Fact> {};

TEST_P(ConversionFact, isTheFigureOfItsSource) {
  const Fact& row = GetParam();
  const auto& table = allConversions();
  const auto found = std::find_if(table.begin(), table.end(),
                                  [&](const Conversion& one) { return one.constant == row.name; });
  ASSERT_NE(found, table.end());
  EXPECT_EQ(idOf(found->from), idOf(row.from));
  EXPECT_EQ(idOf(found->to), idOf(row.to));
  EXPECT_EQ((found->toValue / found->fromValue).rationalText(), row.count) << row.source;
  EXPECT_FALSE(found->source.empty());
  EXPECT_EQ(converted(Number(1), row.from, row.to)->rationalText(), row.count);
  EXPECT_EQ(*converted(*converted(n(7, 3), row.from, row.to), row.to, row.from), n(7, 3));
}

INSTANTIATE_TEST_SUITE_P(Table, ConversionFact, ::testing::ValuesIn(facts), test::NameOfRow());

TEST(AllConversions, haveARowHereAndDistinctNames) {
  std::set<std::string> names;
  for (const Conversion& one : allConversions()) names.insert(std::string(one.constant));
  EXPECT_EQ(names.size(), allConversions().size());
  EXPECT_EQ(allConversions().size(), std::size(facts));
}

TEST(AllConversions, joinUnitsOfOneDimension) {
  for (const Conversion& one : allConversions())
    EXPECT_EQ(dimensionOf(one.from), dimensionOf(one.to)) << one.constant;
}

struct Converted {
  const char* name;
  Number value;
  Unit from;
  Unit to;
  Pounds pounds;
  const char* expected;  // Python fractions.Fraction
};

class Converts : public ::testing::TestWithParam<Converted> {};

TEST_P(Converts, exactly) {
  const Converted& row = GetParam();
  const auto result = converted(row.value, row.from, row.to, row.pounds);
  ASSERT_TRUE(result);
  EXPECT_EQ(result->rationalText(), row.expected);
}

constexpr Pounds exact = Pounds::exact;
constexpr Pounds trade = Pounds::trade;

INSTANTIATE_TEST_SUITE_P(
    Table, Converts,
    ::testing::Values(
        Converted{"same unit", n(86, 5), Unit::kg, Unit::kg, exact, "86/5"},
        Converted{"33 lb exact, 14 96854821 kg", Number(33), Unit::lb, Unit::kg, exact,
                  "1496854821/100000000"},
        Converted{"33 lb trade is 15 kg", Number(33), Unit::lb, Unit::kg, trade, "15"},
        Converted{"37 lb trade does not end", Number(37), Unit::lb, Unit::kg, trade, "185/11"},
        Converted{"1 kg exact in lb", Number(1), Unit::kg, Unit::lb, exact, "100000000/45359237"},
        Converted{"1 kg trade in lb", Number(1), Unit::kg, Unit::lb, trade, "11/5"},
        Converted{"1 oz exact in kg", Number(1), Unit::oz, Unit::kg, exact, "45359237/1600000000"},
        Converted{"1 oz trade in kg", Number(1), Unit::oz, Unit::kg, trade, "5/176"},
        Converted{"1 oz exact in g", Number(1), Unit::oz, Unit::bodyG, exact, "45359237/1600000"},
        Converted{"grams to kg either way", Number(3500), Unit::bodyG, Unit::kg, trade, "7/2"},
        Converted{"38 in, 96 52 cm", Number(38), Unit::in, Unit::cm, exact, "2413/25"},
        Converted{"3 ft in cm", Number(3), Unit::ft, Unit::cm, exact, "2286/25"},
        Converted{"1 m in ft", Number(1), Unit::m, Unit::ft, exact, "1250/381"},
        Converted{"g to mcg", n(1, 2), Unit::g, Unit::mcg, exact, "500000"},
        Converted{"mcg to g", Number(1), Unit::mcg, Unit::g, exact, "1/1000000"},
        Converted{"day to min", Number(1), Unit::day, Unit::min, exact, "1440"},
        Converted{"week to h", Number(1), Unit::week, Unit::h, exact, "168"},
        Converted{"year to day", Number(1), Unit::year, Unit::day, exact, "1461/4"},
        Converted{"year to week", Number(1), Unit::year, Unit::week, exact, "1461/28"},
        Converted{"1 min in h", Number(1), Unit::min, Unit::h, exact, "1/60"},
        Converted{"huge g to mcg", Number::powerOfTen(20), Unit::g, Unit::mcg, exact,
                  "100000000000000000000000000"}),
    test::NameOfRow());

std::vector<std::string> namesOf(const std::vector<Conversion>& path) {
  std::vector<std::string> names;
  for (const Conversion& one : path) names.emplace_back(one.constant);
  return names;
}

TEST(ConversionPath, namesEachFactOnTheWay) {
  using Names = std::vector<std::string>;
  EXPECT_EQ(namesOf(*conversionPath(Unit::oz, Unit::kg, exact)), (Names{"oz-per-lb", "kg-per-lb"}));
  EXPECT_EQ(namesOf(*conversionPath(Unit::oz, Unit::kg, trade)), (Names{"oz-per-lb", "lb-per-kg"}));
  EXPECT_EQ(namesOf(*conversionPath(Unit::ft, Unit::m, exact)),
            (Names{"in-per-ft", "cm-per-in", "cm-per-m"}));
  EXPECT_EQ(namesOf(*conversionPath(Unit::g, Unit::mcg, exact)), (Names{"mg-per-g", "mcg-per-mg"}));
  EXPECT_EQ(namesOf(*conversionPath(Unit::bodyG, Unit::lb, exact)), (Names{"g-per-kg", "kg-per-lb"}));
  EXPECT_EQ(namesOf(*conversionPath(Unit::mg, Unit::mg, exact)), Names{});
}

TEST(ConversionPath, eachStepBeginsWhereTheLastEnded) {
  for (std::size_t a = 0; a < unitTable.size(); ++a)
    for (std::size_t b = 0; b < unitTable.size(); ++b)
      for (const Pounds pounds : {exact, trade}) {
        const auto path = conversionPath(static_cast<Unit>(a), static_cast<Unit>(b), pounds);
        if (!path) continue;
        Unit at = static_cast<Unit>(a);
        for (const Conversion& step : *path) {
          EXPECT_EQ(step.from, at);
          at = step.to;
        }
        EXPECT_EQ(at, static_cast<Unit>(b));
      }
}

TEST(ConversionPath, joinsAllUnitsOfADimensionAndNoOthers) {
  for (std::size_t a = 0; a < unitTable.size(); ++a)
    for (std::size_t b = 0; b < unitTable.size(); ++b) {
      const bool sameKind = unitTable[a].dimension == unitTable[b].dimension;
      EXPECT_EQ(conversionPath(static_cast<Unit>(a), static_cast<Unit>(b), exact).has_value(), sameKind)
          << unitTable[a].id << " " << unitTable[b].id;
    }
}

TEST(ConversionPath, aChildsGramNeverMeetsAGramOfMedicine) {
  EXPECT_FALSE(converted(Number(1), Unit::bodyG, Unit::g));
  EXPECT_FALSE(converted(Number(1), Unit::g, Unit::bodyG));
  EXPECT_FALSE(converted(Number(1), Unit::mg, Unit::kg));
  EXPECT_FALSE(converted(Number(1), Unit::kg, Unit::mg));
  EXPECT_FALSE(converted(Number(1), Unit::units, Unit::mg));
  EXPECT_FALSE(converted(Number(1), Unit::mmol, Unit::mEq));
  EXPECT_FALSE(converted(Number(1), Unit::tablet, Unit::capsule));
}

TEST(Conversion, turnedReadsTheOtherWay) {
  const Conversion fact = conversionPath(Unit::in, Unit::cm, exact)->front();
  const Conversion turned = fact.turned();
  EXPECT_EQ(turned.from, Unit::cm);
  EXPECT_EQ(turned.to, Unit::in);
  EXPECT_EQ(turned.fromValue, fact.toValue);
  EXPECT_EQ(turned.toValue, fact.fromValue);
  EXPECT_EQ(turned.constant, fact.constant);
}

TEST(TotalIn, addsThePartsInOneUnit) {
  const MixedQuantity weight{{{Number(37), Unit::lb}, {Number(4), Unit::oz}}};
  EXPECT_EQ(*totalIn(weight, Unit::lb), Number::ratio(149, 4));
  EXPECT_EQ(*totalIn(weight, Unit::kg, trade), *converted(Number::ratio(149, 4), Unit::lb, Unit::kg, trade));
  EXPECT_EQ(*totalIn({{{Number(3), Unit::ft}, {Number(5), Unit::in}}}, Unit::in), Number(41));
  EXPECT_FALSE(totalIn(weight, Unit::cm));
  EXPECT_FALSE(totalIn({{{Number(37), Unit::lb}, {Number(4), Unit::in}}}, Unit::lb));
}

TEST(TradePounds, areFractionallyAboveTheExactOnes) {
  // 1/2.2 kg over 0.45359237 kg, by Python fractions: 100000000/99790321.4, that is 0.21 % high.
  const Number ratio =
      *converted(Number(1), Unit::lb, Unit::kg, trade) / *converted(Number(1), Unit::lb, Unit::kg, exact);
  EXPECT_EQ(ratio.rationalText(), "500000000/498951607");
}

}  // namespace
}  // namespace wardchalk::conversion_test
