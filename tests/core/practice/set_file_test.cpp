#include "core/practice/set_file.h"

#include <gtest/gtest.h>

#include "tests/core/test_names.h"

namespace wardchalk {
namespace {

std::string setWith(std::string_view rest) {
  return R"({"format": "wardchalk.set", "version": 1, )" + std::string(rest) + "}";
}

TEST(SetFile, isReadWhole) {
  const auto plan = readSet(setWith(
      R"("title": "Week 3", "topics": ["drops", "bsa"], "level": 2, "count": 12, "seed": 7, "rules": "classroom")"));
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->title, "Week 3");
  EXPECT_EQ(plan->topics, (std::vector{Topic::drops, Topic::bsa}));
  EXPECT_EQ(plan->level, 2);
  EXPECT_EQ(plan->count, 12);
  EXPECT_EQ(plan->seed, 7U);
  EXPECT_EQ(plan->school, SchoolRules::classroom);
}

TEST(SetFile, mayLeaveOutTitleAndRules) {
  const auto plan = readSet(setWith(R"("topics": ["mixed"], "level": 1, "count": 1, "seed": 0)"));
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->title, "");
  EXPECT_EQ(plan->school, SchoolRules::exact);
}

TEST(SetFile, isReadBackAsItWasWritten) {
  PracticePlan plan;
  plan.title = "Nachtdienst \"3\"";
  plan.topics = {Topic::doseRate, Topic::mixed};
  plan.level = 3;
  plan.count = mostProblems;
  plan.seed = greatestSeed;
  plan.school = SchoolRules::classroom;
  const auto again = readSet(writeSet(plan));
  ASSERT_TRUE(again);
  EXPECT_EQ(*again, plan);
}

struct Row {
  const char* name;
  const char* rest;
  RefusalCode code;
  const char* path;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.rest; }

class RefusedSet : public testing::TestWithParam<Row> {};

TEST_P(RefusedSet, isRefusedWithItsPlace) {
  const auto plan = readSet(setWith(GetParam().rest));
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.refusal().code, GetParam().code);
  EXPECT_EQ(plan.refusal().path, GetParam().path);
}

using R = RefusalCode;
INSTANTIATE_TEST_SUITE_P(
    SetFile, RefusedSet,
    testing::Values(
        Row{"no topics", R"("level": 1, "count": 1, "seed": 1)", R::keyMissing, "topics"},
        Row{"no seed", R"("topics": ["bsa"], "level": 1, "count": 1)", R::keyMissing, "seed"},
        Row{"empty topics", R"("topics": [], "level": 1, "count": 1, "seed": 1)", R::typeWrong, "topics"},
        Row{"topics as text", R"("topics": "bsa", "level": 1, "count": 1, "seed": 1)", R::typeWrong,
            "topics"},
        Row{"unknown topic", R"("topics": ["owls"], "level": 1, "count": 1, "seed": 1)", R::valueOutOfRange,
            "topics"},
        Row{"topic twice", R"("topics": ["bsa", "bsa"], "level": 1, "count": 1, "seed": 1)",
            R::valueOutOfRange, "topics"},
        Row{"topic as number", R"("topics": [1], "level": 1, "count": 1, "seed": 1)", R::valueOutOfRange,
            "topics"},
        Row{"level nought", R"("topics": ["bsa"], "level": 0, "count": 1, "seed": 1)", R::valueOutOfRange,
            "level"},
        Row{"level four", R"("topics": ["bsa"], "level": 4, "count": 1, "seed": 1)", R::valueOutOfRange,
            "level"},
        Row{"level as text", R"("topics": ["bsa"], "level": "1", "count": 1, "seed": 1)", R::typeWrong,
            "level"},
        Row{"no problem", R"("topics": ["bsa"], "level": 1, "count": 0, "seed": 1)", R::valueOutOfRange,
            "count"},
        Row{"too many", R"("topics": ["bsa"], "level": 1, "count": 51, "seed": 1)", R::valueOutOfRange,
            "count"},
        Row{"half", R"("topics": ["bsa"], "level": 1, "count": 1.5, "seed": 1)", R::valueOutOfRange, "count"},
        Row{"seed below nought", R"("topics": ["bsa"], "level": 1, "count": 1, "seed": -1)",
            R::valueOutOfRange, "seed"},
        Row{"seed too great", R"("topics": ["bsa"], "level": 1, "count": 1, "seed": 9007199254740992)",
            R::valueOutOfRange, "seed"},
        Row{"unknown rules", R"("topics": ["bsa"], "level": 1, "count": 1, "seed": 1, "rules": "mine")",
            R::valueOutOfRange, "rules"},
        Row{"title as number", R"("title": 3, "topics": ["bsa"], "level": 1, "count": 1, "seed": 1)",
            R::typeWrong, "title"},
        Row{"unknown key", R"("topics": ["bsa"], "level": 1, "count": 1, "seed": 1, "owl": 1)", R::keyUnknown,
            "owl"}),
    test::NameOfRow());

TEST(SetFile, anotherFormatIsRefused) {
  const auto plan = readSet(R"({"format": "wardchalk.case", "version": 1})");
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.refusal().code, RefusalCode::formatWrong);
}

TEST(SetFile, aNewerVersionIsRefused) {
  const auto plan = readSet(R"({"format": "wardchalk.set", "version": 2})");
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.refusal().code, RefusalCode::versionNewer);
}

}  // namespace
}  // namespace wardchalk
