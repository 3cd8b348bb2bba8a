#include <gtest/gtest.h>

#include "tests/marking/scoring.h"

// The score on the frozen sets, to the line: it may only become better, and then these figures are raised
// with it.

namespace wardchalk::test {
namespace {

Counts countsOf(const std::vector<FrozenLine>& lines, bool disputed) {
  static Scoring scoring(LineSet::first);
  Counts counts;
  for (const FrozenLine& line : lines)
    if (line.disputed == disputed) ++counts[scoring.judge(line).how];
  return counts;
}

std::string told(const Counts& counts) {
  std::string text;
  for (const auto& [how, count] : counts)
    text.append(nameOf(how)).append(" ").append(std::to_string(count)).append("; ");
  return text;
}

TEST(FrozenScore, ofRightLines) {
  EXPECT_EQ(told(countsOf(frozenRightLines(LineSet::first), false)), "right 2000; ");
}

TEST(FrozenScore, ofMistakes) {
  EXPECT_EQ(told(countsOf(frozenMistakes(LineSet::first), false)),
            "named 4870; among others 9; misnamed 18; not named 47; ");
}

TEST(FrozenScore, ofDisputedMistakes) {
  EXPECT_EQ(told(countsOf(frozenMistakes(LineSet::first), true)), "named 36; taken for right 20; ");
}

}  // namespace
}  // namespace wardchalk::test
