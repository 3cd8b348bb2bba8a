#include "core/unit/print.h"

#include <gtest/gtest.h>

namespace wardchalk::print_test {
namespace {

Number n(std::int64_t over, std::int64_t under = 1) { return Number::ratio(over, under); }

TEST(Printed, pluralFollowsTheNumber) {
  EXPECT_EQ(printed(Quantity{Number(1), Unit::drop}), "1 drop");
  EXPECT_EQ(printed(Quantity{Number(2), Unit::drop}), "2 drops");
  EXPECT_EQ(printed(Quantity{Number(0), Unit::drop}), "0 drops");
  EXPECT_EQ(printed(Quantity{n(1, 2), Unit::tablet}), "0.5 tablets");
  EXPECT_EQ(printed(Quantity{Number(1), Unit::units}), "1 unit");
  EXPECT_EQ(printed(Quantity{Number(100), Unit::units}), "100 units");
  EXPECT_EQ(printed(Quantity{n(7, 10), Unit::m2}), "0.7 m²");
}

TEST(Printed, whatReadsAsOneIsOne) {
  EXPECT_EQ(printed(Quantity{n(1000001, 1000000), Unit::drop}), "≈ 1 drop");
  EXPECT_EQ(printed(Quantity{n(999999, 1000000), Unit::drop}), "≈ 1 drop");
  EXPECT_EQ(printed(Quantity{n(11, 10), Unit::drop}), "1.1 drops");
}

TEST(Printed, isMarkedWhereItIsRounded) {
  EXPECT_EQ(printed(Quantity{n(10, 3), Unit::mL}), "≈ 3.333 mL");
  EXPECT_EQ(printed(Quantity{n(10, 3), Unit::mL}, Grouping::commas, 6), "≈ 3.33333 mL");
}

TEST(Printed, thousandsHaveACommaOnPaperAndNoneInFiles) {
  EXPECT_EQ(printed(Quantity{Number(1000), Unit::mg}), "1,000 mg");
  EXPECT_EQ(filed(Quantity{Number(1000), Unit::mg}), "1000 mg");
}

TEST(Printed, partsStandSideBySide) {
  EXPECT_EQ(printed(MixedQuantity{{{Number(8), Unit::lb}, {Number(3), Unit::oz}}}), "8 lb 3 oz");
  EXPECT_EQ(printed(MixedQuantity{{{Number(4), Unit::year}, {Number(1), Unit::month}}}), "4 years 1 month");
}

TEST(Printed, aDoseSaysForWhatSizeAndTimeItIs) {
  const auto dose = [](Unit unit, PerSize size, PerTime time) {
    return printed(DoseAmount{{Number(15), unit}, size, time});
  };
  EXPECT_EQ(dose(Unit::mg, PerSize::none, PerTime::none), "15 mg");
  EXPECT_EQ(dose(Unit::mg, PerSize::kg, PerTime::none), "15 mg/kg");
  EXPECT_EQ(dose(Unit::mg, PerSize::none, PerTime::day), "15 mg/day");
  EXPECT_EQ(dose(Unit::mg, PerSize::kg, PerTime::dose), "15 mg/kg/dose");
  EXPECT_EQ(dose(Unit::mg, PerSize::m2, PerTime::week), "15 mg/m²/week");
  EXPECT_EQ(dose(Unit::mcg, PerSize::kg, PerTime::min), "15 mcg/kg/min");
  EXPECT_EQ(dose(Unit::units, PerSize::kg, PerTime::h), "15 units/kg/h");
}

TEST(Printed, strengthIsAnAmountInAVolume) {
  EXPECT_EQ(printed(Strength{{Number(120), Unit::mg}, {Number(5), Unit::mL}}), "120 mg in 5 mL");
  EXPECT_EQ(printed(Strength{{Number(2), Unit::mg}, {Number(1), Unit::tablet}}), "2 mg in 1 tablet");
}

TEST(Filed, spellsUnitsAsFilesDo) {
  EXPECT_EQ(filed(Quantity{Number(2), Unit::drop}), "2 drop");
  EXPECT_EQ(filed(Quantity{n(7, 10), Unit::m2}), "0.7 m2");
  EXPECT_EQ(filed(Quantity{Number(3500), Unit::bodyG}), "3500 g");
}

}  // namespace
}  // namespace wardchalk::print_test
