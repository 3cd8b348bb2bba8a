#include "core/practice/marking/marking.h"

#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "tests/core/practice/marking/marking_cases.h"
#include "tests/core/practice/marking/told.h"
#include "tests/support/case_text.h"

namespace wardchalk::marking_test {
namespace {

using test::askNamed;
using test::told;

/// One answer on its own: what it is marked, and by which mistakes.
struct Line {
  const char* name;
  Problem (*problem)();
  const char* ask;
  const char* text;
  const char* expected;  ///< "right", "wrong E20", "unsure E24 E26"
};
void PrintTo(const Line& line, std::ostream* out) { *out << line.ask << " '" << line.text << "'"; }

class MarkedAlone : public testing::TestWithParam<Line> {};

TEST_P(MarkedAlone, isKnownForWhatItIs) {
  const Line& line = GetParam();
  const Problem problem = line.problem();
  Marking marking(problem);
  EXPECT_EQ(told(marking.mark(askNamed(problem, line.ask), line.text)), line.expected);
}

std::string nameOf(const testing::TestParamInfo<Line>& info) { return info.param.name; }

using namespace test;

// Wrong values as the trade's literature and common practice describe them, computed for three worked cases.
INSTANTIATE_TEST_SUITE_P(
    PerDay, MarkedAlone,
    testing::Values(Line{"rightWeight", casePerDay, "weight", "14.97 kg", "right"},
                    Line{"tradeWeight", casePerDay, "weight", "33 lb ÷ 2.2 lb/kg = 15 kg", "right"},
                    Line{"tradeWeightFactor", casePerDay, "weight", "33 lb × 1 kg/2.2 lb = 15 kg", "right"},
                    Line{"rightDay", casePerDay, "limit-day", "748 mg", "right"},
                    Line{"rightDayMore", casePerDay, "limit-day", "748.43 mg/day", "right"},
                    Line{"rightLow", casePerDay, "low-dose", "124.7 mg", "right"},
                    Line{"rightLowTrade", casePerDay, "low-dose", "125 mg", "right"},
                    Line{"rightHigh", casePerDay, "limit-dose", "249.5 mg", "right"},
                    Line{"rightInGrams", casePerDay, "limit-dose", "0.2495 g", "right"},
                    Line{"rightOrdered", casePerDay, "ordered-day", "150 mg × 3 = 450 mg", "right"},
                    Line{"rightAmount", casePerDay, "give", "3 mL", "right"},
                    Line{"rightChain", casePerDay, "give", "150 mg × 5 mL / 250 mg = 3 mL", "right"},
                    Line{"oneLongChain", casePerDay, "limit-dose",
                         "50 mg/kg/day × 33 lb × 1 kg/2.2 lb ÷ 3 doses/day = 250 mg/dose", "right"},
                    Line{"e01", casePerDay, "low-dose", "275 mg", "wrong E01"},
                    Line{"e01OnItsLine", casePerDay, "weight", "33 kg", "wrong E01"},
                    Line{"e02", casePerDay, "low-dose", "605 mg", "wrong E02"},
                    Line{"e02OnItsLine", casePerDay, "weight", "72.6 kg", "wrong E02"},
                    Line{"e03", casePerDay, "low-dose", "56.7 mg", "wrong E03"},
                    Line{"e06", casePerDay, "give", "3000 mL", "wrong E06"},
                    Line{"e06Less", casePerDay, "give", "0.003 mL", "wrong E06"},
                    Line{"e17", casePerDay, "weight", "15 kg", "right"},  // 33 lb ÷ 2.2 is 15 kg exactly
                    Line{"e19", casePerDay, "low-dose", "5.25 mg", "wrong E19"},
                    Line{"e20", casePerDay, "low-dose", "374 mg", "wrong E20"},
                    Line{"e20SaysDay", casePerDay, "low-dose", "374 mg/day", "wrong E20"},
                    Line{"e21", casePerDay, "low-dose", "41.6 mg", "wrong E21"},
                    Line{"e22", casePerDay, "low-dose", "46.8 mg", "wrong E22"},
                    Line{"e23", casePerDay, "low-dose", "93.6 mg", "wrong E23"},
                    Line{"e25", casePerDay, "low-dose", "249.5 mg", "wrong E25"},
                    Line{"e24or26", casePerDay, "verdict", "too low", "unsure E24 E26"},
                    Line{"e30low", casePerDay, "give", "2.49 mL", "wrong E30"},
                    Line{"e30high", casePerDay, "give", "4.99 mL", "wrong E30"},
                    Line{"e31", casePerDay, "give", "8.33 mL", "wrong E31"},
                    Line{"e32", casePerDay, "give", "0.6 mL", "wrong E32"},
                    Line{"e33", casePerDay, "give", "7500 mL", "wrong E33"},
                    Line{"e33Worked", casePerDay, "give", "150 mg × 250 mg/5 mL = 7500 mL", "wrong E33"},
                    Line{"e34", casePerDay, "give", "0.12 mL", "wrong E34"},
                    Line{"e35", casePerDay, "give", "9 mL", "wrong E35"},
                    Line{"e36", casePerDay, "give", "44.9 mL", "wrong E36"},
                    Line{"e40More", casePerDay, "give", "30 mL", "wrong E40"},
                    Line{"e40Less", casePerDay, "give", "0.3 mL", "wrong E40"},
                    Line{"e41", casePerDay, "give", "150 mg × 5 mL / 250 mg = 3.5 mL", "wrong E41"},
                    Line{"e44", casePerDay, "give", "3.0 mL", "right E44"},
                    Line{"e45", casePerDay, "give", ".3 mL", "wrong E40 E45"},
                    Line{"e46Missing", casePerDay, "give", "3", "right E46"},
                    Line{"e46Other", casePerDay, "give", "3 mg", "wrong E46"},
                    Line{"e46Grams", casePerDay, "limit-dose", "249.5 g", "wrong E46"},
                    Line{"e46Day", casePerDay, "limit-dose", "249.5 mg/day", "wrong E46"},
                    Line{"e47", casePerDay, "give", "3 cc", "right E47"},
                    Line{"e48", casePerDay, "give", "250 mg/5 mL × 0.06 mL = 3 mL", "wrong E48"},
                    Line{"e58", casePerDay, "low-dose", "804 mg", "wrong E58"},
                    Line{"blank", casePerDay, "give", "  ", "blank unanswered"},
                    Line{"e106", casePerDay, "weight", "30.8 kg", "wrong E106"},
                    Line{"e110", casePerDay, "give", "750 mL", "wrong E110"},
                    Line{"e112", casePerDay, "give", "100 mL", "wrong E112"},
                    Line{"e19ByUnits", casePerDay, "low-dose", "25 mg/kg × 0.63 m² ÷ 3 = 5.25 mg",
                         "wrong E19"},
                    Line{"sidesDiffer", casePerDay, "give", "9 mL = 3 mL", "wrong line-does-not-hold"},
                    Line{"sidesRounded", casePerDay, "give", "3.04 mL = 3 mL", "right"},
                    Line{"noResult", casePerDay, "give", "150 mg × 5 mL / 250 mg", "unread no-result"},
                    Line{"unreadable", casePerDay, "give", "3 spoons", "unread word-unknown"}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Powder, MarkedAlone,
    testing::Values(Line{"rightSurface", casePowder, "bsa", "0.77 m²", "right"},
                    Line{"rightSurfaceMore", casePowder, "bsa", "√(44 × 42 / 3131) ≈ 0.768 m²", "right"},
                    Line{"rightSurfaceMetric", casePowder, "bsa", "0.769 m2", "right"},
                    Line{"cutSurface", casePowder, "bsa", "0.76 m²", "right cut-off"},
                    Line{"surfaceMayEndInZero", casePowder, "bsa", "0.770 m²", "right"},
                    Line{"rightLow", casePowder, "low-dose", "76.9 mg", "right"},
                    Line{"rightHigh", casePowder, "limit-dose", "115.5 mg", "right"},
                    Line{"rightHighAllDigits", casePowder, "limit-dose", "115.2 mg", "right"},
                    Line{"rightVolume", casePowder, "volume", "18 mL", "right"},
                    Line{"rightStrength", casePowder, "strength", "100 mg/5 mL = 20 mg/mL", "right"},
                    Line{"rightAmount", casePowder, "give", "4.5 mL", "right"},
                    Line{"rightMark", casePowder, "give", "4.4 mL", "right"},
                    Line{"rightRate", casePowder, "rate", "18 mL ÷ 0.5 h = 36 mL/h", "right"},
                    Line{"rightDrops", casePowder, "drops", "12 drops/min", "right"},
                    Line{"rightDropsSpelt", casePowder, "drops", "12 gtt/min", "right"},
                    Line{"e10", casePowder, "bsa", "0.591 m²", "wrong E10"},
                    Line{"e103", casePowder, "limit-dose", "192.5 mg", "wrong E103"},
                    Line{"e104", casePowder, "limit-dose", "96.25 mg", "wrong E104"},
                    Line{"e105", casePowder, "limit-dose", "0.005133 mg", "wrong E105"},
                    Line{"e107", casePowder, "bsa", "42.99 m²", "wrong E107"},
                    Line{"e108", casePowder, "bsa", "1.024 m²", "wrong E108"},
                    Line{"e109", casePowder, "bsa", "33.03 m²", "wrong E109"},
                    Line{"e11", casePowder, "bsa", "0.295 m²", "wrong E11"},
                    Line{"e12", casePowder, "bsa", "0.717 m²", "wrong E12"},
                    Line{"e13", casePowder, "bsa", "0.825 m²", "wrong E13"},
                    Line{"e14a", casePowder, "bsa", "1.142 m²", "wrong E14"},
                    Line{"e14b", casePowder, "bsa", "0.482 m²", "wrong E14"},
                    Line{"e14c", casePowder, "bsa", "1.224 m²", "wrong E14"},
                    Line{"e14d", casePowder, "bsa", "0.517 m²", "wrong E14"},
                    Line{"e15", casePowder, "bsa", "0.191 m²", "wrong E15"},
                    Line{"e16", casePowder, "bsa", "0.0128 m²", "wrong E16"},
                    Line{"e17", casePowder, "bsa", "0.8 m²", "wrong E17"},
                    Line{"e17Used", casePowder, "limit-dose", "120 mg", "wrong E17"},
                    Line{"e18", casePowder, "low-dose", "1905 mg", "wrong E18"},
                    Line{"e38", casePowder, "give", "4.32 mL", "wrong E38"},
                    Line{"e39", casePowder, "give", "4.68 mL", "wrong E39"},
                    Line{"e42Less", casePowder, "give", "4 mL", "wrong E42"},
                    Line{"e42More", casePowder, "give", "5 mL", "wrong E42"},
                    Line{"e49", casePowder, "rate", "0.6 mL/h", "wrong E49"},
                    Line{"e50Hours", casePowder, "rate", "9 mL/h", "wrong E50"},
                    Line{"e50Minutes", casePowder, "rate", "540 mL/h", "wrong E50"},
                    Line{"e51Less", casePowder, "rate", "27 mL/h", "wrong E51"},
                    Line{"e51More", casePowder, "rate", "45 mL/h", "wrong E51"},
                    Line{"e52", casePowder, "drops", "0.6 drops/min", "wrong E52"},
                    Line{"e53", casePowder, "drops", "720 drops/min", "wrong E53"},
                    Line{"e54", casePowder, "drops", "12.4 drops/min", "wrong E54"},
                    Line{"e56Small", casePowder, "volume", "0.056 mL", "wrong E56"},
                    Line{"e56Large", casePowder, "volume", "450 mL", "wrong E56"}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Rate, MarkedAlone,
    testing::Values(Line{"right", caseRate, "rate", "5.6 mL/h", "right"},
                    Line{"rightUnrounded", caseRate, "rate", "5.625 mL/hr", "right"},
                    Line{"rightChain", caseRate, "rate",
                         "5 mcg/kg/min × 15 kg × 60 min/h × 1 mg/1000 mcg × 50 mL/40 mg ≈ 5.6 mL/h", "right"},
                    Line{"e55Minutes", caseRate, "rate", "0.094 mL/h", "wrong E55"},
                    Line{"e55Thousand", caseRate, "rate", "5625 mL/h", "wrong E55"},
                    Line{"e55Kilograms", caseRate, "rate", "0.375 mL/h", "wrong E55"},
                    Line{"safe", caseRate, "verdict", "Safe.", "right"}),
    nameOf);

std::vector<std::string> marked(const Problem& problem, const std::vector<std::string>& answers) {
  std::vector<std::string> all;
  for (const LineMark& mark : markAnswers(problem, answers)) all.push_back(told(mark));
  return all;
}

TEST(Marking, judgesLaterLinesOnTheStudentsOwnEarlierOnes) {
  Problem problem = test::casePerDay();
  test::ask(problem, {"weight", "limit-dose", "verdict", "give"});
  EXPECT_EQ(
      marked(problem, {"33 kg", "550 mg", "ask", "3 mL"}),
      (std::vector<std::string>{"wrong E01", "right carried-on", "right carried-on", "right ask-first"}));
}

TEST(Marking, namesASecondMistakeMadeOnTheFirst) {
  Problem problem = test::casePerDay();
  test::ask(problem, {"weight", "limit-dose"});
  EXPECT_EQ(marked(problem, {"33 kg", "1650 mg"}), (std::vector<std::string>{"wrong E01", "wrong E20"}));
}

// 100 mg ÷ 4.8 mL, the diluent alone; then the order multiplied by that strength.
TEST(Marking, knowsAMistakeMadeWithAStrengthOfTheStudentsOwn) {
  Problem problem = test::casePowder();
  test::ask(problem, {"strength", "give"});
  EXPECT_EQ(marked(problem, {"20.83 mg/mL", "1875 mL"}),
            (std::vector<std::string>{"wrong E38", "wrong E33"}));
}

TEST(Marking, takesTwoMistakesOnOneLineOnlyWhereNoSingleOneFits) {
  Problem problem = test::casePerDay();
  test::ask(problem, {"limit-dose"});
  EXPECT_EQ(marked(problem, {"1650 mg"}), (std::vector<std::string>{"wrong E01 E20"}));
}

TEST(Marking, letsASizeBeCarriedOnWithAllItsDigits) {
  Problem problem = test::casePowder();
  test::ask(problem, {"bsa", "limit-dose"});
  EXPECT_EQ(marked(problem, {"0.77 m²", "115.24 mg"}), (std::vector<std::string>{"right", "right"}));
  EXPECT_EQ(marked(problem, {"0.768 m²", "115.2 mg"}), (std::vector<std::string>{"right", "right"}));
}

/// Worked from the whole papers; of the maximum, which the story states, the line may make use.
TEST(Marking, takesAMaximumForTheMost) {
  Problem problem = test::casePerDay();
  const Reference maxima =
      test::caseOf("reference.max_per_dose=200 mg; reference.max_per_day=700 mg").reference;
  problem.given.reference.maxPerDose = maxima.maxPerDose;
  problem.given.reference.maxPerDay = maxima.maxPerDay;
  problem.key = workOut(problem.given, problem.rules);
  test::ask(problem, {"weight", "limit-day", "limit-dose"});
  const auto all = [](const char* first, const char* second, const char* third) {
    return std::vector<std::string>{first, second, third};
  };
  EXPECT_EQ(marked(problem, {"15 kg", "700 mg", "200 mg"}), all("right", "right", "right"));
  EXPECT_EQ(marked(problem, {"15 kg", "750 mg", "250 mg"}),
            all("right", "right maximum-stated", "right maximum-stated"));
  // pounds taken for kilograms: 1,650 mg and 550 mg are cut as well
  EXPECT_EQ(marked(problem, {"33 kg", "700 mg", "200 mg"}).back().substr(0, 5), "right");
  // by ten kilograms the reference gives less than the maximum
  EXPECT_EQ(marked(problem, {"10 kg", "500 mg", "200 mg"}).back().substr(0, 5), "wrong");
  EXPECT_EQ(marked(problem, {"15 kg", "200 mg", "700 mg"}).back().substr(0, 5), "wrong");
}

TEST(Marking, asksForNoAmountWhereTheOrderIsUnsafe) {
  Problem problem = test::casePerDay();
  problem.entries.clear();
  problem.given.order.dose->amount.value = Number(300);
  problem.key = workOut(problem.given, problem.rules);
  test::ask(problem, {"verdict", "give"});
  EXPECT_EQ(marked(problem, {"unsafe", "do not measure"}),
            (std::vector<std::string>{"right", "right not-measured"}));
  EXPECT_EQ(marked(problem, {"safe", "6 mL"}), (std::vector<std::string>{"unsure E24 E26", "wrong E57"}));
}

// 2.933… mL, and marks a tenth apart: what is drawn up is at a mark, or said in full before it is rounded.
TEST(Marking, takesAnAmountBetweenTwoMarksForNoMeasuring) {
  Problem problem = test::caseLabelNear();
  test::ask(problem, {"device"});
  EXPECT_EQ(marked(problem, {"2.9 mL"}), (std::vector<std::string>{"right"}));
  EXPECT_EQ(marked(problem, {"2.933 mL"}), (std::vector<std::string>{"right"}));
  EXPECT_EQ(marked(problem, {"2.93 mL"}), (std::vector<std::string>{"wrong"}));
}

TEST(Marking, knowsTheWordsForALowOrder) {
  Problem problem = test::casePerDay();
  problem.given.order.dose->amount.value = Number(100);
  problem.key = workOut(problem.given, problem.rules);
  test::ask(problem, {"verdict"});
  EXPECT_EQ(marked(problem, {"too low"}), (std::vector<std::string>{"right"}));
  EXPECT_EQ(marked(problem, {"hold and ask"}), (std::vector<std::string>{"right"}));
  EXPECT_EQ(marked(problem, {"unsafe"}),
            (std::vector<std::string>{"right ask-is-the-word asks-for-too-little"}));
  EXPECT_EQ(marked(problem, {"safe"}), (std::vector<std::string>{"wrong E27"}));
  EXPECT_EQ(marked(problem, {"perhaps"}), (std::vector<std::string>{"unread not-a-verdict"}));
}

// A teacher's file may ask for a comparison: 150 mg in one dose under 249.5 mg, 450 mg in a day under 748.4
// mg.
Problem caseCompared() {
  Problem problem = casePerDay();
  test::ask(problem, {"compare-single", "compare-daily", "compare-low"});
  return problem;
}

INSTANTIATE_TEST_SUITE_P(
    Compared, MarkedAlone,
    testing::Values(
        Line{"comparedRight", caseCompared, "compare-single", "150 mg ≤ 249.5 mg", "right"},
        Line{"comparedLess", caseCompared, "compare-single", "150 mg < 249.5 mg", "right"},
        Line{"comparedInGrams", caseCompared, "compare-single", "0.15 g < 249.5 mg", "right"},
        Line{"comparedTheOtherWay", caseCompared, "compare-single", "249.5 mg > 150 mg", "right"},
        Line{"comparedBackwards", caseCompared, "compare-single", "150 mg > 249.5 mg", "wrong E26"},
        Line{"comparedBackwardsTheOtherWay", caseCompared, "compare-single", "249.5 mg < 150 mg",
             "wrong E26"},
        Line{"dayUnderADose", caseCompared, "compare-single", "450 mg > 249.5 mg", "wrong E24"},
        Line{"doseUnderADay", caseCompared, "compare-single", "150 mg < 748.4 mg", "wrong E24"},
        Line{"comparedWithNothingKnown", caseCompared, "compare-single", "150 mg < 100 mg", "wrong"},
        Line{"anotherAmountCompared", caseCompared, "compare-single", "90 mg < 249.5 mg", "wrong"},
        Line{"nothingCompared", caseCompared, "compare-single", "150 mg", "unread not-a-comparison"},
        Line{"dayRight", caseCompared, "compare-daily", "450 mg ≤ 748.4 mg", "right"},
        Line{"doseForADay", caseCompared, "compare-daily", "150 mg < 748.4 mg", "wrong E24"},
        Line{"dayForALow", caseCompared, "compare-low", "450 mg ≥ 374.2 mg", "right"},
        Line{"dayForALowBackwards", caseCompared, "compare-low", "450 mg < 374.2 mg", "wrong E26"}),
    nameOf);

/// What is said of each part of a line that can be judged: "+set-up -units"; what cannot be seen is left out.
std::string standings(const LineMark& mark) {
  std::string text;
  for (std::size_t i = 0; i < aspectCount; ++i) {
    if (mark.aspects[i] == Standing::unknown) continue;
    text += text.empty() ? "" : " ";
    text += (mark.aspects[i] == Standing::good ? "+" : "-") + std::string(idOf(static_cast<Aspect>(i)));
  }
  return text;
}

class JudgedInParts : public testing::TestWithParam<Line> {};

TEST_P(JudgedInParts, eachForItself) {
  const Line& line = GetParam();
  Problem problem = line.problem();
  test::ask(problem, {line.ask});
  EXPECT_EQ(standings(Marking(problem).mark(0, line.text)), line.expected);
}

INSTANTIATE_TEST_SUITE_P(
    Numbers, JudgedInParts,
    testing::Values(
        Line{"numberAlone", casePerDay, "give", "3 mL", "+units +arithmetic +rounding +writing"},
        Line{"wholeChain", casePerDay, "give", "150 mg × 5 mL / 250 mg = 3 mL",
             "+set-up +units +arithmetic +rounding +writing"},
        Line{"withoutUnit", casePerDay, "give", "3", "-units +arithmetic +rounding +writing"},
        Line{"otherUnit", casePerDay, "give", "3 mg", "-units +arithmetic +rounding +writing"},
        Line{"otherUnitOfARightSum", casePerDay, "limit-dose", "50 mg/kg × 14.97 kg ÷ 3 = 249.5 g",
             "+set-up -units +arithmetic +writing"},
        Line{"cut", casePowder, "bsa", "0.76 m²", "+units +arithmetic -rounding +writing"},
        Line{"unsafelyWritten", casePerDay, "give", "3.0 mL", "+units +arithmetic +rounding -writing"},
        Line{"unitsDoNotCancel", casePerDay, "give", "250 mg/5 mL × 0.06 mL = 3 mL",
             "-set-up -units +arithmetic +rounding +writing"},
        Line{"sumOfAnotherLine", casePowder, "drops", "18 mL × 10 drops/mL ÷ 30 min = 12 drops/min",
             "-set-up +units +arithmetic +rounding +writing"},
        Line{"sidesDiffer", casePerDay, "give", "9 mL = 3 mL", "-set-up +writing"},
        Line{"sumWrong", casePerDay, "give", "150 mg × 5 mL / 250 mg = 3.5 mL",
             "+set-up +units -arithmetic +writing"},
        Line{"roundedTooFar", casePerDay, "weight", "33 lb × 0.45359237 kg/lb = 14.9 kg",
             "+set-up +units -rounding +writing"},
        Line{"amountRoundedTooFar", casePowder, "give", "4.5 mL = 5 mL", "+units -rounding +writing"},
        Line{"setUpWrong", casePerDay, "give", "150 mg × 250 mg/5 mL = 7500 mL", "-set-up +units +writing"},
        Line{"wrongNumberAlone", casePerDay, "low-dose", "374 mg", "+units +writing"},
        Line{"wrongNumberWithoutUnit", casePerDay, "low-dose", "374", "-units +writing"},
        Line{"otherBasis", casePerDay, "low-dose", "25 mg/kg × 0.63 m² ÷ 3 = 5.25 mg",
             "-set-up +units +writing"},
        Line{"medicineAsPieces", caseTablets, "give", "60 tablets", "-units +writing"}),
    nameOf);

INSTANTIATE_TEST_SUITE_P(
    Words, JudgedInParts,
    testing::Values(Line{"verdict", casePerDay, "verdict", "safe", "+set-up"},
                    Line{"wrongVerdict", casePerDay, "verdict", "too low", "-set-up"},
                    Line{"measured", casePowder, "device", "4.4 mL in a 5 mL syringe", "+set-up +rounding"},
                    Line{"otherMark", casePowder, "device", "4.5 mL in a 5 mL syringe", "+set-up -rounding"},
                    Line{"otherSyringe", casePowder, "device", "4.4 mL in a 3 mL syringe",
                         "-set-up +rounding"}),
    nameOf);

/// A verdict under papers of its own; 5 mg/kg are 86 mg for 17.2 kg.
struct Judged {
  const char* name;
  const char* papers;
  const char* text;
  const char* expected;
};
void PrintTo(const Judged& row, std::ostream* out) { *out << "'" << row.text << "' of " << row.papers; }

class MarkedVerdict : public testing::TestWithParam<Judged> {};

TEST_P(MarkedVerdict, isHeldAgainstWhyItIsSo) {
  Problem problem;
  problem.rules = exactRules();
  problem.given = caseOf(std::string("child.weight=17.2 kg; order.route=oral; ") + GetParam().papers);
  problem.key = workOut(problem.given, problem.rules);
  test::ask(problem, {"verdict"});
  Marking marking(problem);
  EXPECT_EQ(told(marking.mark(0, GetParam().text)), GetParam().expected);
}

constexpr const char* overMaximum =
    "order.dose=80 mg; order.schedule=every 12 h; reference.high=5 mg/kg/dose; reference.schedule=every 12 "
    "h; "
    "reference.max_per_dose=70 mg";
constexpr const char* overDaysMaximum =
    "order.dose=80 mg; order.schedule=every 6 h; reference.high=5 mg/kg/dose; reference.schedule=every 6 h; "
    "reference.max_per_day=300 mg";
constexpr const char* overBoth =
    "order.dose=90 mg; order.schedule=every 12 h; reference.high=5 mg/kg/dose; reference.schedule=every 12 "
    "h; "
    "reference.max_per_dose=70 mg";
constexpr const char* fast =
    "order.dose=80 mg; order.schedule=every 12 h; reference.high=5 mg/kg/dose; reference.schedule=every 12 "
    "h; "
    "reference.min_infusion_time=60 min; infusion.volume=50 mL; infusion.over=30 min";
constexpr const char* often =
    "order.dose=50 mg; order.schedule=every 8 h; reference.low=2 mg/kg/dose; reference.high=5 mg/kg/dose; "
    "reference.schedule=every 12 h";
constexpr const char* little =
    "order.dose=30 mg; order.schedule=every 12 h; reference.low=2 mg/kg/dose; reference.high=5 mg/kg/dose; "
    "reference.schedule=every 12 h";
constexpr const char* young =
    "child.age=4 year; order.dose=80 mg; order.schedule=every 12 h; reference.high=5 mg/kg/dose; "
    "reference.schedule=every 12 h; reference.age_from=6 year";
constexpr const char* byVein =
    "order.dose=80 mg; order.schedule=every 12 h; reference.high=5 mg/kg/dose; reference.schedule=every 12 "
    "h; "
    "reference.route=intravenous";

// 60 mg in one dose of 34.4 to 86 mg; 240 mg in a day, of 344 mg that four such doses are.
constexpr const char* ofDosesAlone =
    "order.dose=60 mg; order.schedule=every 6 h; reference.low=2 mg/kg/dose; reference.high=5 mg/kg/dose; "
    "reference.schedule=every 6 h";
constexpr const char* underDaysMaximum =
    "order.dose=60 mg; order.schedule=every 6 h; reference.low=2 mg/kg/dose; reference.high=5 mg/kg/dose; "
    "reference.schedule=every 6 h; reference.max_per_day=300 mg";

// Who is told of a day may have held it against one dose; who is told of doses alone has nothing to take.
INSTANTIATE_TEST_SUITE_P(
    Days, MarkedVerdict,
    testing::Values(Judged{"noDayStated", ofDosesAlone, "too high", "wrong E26"},
                    Judged{"aMaximumOfADayStated", underDaysMaximum, "too high", "unsure E24 E26"}),
    [](const testing::TestParamInfo<Judged>& row) { return std::string(row.param.name); });

INSTANTIATE_TEST_SUITE_P(
    Reasons, MarkedVerdict,
    testing::Values(Judged{"maximumOverlooked", overMaximum, "safe", "wrong E28"},
                    Judged{"maximumNamed", overMaximum, "unsafe, above the maximum dose", "right"},
                    Judged{"maximumAsTooHigh", overMaximum, "unsafe, too high", "right"},
                    Judged{"maximumAsTooFast", overMaximum, "unsafe, runs too fast", "wrong E100"},
                    Judged{"daysMaximumOverlooked", overDaysMaximum, "safe", "wrong E28"},
                    Judged{"daysMaximumNamed", overDaysMaximum, "Unsafe: above the maximum dose", "right"},
                    Judged{"overTheReferenceToo", overBoth, "too high", "right"},
                    Judged{"speedOverlooked", fast, "safe", "wrong E98"},
                    Judged{"speedNamed", fast, "unsafe, runs too fast", "right"},
                    Judged{"speedAsStrength", fast, "unsafe, too concentrated", "wrong E100"},
                    Judged{"scheduleOverlooked", often, "safe", "wrong E99"},
                    Judged{"scheduleNamed", often, "ask: wrong schedule", "right"},
                    Judged{"scheduleDoubted", ofDosesAlone, "ask: wrong schedule", "wrong E100"},
                    Judged{"scheduleAsRoute", often, "ask, route differs", "wrong E100"},
                    Judged{"tooLittleOverlooked", little, "safe", "wrong E27"},
                    Judged{"tooLittleNamed", little, "hold and ask: dose too low", "right"},
                    Judged{"tooLittleAsSchedule", little, "ask: wrong schedule", "wrong E100"},
                    Judged{"tooYoung", young, "does not fit, too young", "right"},
                    Judged{"tooYoungAsRoute", young, "does not fit: route differs", "wrong E100"},
                    Judged{"anotherRoute", byVein, "does not fit: route differs", "right"},
                    Judged{"anotherRouteWithoutWhy", byVein, "not covered by this reference", "right"}),
    [](const testing::TestParamInfo<Judged>& row) { return std::string(row.param.name); });

}  // namespace
}  // namespace wardchalk::marking_test
