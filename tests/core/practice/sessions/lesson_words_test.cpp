#include "core/practice/sessions/lesson_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/practice/marking/marking.h"
#include "core/practice/problem/amount_line.h"
#include "core/words/phrasebook.h"
#include "core/words/unit_words.h"

namespace wardchalk::lesson_words_test {
namespace {

VerdictKind kindOf(VerdictWord word) {
  switch (word) {
    case VerdictWord::safe:
      return VerdictKind::safe;
    case VerdictWord::ask:
      return VerdictKind::ask;
    case VerdictWord::unsafe:
      return VerdictKind::unsafe;
    case VerdictWord::doesNotFit:
      return VerdictKind::notCovered;
  }
  return VerdictKind::undecided;
}

/// A right verdict is marked by this word: an infusion that runs too fast was once taken for safe.
TEST(VerdictWord, isTheVerdictOfEveryKey) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (int level = lowestLevel; level <= highestLevel; ++level)
      for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Problem problem = makeProblem(static_cast<Topic>(topic), level, seed, exactRules());
        if (!std::ranges::any_of(problem.asks, &Ask::isVerdict)) continue;
        const Replay key(problem.key, {});
        EXPECT_EQ(kindOf(verdictWordOf(problem.key, key)), problem.key.verdict)
            << topicIds[topic] << " " << level << " " << seed;
      }
}

TEST(AmountLine, hasTheUnitsOfTheKey) {
  int seen = 0;
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
      const Problem problem = makeProblem(static_cast<Topic>(topic), 3, seed, exactRules());
      for (const Step& step : problem.key.steps) {
        if (!isAmountLine(step.id)) continue;
        ++seen;
        EXPECT_EQ(amountUnits(step.id, problem.given), askFor(idOf(step.id), problem.key)->wanted)
            << topicIds[topic];
      }
    }
  EXPECT_GT(seen, 200);
}

/// The lines that come after the verdict, over many problems with this verdict.
std::set<std::string> linesAfter(Topic topic, bool safe) {
  std::set<std::string> all;
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    const Problem problem = makeProblem(topic, 2, seed, exactRules());
    const auto verdict = std::ranges::find_if(problem.asks, &Ask::isVerdict);
    if (verdict == problem.asks.end() || (problem.key.verdict == VerdictKind::safe) != safe) continue;
    std::string lines;
    for (auto ask = verdict + 1; ask != problem.asks.end(); ++ask) lines.append(idOf(*ask)).append(" ");
    all.insert(lines);
  }
  return all;
}

/// Otherwise a student who is asked for the amount would know that the order is safe.
TEST(AmountLine, isAskedForWhateverTheVerdict) {
  for (const Topic topic : {Topic::doseByBsa, Topic::doseByWeight, Topic::dailyDivided, Topic::safeRange,
                            Topic::infusion, Topic::doseRate}) {
    EXPECT_FALSE(linesAfter(topic, true).empty()) << idOf(topic);
    EXPECT_EQ(linesAfter(topic, true), linesAfter(topic, false)) << idOf(topic);
  }
}

TEST(AmountLine, ofAnOrderThatIsNotSafeHasItsQuestionItsFactsAndItsAnswer) {
  int unsafe = 0;
  for (const Topic topic : {Topic::doseByWeight, Topic::reconstitution, Topic::infusion, Topic::doseRate})
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
      const Problem problem = makeProblem(topic, 2, seed, exactRules());
      for (std::size_t i = 0; i < problem.asks.size(); ++i) {
        const Ask& ask = problem.asks[i];
        if (ask.isVerdict() || problem.key.step(*ask.step)) continue;
        ++unsafe;
        EXPECT_FALSE(lineQuestion(ask, problem).empty()) << seed;
        EXPECT_FALSE(lineFacts(ask, problem).empty()) << seed;
        EXPECT_EQ(lineWanted(ask, problem), ask.wanted) << seed;
        EXPECT_EQ(lineAnswer(ask, problem), say(PhraseId::practiceSheet_nothing));
        EXPECT_EQ(Marking(problem).mark(i, "do not measure").mark, Mark::right) << seed;
        EXPECT_TRUE(Marking(problem)
                        .mark(i, "5 " + unitsText(ask.wanted, Spelling::filed))
                        .has(MistakeId::measuredUnsafe))
            << seed;
      }
    }
  EXPECT_GT(unsafe, 30);
}

TEST(Lesson, everyTopicAndLevelHasItsWord) {
  std::vector<std::string> words;
  for (std::size_t i = 0; i < topicIds.size(); ++i) words.push_back(topicWord(static_cast<Topic>(i)));
  for (int level = lowestLevel; level <= highestLevel; ++level) words.push_back(levelWord(level));
  std::ranges::sort(words);
  EXPECT_EQ(std::ranges::adjacent_find(words), words.end());
  EXPECT_FALSE(words.front().empty());
}

TEST(Lesson, everyLineOfEveryTopicHasAQuestionAndAnAnswer) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic) {
    const Problem problem = makeProblem(static_cast<Topic>(topic), 2, 11, exactRules());
    for (const Ask& ask : problem.asks) {
      EXPECT_FALSE(lineQuestion(ask, problem).empty()) << topicIds[topic];
      EXPECT_FALSE(lineAnswer(ask, problem).empty()) << topicIds[topic];
      EXPECT_EQ(lineUnit(ask).empty(), ask.isVerdict() || ask.wanted == Units{});
    }
  }
}

}  // namespace
}  // namespace wardchalk::lesson_words_test
