// Every numbered mistake, made on generated problems where it can be made: how often it is known for what it
// is. And right answers in many spellings: none is marked wrong. Figures are printed; the bounds are those
// the product promises.

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <map>

#include "core/number/decimal_text.h"
#include "core/practice/marking/marking.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"
#include "tests/support/student_mistakes.h"

namespace wardchalk::student_mistakes_test {
namespace {

constexpr int wantedOfEach = 50;
constexpr std::uint64_t mostSeeds = 400;

struct Score {
  int made = 0;
  int known = 0;
  int unsure = 0;   ///< asked, the right one among them
  int unnamed = 0;  ///< wrong, and nothing said
  int misnamed = 0;
  int missed = 0;  ///< taken for right
};

/// Written as a student would: four digits that count, or all where it ends.
std::string written(const Number& value, const Units& units) {
  const ShownNumber shown = show(value);
  return shown.text + " " + unitsText(units, Spelling::printed);
}

template <typename Each>
void eachProblem(Each each) {
  for (std::uint64_t seed = 1; seed <= mostSeeds; ++seed)
    for (std::size_t topic = 0; topic < topicIds.size() - 1; ++topic)
      for (int level = lowestLevel; level <= highestLevel; ++level)
        if (!each(makeProblem(static_cast<Topic>(topic), level, seed, exactRules()))) return;
}

/// Answers all lines before this one rightly.
void answerBefore(const Problem& problem, Marking& marking, std::size_t ask) {
  for (std::size_t i = 0; i < ask; ++i) {
    const Ask& asked = problem.asks[i];
    const Step* step = asked.step ? problem.key.step(*asked.step) : nullptr;
    if (const auto* solved = step ? std::get_if<Solved>(&step->body) : nullptr)
      marking.mark(i, written(solved->result, step->lookingFor));
  }
}

void score(const LineMark& mark, std::string_view number, Score& into) {
  ++into.made;
  const bool named = std::ranges::any_of(mark.mistakes, [&](MistakeId id) { return idOf(id) == number; });
  if (mark.mark == Mark::right)
    ++into.missed;
  else if (mark.mark == Mark::unsure)
    ++(named ? into.unsure : into.misnamed);
  else if (mark.mistakes.empty())
    ++into.unnamed;
  else
    ++(named && mark.mistakes.size() == 1 ? into.known : into.misnamed);
}

/// A figure that an accepted rounding or another school's conversion could as well have made: within 3 % of
/// the right one. A size rounded too early always lies near it and counts where its digits differ.
bool isTooNear(const Problem& problem, StepId step, const test::MadeMistake& made) {
  const Number right = test::rightOn(problem, step);
  if (made.number == "E17")  // by 3131, by exact conversion, and with 2.2 lb in a kilogram
    return std::ranges::any_of(std::array{1000, 1001, 1002}, [&](int route) {
      return made.value == (right * Number::ratio(route, 1000)).rounded(2);
    });
  return (made.value - right).absolute() * Number(100) <= right * Number(3);
}

std::string told(const LineMark& mark) {
  std::string text(idOf(mark.mark));
  for (const MistakeId mistake : mark.mistakes) text += " " + std::string(idOf(mistake));
  return text;
}

/// A giving set of 10 drops that is left out and a point that is moved come to the same figure.
bool isAlikeByTheSet(const Problem& problem, StepId step, const test::MadeMistake& made) {
  const auto& factor = problem.given.infusion.dropFactor;
  return step == StepId::drops && factor && factor->value == Number(10) &&
         made.value * Number(10) == test::rightOn(problem, step);
}

/// Nothing is asserted then: the marker asks, and both are named.
void expectAsked(const Problem& problem, const LineMark& mark) {
  EXPECT_EQ(mark.mark, Mark::unsure) << problem.seed << " " << idOf(problem.topic) << " " << problem.level;
  EXPECT_EQ(mark.mistakes, (std::vector{MistakeId::pointMoved, MistakeId::dropFactorLeftOut}));
}

void scoreLine(const Problem& problem, std::size_t ask, std::map<std::string_view, Score>& scores) {
  const StepId step = *problem.asks[ask].step;
  for (const test::MadeMistake& made : test::mistakesOn(problem, step)) {
    if (isTooNear(problem, step, made)) continue;
    Score& into = scores[made.number];
    if (into.made >= wantedOfEach) continue;
    Marking marking(problem);
    answerBefore(problem, marking, ask);
    const std::string text = written(made.value, problem.key.step(step)->lookingFor);
    const Score before = into;
    const LineMark mark = marking.mark(ask, text);
    if (isAlikeByTheSet(problem, step, made)) {
      expectAsked(problem, mark);
      continue;
    }
    score(mark, made.number, into);
    if (into.misnamed > before.misnamed || into.missed > before.missed || into.unsure > before.unsure)
      std::printf("  %s seed %llu %s level %d, %s: %s is %s\n", std::string(made.number).c_str(),
                  static_cast<unsigned long long>(problem.seed), std::string(idOf(problem.topic)).c_str(),
                  problem.level, std::string(idOf(step)).c_str(), text.c_str(), told(mark).c_str());
  }
}

bool isNumber(const Problem& problem, const Ask& ask) {
  const Step* step = ask.step ? problem.key.step(*ask.step) : nullptr;
  return step && std::holds_alternative<Solved>(step->body);
}

TEST(StudentMistakes, areKnownForWhatTheyAre) {
  std::map<std::string_view, Score> scores;
  eachProblem([&](const Problem& problem) {
    for (std::size_t i = 0; i < problem.asks.size(); ++i)
      if (isNumber(problem, problem.asks[i])) scoreLine(problem, i, scores);
    return problem.seed <= 60;
  });
  Score all;
  std::printf("mistake  made  known  asked  unnamed  misnamed  missed\n");
  for (const auto& [number, score] : scores) {
    std::printf("%-7s %5d %6d %6d %8d %9d %7d\n", std::string(number).c_str(), score.made, score.known,
                score.unsure, score.unnamed, score.misnamed, score.missed);
    all.made += score.made;
    all.misnamed += score.misnamed;
    EXPECT_GE(score.known * 100, score.made * 97) << number;
    EXPECT_EQ(score.missed, 0) << number;
  }
  EXPECT_EQ(all.misnamed, 0);
  EXPECT_GT(all.made, 1000);
}

/// The same right answer in several spellings.
std::vector<std::string> spellings(const Step& step) {
  const auto& solved = std::get<Solved>(step.body);
  const Number& value = solved.result;
  const Units& units = step.lookingFor;
  Units bare = units;
  bare.under.eraseIf([](Unit unit) { return unit == Unit::dose || unit == Unit::day; });
  const std::string number = show(value).text;
  std::vector<std::string> all = {
      written(value, units), written(value, bare), "  " + written(value, bare) + " ",
      show(value, Grouping::commas).text + " " + unitsText(bare, Spelling::printed),
      "= " + written(value, bare)};
  const std::string chain = chainLine(solved.chain);
  if (chain.find("≈") == std::string::npos) {  // a number of an earlier line that is not written in full
    all.push_back(chain + " = " + written(value, units));
    all.push_back(chain + " ≈ " + written(value, bare));
  }
  if (units.over == UnitProduct{Unit::mg} && bare.under.empty())
    all.push_back(exactText(value.rounded(3) / Number(1000)) + " g");
  return all;
}

TEST(StudentMistakes, noRightAnswerIsMarkedWrong) {
  int marked = 0;
  eachProblem([&](const Problem& problem) {
    for (std::size_t i = 0; i < problem.asks.size(); ++i) {
      if (!isNumber(problem, problem.asks[i])) continue;
      Marking marking(problem);
      answerBefore(problem, marking, i);
      for (const std::string& text : spellings(*problem.key.step(*problem.asks[i].step))) {
        const LineMark mark = marking.mark(i, text);
        ++marked;
        EXPECT_EQ(mark.mark, Mark::right) << idOf(problem.topic) << " seed " << problem.seed << " level "
                                          << problem.level << " " << idOf(problem.asks[i]) << ": " << text;
      }
    }
    return marked < 3000;
  });
  EXPECT_GE(marked, 1000);
}

}  // namespace
}  // namespace wardchalk::student_mistakes_test
