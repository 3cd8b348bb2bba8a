#include "core/child/age.h"

#include <gtest/gtest.h>

#include "core/entry/read_size.h"
#include "tests/core/test_names.h"

namespace wardchalk::age_test {
namespace {

struct Row {
  const char* name;
  const char* text;
  const char* days;     // Python fractions: 7 days = 1 week, 30.4375 days = 1 month, 12 months = 1 year
  const char* endDays;  // where "up to" this ends
  bool endIsOpen;
  bool wholeYears;
};

class AgeInDays : public ::testing::TestWithParam<Row> {};

TEST_P(AgeInDays, isExact) {
  const Row& row = GetParam();
  const Result<MixedQuantity> read = valueOf(readAge(row.text));
  ASSERT_TRUE(read);
  const Age age{*read};
  EXPECT_EQ(age.days().rationalText(), row.days);
  EXPECT_EQ(age.endDays().rationalText(), row.endDays);
  EXPECT_EQ(age.endIsOpen(), row.endIsOpen);
  EXPECT_EQ(age.isInWholeYears(), row.wholeYears);
}

INSTANTIATE_TEST_SUITE_P(
    Table, AgeInDays,
    ::testing::Values(Row{"day of birth", "0 day", "0", "0", false, false},
                      Row{"one day", "1 day", "1", "1", false, false},
                      Row{"half a day", "0.5 day", "1/2", "1/2", false, false},
                      Row{"one week", "1 week", "7", "7", false, false},
                      Row{"six weeks", "6 week", "42", "42", false, false},
                      Row{"one month", "1 month", "487/16", "487/8", true, false},
                      Row{"no months", "0 month", "0", "487/16", true, false},
                      Row{"a month and a half", "1.5 month", "1461/32", "1461/32", false, false},
                      Row{"twelve months are one year", "12 month", "1461/4", "6331/16", true, false},
                      Row{"one year", "1 year", "1461/4", "1461/2", true, true},
                      Row{"twelve years", "12 year", "4383", "18993/4", true, true},
                      Row{"no years", "0 year", "0", "1461/4", true, true},
                      Row{"twelve and a half years", "12.5 year", "36525/8", "36525/8", false, false},
                      Row{"years and months", "4 year 2 month", "12175/8", "24837/16", true, false},
                      Row{"years and no months are not whole years", "4 year 0 month", "1461", "23863/16",
                          true, false},
                      Row{"years and weeks", "4 year 2 week", "1475", "1475", false, false},
                      Row{"months and days", "3 month 10 day", "1621/16", "1621/16", false, false},
                      Row{"weeks and days", "1 week 6 day", "13", "13", false, false},
                      Row{"three parts", "1 year 1 month 1 day", "6347/16", "6347/16", false, false}),
    test::NameOfRow());

TEST(AgeInWholeYears, fractionalYearsAreNoWholeYears) {
  EXPECT_TRUE(Age{*valueOf(readAge("12.0 year"))}.isInWholeYears());
  EXPECT_FALSE(Age{*valueOf(readAge("12.1 year"))}.isInWholeYears());
  EXPECT_FALSE(Age{*valueOf(readAge("144 month"))}.isInWholeYears());
}

}  // namespace
}  // namespace wardchalk::age_test
