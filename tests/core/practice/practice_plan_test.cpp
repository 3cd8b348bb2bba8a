#include "core/practice/practice_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/practice/lesson_words.h"

namespace wardchalk {
namespace {

PracticePlan planOf(Topic topic, int level) {
  PracticePlan plan;
  plan.topics = {topic};
  plan.level = level;
  plan.count = 3;
  return plan;
}

bool asksFor(const Problem& problem, StepId step) {
  return std::ranges::any_of(problem.asks, [step](const Ask& ask) { return ask.step == step; });
}

TEST(PracticePlan, topicsTakeTurnsAndSeedsFollowOneAnother) {
  PracticePlan plan = planOf(Topic::bsa, 1);
  plan.topics = {Topic::drops, Topic::bsa};
  plan.seed = 40;
  EXPECT_EQ(topicAt(plan, 0), Topic::drops);
  EXPECT_EQ(topicAt(plan, 1), Topic::bsa);
  EXPECT_EQ(topicAt(plan, 2), Topic::drops);
  EXPECT_EQ(seedAt(plan, 0), 40U);
  EXPECT_EQ(seedAt(plan, 7), 47U);
}

TEST(PracticePlan, theGreatestSeedIsFollowedByNought) {
  PracticePlan plan = planOf(Topic::bsa, 1);
  plan.seed = greatestSeed;
  EXPECT_EQ(seedAt(plan, 0), greatestSeed);
  EXPECT_EQ(seedAt(plan, 1), 0U);
}

TEST(PracticePlan, worksByTheRulesOfItsSchool) {
  PracticePlan plan = planOf(Topic::bsa, 1);
  EXPECT_EQ(practiceProblem(plan, Topic::bsa, 3).rules, exactRules());
  plan.school = SchoolRules::classroom;
  EXPECT_EQ(practiceProblem(plan, Topic::bsa, 3).rules, classroomRules());
}

/// Otherwise a student who is asked for the amount would know that the order is safe.
TEST(PracticePlan, beingAskedForTheAmountTellsNothing) {
  const PracticePlan plan = planOf(Topic::doseByWeight, 2);
  int unsafe = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    const Problem problem = practiceProblem(plan, Topic::doseByWeight, seed);
    if (problem.key.verdict == VerdictKind::safe || !problem.given.stock.kind) continue;
    ++unsafe;
    EXPECT_TRUE(asksFor(problem, StepId::give)) << seed;
    const Ask& last = problem.asks.back();
    EXPECT_FALSE(lineQuestion(last, problem, englishPhrases()).empty()) << seed;
    EXPECT_FALSE(lineFacts(last, problem).empty()) << seed;
    EXPECT_FALSE(lineWanted(last, problem) == Units{}) << seed;
  }
  EXPECT_GT(unsafe, 5);
}

TEST(PracticePlan, everyTopicAndLevelHasItsWord) {
  std::vector<std::string> words;
  for (std::size_t i = 0; i < topicIds.size(); ++i)
    words.push_back(topicWord(static_cast<Topic>(i), englishPhrases()));
  for (int level = lowestLevel; level <= highestLevel; ++level)
    words.push_back(levelWord(level, englishPhrases()));
  std::ranges::sort(words);
  EXPECT_EQ(std::ranges::adjacent_find(words), words.end());
  EXPECT_FALSE(words.front().empty());
}

TEST(PracticePlan, everyLineOfEveryTopicHasAQuestionAndAnAnswer) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic) {
    const PracticePlan plan = planOf(static_cast<Topic>(topic), 2);
    const Problem problem = practiceProblem(plan, static_cast<Topic>(topic), 11);
    for (const Ask& ask : problem.asks) {
      EXPECT_FALSE(lineQuestion(ask, problem, englishPhrases()).empty()) << topicIds[topic];
      EXPECT_FALSE(lineAnswer(ask, problem, englishPhrases()).empty()) << topicIds[topic];
      EXPECT_EQ(lineUnit(ask, englishPhrases()).empty(), ask.isVerdict() || ask.wanted == Units{});
    }
  }
}

}  // namespace
}  // namespace wardchalk
