#include "core/entry/read_schedule.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>
#include <vector>

#include "tests/core/test_names.h"

namespace wardchalk::schedule_test {
namespace {

using Kind = Schedule::Kind;

/// As a file is read, which holds what was read before as well.
Result<Schedule> readInFile(std::string_view text) {
  EntrySetting file;
  file.from = EntryFrom::file;
  return valueOf(readOrderSchedule(text, file));
}

Result<Schedule> readAtBedside(std::string_view text) { return valueOf(readOrderSchedule(text)); }

struct Row {
  const char* name;
  const char* typed;
  Kind kind;
  const char* fewest;  // doses a day, in lowest terms, by hand from R4
  const char* most;
  const char* text;
};

class ReadsSchedule : public ::testing::TestWithParam<Row> {};

TEST_P(ReadsSchedule, asARangeOfDosesADay) {
  const Row& row = GetParam();
  const Result<Schedule> schedule = readInFile(row.typed);
  ASSERT_TRUE(schedule) << idOf(schedule.refusal().code);
  EXPECT_EQ(schedule->kind, row.kind);
  EXPECT_EQ(schedule->fewest.rationalText(), row.fewest);
  EXPECT_EQ(schedule->most.rationalText(), row.most);
  EXPECT_EQ(schedule->text, row.text);
}

TEST_P(ReadsSchedule, andItsOwnWordsTheSame) {
  const Result<Schedule> schedule = readInFile(GetParam().typed);
  ASSERT_TRUE(schedule);
  const Result<Schedule> again = readInFile(schedule->text);
  ASSERT_TRUE(again) << schedule->text;
  EXPECT_EQ(*again, *schedule);
}

INSTANTIATE_TEST_SUITE_P(
    Every, ReadsSchedule,
    ::testing::Values(
        Row{"every 12 h", "every 12 h", Kind::repeated, "2", "2", "every 12 h"},
        Row{"every 8 h", "every 8 h", Kind::repeated, "3", "3", "every 8 h"},
        Row{"every 5 h does not divide the day", "every 5 h", Kind::repeated, "24/5", "24/5", "every 5 h"},
        Row{"every 24 h", "every 24 h", Kind::repeated, "1", "1", "every 24 h"},
        Row{"in words", "every twenty-four hours", Kind::repeated, "1", "1", "every 24 h"},
        Row{"in words without a hyphen", "every twenty four hours", Kind::repeated, "1", "1", "every 24 h"},
        Row{"every 36 h", "every 36 h", Kind::repeated, "2/3", "2/3", "every 36 h"},
        Row{"every 1 h", "every 1 h", Kind::repeated, "24", "24", "every 1 h"},
        Row{"every half hour", "every 0.5 h", Kind::repeated, "48", "48", "every 0.5 h"},
        Row{"every quarter of an hour is the most", "every 0.25 h", Kind::repeated, "96", "96",
            "every 0.25 h"},
        Row{"every 4 to 6 h", "every 4 to 6 h", Kind::repeated, "4", "6", "every 4 to 6 h"},
        Row{"every 6 to 8 h", "every 6 to 8 h", Kind::repeated, "3", "4", "every 6 to 8 h"},
        Row{"every 12 to 36 h", "every 12 to 36 h", Kind::repeated, "2/3", "2", "every 12 to 36 h"},
        Row{"every 2 day", "every 2 day", Kind::repeated, "1/2", "1/2", "every 2 day"},
        Row{"every 1 day", "every 1 day", Kind::repeated, "1", "1", "every 1 day"},
        Row{"every 2 to 3 day", "every 2 to 3 day", Kind::repeated, "1/3", "1/2", "every 2 to 3 day"},
        Row{"days in the plural", "every 2 days", Kind::repeated, "1/2", "1/2", "every 2 day"},
        Row{"every 2 week", "every 2 week", Kind::repeated, "1/14", "1/14", "every 2 week"},
        Row{"capitals", "Every 12 H", Kind::repeated, "2", "2", "every 12 h"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Times, ReadsSchedule,
    ::testing::Values(
        Row{"3 times a day", "3 times a day", Kind::repeated, "3", "3", "3 times a day"},
        Row{"1 time a day", "1 time a day", Kind::repeated, "1", "1", "daily"},
        Row{"1 times a day", "1 times a day", Kind::repeated, "1", "1", "daily"},
        Row{"2 to 3 times a day", "2 to 3 times a day", Kind::repeated, "2", "3", "2 to 3 times a day"},
        Row{"96 times a day is the most", "96 times a day", Kind::repeated, "96", "96", "96 times a day"},
        Row{"2 times a week", "2 times a week", Kind::repeated, "2/7", "2/7", "2 times a week"},
        Row{"1 to 2 times a week", "1 to 2 times a week", Kind::repeated, "1/7", "2/7",
            "1 to 2 times a week"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Words, ReadsSchedule,
    ::testing::Values(Row{"once", "once", Kind::once, "1", "1", "once"},
                      Row{"once with a capital", "Once", Kind::once, "1", "1", "once"},
                      Row{"single dose", "single dose", Kind::once, "1", "1", "once"},
                      Row{"continuous", "continuous", Kind::continuous, "1", "1", "continuous"},
                      Row{"weekly", "weekly", Kind::repeated, "1/7", "1/7", "weekly"},
                      Row{"once weekly", "once weekly", Kind::repeated, "1/7", "1/7", "weekly"},
                      Row{"every week", "every week", Kind::repeated, "1/7", "1/7", "weekly"},
                      Row{"daily", "daily", Kind::repeated, "1", "1", "daily"},
                      Row{"once daily", "once daily", Kind::repeated, "1", "1", "daily"},
                      Row{"every day", "every day", Kind::repeated, "1", "1", "daily"},
                      Row{"every other day", "every other day", Kind::repeated, "1/2", "1/2", "every 2 day"},
                      Row{"twice a day", "twice a day", Kind::repeated, "2", "2", "2 times a day"},
                      Row{"twice daily", "twice daily", Kind::repeated, "2", "2", "2 times a day"},
                      Row{"twice a week", "twice a week", Kind::repeated, "2/7", "2/7", "2 times a week"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Abbreviations, ReadsSchedule,
    ::testing::Values(Row{"BID", "BID", Kind::repeated, "2", "2", "2 times a day"},
                      Row{"dotted bid", "b.i.d.", Kind::repeated, "2", "2", "2 times a day"},
                      Row{"bd", "bd", Kind::repeated, "2", "2", "2 times a day"},
                      Row{"TID", "TID", Kind::repeated, "3", "3", "3 times a day"},
                      Row{"tds", "tds", Kind::repeated, "3", "3", "3 times a day"},
                      Row{"QID", "QID", Kind::repeated, "4", "4", "4 times a day"},
                      Row{"qds", "qds", Kind::repeated, "4", "4", "4 times a day"},
                      Row{"q6h", "q6h", Kind::repeated, "4", "4", "every 6 h"},
                      Row{"capital q6h", "Q6H", Kind::repeated, "4", "4", "every 6 h"},
                      Row{"q24h", "q24h", Kind::repeated, "1", "1", "every 24 h"},
                      Row{"q4 hyphen 6h", "q4-6h", Kind::repeated, "4", "6", "every 4 to 6 h"},
                      Row{"q4 dash 6h", "q4–6h", Kind::repeated, "4", "6", "every 4 to 6 h"}),
    test::NameOfRow());

TEST(ScheduleKind, isToldApart) {
  EXPECT_TRUE(readInFile("once")->isOnce());
  EXPECT_TRUE(readInFile("continuous")->isContinuous());
  EXPECT_TRUE(readInFile("daily")->isRepeated());
  EXPECT_FALSE(readInFile("daily")->isOnce());
}

struct Said {
  const char* name;
  const char* typed;
  const char* write;
};

class OffersSchedule : public ::testing::TestWithParam<Said> {};

TEST_P(OffersSchedule, thatItReads) {
  const Result<Schedule> schedule = readAtBedside(GetParam().typed);
  ASSERT_FALSE(schedule);
  EXPECT_EQ(schedule.refusal().suggestion, GetParam().write);
  EXPECT_TRUE(readInFile(schedule.refusal().suggestion));
}

INSTANTIATE_TEST_SUITE_P(Said, OffersSchedule,
                         ::testing::Values(Said{"hourly", "hourly", "every 1 h"},
                                           Said{"each 8 hours", "each 8 hours", "every 8 h"},
                                           Said{"thrice daily", "thrice daily", "3 times a day"},
                                           Said{"alternate days", "alternate days", "every 2 day"},
                                           Said{"every second day", "every second day", "every 2 day"},
                                           Said{"30 minutes", "every 30 min", "every 0.5 h"},
                                           Said{"30 minutes in full", "every 30 minutes", "every 0.5 h"},
                                           Said{"continuous infusion", "continuous infusion", "continuous"}),
                         test::NameOfRow());

/// A time of the day would be lost, and what has a second reading is nobody's to put right (H50).
TEST(OffersScheduleOnly, whatMeansTheSame) {
  for (const char* typed : {"at night",
                            "nightly",
                            "every night",
                            "at bedtime",
                            "bedtime",
                            "every morning",
                            "in the morning",
                            "fortnightly",
                            "biweekly",
                            "qh",
                            "HS",
                            "qhs",
                            "q.n.",
                            "BT",
                            "TIW",
                            "BIW",
                            "q6",
                            "3 daily",
                            "QD",
                            "QOD",
                            "od",
                            "STAT",
                            "every 6 to 4 h",
                            "every 4 to 4 h",
                            "3 to 2 times a day",
                            "every other week",
                            "one dose"}) {
    const Result<Schedule> schedule = readAtBedside(typed);
    ASSERT_FALSE(schedule) << typed;
    EXPECT_EQ(schedule.refusal().suggestion, "") << typed;
  }
}

struct Refused {
  const char* name;
  const char* typed;
  const char* code;
};

class RefusesSchedule : public ::testing::TestWithParam<Refused> {};

TEST_P(RefusesSchedule, whoeverWroteIt) {
  const Result<Schedule> schedule = readInFile(GetParam().typed);
  ASSERT_FALSE(schedule) << schedule->text;
  EXPECT_EQ(idOf(schedule.refusal().code), GetParam().code);
  EXPECT_FALSE(readAtBedside(GetParam().typed));
}

INSTANTIATE_TEST_SUITE_P(
    Table, RefusesSchedule,
    ::testing::Values(Refused{"a third of an hour", "every 20 min", "schedule-unknown"},
                      Refused{"up to a third of an hour", "every 15 to 20 min", "schedule-unknown"},
                      Refused{"from a third of an hour", "every 20 to 30 min", "schedule-unknown"},
                      Refused{"more than once in a quarter of an hour", "every 7 min", "schedule-too-often"},
                      Refused{"in 24 days", "3 times in 24 days", "schedule-unknown"},
                      Refused{"in a 24 h", "3 times in a 24 h", "schedule-unknown"},
                      Refused{"in no time", "3 times in", "schedule-unknown"},
                      Refused{"in days", "3 times in day", "schedule-unknown"},
                      Refused{"in 24 of nothing", "3 times in 24", "schedule-unknown"},
                      Refused{"in 48 h", "3 times in 48 h", "schedule-unknown"},
                      Refused{"for each hour", "3 times an hour", "schedule-unknown"},
                      Refused{"per hour", "3 times per h", "schedule-unknown"},
                      Refused{"per month", "3 times per month", "schedule-unknown"},
                      Refused{"half a time", "2.5 times a day", "count-not-whole"},
                      Refused{"up to half a time", "2 to 2.5 times a day", "count-not-whole"},
                      Refused{"hourly and more", "4-6 hourly twice", "schedule-unknown"},
                      Refused{"hourly with a count", "6 hourly 2", "schedule-unknown"},
                      Refused{"a q alone", "q", "schedule-unsafe"},
                      Refused{"every alone", "every", "schedule-unknown"},
                      Refused{"every of no unit", "every 6", "schedule-unknown"},
                      Refused{"every and more", "every 6 h daily", "schedule-unknown"},
                      Refused{"twice of nothing", "twice", "schedule-unknown"},
                      Refused{"more than 96", "97 times a day", "schedule-too-often"}),
    test::NameOfRow());

RC_GTEST_PROP(ScheduleProperty, neverAltersWhatWasTyped, ()) {
  const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
      "every", "each", " ", " ", "q", "4", "6", "0", "12", "0.5", "to", "-", "–", "h", "hours", "min", "day",
      "week", "times", "a", "once", "twice", "daily", "hourly", "x", "/", "bid", "d", "\t", "½", "💊"));
  std::string text;
  for (const std::string& piece : pieces) text.append(piece);
  const Result<Schedule> schedule = readInFile(text);
  if (schedule) {
    RC_ASSERT(Number(0) < schedule->fewest && schedule->fewest <= schedule->most &&
              schedule->most <= Number(96));
    RC_ASSERT(static_cast<bool>(readInFile(schedule->text)));
    return;
  }
  RC_ASSERT(text.starts_with(schedule.refusal().typed) ||
            text.find(schedule.refusal().typed) != std::string::npos);
  if (!schedule.refusal().suggestion.empty() && schedule.refusal().code == RefusalCode::scheduleUnknown)
    RC_ASSERT(static_cast<bool>(readInFile(schedule.refusal().suggestion)));
}

struct SaidRow {
  const char* typed;
  bool byInterval;
  Unit in;
};

// How a schedule is said is data: who reads it back, or looks for hours taken for doses, reads no text.
TEST(Schedule, knowsHowItIsSaid) {
  for (const SaidRow& row :
       {SaidRow{"every 12 h", true, Unit::h}, SaidRow{"q4-6h", true, Unit::h},
        SaidRow{"every 2 day", true, Unit::day}, SaidRow{"every 1 week", true, Unit::week},
        SaidRow{"2 times a day", false, Unit::day}, SaidRow{"BID", false, Unit::day},
        SaidRow{"daily", false, Unit::day}, SaidRow{"2 times a week", false, Unit::week},
        SaidRow{"weekly", false, Unit::week}, SaidRow{"once", false, Unit::day}}) {
    const Result<Schedule> schedule = readInFile(row.typed);
    ASSERT_TRUE(schedule) << row.typed;
    EXPECT_EQ(schedule->byInterval, row.byInterval) << row.typed;
    EXPECT_EQ(schedule->in, row.in) << row.typed;
  }
}

// What stands there is told where it can be known: a dose or a route in the field for how often.
TEST(Schedule, tellsADoseAndARouteInItsField) {
  const auto codeOf = [](const char* typed) { return readAtBedside(typed).refusal().code; };
  EXPECT_EQ(codeOf("80 mg"), RefusalCode::doseHere);
  EXPECT_EQ(codeOf("eighty mg"), RefusalCode::doseHere);
  EXPECT_EQ(codeOf("by mouth"), RefusalCode::routeHere);
  EXPECT_EQ(codeOf("IV"), RefusalCode::routeHere);
  EXPECT_EQ(codeOf("80"), RefusalCode::scheduleUnknown);
  EXPECT_EQ(codeOf("qd"), RefusalCode::scheduleLookAlike);
}

}  // namespace
}  // namespace wardchalk::schedule_test
