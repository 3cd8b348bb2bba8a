#include "core/practice/sessions/session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/number/decimal_text.h"
#include "core/practice/sessions/session_tally.h"
#include "tests/support/practice_answers.h"

namespace wardchalk::session_test {
namespace {

using test::rightAnswer;
using test::wrongAnswer;

PracticeSet setOf(std::vector<Topic> topics, int count) {
  PracticeSet set;
  set.topics = std::move(topics);
  set.count = count;
  set.seed = 5;
  return set;
}

/// A student in a session.
class Student {
 public:
  explicit Student(PracticeSet set, PracticeMode mode = PracticeMode::learning)
      : session(std::move(set), mode) {}

  [[nodiscard]] const PracticeLine& line(std::size_t i) const { return session.current().lines[i]; }
  [[nodiscard]] std::string right(std::size_t i) const { return rightAnswer(session.current().problem, i); }
  [[nodiscard]] std::string wrong(std::size_t i) const { return wrongAnswer(session.current().problem, i); }
  void answer(std::size_t i, const std::string& text) {
    session.write(i, text);
    session.check(i);
  }
  void answerAllRight() {
    for (std::size_t i = 0; i < session.current().lines.size(); ++i) answer(i, right(i));
  }

  PracticeSession session;
};

TEST(PracticeSession, theSameSetGivesTheSameProblems) {
  const PracticeSession one(setOf({Topic::bsa, Topic::drops}, 3), PracticeMode::learning);
  const PracticeSession other(setOf({Topic::bsa, Topic::drops}, 3), PracticeMode::test);
  ASSERT_EQ(one.count(), 3U);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_EQ(one.at(i).problem.story, other.at(i).problem.story);
    EXPECT_EQ(one.at(i).problem.asks, other.at(i).problem.asks);
  }
  EXPECT_NE(one.at(0).problem.story, one.at(2).problem.story);
}

TEST(PracticeSession, drawsAProblemOnlyWhenItIsLookedAt) {
  const PracticeSession session(setOf({Topic::bsa}, 50), PracticeMode::learning);
  EXPECT_FALSE(session.isMade(0));
  EXPECT_FALSE(session.current().lines.empty());
  EXPECT_TRUE(session.isMade(0));
  EXPECT_FALSE(session.isMade(1));
}

TEST(PracticeSession, aRightLineIsRightAtOnce) {
  Student student(setOf({Topic::bsa}, 1));
  student.answerAllRight();
  student.session.handIn();
  const SessionTally tally = tallyOf(student.session);
  EXPECT_EQ(tally.lines.lines, static_cast<int>(student.session.current().lines.size()));
  EXPECT_EQ(tally.lines.atOnce, tally.lines.lines);
  EXPECT_EQ(tally.lines.inTheEnd, tally.lines.lines);
  EXPECT_TRUE(tally.mistakes.empty());
  EXPECT_FALSE(tally.next);
}

TEST(PracticeSession, hintsClimbRungByRungAndNoFurther) {
  Student student(setOf({Topic::bsa}, 1));
  student.session.climb(0);
  EXPECT_EQ(student.line(0).rung, 0) << "nothing was checked yet";
  student.answer(0, student.wrong(0));
  ASSERT_FALSE(student.line(0).isRight());
  for (int rung = 1; rung <= lastRung + 2; ++rung) {
    student.session.climb(0);
    EXPECT_EQ(student.line(0).rung, std::min(rung, lastRung));
  }
  student.answer(0, student.right(0));
  EXPECT_TRUE(student.line(0).isRight());
  EXPECT_EQ(student.line(0).tries, 2);
  student.session.climb(0);
  EXPECT_EQ(student.line(0).rung, lastRung) << "a right line needs none";
  student.session.handIn();
  const SessionTally tally = tallyOf(student.session);
  EXPECT_EQ(tally.lines.inTheEnd, 1);
  EXPECT_EQ(tally.lines.atOnce, 0);
}

TEST(PracticeSession, anEmptyLineIsNoTry) {
  Student student(setOf({Topic::bsa}, 1));
  student.answer(0, "  ");
  EXPECT_EQ(student.line(0).tries, 0);
  ASSERT_TRUE(student.line(0).marked);
  EXPECT_TRUE(student.line(0).marked->mark.has(LineNote::unanswered));
}

TEST(PracticeSession, aChangedLineIsNoLongerMarked) {
  Student student(setOf({Topic::bsa}, 1));
  student.answer(0, student.right(0));
  student.session.write(0, student.right(0));
  EXPECT_TRUE(student.line(0).marked) << "nothing was changed";
  student.session.write(0, student.wrong(0));
  EXPECT_FALSE(student.line(0).marked);
  EXPECT_EQ(student.line(0).tries, 1);
}

TEST(PracticeSession, mistakesThatWereCorrectedAreRemembered) {
  Student student(setOf({Topic::bsa}, 1));
  const Problem& problem = student.session.current().problem;
  ASSERT_EQ(idOf(problem.asks[0]), "bsa");
  const Step* bsa = problem.key.step(StepId::bsa);
  const Number square = std::get<Solved>(bsa->body).product.exact;  // the root forgotten
  student.answer(0, show(square).text.starts_with("≈") ? show(square).text.substr(3) + " m²"
                                                       : show(square).text + " m²");
  ASSERT_EQ(student.line(0).met, std::vector{MistakeId::rootForgotten});
  student.answer(0, student.right(0));
  EXPECT_EQ(student.line(0).met, std::vector{MistakeId::rootForgotten});
  student.session.handIn();
  const SessionTally tally = tallyOf(student.session);
  EXPECT_EQ(tally.mistakes, (std::vector{MistakeTally{MistakeId::rootForgotten, 1}}));
  EXPECT_EQ(tally.next, Topic::bsa);
}

/// A dose that follows from a wrong surface is right for who carried it on, and wrong once the surface is put
/// right.
TEST(PracticeSession, laterLinesAreMarkedAnewWhenAnEarlierOneChanges) {
  Student student(setOf({Topic::doseByBsa}, 1));
  const Problem& problem = student.session.current().problem;
  std::size_t surface = 0, dose = 0;
  for (std::size_t i = 0; i < problem.asks.size(); ++i) {
    if (problem.asks[i].step == StepId::bsa) surface = i;
    if (problem.asks[i].step == StepId::limitDose || problem.asks[i].step == StepId::limitDay) dose = i;
  }
  ASSERT_LT(surface, dose);
  const Number own = problem.key.bsa->m2 + Number(1);
  const Number right = std::get<Solved>(problem.key.step(*problem.asks[dose].step)->body).result;
  const Number carried = right * own / problem.key.bsa->m2;
  student.answer(surface, show(own).text + " m²");
  std::string text = show(carried).text;
  if (text.starts_with("≈")) text = text.substr(3);
  student.answer(dose, text + " " + std::string(infoOf(problem.asks[dose].wanted.over.front()).many));
  ASSERT_FALSE(student.line(surface).isRight());
  ASSERT_TRUE(student.line(dose).isRight());
  EXPECT_TRUE(student.line(dose).marked->mark.has(LineNote::carriedOn));
  student.answer(surface, student.right(surface));
  EXPECT_TRUE(student.line(surface).isRight());
  EXPECT_FALSE(student.line(dose).isRight());
  EXPECT_EQ(student.line(dose).tries, 1) << "it was not the student who had it marked again";
}

TEST(PracticeSession, aTestMarksNothingBeforeAllIsHandedIn) {
  Student student(setOf({Topic::bsa}, 3), PracticeMode::test);
  student.answer(0, student.wrong(0));
  student.session.climb(0);
  EXPECT_FALSE(student.line(0).marked);
  EXPECT_EQ(student.line(0).tries, 0);
  EXPECT_EQ(student.line(0).rung, 0);
  student.session.goTo(1);
  student.session.skip();
  EXPECT_FALSE(student.session.isOver());
  student.session.handIn();
  EXPECT_TRUE(student.session.isOver());
  EXPECT_TRUE(student.session.at(0).handedIn);
  EXPECT_FALSE(student.session.at(1).handedIn) << "it was left aside";
  EXPECT_TRUE(student.session.at(2).handedIn);
  EXPECT_EQ(student.session.at(0).lines[0].tries, 1);
  EXPECT_TRUE(student.session.at(2).lines[0].marked->mark.has(LineNote::unanswered));
  const SessionTally tally = tallyOf(student.session);
  EXPECT_EQ(tally.handedIn, 2);
  EXPECT_EQ(tally.skipped, 1);
  EXPECT_EQ(tally.lines.atOnce, 0);
}

TEST(PracticeSession, whatWasHandedInStays) {
  Student student(setOf({Topic::bsa}, 1));
  student.answerAllRight();
  student.session.spend(0, 12);
  student.session.handIn();
  student.answer(0, student.wrong(0));
  student.session.spend(0, 30);
  student.session.skip();
  EXPECT_EQ(student.line(0).text, student.right(0));
  EXPECT_EQ(student.line(0).seconds, 12);
  EXPECT_FALSE(student.session.current().skipped);
}

TEST(PracticeSession, aProblemLeftAsideCanBeTakenUpAgain) {
  Student student(setOf({Topic::bsa}, 2));
  student.session.skip();
  student.session.handIn();
  EXPECT_FALSE(student.session.current().handedIn);
  student.session.takeUp();
  student.session.handIn();
  EXPECT_TRUE(student.session.current().handedIn);
}

TEST(PracticeSession, oneMoreIsOfTheSameTopicAndNewToTheSet) {
  Student student(setOf({Topic::bsa, Topic::drops}, 2));
  student.session.oneMore();
  ASSERT_EQ(student.session.count(), 3U);
  EXPECT_EQ(student.session.at(1).problem.topic, Topic::bsa);
  EXPECT_EQ(student.session.at(1).problem.seed, seedInSet(5, 2));  // the set itself has two
  EXPECT_EQ(student.session.at(2).problem.topic, Topic::drops);
  student.session.oneMore();
  EXPECT_EQ(student.session.at(1).problem.seed, seedInSet(5, 3));
}

TEST(PracticeSession, placesBeyondTheLastAreTheLast) {
  Student student(setOf({Topic::bsa}, 2));
  student.session.goTo(9);
  EXPECT_EQ(student.session.place(), 1U);
}

TEST(PracticeProblem, coversWhatComesAfterTheVerdictUntilOneIsGiven) {
  Student student(setOf({Topic::doseByWeight}, 1));
  const PracticeProblem& made = student.session.current();
  const auto verdict =
      std::ranges::find_if(made.problem.asks, [](const Ask& ask) { return ask.isVerdict(); });
  ASSERT_NE(verdict, made.problem.asks.end());
  const auto at = static_cast<std::size_t>(verdict - made.problem.asks.begin());
  for (std::size_t i = 0; i < made.problem.asks.size(); ++i) {
    EXPECT_EQ(made.isCovered(i, false), i > at) << i;
    EXPECT_FALSE(made.isCovered(i, true)) << i;
  }
  PracticeProblem handedIn = made;
  handedIn.handedIn = true;
  EXPECT_FALSE(handedIn.isCovered(made.problem.asks.size() - 1, false));
}

TEST(PracticeProblem, takesEarlierAnswersAsTheyStand) {
  Student student(setOf({Topic::doseByWeight}, 1));
  student.session.write(0, student.wrong(0));
  student.session.write(1, student.right(1));
  EXPECT_TRUE(earlierAnswers(student.session.current(), 0).empty());
  const std::vector<CarriedAnswer> earlier = earlierAnswers(student.session.current(), 1);
  ASSERT_EQ(earlier.size(), 1U);
  EXPECT_FALSE(earlier[0].right);
  EXPECT_EQ(earlier[0].step, *student.session.current().problem.asks[0].step);
  student.session.write(0, "?");
  EXPECT_TRUE(earlierAnswers(student.session.current(), 1).empty());
}

TEST(SessionTable, hasARowForEachLineThatWasHandedInOrLeftAside) {
  Student student(setOf({Topic::bsa}, 3));
  student.answer(0, student.wrong(0));
  student.session.climb(0);
  student.session.climb(0);
  student.answer(0, student.right(0));
  student.session.spend(0, 41);
  student.session.handIn();
  student.session.goTo(1);
  student.session.skip();
  ASSERT_EQ(student.session.at(0).lines.size(), 1U);
  ASSERT_EQ(student.session.at(1).lines.size(), 1U);
  std::string slips;
  for (const MistakeId mistake : student.session.at(0).lines[0].met)
    slips += (slips.empty() ? "" : " ") + std::string(idOf(mistake));
  const std::string head = setMark(student.session.set()) + ",2026-11-30,learn,B12,";
  EXPECT_EQ(
      sessionTable(student.session, {"B12", "2026-11-30"}),
      "set,date,mode,seat,problem,seed,topic,level,line,answer,mark,mistakes,tries,hint_rung,seconds\r\n" +
          head + "1,5,bsa,1,bsa," + student.session.at(0).lines[0].text + ",right," + slips + ",2,2,41\r\n" +
          head + "2," + std::to_string(seedInSet(5, 1)) + ",bsa,1,bsa,,skipped,,0,0,0\r\n");
}

TEST(PracticeSession, whatCannotBeReadIsNoTryAndWhatIsBlankIsBlank) {
  Student student(setOf({Topic::bsa}, 2));
  student.session.write(0, "3 spoons");
  student.session.check(0);
  EXPECT_EQ(student.line(0).marked->mark.mark, Mark::unread);
  EXPECT_EQ(student.line(0).tries, 0);
  student.session.write(0, student.right(0));
  student.session.check(0);
  EXPECT_EQ(student.line(0).tries, 1);
  student.session.handIn();
  student.session.goTo(1);
  student.session.handIn();
  EXPECT_EQ(student.session.at(1).lines[0].marked->mark.mark, Mark::blank);
  const SessionTally tally = tallyOf(student.session);
  EXPECT_EQ(tally.lines, (LineTally{2, 1, 1, 0, 1}));
}

TEST(PracticeSession, aSetWithoutHintsGivesNone) {
  PracticeSet set = setOf({Topic::bsa}, 1);
  set.hints = false;
  Student student(set);
  student.answer(0, student.wrong(0));
  student.session.climb(0);
  EXPECT_EQ(student.line(0).rung, 0);
}

TEST(SessionTally, countsWhatIsUnreadAndBlankAndTheSameMistakeTwice) {
  Student student(setOf({Topic::doseByWeight}, 2));
  for (std::size_t problem = 0; problem < 2; ++problem) {
    student.session.goTo(problem);
    student.answer(0, "mg/m²");
    student.answer(1, student.wrong(1));
    student.session.handIn();
  }
  const SessionTally tally = tallyOf(student.session);
  EXPECT_EQ(tally.handedIn, 2);
  EXPECT_EQ(tally.lines.unread, 2);
  EXPECT_EQ(tally.lines.inTheEnd, 0);
  EXPECT_EQ(tally.lines.blank, tally.lines.lines - 4);
  for (std::size_t i = 1; i < tally.mistakes.size(); ++i)
    EXPECT_GE(tally.mistakes[i - 1].lines, tally.mistakes[i].lines);
  const std::string table = sessionTable(student.session, {});
  EXPECT_NE(table.find(",unread,"), std::string::npos) << table;
}

TEST(SessionTally, mistakesThatAreMadeAnywhereHaveNoTopic) {
  const std::set<Spot> anywhere = {Spot::order, Spot::point, Spot::rounding, Spot::sum, Spot::writing};
  for (const MistakeInfo& info : mistakeTable)
    EXPECT_NE(topicFor(info.spot).has_value(), anywhere.contains(info.spot)) << info.number;
}

TEST(SessionTally, neverSendsBackToWhatWasAllRight) {
  Student student(setOf({Topic::amountLiquid, Topic::bsa}, 2));
  student.answerAllRight();
  student.session.handIn();
  student.session.goTo(1);
  student.session.write(0, "0.070 m2");  // the point is out of its place
  student.session.check(0);
  student.session.handIn();
  EXPECT_EQ(tallyOf(student.session).next, Topic::bsa);
}

TEST(SessionTally, withoutAKnownMistakeTheWeakestTopicIsNext) {
  Student student(setOf({Topic::drops, Topic::bsa}, 2));
  student.answerAllRight();
  student.session.handIn();
  student.session.goTo(1);
  student.session.handIn();  // nothing written
  const SessionTally tally = tallyOf(student.session);
  ASSERT_EQ(tally.topics.size(), 2U);
  EXPECT_EQ(tally.topics[0].topic, Topic::drops);
  EXPECT_EQ(tally.topics[0].lines.atOnce, tally.topics[0].lines.lines);
  EXPECT_EQ(tally.topics[1].lines.atOnce, 0);
  EXPECT_EQ(tally.next, Topic::bsa);
}

}  // namespace
}  // namespace wardchalk::session_test
