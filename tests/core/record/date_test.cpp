#include "core/record/date.h"

#include <gtest/gtest.h>

namespace wardchalk::date_test {
namespace {

TEST(Date, readsDaysOfTheCalendarAndWritesThemAlike) {
  for (const char* text :
       {"2026-01-01", "2026-12-31", "2024-02-29", "2000-02-29", "1900-02-28", "2999-12-31"}) {
    const Result<Date> date = readDate(text);
    ASSERT_TRUE(date) << text;
    EXPECT_EQ(textOf(*date), text);
  }
}

TEST(Date, refusesDaysThatAreNotThere) {
  for (const char* text : {"2026-02-29", "1900-02-29", "2100-02-29", "2026-04-31", "2026-13-01", "2026-00-10",
                           "2026-01-00", "2026-01-32", "1899-12-31", "3000-01-01", "0000-01-01"}) {
    const Result<Date> date = readDate(text);
    ASSERT_FALSE(date) << text;
    EXPECT_EQ(date.refusal().code, RefusalCode::dateUnknown) << text;
  }
}

TEST(Date, refusesEveryOtherSpelling) {
  for (const char* text :
       {"26-01-01", "2026-1-1", "2026/01/01", "01.02.2026", "01/02/2026", "20260101", "2026-01-01T00:00",
        " 2026-01-01", "2026-01-01 ", "2026-01-0a", "+2026-01-01", "January 2026", "２０２６-01-01"}) {
    const Result<Date> date = readDate(text);
    ASSERT_FALSE(date) << text;
    EXPECT_EQ(date.refusal().code, RefusalCode::dateShape) << text;
  }
  EXPECT_EQ(readDate("").refusal().code, RefusalCode::empty);
}

TEST(Date, isOrderedByTheCalendar) {
  EXPECT_LT((Date{2025, 12, 31}), (Date{2026, 1, 1}));
  EXPECT_LT((Date{2026, 1, 31}), (Date{2026, 2, 1}));
}

}  // namespace
}  // namespace wardchalk::date_test
