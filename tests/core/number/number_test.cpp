#include "core/number/number.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <limits>
#include <string>

#include "core/number/decimal_text.h"
#include "tests/core/test_names.h"

namespace wardchalk::number_test {
namespace {

constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t least = std::numeric_limits<std::int64_t>::min();

Number n(std::int64_t over, std::int64_t under = 1) { return Number::ratio(over, under); }

struct Arithmetic {
  const char* name;
  Number result;
  const char* expected;  // worked by Python fractions.Fraction
};

class NumberArithmetic : public ::testing::TestWithParam<Arithmetic> {};

TEST_P(NumberArithmetic, comesOutInLowestTerms) {
  EXPECT_EQ(GetParam().result.rationalText(), GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberArithmetic,
    ::testing::Values(
        Arithmetic{"nothing set is zero", Number(), "0"}, Arithmetic{"whole", Number(84), "84"},
        Arithmetic{"ratio is reduced", n(14, 20), "7/10"},
        Arithmetic{"ratio below zero", n(14, -20), "-7/10"},
        Arithmetic{"both below zero", n(-14, -20), "7/10"}, Arithmetic{"zero over anything", n(0, -7), "0"},
        Arithmetic{"sum of thirds and sixths", n(1, 3) + n(1, 6), "1/2"},
        Arithmetic{"sum that is zero", n(1, 3) + n(-1, 3), "0"},
        Arithmetic{"difference below zero", n(1, 3) - n(1, 2), "-1/6"},
        Arithmetic{"a tenth three times", n(1, 10) + n(1, 10) + n(1, 10), "3/10"},
        Arithmetic{"product at a limit", n(23, 10) * n(1, 10), "23/100"},
        Arithmetic{"product with zero", n(-5, 3) * Number(0), "0"},
        Arithmetic{"quotient", n(84) / n(25), "84/25"},
        Arithmetic{"quotient by a number below zero", n(84) / n(-25), "-84/25"},
        Arithmetic{"most plus one leaves the word", Number(most) + Number(1), "9223372036854775808"},
        Arithmetic{"and comes back", Number(most) + Number(1) - Number(1), "9223372036854775807"},
        Arithmetic{"least less one leaves the word", Number(least) - Number(1), "-9223372036854775809"},
        Arithmetic{"least is kept", Number(least), "-9223372036854775808"},
        Arithmetic{"least turned round", Number(0) - Number(least), "9223372036854775808"},
        Arithmetic{"most squared", Number(most) * Number(most), "85070591730234615847396907784232501249"},
        Arithmetic{"most squared and divided again", Number(most) * Number(most) / Number(most),
                   "9223372036854775807"},
        Arithmetic{"one over most squared", Number(1) / Number(most) / Number(most),
                   "1/85070591730234615847396907784232501249"},
        Arithmetic{"least over least", n(least, least), "1"},
        Arithmetic{"least over minus one", n(least, -1), "9223372036854775808"},
        Arithmetic{"least over three is past the word when its sign is taken", n(least, 3),
                   "-9223372036854775808/3"},
        Arithmetic{"one over least", n(1, least), "-1/9223372036854775808"},
        Arithmetic{"one divided by least", Number(1) / Number(least), "-1/9223372036854775808"},
        Arithmetic{"least divided by itself", Number(least) / Number(least), "1"},
        Arithmetic{"most divided by least", Number(most) / Number(least),
                   "-9223372036854775807/9223372036854775808"},
        Arithmetic{"ten to the eighteen", Number::powerOfTen(18), "1000000000000000000"},
        Arithmetic{"ten to the nineteen", Number::powerOfTen(19), "10000000000000000000"},
        Arithmetic{"ten to the minus two", Number::powerOfTen(-2), "1/100"},
        Arithmetic{"ten to the minus twenty", Number::powerOfTen(-20), "1/100000000000000000000"},
        Arithmetic{"ten to nothing", Number::powerOfTen(0), "1"},
        Arithmetic{"digits with zeros first are no octal", Number::fromDigits("0017", 0), "17"},
        Arithmetic{"long digits with zeros first are no octal",
                   Number::fromDigits("00000000000000000000017", 1), "17/10"},
        Arithmetic{"digits with decimals", Number::fromDigits("70", 2), "7/10"},
        Arithmetic{"eighteen digits", Number::fromDigits("999999999999999999", 18),
                   "999999999999999999/1000000000000000000"},
        Arithmetic{"few digits and many decimals", Number::fromDigits("70", 20), "7/10000000000000000000"},
        Arithmetic{"nineteen digits", Number::fromDigits("9999999999999999999", 0), "9999999999999999999"},
        Arithmetic{"thirty digits", Number::fromDigits("123456789012345678901234567890", 29),
                   "12345678901234567890123456789/10000000000000000000000000000"},
        Arithmetic{"no size below zero", n(-7, 10).absolute(), "7/10"},
        Arithmetic{"size of least", Number(least).absolute(), "9223372036854775808"}),
    test::NameOfRow());

struct Whole {
  const char* name;
  Number value;
  const char* floor;
  const char* ceil;
};

class NumberWhole : public ::testing::TestWithParam<Whole> {};

TEST_P(NumberWhole, goesDownAndUp) {
  EXPECT_EQ(GetParam().value.floor().rationalText(), GetParam().floor);
  EXPECT_EQ(GetParam().value.ceil().rationalText(), GetParam().ceil);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberWhole,
    ::testing::Values(Whole{"zero", Number(0), "0", "0"}, Whole{"whole", Number(5), "5", "5"},
                      Whole{"whole below zero", Number(-5), "-5", "-5"}, Whole{"half", n(1, 2), "0", "1"},
                      Whole{"minus half goes down to minus one", n(-1, 2), "-1", "0"},
                      Whole{"24 over 5 doses", n(24, 5), "4", "5"},
                      Whole{"minus 24 over 5", n(-24, 5), "-5", "-4"},
                      Whole{"just below one", n(999999, 1000000), "0", "1"},
                      Whole{"least", Number(least), "-9223372036854775808", "-9223372036854775808"},
                      Whole{"huge and a third", Number::powerOfTen(20) / Number(3), "33333333333333333333",
                            "33333333333333333334"},
                      Whole{"minus huge and a third", Number::powerOfTen(20) / Number(-3),
                            "-33333333333333333334", "-33333333333333333333"}),
    test::NameOfRow());

struct Rounded {
  const char* name;
  Number value;
  int decimals;
  const char* expected;
};

class NumberRounded : public ::testing::TestWithParam<Rounded> {};

TEST_P(NumberRounded, halfGoesUpInMagnitude) {
  EXPECT_EQ(GetParam().value.rounded(GetParam().decimals).rationalText(), GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberRounded,
    ::testing::Values(
        Rounded{"most, whose hundredths are too many for a word", Number(most), 2, "9223372036854775807"},
        // The four below by Python's fractions.
        Rounded{"half, scaled above a word", n(most, 2000000000), 9, "9007199254740992/1953125"},
        Rounded{"minus half, scaled above a word", n(-most, 2000000000), 9, "-9007199254740992/1953125"},
        Rounded{"more than half, scaled above a word", n(most, 2000000002), 9,
                "461168601381570189/100000000"},
        Rounded{"most over a prime", n(most - 1, 1000000007), 9, "2305842993072793/250000"},
        Rounded{"half to one", n(1, 2), 0, "1"}, Rounded{"minus half to minus one", n(-1, 2), 0, "-1"},
        Rounded{"one and a half", n(3, 2), 0, "2"}, Rounded{"two and a half, no even", n(5, 2), 0, "3"},
        Rounded{"minus two and a half", n(-5, 2), 0, "-3"}, Rounded{"3 25 to 3 3", n(325, 100), 1, "33/10"},
        Rounded{"0 005 to 0 01", n(5, 1000), 2, "1/100"},
        Rounded{"just below the half", n(4999999, 1000000000), 2, "0"},
        Rounded{"minus just below the half is no minus zero", n(-4, 1000), 2, "0"},
        Rounded{"two thirds", n(2, 3), 4, "6667/10000"}, Rounded{"third", n(1, 3), 4, "3333/10000"},
        Rounded{"carries over", n(99995, 100000), 4, "1"}, Rounded{"already there", n(7, 10), 2, "7/10"},
        Rounded{"to hundreds", Number(150), -2, "200"},
        Rounded{"minus to hundreds", Number(-150), -2, "-200"},
        Rounded{"below the half of a hundred", n(1499, 10), -2, "100"},
        Rounded{"minus huge and a half", Number(0) - Number::powerOfTen(20) - n(1, 2), 0,
                "-100000000000000000001"},
        Rounded{"minus just below the half of a huge one", Number(0) - Number::powerOfTen(20) - n(499, 1000),
                0, "-100000000000000000000"},
        Rounded{"huge", Number::powerOfTen(20) + n(1, 2), 0, "100000000000000000001"},
        Rounded{"to 20 places", n(2, 3), 20, "66666666666666666667/100000000000000000000"}),
    test::NameOfRow());

struct Digits {
  const char* name;
  Number value;
  int decimals;
  const char* digits;
};

class NumberDigits : public ::testing::TestWithParam<Digits> {};

TEST_P(NumberDigits, areThoseOfTheRoundedNumber) {
  EXPECT_EQ(GetParam().value.roundedDigits(GetParam().decimals), GetParam().digits);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberDigits,
    ::testing::Values(
        Digits{"nothing", Number(0), 2, "0"}, Digits{"whole", Number(7), 0, "7"},
        Digits{"whole with decimals", Number(7), 2, "700"}, Digits{"half goes up", n(12345, 1000), 2, "1235"},
        Digits{"no sign", n(-12345, 1000), 2, "1235"}, Digits{"too small to be seen", n(4, 1000), 2, "0"},
        Digits{"half of a hundredth", n(5, 1000), 2, "1"}, Digits{"a third", n(1, 3), 5, "33333"},
        Digits{"most, whose tenths are too many for a word", Number(most), 1, "92233720368547758070"},
        Digits{"least", Number(least), 0, "9223372036854775808"},
        Digits{"huge third", Number::powerOfTen(20) / Number(-3), 1, "333333333333333333333"},
        Digits{"half of a last decimal beyond a word", Number::powerOfTen(-25) * n(15, 10), 25, "2"},
        Digits{"many decimals", n(2, 3), 20, "66666666666666666667"}),
    test::NameOfRow());

struct FirstPlace {
  const char* name;
  Number value;
  int place;
};

class NumberFirstPlace : public ::testing::TestWithParam<FirstPlace> {};

TEST_P(NumberFirstPlace, isThatOfTheFirstDigit) {
  EXPECT_EQ(GetParam().value.firstPlace(), GetParam().place);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberFirstPlace,
    ::testing::Values(FirstPlace{"one", Number(1), 1}, FirstPlace{"nine and a lot", n(99999, 10000), 1},
                      FirstPlace{"ten", Number(10), 2}, FirstPlace{"ninety nine", Number(99), 2},
                      FirstPlace{"below zero", Number(-250), 3},
                      FirstPlace{"just below one", n(9999, 10000), 0}, FirstPlace{"a tenth", n(1, 10), 0},
                      FirstPlace{"just below a tenth", n(99, 1000), -1},
                      FirstPlace{"a hundredth", n(-1, 100), -1}, FirstPlace{"a thousandth", n(1, 1000), -2},
                      FirstPlace{"a third", n(1, 3), 0}, FirstPlace{"most of a word", Number(most), 19},
                      FirstPlace{"least of a word", Number(least), 19},
                      FirstPlace{"one over the most of a word", n(1, most), -18},
                      FirstPlace{"just below one of the most", n(most - 1, most), 0},
                      FirstPlace{"just above one of the most", n(most, most - 1), 1},
                      FirstPlace{"ten to the 25", Number::powerOfTen(25), 26},
                      FirstPlace{"ten to the minus 25", Number::powerOfTen(-25), -24}),
    test::NameOfRow());

struct Root {
  const char* name;
  const char* value;  // decimal
  int decimals;
  const char* cut;
  const char* rounded;
  bool exact;
};

class NumberRoot : public ::testing::TestWithParam<Root> {};

// Figures: Python decimal at 60 digits; ties by squaring k + 1/2 unit of the last place by hand.
TEST_P(NumberRoot, isCutAndRoundedExactly) {
  const Root& row = GetParam();
  const Number value = *readDecimal(row.value);
  EXPECT_EQ(exactText(value.rootCut(row.decimals)), row.cut);
  EXPECT_EQ(exactText(value.rootRounded(row.decimals)), row.rounded);
  EXPECT_EQ(value.hasExactRoot(), row.exact);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberRoot,
    ::testing::Values(
        Root{"zero", "0", 2, "0", "0", true}, Root{"one", "1", 2, "1", "1", true},
        Root{"four", "4", 0, "2", "2", true}, Root{"0 49", "0.49", 2, "0.7", "0.7", true},
        Root{"two", "2", 6, "1.414213", "1.414214", false},
        Root{"two to 20 places", "2", 20, "1.4142135623730950488", "1.4142135623730950488", false},
        Root{"three to 20 places", "3", 20, "1.73205080756887729352", "1.73205080756887729353", false},
        Root{"tie 0 705", "0.497025", 2, "0.7", "0.71", true},
        Root{"just below the tie 0 705", "0.497024999999999999999999", 2, "0.7", "0.7", false},
        Root{"just above the tie 0 705", "0.497025000000000000000001", 2, "0.7", "0.71", false},
        Root{"tie 0 695", "0.483025", 2, "0.69", "0.7", true},
        Root{"tie 1 005", "1.010025", 2, "1", "1.01", true},
        Root{"tie 0 5 to whole", "0.25", 0, "0", "1", true},
        Root{"tie 0 045", "0.002025", 2, "0.04", "0.05", true},
        Root{"tie 0 005, the first step", "0.000025", 2, "0", "0.01", true},
        Root{"below the first step", "0.000024", 2, "0", "0", false},
        Root{"tie 2 995 carries", "8.970025", 2, "2.99", "3", true},
        Root{"tie 0 70155 at 4 decimals", "0.4921724025", 4, "0.7015", "0.7016", true},
        Root{"huge", "10000000000000000000000000000", 2, "100000000000000", "100000000000000", true},
        Root{"one less than a huge square", "9999999999999999999999999999", 2, "99999999999999.99",
             "100000000000000", false}),
    test::NameOfRow());

TEST(NumberRootOf, rationalRootsAreSeenInLowestTerms) {
  EXPECT_TRUE(n(50, 98).hasExactRoot());  // 25/49
  EXPECT_FALSE(n(50, 99).hasExactRoot());
  EXPECT_FALSE(Number(-4).hasExactRoot());
  EXPECT_TRUE((Number::powerOfTen(40) / Number(9)).hasExactRoot());
  EXPECT_FALSE((Number::powerOfTen(40) / Number(3)).hasExactRoot());
  EXPECT_FALSE(Number::powerOfTen(41).hasExactRoot());
  EXPECT_FALSE(n(1, 3600 * 2).hasExactRoot());
}

TEST(NumberRootOf, mostellerOf103CmAnd172Kg) {
  const Number squared = Number(103) * n(172, 10) / Number(3600);
  EXPECT_EQ(squared.rationalText(), "4429/9000");
  EXPECT_EQ(exactText(squared.rootCut(6)), "0.701506");
  EXPECT_EQ(exactText(squared.rootRounded(2)), "0.7");
}

struct Ends {
  const char* name;
  Number value;
  int decimals;
  bool ends;
};

class NumberEnds : public ::testing::TestWithParam<Ends> {};

TEST_P(NumberEnds, isDecidedExactly) {
  EXPECT_EQ(GetParam().value.endsWithin(GetParam().decimals), GetParam().ends);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberEnds,
    ::testing::Values(Ends{"whole in none", Number(7), 0, true}, Ends{"half in none", n(1, 2), 0, false},
                      Ends{"half in one", n(1, 2), 1, true}, Ends{"eighth in two", n(1, 8), 2, false},
                      Ends{"eighth in three", n(1, 8), 3, true}, Ends{"third in 18", n(1, 3), 18, false},
                      Ends{"third in 40", n(1, 3), 40, false}, Ends{"below zero", n(-1, 8), 3, true},
                      Ends{"ten to minus twenty in 19", Number::powerOfTen(-20), 19, false},
                      Ends{"ten to minus twenty in 20", Number::powerOfTen(-20), 20, true},
                      Ends{"month in days", n(304375, 10000), 4, true},
                      Ends{"ten to minus eighteen in 19", Number::powerOfTen(-18), 19, true},
                      Ends{"hundreds in minus two", Number(300), -2, true},
                      Ends{"tens in minus two", Number(310), -2, false},
                      Ends{"huge third", Number::powerOfTen(30) / Number(3), 4, false}),
    test::NameOfRow());

TEST(NumberCompares, wordsAndArbitraryPrecisionAlike) {
  const Number beyond = Number(most) + Number(1);
  EXPECT_LT(Number(most), beyond);
  EXPECT_GT(beyond, Number(most));
  EXPECT_EQ(beyond - Number(1), Number(most));
  EXPECT_EQ(Number(least), Number(0) - beyond);
  EXPECT_LT(Number(0) - beyond - Number(1), Number(least));
  EXPECT_EQ(beyond, Number::powerOfTen(0) * beyond);
  EXPECT_NE(beyond, beyond + Number::powerOfTen(-30));
}

TEST(NumberCompares, acrossTermsWithoutOverflow) {
  EXPECT_LT(n(most - 1, most), Number(1));
  EXPECT_LT(n(most - 2, most - 1), n(most - 1, most));
  EXPECT_LT(n(-1, 2), n(-1, 3));
  EXPECT_EQ(n(2, 4), n(1, 2));
  EXPECT_TRUE(std::is_eq(n(2, 4) <=> n(1, 2)));
}

TEST(NumberCompares, smallerAndLarger) {
  EXPECT_EQ(smaller(n(1, 3), n(1, 2)), n(1, 3));
  EXPECT_EQ(larger(n(1, 3), n(1, 2)), n(1, 2));
  EXPECT_EQ(smaller(n(-1, 3), n(-1, 2)), n(-1, 2));
}

TEST(NumberTells, zeroWholeAndSign) {
  const Number huge = Number::powerOfTen(25);
  EXPECT_TRUE((huge - huge).isZero());
  EXPECT_FALSE(huge.isZero());
  EXPECT_TRUE(huge.isWhole());
  EXPECT_FALSE((huge + n(1, 3)).isWhole());
  EXPECT_TRUE((Number(0) - huge).isNegative());
  EXPECT_FALSE(Number(0).isNegative());
  EXPECT_FALSE((n(-1, 3) * Number(0)).isNegative());
}

struct DecimalsCase {
  std::string name;
  Number value;
  std::optional<int> decimals;  // by hand: one for each two or five under the bar, the more of both
};

class Decimals : public testing::TestWithParam<DecimalsCase> {};

TEST_P(Decimals, AreTheFewestThatItEndsWithin) {
  const DecimalsCase& row = GetParam();
  EXPECT_EQ(row.value.decimals(40), row.decimals);
  if (!row.decimals) return;
  EXPECT_TRUE(row.value.endsWithin(*row.decimals));
  EXPECT_EQ(row.value.decimals(*row.decimals), row.decimals);
  EXPECT_EQ(row.value.decimals(*row.decimals - 1), std::nullopt);
}

INSTANTIATE_TEST_SUITE_P(
    Number, Decimals,
    testing::Values(DecimalsCase{"zero", Number(0), 0}, DecimalsCase{"whole", Number(120), 0},
                    DecimalsCase{"aHalf", Number::ratio(1, 2), 1},
                    DecimalsCase{"belowZero", Number::ratio(-1, 4), 2},
                    DecimalsCase{"anEighth", Number::ratio(7, 8), 3},
                    DecimalsCase{"fivesAlone", Number::ratio(1, 125), 3},
                    DecimalsCase{"moreFivesThanTwos", Number::ratio(1, 1250), 4},
                    DecimalsCase{"aThird", Number::ratio(1, 3), {}},
                    DecimalsCase{"aSixth", Number::ratio(1, 6), {}},
                    DecimalsCase{"threeTwentyFirsts", Number::ratio(3, 21), {}},
                    DecimalsCase{"lastOfAWord", Number::powerOfTen(-18), 18},
                    DecimalsCase{"beyondAWord", Number::powerOfTen(-25), 25},
                    DecimalsCase{"tooMany", Number::powerOfTen(-41), {}},
                    DecimalsCase{"twosThatFillAWord", Number::ratio(1, std::int64_t{1} << 62), {}}),
    [](const auto& row) { return row.param.name; });

struct RootCase {
  std::string name;
  Number value;
  int decimals;
  std::string cut;
  std::string rounded;
};

class RootInAWord : public testing::TestWithParam<RootCase> {};

TEST_P(RootInAWord, IsCutAndRounded) {
  const RootCase& row = GetParam();
  EXPECT_EQ(row.value.rootCut(row.decimals).rationalText(), row.cut);
  EXPECT_EQ(row.value.rootRounded(row.decimals).rationalText(), row.rounded);
}

// By hand: 1.5² = 2.25, so that 2.25 lies exactly on a half and goes up, and what is a hair below stays.
INSTANTIATE_TEST_SUITE_P(
    Number, RootInAWord,
    testing::Values(RootCase{"onAHalf", Number::ratio(225, 100), 0, "1", "2"},
                    RootCase{"belowAHalf", Number::ratio(224999999, 100000000), 0, "1", "1"},
                    RootCase{"aboveAHalf", Number::ratio(225000001, 100000000), 0, "1", "2"},
                    RootCase{"onAHalfOfAHundredth", Number::ratio(13225, 1000000), 2, "11/100",
                             "3/25"},                                                   // 0.115² = 0.013225
                    RootCase{"two", Number(2), 6, "1414213/1000000", "707107/500000"},  // 1.4142135…
                    RootCase{"square", Number(49), 4, "7", "7"}, RootCase{"zero", Number(0), 2, "0", "0"},
                    RootCase{"longInAWord", Number(std::int64_t{9223372036854775807}), 0, "3037000499",
                             "3037000500"}),
    [](const auto& row) { return row.param.name; });

// Up to two to the 53 every whole number is a floating one; from there it is rounded once, and not twice.
TEST(NumberRoughly, isTheNearestFloatingOne) {
  constexpr std::int64_t edge = std::int64_t{1} << 53U;
  EXPECT_EQ(n(1, 3).roughly(), 1.0 / 3.0);
  EXPECT_EQ(Number(edge - 1).roughly(), 9007199254740991.0);
  EXPECT_EQ(Number(edge).roughly(), 9007199254740992.0);
  EXPECT_EQ(Number(-edge).roughly(), -9007199254740992.0);
  EXPECT_EQ(n(1, edge).roughly(), 1.0 / 9007199254740992.0);
  EXPECT_EQ(Number::powerOfTen(20).roughly(), 1e20);
}

}  // namespace
}  // namespace wardchalk::number_test
