#include "core/unit/unit_product.h"

#include <gtest/gtest.h>

#include <utility>

// A list like any other; what is its own is where it keeps its units: the first seven in itself, more of them
// elsewhere.

namespace wardchalk::unit_product_test {
namespace {

/// So many units, no two beside each other alike.
UnitProduct made(std::size_t size) {
  UnitProduct units;
  for (std::size_t i = 0; i < size; ++i) units.push_back(i % 2 == 0 ? Unit::mg : Unit::kg);
  return units;
}

class OfSize : public testing::TestWithParam<std::size_t> {};

TEST_P(OfSize, HoldsWhatWasPutInInOrder) {
  const UnitProduct units = made(GetParam());
  ASSERT_EQ(units.size(), GetParam());
  EXPECT_EQ(units.empty(), GetParam() == 0);
  for (std::size_t i = 0; i < units.size(); ++i) EXPECT_EQ(units[i], i % 2 == 0 ? Unit::mg : Unit::kg) << i;
}

TEST_P(OfSize, ACopyIsItsOwn) {
  const UnitProduct first = made(GetParam());
  UnitProduct second = first;
  EXPECT_EQ(second, first);
  second.push_back(Unit::day);
  EXPECT_NE(second, first);
  EXPECT_EQ(first.size(), GetParam());
  EXPECT_EQ(second.back(), Unit::day);
}

TEST_P(OfSize, WhatWasMovedIsThere) {
  UnitProduct first = made(GetParam());
  const UnitProduct second = std::move(first);
  EXPECT_EQ(second, made(GetParam()));
}

TEST_P(OfSize, EachIsTakenOutAlone) {
  for (std::size_t at = 0; at < GetParam(); ++at) {
    UnitProduct units = made(GetParam());
    *(units.begin() + at) = Unit::day;
    units.erase(units.begin() + at);
    EXPECT_EQ(units.size(), GetParam() - 1);
    EXPECT_EQ(std::ranges::count(units, Unit::day), 0) << at;
    EXPECT_EQ(std::ranges::count(units, Unit::mg),
              static_cast<long>((GetParam() + 1) / 2) - (at % 2 == 0 ? 1 : 0));
  }
}

TEST_P(OfSize, EveryOneOfAKindIsTakenOut) {
  UnitProduct units = made(GetParam());
  units.eraseIf([](Unit unit) { return unit == Unit::mg; });
  EXPECT_EQ(units.size(), GetParam() / 2);
  EXPECT_EQ(std::ranges::count(units, Unit::kg), static_cast<long>(GetParam() / 2));
}

TEST_P(OfSize, EmptiedItIsFilledAnew) {
  UnitProduct units = made(GetParam());
  units.clear();
  EXPECT_TRUE(units.empty());
  units.append({Unit::mL, Unit::h});
  EXPECT_EQ(units, (UnitProduct{Unit::mL, Unit::h}));
}

INSTANTIATE_TEST_SUITE_P(UnitProduct, OfSize, testing::Values(0, 1, 6, 7, 8, 9, 40));

TEST(UnitProduct, TheOrderCounts) {
  EXPECT_NE((UnitProduct{Unit::mg, Unit::kg}), (UnitProduct{Unit::kg, Unit::mg}));
  EXPECT_NE((UnitProduct{Unit::mg}), (UnitProduct{Unit::mg, Unit::mg}));
}

}  // namespace
}  // namespace wardchalk::unit_product_test
