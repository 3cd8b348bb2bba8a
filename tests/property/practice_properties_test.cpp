#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <iostream>
#include <set>
#include <string>

#include "core/check/work_out.h"
#include "core/practice/making/problem_maker.h"
#include "core/practice/making/problem_traps.h"
#include "core/practice/problem/amount_line.h"
#include "core/practice/problem/problem_story.h"
#include "core/practice/problem/problem_text.h"
#include "core/practice/sessions/set_file.h"
#include "tests/support/case_text.h"
#include "tests/support/safe_writing.h"

// Problems of practice, ten thousand of them: WARDCHALK_PROBLEMS says how many of each topic and level
// instead.

namespace wardchalk::practice_properties_test {
namespace {

int problemsOfEach() {
  const char* wanted = std::getenv("WARDCHALK_PROBLEMS");
  return wanted == nullptr ? 240 : std::max(1, std::atoi(wanted));
}

std::string nameOf(const Problem& problem) {
  return std::string(idOf(problem.topic)) + " level " + std::to_string(problem.level) + " seed " +
         std::to_string(problem.seed) + ": " + test::textOf(problem.entries);
}

bool asksFor(const Problem& problem, StepId step) {
  for (const Ask& ask : problem.asks)
    if (ask.step == step) return true;
  return false;
}

bool asksVerdict(const Problem& problem) { return std::ranges::any_of(problem.asks, &Ask::isVerdict); }

/// What is wrong with the asks: each must be answered by the key, and an amount only where it may be
/// measured.
std::string wrongAsks(const Problem& problem) {
  if (problem.asks.empty()) return "asks nothing";
  for (const Ask& ask : problem.asks) {
    if (ask.isVerdict()) continue;
    const bool endsBefore = problem.key.verdict != VerdictKind::safe && isAmountLine(*ask.step);
    if (!problem.key.step(*ask.step) && !endsBefore) return "the key lacks " + std::string(idOf(ask));
    if (ask.wanted.over.empty()) return "no unit for " + std::string(idOf(ask));
  }
  return {};
}

std::string wrongAmount(const Problem& problem) {
  if (problem.key.verdict != VerdictKind::safe) return {};
  for (const Finding& finding : problem.key.findings)
    if (finding.severity != Severity::note) return "asks about " + std::string(idOf(finding.code));
  const auto& give = problem.key.give;
  if (give && !give->measured) return "cannot be measured";
  if (give && give->exact.value < Number::ratio(1, 10)) return "too little to measure";
  return {};
}

std::string wrongSize(const Problem& problem) {
  if (problem.key.check(CheckId::size).status != CheckStatus::within) return "an unlikely child";
  if (problem.level > 1) return {};
  for (const WrittenEntry& entry : problem.entries)
    if (entry.path.starts_with("child.") && (entry.text.ends_with(" lb") || entry.text.ends_with(" oz") ||
                                             entry.text.ends_with(" in") || entry.text.ends_with(" ft")))
      return "not metric";
  return {};
}

/// Whether a problem is about what it says, the mixed ones about anything.
bool isAboutItsTopic(const Problem& problem) {
  const Case& given = problem.given;
  const auto& high = given.reference.high;
  switch (problem.topic) {
    case Topic::bsa:
      return asksFor(problem, StepId::bsa) && !high;
    case Topic::doseByBsa:
      return high->perSize == PerSize::m2 && asksFor(problem, StepId::bsa);
    case Topic::doseByWeight:
      return high->perSize == PerSize::kg && asksFor(problem, StepId::limitDose);
    case Topic::dailyDivided:
      return high->perTime == PerTime::day && asksFor(problem, StepId::limitDay) &&
             asksFor(problem, StepId::limitDose);
    case Topic::safeRange:
      return given.reference.low && (asksFor(problem, StepId::lowDose) || asksFor(problem, StepId::lowDay));
    case Topic::amountLiquid:
      return given.stock.kind == StockKind::liquid && asksFor(problem, StepId::give);
    case Topic::amountSolid:
      return given.stock.kind == StockKind::solid && asksFor(problem, StepId::give);
    case Topic::reconstitution:
      return given.stock.kind == StockKind::powder && asksFor(problem, StepId::strength);
    case Topic::infusion:
      return given.infusion.volume && asksFor(problem, StepId::rate);
    case Topic::drops:
      return given.infusion.dropFactor && asksFor(problem, StepId::drops);
    case Topic::dilution:
      return asksFor(problem, StepId::volume);
    case Topic::doseRate:
      return given.order.dose->isRate() && asksFor(problem, StepId::rate);
    case Topic::conversion:
      return asksFor(problem, StepId::weight) || asksFor(problem, StepId::height) ||
             asksFor(problem, StepId::limitDose);
    case Topic::mixed:
      return true;
  }
  return false;
}

std::string wrongWriting(const Problem& problem) {
  for (const WrittenEntry& entry : problem.entries)
    if (std::string wrong = test::unsafeWriting(entry.text, test::Written::forFiles); !wrong.empty())
      return wrong;
  if (std::string wrong = test::unsafeWriting(problem.story, test::Written::forReaders); !wrong.empty())
    return wrong;
  for (const Ask& ask : problem.asks)
    if (std::string wrong = test::unsafeWriting(askText(ask, problem), test::Written::forReaders);
        !wrong.empty())
      return wrong;
  return {};
}

/// What is wrong with a problem; empty when nothing is.
std::string wrongIn(const MadeProblem& made) {
  const Problem& problem = made.problem;
  if (made.draws > mostDraws) return "none was good";
  if (std::string wrong = wrongAsks(problem); !wrong.empty()) return wrong;
  if (std::string wrong = wrongAmount(problem); !wrong.empty()) return wrong;
  if (std::string wrong = wrongSize(problem); !wrong.empty()) return wrong;
  if (!isAboutItsTopic(problem)) return "not about its topic";
  if (!slipsAreApart(problem)) return "two slips look alike";
  return wrongWriting(problem);
}

struct Counted {
  std::array<int, 5> verdicts{};
  int all = 0;
  void add(VerdictKind verdict) {
    ++verdicts[static_cast<std::size_t>(verdict)];
    ++all;
  }
  [[nodiscard]] double percent(VerdictKind verdict) const {
    return 100.0 * verdicts[static_cast<std::size_t>(verdict)] / all;
  }
};

/// The shares of right answers that are aimed at; a first level has no reference that does not cover.
void expectShares(const Counted& asked, int level) {
  std::cout << "  level " << level << ", of " << asked.all << " that ask for a verdict:";
  for (const VerdictKind verdict :
       {VerdictKind::safe, VerdictKind::ask, VerdictKind::unsafe, VerdictKind::notCovered})
    std::cout << " " << idOf(verdict) << " " << asked.percent(verdict) << " %";
  std::cout << "\n";
  const int notCovered = level == lowestLevel ? 0 : aim_share::notCovered;
  EXPECT_NEAR(asked.percent(VerdictKind::safe), aim_share::safe + aim_share::notCovered - notCovered, 2.5);
  EXPECT_NEAR(asked.percent(VerdictKind::ask), aim_share::tooLittle + aim_share::scheduleDiffers, 2.5);
  EXPECT_NEAR(asked.percent(VerdictKind::unsafe), aim_share::tooMuch, 2.5);
  EXPECT_NEAR(asked.percent(VerdictKind::notCovered), notCovered, notCovered == 0 ? 0 : 2.5);
  EXPECT_EQ(asked.percent(VerdictKind::undecided), 0);
}

TEST(PracticeProperties, everyProblemIsSolvableOfItsTopicAndOrdinary) {
  std::array<Counted, highestLevel + 1> asked;  // by level
  long draws = 0, made = 0;
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (int level = lowestLevel; level <= highestLevel; ++level)
      for (int i = 0; i < problemsOfEach(); ++i) {
        const MadeProblem one =
            makeProblemCounted(static_cast<Topic>(topic), level, seedInSet(1, i), exactRules());
        ASSERT_EQ(wrongIn(one), "") << nameOf(one.problem);
        if (asksVerdict(one.problem)) asked.at(static_cast<std::size_t>(level)).add(one.problem.key.verdict);
        draws += one.draws;
        ++made;
      }
  std::cout << "  " << made << " problems, " << static_cast<double>(draws) / static_cast<double>(made)
            << " draws each\n";
  for (int level = lowestLevel; level <= highestLevel; ++level)
    expectShares(asked.at(static_cast<std::size_t>(level)), level);
}

TEST(PracticeProperties, theVerdictIsTheSameInEverySchool) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (int level = lowestLevel; level <= highestLevel; ++level)
      for (int i = 0; i < problemsOfEach() / 8 + 1; ++i) {
        const Problem problem =
            makeProblem(static_cast<Topic>(topic), level, seedInSet(2, i), classroomRules());
        for (const char* rules : {"pounds=exact", "pounds=trade; kilogram_decimals=2; round_to=decimals",
                                  "bsa_decimals=3", "bsa_decimals=none", "pounds=trade; bsa_decimals=none"}) {
          // what is not said is a class's rule in every school
          HouseRules school = test::rulesOf(rules);
          school.referenceScheduleMissing = classroomRules().referenceScheduleMissing;
          school.orderScheduleMissing = classroomRules().orderScheduleMissing;
          const Worksheet other = workOut(problem.given, school);
          ASSERT_EQ(other.verdict, problem.key.verdict) << rules << "\n" << nameOf(problem);
          for (const Check& check : problem.key.checks)
            ASSERT_EQ(other.check(check.id).status, check.status) << rules << " " << idOf(check.id) << "\n"
                                                                  << nameOf(problem);
        }
      }
}

TEST(PracticeProperties, theSameSeedGivesTheSameAndAnotherSeedAnother) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (int level = lowestLevel; level <= highestLevel; ++level) {
      std::set<std::string> stories;
      for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const Problem problem = makeProblem(static_cast<Topic>(topic), level, seed, exactRules());
        EXPECT_EQ(makeProblem(static_cast<Topic>(topic), level, seed, exactRules()).story, problem.story);
        stories.insert(problem.story);
      }
      EXPECT_GE(stories.size(), 57U) << topicIds[topic] << " " << level;
    }
}

