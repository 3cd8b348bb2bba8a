#include "core/child/likely_size.h"

#include <gtest/gtest.h>

#include <string>

#include "core/entry/read_size.h"
#include "tests/core/test_names.h"

namespace wardchalk::likely_size_test {
namespace {

/// A child from texts; an empty one is not entered.
Child childOf(const std::string& sex, const std::string& age, const std::string& weight,
              const std::string& height) {
  Child child;
  if (!sex.empty()) child.sex = sex == "female" ? Sex::female : Sex::male;
  if (!age.empty()) child.age = Age{*valueOf(readAge(age))};
  if (!weight.empty()) child.weight = *valueOf(readWeight(weight));
  if (!height.empty()) child.height = *valueOf(readHeight(height));
  return child;
}

/// "weight height weight-for-height", and "stop:" with those that are implausible; "likely" when nothing is
/// outside, and the reason when it is not judged.
std::string judged(const Child& child) {
  if (const auto why = whyNotJudged(child)) {
    constexpr const char* reasons[] = {"no size", "newborn", "adult", "no age"};
    return reasons[static_cast<std::size_t>(*why)];
  }
  const SizeJudgement judgement = judgeSize(child, bodySizeOf(child));
  const auto list = [](const SizeFaults& faults) {
    std::string text;
    if (faults.weight) text += " weight";
    if (faults.height) text += " height";
    if (faults.weightForHeight) text += " weight-for-height";
    return text;
  };
  if (!judgement.unlikely.any()) return judgement.implausible.any() ? "stops a likely size" : "likely";
  const std::string stop = list(judgement.implausible);
  return list(judgement.unlikely).substr(1) + (stop.empty() ? "" : "; stop:" + stop);
}

struct Row {
  const char* name;
  const char* sex;
  const char* age;
  const char* weight;
  const char* height;
  const char* expected;
};

class LikelySize : public ::testing::TestWithParam<Row> {};

TEST_P(LikelySize, isJudgedByTheRules) {
  const Row& row = GetParam();
  EXPECT_EQ(judged(childOf(row.sex, row.age, row.weight, row.height)), row.expected);
}

// Medians and distances were read from the tables by another program (Python).
INSTANTIATE_TEST_SUITE_P(
    WithAgeAndHeight, LikelySize,
    ::testing::Values(
        Row{"median girl", "female", "72 month", "20.5 kg", "115 cm", "likely"},
        Row{"pounds as kg at six", "female", "72 month", "45.2 kg", "115 cm", "weight weight-for-height"},
        Row{"kg as pounds at six", "female", "72 month", "9.3 kg", "115 cm", "weight weight-for-height"},
        Row{"pounds as kg at thirty months", "male", "30 month", "29.8 kg", "92 cm",
            "weight weight-for-height; stop: weight"},
        Row{"inches as cm at nine", "male", "108 month", "28 kg", "52.4 cm",
            "height weight-for-height; stop: height"},
        Row{"boy of 280 kg at nine", "male", "108 month", "280 kg", "133 cm",
            "weight weight-for-height; stop: weight"},
        Row{"swapped at sixteen", "male", "200 month", "173 kg", "62 cm",
            "weight height weight-for-height; stop: height"},
        Row{"pounds as kg at fifteen", "female", "180 month", "114.6 kg", "162 cm", "weight-for-height"},
        Row{"size of a boy of nine at three", "male", "36 month", "28 kg", "133 cm",
            "weight height; stop: height"},
        Row{"weight and height in other units", "female", "72 month", "45 lb 3 oz", "3 ft 9.3 in", "likely"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    WithOneFigure, LikelySize,
    ::testing::Values(Row{"weight likely", "male", "108 month", "28 kg", "", "likely"},
                      Row{"weight tenfold", "male", "108 month", "280 kg", "", "weight; stop: weight"},
                      Row{"weight in pounds", "female", "72 month", "45.2 kg", "", "weight"},
                      Row{"height likely", "male", "108 month", "", "133 cm", "likely"},
                      Row{"height in inches is asked and does not stop", "male", "108 month", "", "52.4 cm",
                          "height"},
                      Row{"height too tall", "male", "36 month", "", "133 cm", "height"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    WithoutAge, LikelySize,
    ::testing::Values(
        Row{"likely", "male", "", "28 kg", "133 cm", "likely"},
        Row{"pounds", "male", "", "61.7 kg", "133 cm", "weight-for-height"},
        Row{"weight above any child", "male", "", "280 kg", "133 cm", "weight weight-for-height"},
        Row{"weight at the greatest", "male", "", "250 kg", "133 cm", "weight-for-height"},
        Row{"height below any child", "female", "", "20 kg", "39.9 cm", "height weight-for-height"},
        Row{"height at the least", "female", "", "20 kg", "40 cm", "weight-for-height"},
        Row{"height above any child", "male", "", "90 kg", "210.1 cm", "height"},
        Row{"height at the greatest", "male", "", "90 kg", "210 cm", "likely"},
        Row{"weight below any child", "female", "", "1.49 kg", "45 cm", "weight weight-for-height"},
        Row{"weight at the least", "female", "", "1.5 kg", "45 cm", "weight-for-height"},
        Row{"weight alone", "male", "", "28 kg", "", "no age"},
        Row{"height alone", "male", "", "", "133 cm", "no age"},
        Row{"nothing", "male", "", "", "", "no size"},
        Row{"nothing but an age", "male", "9 year", "", "", "no size"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    EdgesOfAge, LikelySize,
    ::testing::Values(Row{"day before one month", "male", "30 day", "30 kg", "", "newborn"},
                      Row{"one month to the day", "male", "30.4375 day", "30 kg", "", "weight; stop: weight"},
                      Row{"one month", "male", "1 month", "30 kg", "", "weight; stop: weight"},
                      Row{"no months", "male", "0 month", "30 kg", "", "newborn"},
                      Row{"no years may be a newborn", "male", "0 year", "30 kg", "", "newborn"},
                      Row{"weeks", "male", "3 week", "30 kg", "", "newborn"},
                      Row{"eighteen years to the day", "male", "6574.5 day", "280 kg", "",
                          "weight; stop: weight"},
                      Row{"eighteen years", "male", "18 year", "280 kg", "", "weight; stop: weight"},
                      Row{"over eighteen years", "male", "6575 day", "280 kg", "", "adult"},
                      Row{"eighteen years and a month", "male", "18 year 1 month", "280 kg", "", "adult"},
                      Row{"nineteen years", "male", "19 year", "280 kg", "", "adult"}),
    test::NameOfRow());

// Lying, 4 below and 4 above the median at 24 months are 71.74 and 99.73 cm; standing, 71.07 and 98.80 cm.
INSTANTIATE_TEST_SUITE_P(
    EdgeOfInfancy, LikelySize,
    ::testing::Values(
        Row{"short lying", "female", "730 day", "", "71.4 cm", "height"},
        Row{"the same standing", "female", "730.5 day", "", "71.4 cm", "likely"},
        Row{"standing at the end of the second year", "female", "24 month", "", "71.4 cm", "likely"},
        Row{"tall lying", "female", "730 day", "", "99.2 cm", "likely"},
        Row{"tall standing", "female", "730.5 day", "", "99.2 cm", "height"},
        Row{"a year that ends at 24 months is lying", "female", "1 year", "", "99.7 cm", "likely"},
        Row{"so is such a month", "female", "23 month", "", "99.7 cm", "likely"},
        Row{"and taller is too tall", "female", "1 year", "", "99.8 cm", "height"}),
    test::NameOfRow());

// 3 and 3.5 above the median weight of a girl of 155 cm are 86.0 and 93.0 kg.
INSTANTIATE_TEST_SUITE_P(
    EdgeOfTwelveYears, LikelySize,
    ::testing::Values(Row{"the day before", "female", "4382 day", "90 kg", "155 cm", "weight-for-height"},
                      Row{"the day", "female", "4383 day", "90 kg", "155 cm", "likely"},
                      Row{"eleven years", "female", "11 year", "90 kg", "155 cm", "weight-for-height"},
                      Row{"twelve years", "female", "12 year", "90 kg", "155 cm", "likely"},
                      Row{"above the quieter limit", "female", "12 year", "94 kg", "155 cm",
                          "weight-for-height"},
                      Row{"no age", "female", "", "90 kg", "155 cm", "weight-for-height"}),
    test::NameOfRow());

// For a boy of 48 months weights from 11.49 to 25.02 kg are likely, of 60 months from 12.72 to 29.63 kg; of
// 72 months up to 34.84 kg, of 73 months up to 35.30 kg.
INSTANTIATE_TEST_SUITE_P(
    AgesThatStandForMore, LikelySize,
    ::testing::Values(Row{"heavy on the birthday", "male", "1461 day", "27 kg", "", "weight"},
                      Row{"likely by the end of the year", "male", "4 year", "27 kg", "", "likely"},
                      Row{"heavy all through the year", "male", "4 year", "30 kg", "", "weight"},
                      Row{"light on the next birthday", "male", "1826.25 day", "12 kg", "", "weight"},
                      Row{"likely at the start of the year", "male", "4 year", "12 kg", "", "likely"},
                      Row{"light all through the year", "male", "4 year", "11.4 kg", "", "weight"},
                      Row{"heavy at six years to the day", "male", "2191.5 day", "35.1 kg", "", "weight"},
                      Row{"likely by the end of the month", "male", "72 month", "35.1 kg", "", "likely"},
                      Row{"the same month in years", "male", "6 year 0 month", "35.1 kg", "", "likely"},
                      Row{"heavy all through the month", "male", "72 month", "35.4 kg", "", "weight"},
                      Row{"a part of a year is a day", "male", "6.0001 year", "35.1 kg", "", "weight"}),
    test::NameOfRow());

// At 72 months and to the end of that month a weight is likely up to 37.09 kg for a girl and up to 35.30 kg
// for a boy.
INSTANTIATE_TEST_SUITE_P(
    SexNotStated, LikelySize,
    ::testing::Values(Row{"a girl", "female", "72 month", "36 kg", "", "likely"},
                      Row{"a boy", "male", "72 month", "36 kg", "", "weight"},
                      Row{"either", "", "72 month", "36 kg", "", "likely"},
                      Row{"neither", "", "72 month", "37.2 kg", "", "weight"},
                      Row{"implausible for a boy only", "", "2191.5 day", "54 kg", "", "weight"},
                      Row{"implausible for both", "", "2191.5 day", "58 kg", "", "weight; stop: weight"},
                      Row{"neither age nor sex", "", "", "61.7 kg", "133 cm", "weight-for-height"},
                      Row{"neither age nor sex and likely", "", "", "28 kg", "133 cm", "likely"}),
    test::NameOfRow());

TEST(LikelySize, isNotJudgedForAChildBornEarly) {
  Child child = childOf("female", "9 month", "16 kg", "65 cm");
  EXPECT_NE(judged(child), "likely");
  child.bornEarly = true;
  EXPECT_EQ(judged(child), "newborn");
  child.age.reset();
  EXPECT_EQ(judged(child), "newborn");
}

TEST(LikelySize, ofANewbornIsOutsideOnlyWhereItIsTooLarge) {
  const auto faults = [](const char* weight, const char* height) {
    const Child child = childOf("male", "6 day", weight, height);
    return judgeTooLarge(child, bodySizeOf(child)).unlikely;
  };
  EXPECT_FALSE(faults("5.9 kg", "58 cm").any());
  EXPECT_FALSE(faults("0.318 kg", "").any());
  EXPECT_TRUE(faults("8 kg", "").weight);
  EXPECT_TRUE(faults("31.8 kg", "").weight);
  EXPECT_TRUE(faults("3.2 kg", "102 cm").height);
  EXPECT_FALSE(faults("3.2 kg", "102 cm").weight);
}

// A boy of one month: 3.5 above the median weight is about 6.5 kg, 8 above about 9 kg (rules A and E).
TEST(LikelySize, ofANewbornIsImplausibleOnlyWithAWeight) {
  const auto stops = [](const char* weight, const char* height) {
    const Child child = childOf("male", "6 day", weight, height);
    return judgeTooLarge(child, bodySizeOf(child)).implausible;
  };
  EXPECT_FALSE(stops("8 kg", "").any());
  EXPECT_TRUE(stops("31.8 kg", "").weight);
  EXPECT_TRUE(stops("3.2 kg", "102 cm").height);
  EXPECT_FALSE(stops("", "102 cm").any());
}

TEST(LikelySize, isNeverTooLargeForAnAgeThatIsNotKnown) {
  const Child child = childOf("male", "", "31.8 kg", "102 cm");
  const SizeJudgement judgement = judgeTooLarge(child, bodySizeOf(child));
  EXPECT_FALSE(judgement.unlikely.any());
  EXPECT_FALSE(judgement.implausible.any());
  EXPECT_EQ(judgement.oddness, 0);
}

TEST(LikelySize, oddnessIsTheGreatestDistanceOfTheMostOrdinaryReading) {
  const Child girl = childOf("female", "2191.5 day", "45.2 kg", "115 cm");
  EXPECT_NEAR(judgeSize(girl, bodySizeOf(girl)).oddness, 5.34, 0.005);  // worked by another program
  const Child boy = childOf("male", "2191.5 day", "45.2 kg", "115 cm");
  const Child either = childOf("", "2191.5 day", "45.2 kg", "115 cm");
  EXPECT_GT(judgeSize(boy, bodySizeOf(boy)).oddness, 5.34);
  EXPECT_NEAR(judgeSize(either, bodySizeOf(either)).oddness, 5.34, 0.005);
}

TEST(BodySize, isConvertedExactly) {
  const BodySize size = bodySizeOf(childOf("", "", "8 lb 3 oz", "3 ft 5 in"));
  EXPECT_EQ(size.kg, Number::ratio(131, 16) * Number::ratio(45359237, 100000000));
  EXPECT_EQ(size.cm, Number::ratio(10414, 100));
}

}  // namespace
}  // namespace wardchalk::likely_size_test
