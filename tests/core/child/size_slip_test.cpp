#include "core/child/size_slip.h"

#include <gtest/gtest.h>

#include <string>

#include "core/entry/read_size.h"
#include "tests/core/test_names.h"

namespace wardchalk::size_slip_test {
namespace {

Child childOf(const std::string& age, const std::string& weight, const std::string& height) {
  Child child;
  child.sex = Sex::female;
  if (!age.empty()) child.age = Age{*valueOf(readAge(age))};
  if (!weight.empty()) child.weight = *valueOf(readWeight(weight));
  if (!height.empty()) child.height = *valueOf(readHeight(height));
  return child;
}

std::string slipsOf(const Child& child) {
  std::string text;
  for (const SizeSlip slip : slipsThatExplain(child)) text.append(text.empty() ? "" : " ").append(idOf(slip));
  return text;
}

struct Row {
  const char* name;
  const char* age;
  const char* weight;
  const char* height;
  const char* expected;
};

class SizeSlips : public ::testing::TestWithParam<Row> {};

TEST_P(SizeSlips, areThoseThatMakeTheSizeOrdinary) {
  const Row& row = GetParam();
  EXPECT_EQ(slipsOf(childOf(row.age, row.weight, row.height)), row.expected);
}

// Each is an ordinary girl (17 kg and 103 cm at four years; 28 kg and 133 cm at nine), spoiled by one slip.
INSTANTIATE_TEST_SUITE_P(
    OneSlip, SizeSlips,
    ::testing::Values(
        Row{"pounds as kg", "4 year", "37.5 kg", "103 cm", "pounds-as-kg"},
        Row{"pounds as kg with weight alone", "4 year", "37.5 kg", "", "pounds-as-kg"},
        Row{"pounds as kg with no age", "", "37.5 kg", "103 cm", "pounds-as-kg"},
        Row{"kg as pounds", "4 year", "17 lb", "103 cm", "kg-as-pounds"},
        Row{"kg taken for pounds and converted", "4 year", "7.71 kg", "103 cm", "kg-as-pounds"},
        Row{"inches as cm", "4 year", "17 kg", "40.6 cm", "inches-as-cm"},
        Row{"inches as cm with height alone", "4 year", "", "40.6 cm", "inches-as-cm"},
        Row{"cm as inches", "4 year", "17 kg", "103 in", "cm-as-inches"},
        Row{"pounds and inches as kg and cm", "9 year", "61.7 kg", "52.4 cm", "pounds-and-inches"},
        Row{"kg and cm as pounds and inches", "4 year", "17 lb", "103 in", "kg-and-cm"},
        Row{"swapped", "9 year", "133 kg", "28 cm", "weight-and-height-swapped"},
        Row{"weight ten times too much", "9 year", "280 kg", "133 cm", "weight-ten-times-too-much"},
        Row{"weight ten times too little", "9 year", "2.8 kg", "133 cm", "weight-ten-times-too-little"},
        Row{"height ten times too much", "9 year", "28 kg", "1330 cm", "height-ten-times-too-much"},
        Row{"height ten times too little", "9 year", "28 kg", "13.3 cm", "height-ten-times-too-little"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(SeveralOrNone, SizeSlips,
                         ::testing::Values(Row{"a heavy child whose weight no slip explains", "4 year",
                                               "70 kg", "103 cm", ""},
                                           Row{"an age that does not fit", "3 year", "28 kg", "133 cm", ""},
                                           Row{"two fit in pounds and inches", "9 year", "52.4 lb", "61.7 in",
                                               "kg-as-pounds weight-and-height-swapped"},
                                           Row{"two fit", "16 year", "173 kg", "62 cm",
                                               "pounds-and-inches weight-and-height-swapped"}),
                         test::NameOfRow());

TEST(SizeSlips, namesAtMostTwoHoweverManyFit) {
  for (const char* age : {"", "2 year", "9 year", "15 year"})
    for (int kg = 1; kg < 300; kg += 7)
      for (int cm = 10; cm < 1500; cm += 37) {
        const Child child = childOf(age, std::to_string(kg) + " kg", std::to_string(cm) + " cm");
        EXPECT_LE(slipsThatExplain(child).size(), 2U);
      }
}

TEST(SizeSlips, undoingOneGivesWhatWasMeant) {
  const Child child = childOf("", "22 lb", "30 in");
  EXPECT_EQ(undone(SizeSlip::kgAsPounds, child)->kg, Number(22));
  EXPECT_EQ(undone(SizeSlip::cmAsInches, child)->cm, Number(30));
  EXPECT_EQ(undone(SizeSlip::kgAndCm, child)->kg, Number(22));
  EXPECT_EQ(undone(SizeSlip::kgAndCm, child)->cm, Number(30));
  EXPECT_EQ(undone(SizeSlip::weightAndHeightSwapped, child)->kg,
            Number(30) * Number::ratio(45359237, 100000000));
  EXPECT_EQ(undone(SizeSlip::weightAndHeightSwapped, child)->cm, Number(22) * Number::ratio(254, 100));
  EXPECT_EQ(undone(SizeSlip::weightTenTimesTooLittle, child)->cm, bodySizeOf(child).cm);
}

TEST(SizeSlips, cannotBeMadeWithWhatIsNotEntered) {
  const Child weighed = childOf("4 year", "17 kg", "");
  for (const SizeSlip slip : {SizeSlip::inchesAsCm, SizeSlip::poundsAndInches, SizeSlip::kgAndCm,
                              SizeSlip::weightAndHeightSwapped, SizeSlip::heightTenTimesTooLittle})
    EXPECT_FALSE(undone(slip, weighed)) << idOf(slip);
  EXPECT_FALSE(undone(SizeSlip::poundsAsKg, childOf("4 year", "", "103 cm")));
  EXPECT_FALSE(undone(SizeSlip::weightAndHeightSwapped, childOf("4 year", "37 lb 4 oz", "103 cm")));
}

}  // namespace
}  // namespace wardchalk::size_slip_test
