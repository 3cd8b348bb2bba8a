#include "core/practice/marking/wanted_unit.h"

#include <gtest/gtest.h>

// What a number comes to in the unit that a line asks for, and how its own unit fits that one.

namespace wardchalk::wanted_unit_test {
namespace {

struct Row {
  const char* name;
  Units units;
  Units wanted;
  UnitFit fit;
  Number value;  ///< that 6 of these units come to; 6 where nothing was converted
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class WantedUnit : public testing::TestWithParam<Row> {};

TEST_P(WantedUnit, isComparedOneByOne) {
  const Row& row = GetParam();
  const InWanted found = inWantedUnit(Number(6), row.units, row.wanted);
  EXPECT_EQ(found.fit, row.fit);
  EXPECT_EQ(found.value, row.value);
}

const Units mgADose{{Unit::mg}, {Unit::dose}};
const Units byWeightAndMinute{{Unit::mcg}, {Unit::kg, Unit::min}};

INSTANTIATE_TEST_SUITE_P(
    Table, WantedUnit,
    testing::Values(
        Row{"none", {}, mgADose, UnitFit::leftOut, Number(6)},
        Row{"itself", mgADose, mgADose, UnitFit::fits, Number(6)},
        Row{"grams", {{Unit::g}, {Unit::dose}}, mgADose, UnitFit::fits, Number(6000)},
        Row{"ofNoDose", {{Unit::g}, {}}, mgADose, UnitFit::fits, Number(6000)},
        Row{"ofADay", {{Unit::g}, {Unit::day}}, mgADose, UnitFit::otherPer, Number(6000)},
        Row{"aDayOfNothingAsked", {{Unit::g}, {Unit::day}}, {{Unit::mg}, {}}, UnitFit::fits, Number(6000)},
        Row{"anotherKind", {{Unit::mL}, {}}, mgADose, UnitFit::different, Number(6)},
        Row{"oneTooMany", {{Unit::g}, {Unit::mL}}, mgADose, UnitFit::different, Number(6)},
        Row{"upsideDown", {{Unit::dose}, {Unit::mg}}, mgADose, UnitFit::different, Number(6)},
        Row{"byTheHour",
            {{Unit::mcg}, {Unit::kg, Unit::h}},
            byWeightAndMinute,
            UnitFit::fits,
            Number::ratio(1, 10)},
        Row{"inAnotherOrder",
            {{Unit::mcg}, {Unit::h, Unit::kg}},
            byWeightAndMinute,
            UnitFit::fits,
            Number::ratio(1, 10)},
        Row{"twiceTheWeight",
            {{Unit::g}, {Unit::kg, Unit::kg}},
            byWeightAndMinute,
            UnitFit::different,
            Number(6)},
        Row{"withoutTheWeight", {{Unit::g}, {Unit::min}}, byWeightAndMinute, UnitFit::different, Number(6)}),
    [](const testing::TestParamInfo<Row>& row) { return std::string(row.param.name); });

}  // namespace
}  // namespace wardchalk::wanted_unit_test
