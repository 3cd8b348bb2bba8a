#include "core/record/field_text.h"

#include <gtest/gtest.h>

#include <ostream>

#include "core/medicine/paths.h"

namespace wardchalk::field_text_test {

void PrintTo(const Boxes& boxes, std::ostream* out) {
  *out << "{" << boxes.text << "|" << boxes.unit << "|" << boxes.second << "|" << boxes.secondUnit << "}";
}

namespace {

const Boxes highPerDay{"300", "mg", "", "/m2/day"};

struct Row {
  const char* name;
  std::string_view path;
  Boxes boxes;
  std::string entry;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class Composed : public testing::TestWithParam<Row> {};

TEST_P(Composed, makesTheEntryOfFiles) {
  EXPECT_EQ(composed(GetParam().path, GetParam().boxes, highPerDay), GetParam().entry);
}

INSTANTIATE_TEST_SUITE_P(
    Boxes, Composed,
    testing::Values(Row{"metricWeight", path::weight, {"17.2", "kg", "", ""}, "17.2 kg"},
                    Row{"poundsAndOunces", path::weight, {"8", "lb oz", "3", ""}, "8 lb 3 oz"},
                    Row{"poundsWithoutOunces", path::weight, {"37", "lb oz", "", ""}, "37 lb"},
                    Row{"ouncesAlone", path::weight, {"", "lb oz", "14", ""}, "14 oz"},
                    Row{"feetAndInches", path::height, {"3", "ft in", "4.5", ""}, "3 ft 4.5 in"},
                    Row{"secondBoxWithoutItsUnitIsNotDropped", path::weight, {"8", "lb", "3", ""}, "8 lb 3"},
                    Row{"yearsAndMonths", path::age, {"4", "year month", "2", ""}, "4 year 2 month"},
                    Row{"noUnit", path::weight, {"17.2", "", "", ""}, "17.2"},
                    Row{"spacesAtTheEnds", path::weight, {" 17.2 ", "kg", "", ""}, "17.2 kg"},
                    Row{"spaceInside", path::weight, {"1 7", "kg", "", ""}, "1 7 kg"},
                    Row{"comma", path::weight, {"17,2", "kg", "", ""}, "17,2 kg"},
                    Row{"unsafeUnitStandsForItself", path::dose, {"80 µg", "mg", "", "/dose"}, "80 µg"},
                    Row{"exponentStandsForItself", path::weight, {"1e3", "kg", "", ""}, "1e3"},
                    Row{"dose", path::dose, {"80", "mg", "", "/dose"}, "80 mg/dose"},
                    Row{"doseForEachKg", path::dose, {"4", "mg", "", "/kg/day"}, "4 mg/kg/day"},
                    Row{"doseWithoutBasis", path::dose, {"4", "mg", "", ""}, "4 mg"},
                    Row{"lowEndTakesUnitAndBasisOfHigh", path::low, {"240", "", "", ""}, "240 mg/m2/day"},
                    Row{"lowEndWithItsOwnUnit", path::low, {"0.24 g/m2/day", "", "", ""}, "0.24 g/m2/day"},
                    Row{"strength", path::strength, {"120", "mg", "5", "mL"}, "120 mg/5 mL"},
                    Row{"tablet", path::strength, {"2", "mg", "", "tablet"}, "2 mg/tablet"},
                    Row{"strengthWithoutVolume", path::strength, {"2", "mg", "", ""}, "2 mg"},
                    Row{"dropFactor", path::dropFactor, {"20", "drop/mL", "", ""}, "20 drop/mL"},
                    Row{"words", path::schedule, {" every 12 h", "", "", ""}, "every 12 h"}),
    [](const auto& one) { return std::string(one.param.name); });

class Sorted : public testing::TestWithParam<Row> {};

TEST_P(Sorted, putsATypedUnitInItsPlace) {
  EXPECT_EQ(sorted(GetParam().path, {GetParam().entry, "", "", ""}), GetParam().boxes);
}

INSTANTIATE_TEST_SUITE_P(
    Typed, Sorted,
    testing::Values(Row{"kg", path::weight, {"17.2", "kg", "", ""}, "17.2 kg"},
                    Row{"poundsAndOunces", path::weight, {"8", "lb oz", "3", ""}, "8 lb 3 oz"},
                    Row{"feet", path::height, {"3", "ft in", "4", ""}, "3 ft 4 in"},
                    Row{"otherSpelling", path::weight, {"17.2", "kg", "", ""}, "17.2 kgs"},
                    Row{"otherSpellingOfAge", path::age, {"4", "year month", "2", ""}, "4y 2mo"},
                    Row{"unsafeSpelling", path::dose, {"80 µg", "", "", ""}, "80 µg"},
                    Row{"noSpace", path::weight, {"17.2", "kg", "", ""}, "17.2kg"},
                    Row{"badNumber", path::weight, {".5 kg", "", "", ""}, ".5 kg"},
                    Row{"numberAlone", path::weight, {"17.2", "", "", ""}, "17.2"},
                    Row{"twoSpaces", path::weight, {"17.2", "kg", "", ""}, "17.2  kg"},
                    Row{"reference", path::high, {"120", "mg", "", "/m2/dose"}, "120 mg/m2/dose"},
                    Row{"doseWithoutBasis", path::dose, {"80", "mg", "", ""}, "80 mg"},
                    Row{"doseForKgWithoutTime", path::dose, {"4 mg/kg", "", "", ""}, "4 mg/kg"},
                    Row{"strength", path::strength, {"120", "mg", "5", "mL"}, "120 mg/5 mL"},
                    Row{"strengthInWords", path::strength, {"120", "mg", "5", "mL"}, "120 mg in 5 mL"},
                    Row{"strengthInOneMl", path::strength, {"25", "mg", "1", "mL"}, "25 mg/mL"},
                    Row{"tablet", path::strength, {"2", "mg", "", "tablet"}, "2 mg/tablet"},
                    Row{"strengthAmountAlone", path::strength, {"25", "mg", "", ""}, "25 mg"},
                    Row{"ratio", path::strength, {"1:1000", "", "", ""}, "1:1000"},
                    Row{"partsInMixedSystems", path::weight, {"5 kg 3 oz", "", "", ""}, "5 kg 3 oz"}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(Sorted, keepsTheSecondBoxWhenThePartBeforeItIsTypedWithItsUnit) {
  const Boxes typed{"9 lb", "lb oz", "3", ""};
  EXPECT_EQ(sorted(path::weight, typed), (Boxes{"9", "lb oz", "3", ""}));
}

TEST(Sorted, neverDropsASecondBoxForATypedPart) {
  const Boxes typed{"9 lb 2 oz", "lb oz", "3", ""};
  EXPECT_EQ(sorted(path::weight, typed), typed);
}

TEST(Sorted, typedUnitReplacesTheChosenOne) {
  EXPECT_EQ(sorted(path::weight, {"37 lb", "kg", "", ""}), (Boxes{"37", "lb", "", ""}));
  EXPECT_EQ(sorted(path::dose, {"80 mg", "g", "", "/day"}), (Boxes{"80", "mg", "", "/day"}));
}

TEST(BoxesOf, saysWhatAFileLeavesUnsaid) {
  EXPECT_EQ(boxesOf(path::dose, "80 mg"), (Boxes{"80", "mg", "", "/dose"}));
  EXPECT_EQ(boxesOf(path::dose, "4 mg/kg"), (Boxes{"4", "mg", "", "/kg/dose"}));
  EXPECT_EQ(boxesOf(path::dose, "30 mg/kg/day"), (Boxes{"30", "mg", "", "/kg/day"}));
  EXPECT_EQ(boxesOf(path::maxPerDay, "2 g"), (Boxes{"2", "g", "", "/day"}));
  EXPECT_EQ(boxesOf(path::maxPerDose, "20 mg/kg"), (Boxes{"20", "mg", "", "/kg/dose"}));
  EXPECT_EQ(boxesOf(path::dose, "80 mg/day/kg"), (Boxes{"80", "mg", "", "/kg/day"}));
}

TEST(BoxesOf, aLowEndInAnotherUnitStandsWhole) {
  EXPECT_EQ(boxesOf(path::low, "240 mg/m2/day", highPerDay), (Boxes{"240", "", "", ""}));
  EXPECT_EQ(boxesOf(path::low, "240 mg/m2/dose", highPerDay), (Boxes{"240 mg/m2/dose", "", "", ""}));
}

TEST(BoxesOf, whatDoesNotFitTheBoxesStandsWholeInTheFirst) {
  EXPECT_EQ(boxesOf(path::high, "10-15 mg/kg/dose"), (Boxes{"10-15 mg/kg/dose", "", "", ""}));
  EXPECT_EQ(boxesOf(path::age, "2 week 3 day"), (Boxes{"2 week 3 day", "", "", ""}));
}

}  // namespace
}  // namespace wardchalk::field_text_test
