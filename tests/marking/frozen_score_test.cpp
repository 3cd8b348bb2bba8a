#include <gtest/gtest.h>

#include <map>
#include <memory>

#include "tests/marking/scoring.h"

// The score on the frozen sets, to the line: it may only become better, and then these figures are raised
// with it.

namespace wardchalk::test {
namespace {

Scoring& scoringOf(LineSet set) {
  static std::map<LineSet, std::unique_ptr<Scoring>> all;
  std::unique_ptr<Scoring>& scoring = all[set];
  if (!scoring) scoring = std::make_unique<Scoring>(set);
  return *scoring;
}

Counts countsOf(const std::vector<FrozenLine>& lines, bool disputed, LineSet set = LineSet::first) {
  Scoring& scoring = scoringOf(set);
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
            "named 4875; among others 14; misnamed 10; not named 45; ");
}

TEST(FrozenScore, ofDisputedMistakes) {
  EXPECT_EQ(told(countsOf(frozenMistakes(LineSet::first), true)), "named 56; ");
}

TEST(FrozenScore, ofRightLinesOfTheFreshSet) {
  EXPECT_EQ(told(countsOf(frozenRightLines(LineSet::fresh), false, LineSet::fresh)), "right 598; unread 2; ");
}

TEST(FrozenScore, ofMistakesOfTheFreshSet) {
  EXPECT_EQ(told(countsOf(frozenMistakes(LineSet::fresh), false, LineSet::fresh)),
            "named 1354; among others 14; misnamed 2; not named 30; ");
}

/// As it stood when the set had been read once: no made mistake is taken for right.
TEST(FrozenScore, ofTheBlindSet) {
  EXPECT_EQ(told(countsOf(frozenRightLines(LineSet::blind), false, LineSet::blind)),
            "right 382; wrong 5; unread 13; ");
  EXPECT_EQ(told(countsOf(frozenMistakes(LineSet::blind), false, LineSet::blind)),
            "named 891; among others 8; misnamed 13; not named 88; ");
}

}  // namespace
}  // namespace wardchalk::test
