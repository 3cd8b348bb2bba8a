#include <gtest/gtest.h>

#include <string>

#include "core/entry/read_entry.h"
#include "tests/core/test_names.h"

// What is quoted of an entry that is not taken, and what is offered in its place.

namespace wardchalk::offers_test {
namespace {

struct Row {
  const char* name;
  const char* path;
  const char* typed;
  RefusalCode code;
  const char* quoted;
  const char* offered = "";
};

class OffersInstead : public ::testing::TestWithParam<Row> {};

TEST_P(OffersInstead, andQuotesWhatItIsAbout) {
  const Row& row = GetParam();
  const auto answer = readEntry(row.path, row.typed);
  ASSERT_TRUE(answer);
  EXPECT_FALSE(answer->isRead);
  ASSERT_TRUE(answer->refusal);
  EXPECT_EQ(idOf(answer->refusal->code), idOf(row.code));
  EXPECT_EQ(answer->refusal->typed, row.quoted);
  EXPECT_EQ(answer->refusal->suggestion, row.offered);
  EXPECT_EQ(answer->refusal->hint, "");  // no strength is told of what is no percentage
}

constexpr const char* dose = "order.dose";
constexpr const char* high = "reference.high";
constexpr const char* most = "reference.max_per_dose";
constexpr const char* strength = "stock.strength";
constexpr const char* schedule = "order.schedule";

using enum RefusalCode;

INSTANTIATE_TEST_SUITE_P(
    Numbers, OffersInstead,
    ::testing::Values(Row{"tens in words", dose, "twenty mg", numberInWords, "twenty", "20 mg"},
                      Row{"two hundred is 2 times 100", dose, "two hundred mg", numberInWords, "two hundred",
                          "200 mg"},
                      Row{"two hundred fifty is 200 and 50", dose, "two hundred fifty mg", numberInWords,
                          "two hundred fifty", "250 mg"},
                      Row{"as it is said aloud", dose, "two hundred and fifty milligrams", numberInWords,
                          "two hundred and fifty", "250 mg"},
                      Row{"hundred and a unit", dose, "one hundred and twenty-five mcg", numberInWords,
                          "one hundred and twenty-five", "125 mcg"},
                      Row{"a product is quoted with both numbers", dose, "2×40 mg", notANumber, "2×40"},
                      Row{"an underscore is quoted with both sides", dose, "1_000 mg", notANumber, "1_000"},
                      Row{"a hexadecimal number is quoted whole", dose, "0x10 mg", notANumber, "0x10"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Words, OffersInstead,
    ::testing::Values(
        Row{"a point behind the unit is quoted with it", dose, "80 mg.", unitUnknown, "mg.", "80 mg"},
        Row{"a point behind a unit of one letter", dose, "1 g.", unitUnknown, "g.", "1 g"},
        Row{"a point and more behind it", dose, "80 mg. po", trailingText, ". po"},
        Row{"max says no more than the field", most, "max 500 mg", wordTooMany, "max", "500 mg"},
        Row{"maximum says no more either", most, "maximum 500 mg", wordTooMany, "maximum", "500 mg"},
        Row{"a division by what looks like another", high, "50 mg/kg/day divided qd", scheduleLookAlike,
            "qd"},
        Row{"a division by no schedule", high, "50 mg/kg/day divided nonsense", dividedUnclear,
            "divided nonsense"},
        Row{"a percentage of something", strength, "5 mg %", percentStrength, "5 mg %"},
        Row{"two numbers and a percent", strength, "5 5 %", percentStrength, "5 5 %"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(Schedules, OffersInstead,
                         ::testing::Values(Row{"prn goes behind", schedule, "prn every 6 h", scheduleUnknown,
                                               "prn every 6 h", "every 6 h as needed"},
                                           Row{"as needed goes behind", schedule, "as needed every 6 h",
                                               scheduleUnknown, "as needed every 6 h", "every 6 h as needed"},
                                           Row{"b.i.d. in full", schedule, "b.i.d.", scheduleUnknown,
                                               "b.i.d.", "2 times a day"},
                                           Row{"letters behind a point are a word", schedule, "b.idle",
                                               scheduleUnknown, "b.idle"}),
                         test::NameOfRow());

}  // namespace
}  // namespace wardchalk::offers_test
