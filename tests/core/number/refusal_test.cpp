#include "core/number/refusal.h"

#include <gtest/gtest.h>

#include <string>

namespace wardchalk {
namespace {

TEST(Refusal, keepsShortTextAsItStood) {
  const Refusal refusal = refusalOf(RefusalCode::comma, "1,5", "");
  EXPECT_EQ(refusal.typed, "1,5");
  EXPECT_EQ(refusal.suggestion, "");
  EXPECT_EQ(refusal.path, "");
}

TEST(Refusal, keepsTheBeginningOfLongText) {
  const std::string sixty(60, 'x');
  EXPECT_EQ(refusalOf(RefusalCode::tooLong, sixty).typed, sixty);
  EXPECT_EQ(refusalOf(RefusalCode::tooLong, sixty + "y").typed, sixty);
}

TEST(Refusal, neverCutsACharacterInTwo) {
  for (std::size_t before = 55; before <= 60; ++before) {
    const std::string start(before, 'x');
    const std::string typed = refusalOf(RefusalCode::tooLong, start + "💊 and more").typed;
    EXPECT_EQ(typed, before + 4 <= 60 ? (start + "💊 and more").substr(0, 60) : start) << before;
  }
}

TEST(Refusal, takesBrokenTextToo) {
  EXPECT_EQ(refusalOf(RefusalCode::tooLong, std::string(100, '\x80')).typed, "");
}

TEST(Result, holdsAValueOrItsRefusal) {
  const Result<int> value = 5;
  ASSERT_TRUE(value);
  EXPECT_EQ(*value, 5);
  const Result<int> refused = refusalOf(RefusalCode::zero, "0");
  ASSERT_FALSE(refused);
  EXPECT_EQ(idOf(refused.refusal().code), "zero");
}

}  // namespace
}  // namespace wardchalk
