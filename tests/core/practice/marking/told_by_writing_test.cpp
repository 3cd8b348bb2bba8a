#include <gtest/gtest.h>

#include "tests/core/practice/marking/marking_cases.h"
#include "tests/core/practice/marking/told.h"

// Two mistakes that come near one another: what is written tells which it was, or neither is asserted.

namespace wardchalk::told_by_writing_test {
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

class ToldByWriting : public testing::TestWithParam<Line> {};

TEST_P(ToldByWriting, namesWhatIsWrittenAndNoMore) {
  const Line& line = GetParam();
  const Problem problem = line.problem();
  EXPECT_EQ(told(Marking(problem).mark(askNamed(problem, line.ask), line.text)), line.expected);
}

// 33 lb 8 oz is 15.195 kg, or 15.23 kg by 2.2.
INSTANTIATE_TEST_SUITE_P(
    Ounces, ToldByWriting,
    testing::Values(
        Line{"leftOut", caseOunces, "weight", "33 lb ÷ 2.2 = 15 kg", "wrong E69"},
        Line{"leftOutWithUnits", caseOunces, "weight", "33 lb × 1 kg / 2.2 lb = 15 kg", "wrong E69"},
        Line{"leftOutByTheOtherConstant", caseOunces, "weight", "33 × 0.45359237 = 14.97", "wrong E69"},
        Line{"behindThePoint", caseOunces, "weight", "33.8 lb ÷ 2.2 = 15.36 kg", "wrong E04"},
        Line{"asHundredths", caseOunces, "weight", "33.08 lb ÷ 2.2 = 15.04 kg", "wrong E04"},
        Line{"asPounds", caseOunces, "weight", "41 lb ÷ 2.2 = 18.64 kg", "wrong E70"},
        Line{"asTwelfthsBare", caseOunces, "weight", "15.303 kg", "wrong E71"},
        Line{"bareTellsNeither", caseOunces, "weight", "15 kg", "unsure E17 E69"},
        Line{"theRightSumRounded", caseOunces, "weight", "33.5 lb ÷ 2.2 = 15 kg", "wrong E17"},
        Line{"theRightSum", caseOunces, "weight", "33.5 lb ÷ 2.2 = 15.23 kg", "right E46 lb-per-kg-missing"}),
    nameOf);

// 180 mg where 121.6 to 152 mg are usual; the papers tell of doses alone.
INSTANTIATE_TEST_SUITE_P(
    Verdicts, ToldByWriting,
    testing::Values(Line{"high", caseOunces, "verdict", "too high", "right"},
                    Line{"lowForHigh", caseOunces, "verdict", "too low", "wrong E26"},
                    Line{"unsafeSinceLow", caseOunces, "verdict", "unsafe, below the range", "wrong E26"},
                    Line{"otherReason", caseOunces, "verdict", "unsafe, wrong schedule", "wrong E100"},
                    Line{"noDayIsTold", caseOunces, "verdict", "safe", "wrong E26"},
                    Line{"sumBeforeTheComparison", caseOunces, "verdict",
                         "4 × 180 = 720 mg, more than 152 mg: unsafe", "wrong E24"},
                    Line{"sumAlone", caseOunces, "verdict", "4 × 180 = 720 mg", "unread not-a-verdict"},
                    Line{"dayIsTold", casePerDay, "verdict", "too low", "unsure E24 E26"},
                    Line{"limitOfTheDose", casePerDay, "verdict", "too low, under 124.7 mg", "wrong E26"},
                    Line{"limitOfTheDay", casePerDay, "verdict", "too low, under 374.2 mg",
                         "unsure E24 E26"}),
    nameOf);

// 110 mg of 150 mg in 4 mL are 2.93 mL; the limit of 152 mg would be 4.053 mL.
INSTANTIATE_TEST_SUITE_P(
    Figures, ToldByWriting,
    testing::Values(Line{"copiedOrRounded", caseLabelNear, "give", "4 mL", "unsure E30 E111"},
                    Line{"digitsTell", caseLabelNear, "give", "4.05 mL", "wrong E30"},
                    Line{"sumTells", caseLabelNear, "give", "152 mg × 4 mL / 150 mg = 4 mL", "wrong E30"},
                    Line{"rightAmountRoundedElsewhere", casePerDay, "give", "3 mL rounds to 3.8 mL",
                         "wrong E42"},
                    Line{"notRounded", casePerDay, "give", "3 mL rounds to 9 mL", "wrong E35"},
                    Line{"wrongAmountRounded", casePerDay, "give", "9 mL rounds to 8.8 mL", "wrong"}),
    nameOf);

// The right number behind a sum that comes to another: 36 is the rate, and the drops of a set of 60 drops/mL;
// 15.0048 kg lie near the 15 kg of a weight rounded early.
INSTANTIATE_TEST_SUITE_P(
    FalseSums, ToldByWriting,
    testing::Values(Line{"twoFit", casePowder, "drops", "18 mL × 60 drops/mL ÷ 30 min = 12 drops/min",
                         "unsure E85 E86 line-does-not-hold"},
                    Line{"theFigureItselfBeforeANearOne", caseOunces, "weight",
                         "33.08 lb × 0.45359237 kg/lb = 15.195 kg", "wrong E04 line-does-not-hold"},
                    Line{"oneFits", casePowder, "drops", "18 mL × 10 drops/mL ÷ 30 min = 12 drops/min",
                         "wrong E86 line-does-not-hold"}),
    nameOf);

}  // namespace
}  // namespace wardchalk::told_by_writing_test
