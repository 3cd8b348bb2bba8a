#include "core/working/found.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace wardchalk::found_test {
namespace {

const Origin order = Origin::field("order.dose");

static_assert(!std::is_default_constructible_v<Found>);
static_assert(!std::is_constructible_v<Found, Number, Origin>);
static_assert(!std::is_constructible_v<Found, Quantity, Origin>);

Found milligrams(int value, UnitProduct under) {
  return Found({Number(value), Unit::mg}, std::move(under), order);
}

Factor perDose(int value) { return {{Number(value), {Unit::mg}, order}, {Number(1), {Unit::dose}, order}}; }

TEST(Found, standsInTheNextChainWithItsOwnUnits) {
  EXPECT_EQ(factorOf(milligrams(84, {Unit::dose})), perDose(84));
}

TEST(Found, aPlainAmountStandsOverOne) {
  const Factor factor = factorOf(milligrams(84, {}));
  EXPECT_EQ(factor.under, Term{});  // a one that comes from nowhere
  EXPECT_EQ(factor.over.units, UnitProduct{Unit::mg});
}

TEST(Found, isWhatAChainComesToInTheUnitsWanted) {
  const auto found = foundBy({{perDose(84)}}, {{Unit::mg}, {Unit::dose}}, order);
  ASSERT_TRUE(found);
  EXPECT_EQ(*found, milligrams(84, {Unit::dose}));
}

TEST(Found, isNothingInOtherUnitsThanThoseWanted) {
  EXPECT_FALSE(foundBy({{perDose(84)}}, {{Unit::mg}, {}}, order));
  EXPECT_FALSE(foundBy({{perDose(84)}}, {{Unit::mg}, {Unit::day}}, order));
  EXPECT_FALSE(foundBy({{perDose(84)}}, {{Unit::mcg}, {Unit::dose}}, order));
  EXPECT_FALSE(foundBy({{perDose(84).turned()}}, {{Unit::mg}, {Unit::dose}}, order));
  EXPECT_FALSE(foundBy({}, {{Unit::mg}, {Unit::dose}}, order));
}

TEST(Found, isNothingWithoutOneUnitAbove) {
  EXPECT_FALSE(foundBy({{perDose(84).turned()}}, {{Unit::dose}, {Unit::mg, Unit::mg}}, order));
  EXPECT_FALSE(foundBy({{{{Number(2), {}, order}, {Number(1), {}, order}}}}, {{}, {}}, order));
  EXPECT_FALSE(
      foundBy({{{{Number(2), {Unit::mg, Unit::mL}, order}, {}}}}, {{Unit::mg, Unit::mL}, {}}, order));
}

TEST(Found, isNothingOfAChainWhoseRootIsMeant) {
  const Factor square{{Number(4), {Unit::mg, Unit::mg}, order}, {}};
  EXPECT_FALSE(foundBy({{square}, /*rooted=*/true}, {{Unit::mg}, {}}, order));
}

TEST(Found, inOneIsTheAmountOfJustThatUnit) {
  EXPECT_EQ(inOne(Unit::dose, milligrams(84, {Unit::dose})), milligrams(84, {}));
  EXPECT_FALSE(inOne(Unit::day, milligrams(84, {Unit::dose})));
  EXPECT_FALSE(inOne(Unit::dose, milligrams(84, {})));
  EXPECT_FALSE(inOne(Unit::dose, milligrams(84, {Unit::kg, Unit::dose})));
}

}  // namespace
}  // namespace wardchalk::found_test
