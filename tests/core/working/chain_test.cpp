#include "core/working/chain.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>
#include <vector>

namespace wardchalk::chain_test {
namespace {

Number n(std::int64_t over, std::int64_t under = 1) { return Number::ratio(over, under); }

Term term(const Number& value, UnitProduct units = {}) { return {value, std::move(units), {}}; }

Factor factor(const Number& over, UnitProduct overUnits, const Number& under = Number(1),
              UnitProduct underUnits = {}) {
  return {term(over, std::move(overUnits)), term(under, std::move(underUnits))};
}

const Factor limit = factor(Number(120), {Unit::mg}, Number(1), {Unit::m2, Unit::dose});
const Factor surface = factor(n(7, 10), {Unit::m2});
const Factor ordered = factor(Number(80), {Unit::mg}, Number(1), {Unit::dose});
const Factor label = factor(Number(120), {Unit::mg}, Number(5), {Unit::mL});

TEST(Cancel, strikesTheUnitAboveAgainstItsPartnerBelow) {
  const Product product = cancel({{limit, surface}});
  EXPECT_EQ(product.exact, Number(84));
  ASSERT_EQ(product.pairs.size(), 1U);
  EXPECT_EQ(product.pairs[0], (Cancellation{Unit::m2, {1, true, 0}, {0, false, 0}}));
  EXPECT_EQ(product.left, (Units{{Unit::mg}, {Unit::dose}}));
}

TEST(Cancel, leavesDrugAndBodyMassApart) {
  const Product product = cancel({{factor(Number(4), {Unit::mg}, Number(1), {Unit::kg})}});
  EXPECT_TRUE(product.pairs.empty());
  EXPECT_EQ(product.left, (Units{{Unit::mg}, {Unit::kg}}));
}

TEST(Cancel, aGramOfTheChildIsNoGramOfMedicine) {
  const Product product = cancel({{factor(Number(1), {Unit::g}, Number(1), {Unit::bodyG})}});
  EXPECT_TRUE(product.pairs.empty());
}

TEST(Cancel, mgNeverStrikesMcg) {
  const Product product = cancel({{factor(Number(1), {Unit::mg}, Number(1), {Unit::mcg})}});
  EXPECT_TRUE(product.pairs.empty());
  EXPECT_EQ(product.left, (Units{{Unit::mg}, {Unit::mcg}}));
}

TEST(Cancel, givesTheAmountWithTheLabelTurned) {
  const Product product = cancel({{ordered, label.turned()}});
  EXPECT_EQ(product.exact, n(10, 3));
  ASSERT_EQ(product.pairs.size(), 1U);
  EXPECT_EQ(product.pairs[0], (Cancellation{Unit::mg, {0, true, 0}, {1, false, 0}}));
  EXPECT_EQ(product.left, (Units{{Unit::mL}, {Unit::dose}}));
}

TEST(Cancel, showsMgSquaredPerMlWhenTheLabelIsUpsideDown) {
  const Product product = cancel({{ordered, label}});
  EXPECT_EQ(product.exact, Number(1920));
  EXPECT_TRUE(product.pairs.empty());
  EXPECT_TRUE(sameUnits(product.left, {{Unit::mg, Unit::mg}, {Unit::mL, Unit::dose}}));
}

TEST(Cancel, takesTheFirstFreePartnerInReadingOrder) {
  // mg/kg × kg × kg/kg: the two kg above meet the two below, each once, from left to right.
  const Chain chain{{factor(Number(5), {Unit::mg}, Number(1), {Unit::kg}), factor(Number(20), {Unit::kg}),
                     factor(Number(3), {Unit::kg}, Number(2), {Unit::kg})}};
  const Product product = cancel(chain);
  EXPECT_EQ(product.exact, Number(150));
  ASSERT_EQ(product.pairs.size(), 2U);
  EXPECT_EQ(product.pairs[0], (Cancellation{Unit::kg, {1, true, 0}, {0, false, 0}}));
  EXPECT_EQ(product.pairs[1], (Cancellation{Unit::kg, {2, true, 0}, {2, false, 0}}));
  EXPECT_EQ(product.left, (Units{{Unit::mg}, {}}));
}

TEST(Cancel, countsEachUseOfAUnitByItself) {
  // mg over m²·m², times one m²: one of the two is left.
  const Product product = cancel({{factor(Number(9), {Unit::mg}, Number(1), {Unit::m2, Unit::m2}), surface}});
  ASSERT_EQ(product.pairs.size(), 1U);
  EXPECT_EQ(product.pairs[0].below, (Place{0, false, 0}));
  EXPECT_EQ(product.left, (Units{{Unit::mg}, {Unit::m2}}));
}

TEST(Cancel, strikesWithinOneFactor) {
  const Product product = cancel({{factor(Number(3), {Unit::mL}, Number(6), {Unit::mL})}});
  EXPECT_EQ(product.exact, n(1, 2));
  EXPECT_EQ(product.pairs.size(), 1U);
  EXPECT_EQ(product.left, Units{});
}

TEST(Cancel, anEmptyChainIsOne) {
  const Product product = cancel({});
  EXPECT_EQ(product.exact, Number(1));
  EXPECT_EQ(product.left, Units{});
}

TEST(Solve, saysWhetherTheUnitsWantedCameOut) {
  EXPECT_TRUE(solve({{limit, surface}}, {{Unit::mg}, {Unit::dose}}));
  EXPECT_FALSE(solve({{limit, surface}}, {{Unit::mg}, {}}));
  EXPECT_FALSE(solve({{limit, surface}}, {{Unit::mcg}, {Unit::dose}}));
  const Chain upsideDown{{ordered, label}};
  EXPECT_FALSE(solve(upsideDown, {{Unit::mL}, {Unit::dose}}));
  EXPECT_TRUE(sameUnits(cancel(upsideDown).left, {{Unit::mg, Unit::mg}, {Unit::mL, Unit::dose}}));
}

TEST(Solve, takesTheRootOfTheUnits) {
  // 103 cm × 17.2 kg ÷ 3600 cm·kg/m⁴ leaves m⁴, whose root is m².
  const Factor divisor = factor(Number(1), {Unit::m2, Unit::m2}, Number(3600), {Unit::cm, Unit::kg});
  const Chain rooted{{factor(Number(103), {Unit::cm}), factor(n(172, 10), {Unit::kg}), divisor},
                     /*rooted=*/true};
  const std::optional<Solution> solution = solve(rooted, {{Unit::m2}, {}});
  ASSERT_TRUE(solution);
  EXPECT_EQ(solution->units, (Units{{Unit::m2}, {}}));
  EXPECT_EQ(solution->product.exact, n(4429, 9000));  // the root itself is not taken
  EXPECT_EQ(solution->product.left, (Units{{Unit::m2, Unit::m2}, {}}));
  EXPECT_EQ(solution->product.pairs.size(), 2U);

  Chain plain = rooted;
  plain.rooted = false;
  EXPECT_FALSE(solve(plain, {{Unit::m2}, {}}));
}

TEST(Solve, theMetricDivisorFitsNoInchesAndPounds) {
  const Factor divisor = factor(Number(1), {Unit::m2, Unit::m2}, Number(3600), {Unit::cm, Unit::kg});
  const Chain mixed{{factor(Number(41), {Unit::in}), factor(Number(37), {Unit::lb}), divisor},
                    /*rooted=*/true};
  EXPECT_FALSE(solve(mixed, {{Unit::m2}, {}}));
}

TEST(RootOf, halvesPairsAndRefusesOddOnes) {
  EXPECT_EQ(rootOf({{Unit::m2, Unit::m2}, {}}), (Units{{Unit::m2}, {}}));
  EXPECT_EQ(rootOf({{Unit::cm, Unit::kg, Unit::cm, Unit::kg}, {Unit::h, Unit::h}}),
            (Units{{Unit::kg, Unit::cm}, {Unit::h}}));
  EXPECT_EQ(rootOf({}), Units{});
  EXPECT_EQ(rootOf({{Unit::m2}, {}}), std::nullopt);
  EXPECT_EQ(rootOf({{Unit::m2, Unit::m2, Unit::m2}, {}}), std::nullopt);
  EXPECT_EQ(rootOf({{}, {Unit::kg}}), std::nullopt);
  EXPECT_EQ(rootOf({{Unit::cm, Unit::m}, {}}), std::nullopt);
}

TEST(SameUnits, whateverTheirOrder) {
  EXPECT_TRUE(
      sameUnits({{Unit::mg, Unit::kg}, {Unit::h, Unit::m2}}, {{Unit::kg, Unit::mg}, {Unit::m2, Unit::h}}));
  EXPECT_TRUE(sameUnits({{Unit::mg}, {Unit::m, Unit::m}}, {{Unit::mg}, {Unit::m2}}));
  EXPECT_FALSE(sameUnits({{Unit::m}, {}}, {{Unit::m2}, {}}));
  EXPECT_FALSE(sameUnits({{Unit::mg, Unit::mg}, {}}, {{Unit::mg}, {}}));
  EXPECT_FALSE(sameUnits({{Unit::mg}, {}}, {{}, {Unit::mg}}));
  EXPECT_FALSE(sameUnits({{Unit::g}, {}}, {{Unit::bodyG}, {}}));
}

TEST(ConversionFactor, standsInAChainSoThatTheUnitsStrike) {
  // 0.2 g × 1000 mg/1 g × 1000 mcg/1 mg = 200000 mcg
  Chain chain{{factor(n(2, 10), {Unit::g})}};
  for (Factor& one : conversionFactors(Unit::g, Unit::mcg, Pounds::exact)) chain.factors.push_back(one);
  const std::optional<Solution> solution = solve(chain, {{Unit::mcg}, {}});
  ASSERT_TRUE(solution);
  EXPECT_EQ(solution->product.exact, Number(200000));
  EXPECT_EQ(solution->product.pairs.size(), 2U);
}

TEST(ConversionFactor, namesItsConstant) {
  const std::vector<Factor> factors = conversionFactors(Unit::in, Unit::cm, Pounds::exact);
  ASSERT_EQ(factors.size(), 1U);
  EXPECT_EQ(factors[0].over.origin.text(), "constant:cm-per-in");
  EXPECT_EQ(factors[0].over.value, n(254, 100));
  EXPECT_EQ(factors[0].under.value, Number(1));
}

TEST(ConversionFactor, ofPoundsFollowsTheRule) {
  const Factor exact = conversionFactors(Unit::lb, Unit::kg, Pounds::exact).front();
  EXPECT_EQ(exact.over.value, n(45359237, 100000000));
  EXPECT_EQ(exact.under.value, Number(1));
  const Factor trade = conversionFactors(Unit::lb, Unit::kg, Pounds::trade).front();
  EXPECT_EQ(trade.over.value, Number(1));  // 1 kg over 2.2 lb, as it is taught
  EXPECT_EQ(trade.under.value, n(22, 10));
  EXPECT_EQ(trade.over.origin.text(), "constant:lb-per-kg");
}

TEST(ConversionFactor, nothingToDoOrNoWayGivesNone) {
  EXPECT_TRUE(conversionFactors(Unit::mg, Unit::mg, Pounds::exact).empty());
  EXPECT_TRUE(conversionFactors(Unit::g, Unit::bodyG, Pounds::exact).empty());
}

TEST(Factor, turnedTwiceIsItself) {
  EXPECT_EQ(label.turned().turned(), label);
  EXPECT_EQ(label.turned().over, label.under);
}

TEST(Term, plainOneIsNothingToWrite) {
  EXPECT_TRUE(term(Number(1)).isPlainOne());
  EXPECT_FALSE(term(Number(1), {Unit::mL}).isPlainOne());
  EXPECT_FALSE(term(Number(2)).isPlainOne());
  Term fixed = term(Number(1));
  fixed.fixedDecimals = 2;  // a surface of 1.00 m² shown with its decimals
  EXPECT_FALSE(fixed.isPlainOne());
}

/// Chains of a few units used many times, so that partners are plenty.
Chain anyChain() {
  Chain chain;
  const int factors = *rc::gen::inRange(0, 6);
  const auto units =
      rc::gen::container<UnitProduct>(rc::gen::element(Unit::mg, Unit::kg, Unit::m2, Unit::mL, Unit::dose));
  for (int i = 0; i < factors; ++i) {
    const auto over = *rc::gen::inRange<std::int64_t>(1, 500);
    const auto under = *rc::gen::inRange<std::int64_t>(1, 500);
    chain.factors.push_back(
        factor(Number(over), *rc::gen::resize(4, units), Number(under), *rc::gen::resize(4, units)));
  }
  return chain;
}

using Count = std::map<Unit, int>;

Count countOf(const Chain& chain) {
  Count count;
  for (const Factor& one : chain.factors) {
    for (const Unit unit : one.over.units) ++count[unit];
    for (const Unit unit : one.under.units) --count[unit];
  }
  return count;
}

RC_GTEST_PROP(CancelProperty, whatIsLeftIsTheBalanceOfEachUnit, ()) {
  const Chain chain = anyChain();
  const Product product = cancel(chain);
  Count left;
  for (const Unit unit : product.left.over) ++left[unit];
  for (const Unit unit : product.left.under) --left[unit];
  for (const auto& [unit, count] : countOf(chain)) RC_ASSERT(left[unit] == count);
  for (const Unit above : product.left.over)
    for (const Unit below : product.left.under) RC_ASSERT(above != below);
}

RC_GTEST_PROP(CancelProperty, eachPlaceIsStruckOnceAndHoldsItsUnit, ()) {
  const Chain chain = anyChain();
  std::vector<Place> struck;
  const auto unitAt = [&](const Place& place) {
    const Factor& one = chain.factors[static_cast<std::size_t>(place.factor)];
    return (place.over ? one.over : one.under).units[static_cast<std::size_t>(place.use)];
  };
  for (const Cancellation& pair : cancel(chain).pairs) {
    RC_ASSERT(pair.above.over && !pair.below.over);
    RC_ASSERT(unitAt(pair.above) == pair.unit && unitAt(pair.below) == pair.unit);
    for (const Place& place : {pair.above, pair.below}) {
      for (const Place& other : struck) RC_ASSERT(!(other == place));
      struck.push_back(place);
    }
  }
}

RC_GTEST_PROP(CancelProperty, turningEveryFactorTurnsTheResult, ()) {
  const Chain chain = anyChain();
  Chain turned;
  for (const Factor& one : chain.factors) turned.factors.push_back(one.turned());
  const Product product = cancel(chain);
  const Product other = cancel(turned);
  RC_ASSERT(product.exact * other.exact == Number(1));
  RC_ASSERT(sameUnits(product.left, {other.left.under, other.left.over}));
}

}  // namespace
}  // namespace wardchalk::chain_test
