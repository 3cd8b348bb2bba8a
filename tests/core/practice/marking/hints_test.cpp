#include "core/practice/marking/hints.h"

#include <gtest/gtest.h>

#include <set>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "tests/core/practice/marking/marking_cases.h"

namespace wardchalk::hints_test {
namespace {

Problem asking(std::initializer_list<std::string_view> asks) {
  Problem problem = test::casePerDay();
  test::ask(problem, asks);
  return problem;
}

/// The last of these answers, marked, with what it was carried on from.
struct Hinted {
  Problem problem;
  std::size_t ask = 0;
  std::vector<CarriedAnswer> carried;
  LineMark mark;

  Hinted(std::initializer_list<std::string_view> asks, std::initializer_list<std::string_view> answers)
      : problem(asking(asks)) {
    Marking marking(problem);
    std::size_t line = 0;
    for (const std::string_view answer : answers) {
      ask = line++;
      carried = marking.carriedTo(ask);
      mark = marking.mark(ask, answer);
    }
  }
  [[nodiscard]] std::string rung(int rung) const { return hint(problem, ask, mark, carried, rung); }
};

TEST(Hints, climbFromWhereToTheWorkedLine) {
  const Hinted hinted({"low-dose"}, {"374 mg"});
  EXPECT_EQ(hinted.rung(1), "Look at how many doses there are.");
  EXPECT_EQ(hinted.rung(2), "Is your number for one dose, or for the whole day?");
  EXPECT_EQ(hinted.rung(3),
            "What is stated for a day is shared among the doses of that day: divide by their number.");
  EXPECT_NE(hinted.rung(4).find("124.7 mg per dose"), std::string::npos) << hinted.rung(4);
}

TEST(Hints, takeAnotherRungForTheNearest) {
  const Hinted hinted({"low-dose"}, {"374 mg"});
  EXPECT_EQ(hinted.rung(0), hinted.rung(1));
  EXPECT_EQ(hinted.rung(9), hinted.rung(4));
}

TEST(Hints, ofARightLineAreEmpty) {
  const Hinted hinted({"low-dose"}, {"124.7 mg"});
  for (const int rung : {1, 2, 3, 4}) EXPECT_EQ(hinted.rung(rung), "");
  EXPECT_EQ(praise(hinted.mark), "");
}

TEST(Hints, askAboutEachMistakeThatFits) {
  const Hinted hinted({"verdict"}, {"too low"});
  EXPECT_NE(hinted.rung(2).find("Are both sides of your comparison for one dose?"), std::string::npos);
  EXPECT_NE(hinted.rung(2).find("Put your numbers on a line"), std::string::npos);
}

TEST(Hints, workTheLineWithTheStudentsOwnNumbers) {
  const Hinted hinted({"weight", "limit-day"}, {"33 kg", "7 mg"});
  EXPECT_EQ(hinted.rung(4), "50 mg/(kg·day) × 33 kg = 1,650 mg in 24 h");
}

TEST(Hints, sayTheVerdictOfTheStudentsOwnNumbers) {
  const Hinted hinted({"weight", "limit-dose", "verdict"}, {"3.3 kg", "55 mg", "safe"});
  EXPECT_EQ(hinted.rung(4),
            "By these numbers the order is: unsafe. 150 mg ≤ 55 mg false; 450 mg ≤ 165 mg false");
}

TEST(Hints, askForTheLineWhereNoMistakeIsKnown) {
  const Hinted bare({"low-dose"}, {"53.46 mg"});
  ASSERT_TRUE(bare.mark.mistakes.empty());
  EXPECT_EQ(bare.rung(1),
            "Only the result stands here. Write the line that leads to it, with every number and its unit.");
  const Hinted worked({"low-dose"}, {"374.21 mg ÷ 7 = 53.46 mg"});
  ASSERT_TRUE(worked.mark.mistakes.empty());
  EXPECT_EQ(worked.rung(1),
            "Look at how the number was reached: which numbers went in, and how they are joined.");
  for (const Hinted* hinted : {&bare, &worked}) {
    EXPECT_EQ(hinted->rung(2), "Which numbers from the paper go into this line, and what joins them?");
    EXPECT_EQ(hinted->rung(3).substr(0, 27), "Begin with what is known, a");
  }
  const Problem powder = test::casePowder();
  const std::size_t surface = test::askNamed(powder, "bsa");
  LineMark unknown;
  unknown.mark = Mark::wrong;
  EXPECT_EQ(hint(powder, surface, unknown, {}, 3).substr(0, 25), "Multiply height by weight");
}

TEST(Hints, sayFirstWhatIsRight) {
  const Hinted hinted({"give"}, {"150 mg × 5 mL / 250 mg = 3.5 mL"});
  EXPECT_EQ(praise(hinted.mark), "The set-up is right. The unit is right.");
}

/// A number as a word of its own: "3" is not in "3600" nor in "0.3".
bool names(const std::string& text, const std::string& number) {
  const auto part = [](char c) { return (c >= '0' && c <= '9') || c == '.' || c == ','; };
  for (std::size_t at = text.find(number); at != std::string::npos; at = text.find(number, at + 1)) {
    const std::size_t end = at + number.size();
    const bool pointBehind =
        end < text.size() && text[end] == '.' && (end + 1 == text.size() || text[end + 1] == ' ');
    if ((at == 0 || !part(text[at - 1])) && (end == text.size() || !part(text[end]) || pointBehind))
      return true;
  }
  return false;
}

TEST(Hints, nameNoFigureOfTheProblemBeforeTheLastRung) {
  for (std::size_t topic = 0; topic + 1 < topicIds.size(); ++topic) {
    const Problem problem = makeProblem(static_cast<Topic>(topic), 3, 5, exactRules());
    for (std::size_t ask = 0; ask < problem.asks.size(); ++ask) {
      const Step* step = problem.asks[ask].step ? problem.key.step(*problem.asks[ask].step) : nullptr;
      const auto* solved = step ? std::get_if<Solved>(&step->body) : nullptr;
      if (!solved) continue;
      const std::string right = show(solved->result).text;
      for (std::size_t i = 0; i < mistakeTable.size(); ++i) {
        LineMark mark;
        mark.mistakes = {static_cast<MistakeId>(i)};
        for (const int rung : {1, 2})
          EXPECT_FALSE(names(hint(problem, ask, mark, {}, rung), right))
              << mistakeTable[i].number << " " << right;
      }
    }
  }
}

TEST(Hints, everyMistakeHasItsOwnWords) {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < mistakeTable.size(); ++i)
    EXPECT_TRUE(seen.insert(mistakeName(static_cast<MistakeId>(i))).second) << mistakeTable[i].number;
}

}  // namespace
}  // namespace wardchalk::hints_test