TEST(PracticeProperties, levelsAddWhatTheySay) {
  int pounds = 0, capped = 0, bands = 0, displacements = 0, ranges = 0;
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    const Problem second = makeProblem(Topic::doseByWeight, 2, seed, exactRules());
    pounds += second.key.step(StepId::weight) != nullptr;
    ranges += second.given.reference.low.has_value();
    const Problem third = makeProblem(Topic::doseByBsa, 3, seed, exactRules());
    capped += third.given.reference.maxPerDose.has_value();
    bands += third.given.reference.age.isStated();
    displacements +=
        makeProblem(Topic::reconstitution, 2, seed, exactRules()).given.stock.displacement.has_value();
  }
  EXPECT_GT(pounds, 80);
  EXPECT_GT(ranges, 60);
  EXPECT_GT(capped, 80);
  EXPECT_GT(bands, 80);
  EXPECT_EQ(displacements, 200);
}

TEST(PracticeProperties, rulesThatLeaveNothingMeasurableStillGiveAWorkableProblem) {
  const HouseRules rules =
      test::rulesOf("smallest_volume=50 mL; bsa_formula=haycock; many_units=1; ask_below_percent=100");
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (int level = lowestLevel; level <= highestLevel; ++level) {
      const Problem problem = makeProblem(static_cast<Topic>(topic), level, 3, rules);
      ASSERT_FALSE(problem.asks.empty());
      for (const Ask& ask : problem.asks)
        EXPECT_TRUE(ask.isVerdict() || problem.key.step(*ask.step) ||
                    (isAmountLine(*ask.step) && asksVerdict(problem)))
            << nameOf(problem);
    }
}

TEST(PracticeProperties, levelsBeyondTheEndsAreTakenAsTheEnds) {
  EXPECT_EQ(makeProblem(Topic::bsa, 0, 5, exactRules()).story,
            makeProblem(Topic::bsa, 1, 5, exactRules()).story);
  EXPECT_EQ(makeProblem(Topic::bsa, 9, 5, exactRules()).level, highestLevel);
}

TEST(PracticeProperties, aPageOfProblemsIsWrittenSafely) {
  for (int level = lowestLevel; level <= highestLevel; ++level) {
    const PracticeSet set{{}, 9, {Topic::mixed}, level, 60, exactRules()};
    std::vector<Problem> problems;
    for (int i = 0; i < set.count; ++i) problems.push_back(problemInSet(set, i));
    for (Problem& problem : problems)
      problem.seed = 9;  // a seed is no figure of the trade, and has no commas
    EXPECT_EQ(test::unsafeWriting(problemsText(problems), test::Written::forReaders), "");
  }
}

}  // namespace
}  // namespace wardchalk::practice_properties_test
