#include "core/practice/lesson.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/practice/lesson_words.h"

namespace wardchalk {
namespace {

PracticeSet setOf(Topic topic, int level) {
  PracticeSet set;
  set.topics = {topic};
  set.level = level;
  set.count = 3;
  return set;
}

bool asksFor(const Problem& problem, StepId step) {
  return std::ranges::any_of(problem.asks, [step](const Ask& ask) { return ask.step == step; });
}

TEST(Lesson, topicsTakeTurnsBeyondTheSetToo) {
  PracticeSet set = setOf(Topic::bsa, 1);
  set.topics = {Topic::drops, Topic::bsa};
  EXPECT_EQ(topicInSet(set, 0), Topic::drops);
  EXPECT_EQ(topicInSet(set, 1), Topic::bsa);
  EXPECT_EQ(topicInSet(set, 8), Topic::drops);
  set.topics.clear();
  EXPECT_EQ(topicInSet(set, 3), Topic::mixed);
}

TEST(Lesson, isTheProblemOfTheSet) {
  const PracticeSet set = setOf(Topic::bsa, 1);
  for (int place = 0; place < set.count; ++place) {
    EXPECT_EQ(lessonProblem(set, place).seed, problemInSet(set, place).seed);
    EXPECT_EQ(lessonProblem(set, place).story, problemInSet(set, place).story);
  }
}

TEST(Lesson, worksByTheRulesOfItsSet) {
  PracticeSet set = setOf(Topic::bsa, 1);
  EXPECT_EQ(lessonProblem(set, Topic::bsa, 3).rules, exactRules());
  set.rules = classroomRules();
  EXPECT_EQ(lessonProblem(set, Topic::bsa, 3).rules, classroomRules());
}

/// Otherwise a student who is asked for the amount would know that the order is safe.
TEST(Lesson, beingAskedForTheAmountTellsNothing) {
  const PracticeSet set = setOf(Topic::doseByWeight, 2);
  int unsafe = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    const Problem problem = lessonProblem(set, Topic::doseByWeight, seed);
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

TEST(Lesson, everyTopicAndLevelHasItsWord) {
  std::vector<std::string> words;
  for (std::size_t i = 0; i < topicIds.size(); ++i)
    words.push_back(topicWord(static_cast<Topic>(i), englishPhrases()));
  for (int level = lowestLevel; level <= highestLevel; ++level)
    words.push_back(levelWord(level, englishPhrases()));
  std::ranges::sort(words);
  EXPECT_EQ(std::ranges::adjacent_find(words), words.end());
  EXPECT_FALSE(words.front().empty());
}

TEST(Lesson, everyLineOfEveryTopicHasAQuestionAndAnAnswer) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic) {
    const PracticeSet set = setOf(static_cast<Topic>(topic), 2);
    const Problem problem = lessonProblem(set, static_cast<Topic>(topic), 11);
    for (const Ask& ask : problem.asks) {
      EXPECT_FALSE(lineQuestion(ask, problem, englishPhrases()).empty()) << topicIds[topic];
      EXPECT_FALSE(lineAnswer(ask, problem, englishPhrases()).empty()) << topicIds[topic];
      EXPECT_EQ(lineUnit(ask, englishPhrases()).empty(), ask.isVerdict() || ask.wanted == Units{});
    }
  }
}

}  // namespace
}  // namespace wardchalk
