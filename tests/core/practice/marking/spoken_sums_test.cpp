#include <gtest/gtest.h>

#include "tests/core/practice/marking/marking_cases.h"
#include "tests/core/practice/marking/told.h"

// Sums as they are talked through, drawn, or set down under one another: what is read, and what is not.

namespace wardchalk::spoken_sums_test {
namespace {

using namespace test;

struct Line {
  const char* name;
  Problem (*problem)();
  const char* ask;
  const char* text;
  const char* expected;
};
void PrintTo(const Line& line, std::ostream* out) { *out << line.ask << " '" << line.text << "'"; }
std::string nameOf(const testing::TestParamInfo<Line>& info) { return info.param.name; }

class SpokenSums : public testing::TestWithParam<Line> {};

TEST_P(SpokenSums, areReadForWhatTheySay) {
  const Line& line = GetParam();
  const Problem problem = line.problem();
  EXPECT_EQ(told(Marking(problem).mark(askNamed(problem, line.ask), line.text)), line.expected);
}

INSTANTIATE_TEST_SUITE_P(
    Roots, SpokenSums,
    testing::Values(
        Line{"ofAllBehind", casePowder, "bsa", "root of 44 × 42 over 3131 = 0.77 m²", "right"},
        Line{"behindTheAnswer", casePowder, "bsa", "0.77 m² (root of 44 × 42 over 3131)", "right"},
        Line{"forgottenBehindTheAnswer", casePowder, "bsa", "0.59 m² (44 × 42 over 3131)", "wrong E10"},
        Line{"inSteps", casePowder, "bsa", "44 × 42 = 1848, ÷ 3131 = 0.5902, square root = 0.77 m2", "right"},
        Line{"signBehind", casePowder, "bsa", "44 × 42 = 1848 ÷ 3131 = 0.5902 √ = 0.77 m2", "right"},
        Line{"ofTheSquare", casePowder, "bsa", "BSA² = 44 × 42 ÷ 3131 = 0.5902; BSA = 0.77 m2", "right"},
        Line{"ofTheWrongSquare", casePowder, "bsa", "BSA² = 44 × 42 ÷ 3600 = 0.5133; BSA = 0.716 m2",
             "wrong E12"},
        Line{"ofTheSquareForgotten", casePowder, "bsa", "44 × 42 ÷ 3131 = 0.5902; so 0.59 m2", "wrong E10"}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Words, SpokenSums,
    testing::Values(
        Line{"took", casePerDay, "give", "I took 150 times 5, then divided by 250 which gave me 3 mL",
             "right"},
        Line{"put", casePerDay, "give", "so i put 150 times 5, then divided by 250, came out at 3 mL",
             "right"},
        Line{"tookWrong", casePerDay, "give", "took 150 times 250, then divided by 5 and that makes 7500 mL",
             "wrong E33"},
        Line{"thenAnotherSum", casePerDay, "give", "150 × 5 = 750, then 750 ÷ 250 = 3 mL", "right"},
        Line{"shouldBe", casePerDay, "give", "should be 3 mL", "right"},
        Line{"shouldNot", casePerDay, "give", "should not be 3 mL", "unread word-unknown"},
        Line{"notSure", casePerDay, "give", "3 mL [not sure]", "right"},
        Line{"notInBrackets", casePerDay, "give", "3 mL [not 30 mL]", "unread word-unknown"},
        Line{"tried", casePerDay, "give", "3 mL (check: 3 ÷ 5 × 250 = 150 mg)", "right"},
        Line{"triedAndWrong", casePerDay, "give", "30 mL (check: 3 ÷ 5 × 250 = 150 mg)", "wrong E40"}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Drawn, SpokenSums,
    testing::Values(
        Line{"overABar", casePerDay, "give", "150 mg × 5 mL\n------------- = 3 mL\n250 mg", "right"},
        Line{"overABarWrong", casePerDay, "give", "150 mg\n------ = 0.6 mL\n250 mg", "wrong E32"},
        Line{"answerAbove", casePerDay, "give", "3 mL\n150 × 5 / 250", "right"},
        Line{"answerAboveAnotherSum", casePerDay, "give", "3 mL\n150 / 250", "wrong E32 line-does-not-hold"}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Verdicts, SpokenSums,
    testing::Values(Line{"arrow", caseOunces, "verdict", "180 mg > 151.95 mg → unsafe", "right"},
                    Line{"arrowBackwards", caseOunces, "verdict", "180 mg < 151.95 mg → safe", "wrong E26"},
                    Line{"doesNotExceed", caseOunces, "verdict", "180 mg does not exceed 151.95 mg: safe",
                         "wrong E26"},
                    Line{"notOver", caseOunces, "verdict", "safe, not over 151.95 mg", "wrong E26"},
                    Line{"wouldAsk", caseOunces, "verdict", "I would ask before giving it", "wrong E96"}),
    nameOf);

}  // namespace
}  // namespace wardchalk::spoken_sums_test
