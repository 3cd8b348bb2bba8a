#include <gtest/gtest.h>

#include "core/practice/marking/hints.h"
#include "core/practice/marking/marking.h"
#include "core/practice/problem/amount_line.h"
#include "core/practice/problem/problem.h"
#include "core/practice/problem/problem_text.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"

// Whatever the program itself prints as an answer is right when a student writes it, over all topics, levels
// and rules (H56).

namespace wardchalk::test::printed_wordings_test {
namespace {

constexpr std::uint64_t problemsOfEach = 6;

template <typename Check>
void onEveryKind(Check check) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (int level = lowestLevel; level <= highestLevel; ++level)
      for (const HouseRules& rules : {exactRules(), classroomRules()})
        for (std::uint64_t seed = 1; seed <= problemsOfEach; ++seed) {
          const Problem problem = makeProblem(static_cast<Topic>(topic), level, seed, rules);
          SCOPED_TRACE(std::string(topicIds[topic]) + " " + std::to_string(level) + " " + rules.name + " " +
                       std::to_string(seed));
          check(problem);
        }
}

std::vector<std::string> printedVerdicts(const Worksheet& key) {
  const std::string title = verdictTitle(key);
  const std::string reason = verdictReason(key);
  std::vector<std::string> printed = {title, title + ". " + reason};
  if (!reason.empty()) printed.push_back(reason);
  return printed;
}

std::vector<std::string> printedAnswers(const Problem& problem, std::size_t place) {
  const Ask& ask = problem.asks[place];
  LineMark wrong;
  const std::string fourthRung = hint(problem, place, wrong, {}, lastRung);
  if (ask.isVerdict()) {
    std::vector<std::string> printed = printedVerdicts(problem.key);
    printed.push_back(fourthRung);
    printed.push_back(keyAnswer(ask, problem.key));
    return printed;
  }
  const Step* step = problem.key.step(*ask.step);
  if (!step) return {say(PhraseId::practiceSheet_nothing), fourthRung};
  return {conclusion(*step), keyAnswer(ask, problem.key), fourthRung};
}

TEST(PrintedWordings, areRight) {
  onEveryKind([](const Problem& problem) {
    for (std::size_t place = 0; place < problem.asks.size(); ++place)
      for (const std::string& text : printedAnswers(problem, place)) {
        Marking marking(problem);
        EXPECT_EQ(marking.mark(place, text).mark, Mark::right) << idOf(problem.asks[place]) << ": " << text;
      }
  });
}

TEST(UsualWordings, ofNotGivingAreRightWhereNothingMayBeGiven) {
  onEveryKind([](const Problem& problem) {
    for (std::size_t place = 0; place < problem.asks.size(); ++place) {
      const Ask& ask = problem.asks[place];
      if (ask.isVerdict() || !isAmountLine(*ask.step) || problem.key.step(*ask.step)) continue;
      for (const char* text : {"none", "nothing", "don't give", "hold", "call the prescriber"}) {
        Marking marking(problem);
        EXPECT_EQ(marking.mark(place, text).mark, Mark::right) << idOf(ask) << ": " << text;
      }
    }
  });
}

std::size_t verdictOf(const Problem& problem) {
  for (std::size_t place = 0; place < problem.asks.size(); ++place)
    if (problem.asks[place].isVerdict()) return place;
  return problem.asks.size();
}

bool isRight(const Problem& problem, std::size_t place, const char* text) {
  Marking marking(problem);
  return marking.mark(place, text).mark == Mark::right;
}

TEST(Verdict, safeIsRightOnlyWhereTheKeySaysSo) {
  onEveryKind([](const Problem& problem) {
    const std::size_t place = verdictOf(problem);
    if (place == problem.asks.size()) return;
    const bool safe = problem.key.verdict == VerdictKind::safe;
    for (const char* text : {"safe", "in range", "Safe to give"})
      EXPECT_EQ(isRight(problem, place, text), safe) << text;
  });
}

TEST(Verdict, unsafeIsRightWithTheReasonWhereTheKeyAsksForTooLittleOrForTheSchedule) {
  int asked = 0;
  onEveryKind([&](const Problem& problem) {
    const std::size_t place = verdictOf(problem);
    if (place == problem.asks.size() || problem.key.verdict != VerdictKind::ask) return;
    Marking marking(problem);
    const LineMark mark = marking.mark(place, "do not give as ordered");
    const bool low =
        problem.key.finding(FindingCode::belowLow) || problem.key.finding(FindingCode::belowUsual);
    const bool schedule = problem.key.finding(FindingCode::scheduleDiffers) != nullptr;
    EXPECT_EQ(mark.mark == Mark::right, low || schedule);
    EXPECT_EQ(mark.has(LineNote::asksForTooLittle), low);
    EXPECT_EQ(mark.has(LineNote::asksForSchedule), schedule && !low);
    asked += low || schedule ? 1 : 0;
  });
  EXPECT_GT(asked, 20);
}

TEST(Verdict, aReasonEarnsTheMarkOnlyAsTheKeysReason) {
  onEveryKind([](const Problem& problem) {
    const std::size_t place = verdictOf(problem);
    if (place == problem.asks.size()) return;
    const Worksheet& key = problem.key;
    const bool low = key.finding(FindingCode::belowLow) || key.finding(FindingCode::belowUsual);
    const bool asks = key.verdict == VerdictKind::ask;
    EXPECT_EQ(isRight(problem, place, "too low"), asks && low);
    EXPECT_EQ(isRight(problem, place, "wrong schedule"), asks && key.finding(FindingCode::scheduleDiffers));
    const bool infusionAlone = key.verdict == VerdictKind::unsafe && key.deciding &&
                               (key.findings[*key.deciding].code == FindingCode::tooConcentrated ||
                                key.findings[*key.deciding].code == FindingCode::tooFast);
    EXPECT_EQ(isRight(problem, place, "too high"), key.verdict == VerdictKind::unsafe && !infusionAlone);
  });
}

}  // namespace
}  // namespace wardchalk::test::printed_wordings_test
