#include "core/number/decimal_text.h"

#include <gtest/gtest.h>

#include <string>

#include "tests/core/test_names.h"

namespace wardchalk::decimal_text_test {
namespace {

Number n(std::int64_t over, std::int64_t under = 1) { return Number::ratio(over, under); }

struct Read {
  const char* name;
  std::string text;
  const char* exact;
};

class ReadsNumber : public ::testing::TestWithParam<Read> {};

TEST_P(ReadsNumber, exactly) {
  const Result<Number> number = readDecimal(GetParam().text);
  ASSERT_TRUE(number) << idOf(number.refusal().code);
  EXPECT_EQ(number->rationalText(), GetParam().exact);
}

INSTANTIATE_TEST_SUITE_P(
    Table, ReadsNumber,
    ::testing::Values(Read{"digit", "7", "7"}, Read{"zero", "0", "0"},
                      Read{"zero with decimals", "0.00", "0"}, Read{"point", "17.2", "86/5"},
                      Read{"below one", "0.05", "1/20"}, Read{"trailing zero typed", "0.70", "7/10"},
                      Read{"a tenth is a tenth", "0.1", "1/10"}, Read{"thousand", "1000", "1000"},
                      Read{"thirty digits", std::string(30, '9'), "999999999999999999999999999999"},
                      Read{"thirty digits and a point", "1." + std::string(28, '0') + "1",
                           "100000000000000000000000000001/100000000000000000000000000000"},
                      Read{"pound", "0.45359237", "45359237/100000000"}),
    test::NameOfRow());

struct Refused {
  const char* name;
  std::string text;
  RefusalCode code;
  std::string suggestion = "";
};

class RefusesNumber : public ::testing::TestWithParam<Refused> {};

TEST_P(RefusesNumber, withTheReason) {
  const Refused& row = GetParam();
  const Result<Number> number = readDecimal(row.text);
  ASSERT_FALSE(number);
  EXPECT_EQ(idOf(number.refusal().code), idOf(row.code));
  EXPECT_EQ(number.refusal().suggestion, row.suggestion);
  EXPECT_TRUE(row.text.starts_with(number.refusal().typed)) << number.refusal().typed;
  EXPECT_FALSE(readPositive(row.text));
}

using enum RefusalCode;

INSTANTIATE_TEST_SUITE_P(
    Table, RefusesNumber,
    ::testing::Values(
        Refused{"nothing", "", empty}, Refused{"comma for point", "1,5", comma},
        Refused{"thousands", "1,234", comma}, Refused{"german thousands", "1.234,5", comma},
        Refused{"comma alone", ",", comma}, Refused{"comma first", ",5", comma},
        Refused{"bare point", ".5", barePoint, "0.5"},
        Refused{"bare point and zero", ".05", barePoint, "0.05"}, Refused{"point last", "5.", trailingPoint},
        Refused{"point last after zero", "0.", trailingPoint}, Refused{"point alone", ".", notANumber},
        Refused{"two points together", "1..5", secondPoint}, Refused{"two points", "1.5.2", secondPoint},
        Refused{"points alone", "..", secondPoint}, Refused{"point on both sides", ".5.", secondPoint},
        Refused{"leading zero", "05", leadingZero, "5"}, Refused{"no octal", "017", leadingZero, "17"},
        Refused{"two zeros", "00", leadingZero, "0"},
        Refused{"two zeros and point", "00.5", leadingZero, "0.5"},
        Refused{"zeros and digits", "0080", leadingZero, "80"},
        Refused{"leading zero with decimals", "05.25", leadingZero, "5.25"},
        Refused{"exponent", "1e3", exponent}, Refused{"large exponent", "1E3", exponent},
        Refused{"exponent below zero", "1e-3", exponent}, Refused{"exponent with plus", "1e+3", exponent},
        Refused{"exponent last", "1e", notANumber}, Refused{"exponent alone", "e", notANumber},
        Refused{"exponent first", "e3", notANumber}, Refused{"exponent after a point", ".e3", notANumber},
        Refused{"exponent of a letter", "1ex", notANumber}, Refused{"hexadecimal", "0x10", notANumber},
        Refused{"minus", "-5", sign}, Refused{"plus", "+5", sign}, Refused{"true minus", "−5", sign},
        Refused{"minus alone", "-", sign}, Refused{"minus inside", "5-10", notANumber},
        Refused{"en dash inside", "5–10", notANumber}, Refused{"space inside", "1 000", spaceInNumber},
        Refused{"space first", " 5", spaceInNumber}, Refused{"space last", "5 ", spaceInNumber},
        Refused{"tab", "5\t", spaceInNumber}, Refused{"line end", "5\n", spaceInNumber},
        Refused{"no-break space", "1\u00A0000", spaceInNumber},
        Refused{"thin space", "1\u2009000", spaceInNumber}, Refused{"stroke", "1/2", fraction},
        Refused{"half sign", "½", fraction}, Refused{"one and a half", "1½", fraction},
        Refused{"quarter sign", "¼", fraction}, Refused{"arabic digits", "٨٠", otherDigits},
        Refused{"persian digits", "۸۰", otherDigits}, Refused{"devanagari digits", "८०", otherDigits},
        Refused{"full-width digits", "８０", otherDigits},
        Refused{"full-width among plain", "8０", otherDigits}, Refused{"letter", "5a", notANumber},
        Refused{"letter o for zero", "1O", notANumber}, Refused{"letter l for one", "l0", notANumber},
        Refused{"not a number", "nan", notANumber}, Refused{"infinity", "inf", notANumber},
        Refused{"emoji", "💊", notANumber}, Refused{"accented letter", "é", notANumber},
        Refused{"approximately", "≈5", notANumber}, Refused{"underscore", "1_000", notANumber},
        Refused{"apostrophe", "1'000", notANumber}, Refused{"control character", "5\x01", spaceInNumber},
        Refused{"nul byte", std::string("5\0", 2), spaceInNumber},
        Refused{"broken utf-8", "5\xFF", notANumber}, Refused{"cut utf-8", "5\xE2\x82", notANumber},
        Refused{"thirty-one digits", std::string(31, '9'), tooLong},
        Refused{"thirty-one digits and a point", "1." + std::string(30, '1'), tooLong},
        Refused{"ten thousand digits", std::string(10000, '7'), tooLong},
        Refused{"ten thousand points", std::string(10000, '.'), tooLong},
        Refused{"ten thousand zeros", std::string(10000, '0'), tooLong}),
    test::NameOfRow());

TEST(ReadsPositive, refusesEveryZero) {
  for (const char* text : {"0", "0.0", "0.000000000000000000000000000"}) {
    const Result<Number> number = readPositive(text);
    ASSERT_FALSE(number) << text;
    EXPECT_EQ(idOf(number.refusal().code), "zero") << text;
  }
  EXPECT_TRUE(readPositive("0.0000000000000000000000000001"));
}

struct Shown {
  const char* name;
  Number value;
  const char* text;
  bool exact;
  Grouping grouping = Grouping::none;
};

class ShowsNumber : public ::testing::TestWithParam<Shown> {};

TEST_P(ShowsNumber, asR1Says) {
  const ShownNumber shown = show(GetParam().value, GetParam().grouping);
  EXPECT_EQ(shown.text, GetParam().text);
  EXPECT_EQ(shown.exact, GetParam().exact);
  EXPECT_EQ(shown.marked(), GetParam().exact ? GetParam().text : std::string("≈ ") + GetParam().text);
}

constexpr Grouping commas = Grouping::commas;

INSTANTIATE_TEST_SUITE_P(
    Table, ShowsNumber,
    ::testing::Values(Shown{"zero", Number(0), "0", true}, Shown{"whole", Number(84), "84", true},
                      Shown{"no trailing zero", n(70, 100), "0.7", true},
                      Shown{"whole keeps its zeros", Number(100), "100", true},
                      Shown{"four decimals", n(12345, 10000), "1.2345", true},
                      Shown{"smallest exact", n(1, 10000), "0.0001", true},
                      Shown{"five decimals are rounded to four digits", n(123456, 100000), "1.235", false},
                      Shown{"five decimals, small", n(12345, 1000000000), "0.00001235", false},
                      Shown{"third", n(1, 3), "0.3333", false}, Shown{"two thirds", n(2, 3), "0.6667", false},
                      Shown{"twenty thirds", n(20, 3), "6.667", false},
                      Shown{"two hundred thirds", n(200, 3), "66.67", false},
                      Shown{"thousands of thirds", n(20000, 3), "6667", false},
                      Shown{"more than four whole digits stay", n(1000000, 3), "333333", false},
                      Shown{"37 lb 4 oz in kg", n(37 * 16 + 4, 16) * n(45359237, 100000000), "16.9", false},
                      Shown{"just below ten is rounded to it", n(9999999, 1000000), "10", false},
                      Shown{"just below one", n(9999999, 10000000), "1", false},
                      Shown{"below zero", n(-1, 3), "-0.3333", false},
                      Shown{"below zero, exact", n(-5, 2), "-2.5", true},
                      Shown{"999 has no comma", Number(999), "999", true, commas},
                      Shown{"1000 has one", Number(1000), "1,000", true, commas},
                      Shown{"1000 without grouping", Number(1000), "1000", true},
                      Shown{"decimals are not grouped", n(10000001, 1000), "10,000.001", true, commas},
                      Shown{"millions", Number(1234567), "1,234,567", true, commas},
                      Shown{"below zero, grouped", Number(-1234567), "-1,234,567", true, commas},
                      Shown{"minus 100 is not grouped", Number(-100), "-100", true, commas},
                      Shown{"huge", Number::powerOfTen(24), "1,000,000,000,000,000,000,000,000", true,
                            commas},
                      Shown{"rounded and grouped", n(40000, 3), "13,333", false, commas}),
    test::NameOfRow());

struct Apart {
  const char* name;
  Number a;
  Number b;
  const char* textA;
  const char* textB;
  int digits;
};

class ShowsApart : public ::testing::TestWithParam<Apart> {};

TEST_P(ShowsApart, withDigitsUntilTheyDiffer) {
  const Apart& row = GetParam();
  const auto [a, b] = showApart(row.a, row.b);
  EXPECT_EQ(a.text, row.textA);
  EXPECT_EQ(b.text, row.textB);
  EXPECT_EQ(digitsApart(row.a, row.b), row.digits);
}

INSTANTIATE_TEST_SUITE_P(
    Table, ShowsApart,
    ::testing::Values(
        Apart{"equal stay as they are", n(1, 3), n(1, 3), "0.3333", "0.3333", 4},
        Apart{"already apart", n(1, 3), n(2, 3), "0.3333", "0.6667", 4},
        Apart{"exact ones are apart", n(840001, 10000), Number(84), "84.0001", "84", 4},
        Apart{"exact and just above", Number(84) + n(1, 300000), Number(84), "84.000003", "84", 8},
        Apart{"exact and just below", Number(84) - n(1, 300000), Number(84), "83.999997", "84", 8},
        Apart{"two endless ones", n(1, 3), n(1, 3) + Number::powerOfTen(-9), "0.333333333", "0.333333334", 9},
        Apart{"a whole more than four digits", Number(1000000) + n(1, 100000), Number(1000000),
              "1000000.00001", "1000000", 12}),
    test::NameOfRow());

/// What lies far apart is told by four digits without being printed: tried where it begins to be far, around
/// every power of ten, beside printing both with ever more digits.
TEST(ShowsApart, withNoMoreDigitsThanAreNeeded) {
  for (int power = -4; power <= 6; ++power)
    for (const std::int64_t sevenths : {7, 8, 13, 35, 64, 69, 70})
      for (std::int64_t apart = 990; apart <= 1010; ++apart) {
        const Number a = n(sevenths, 7) * Number::powerOfTen(power);
        const Number b = a * n(apart, 1000);
        int digits = 4;
        while (a != b && show(a, Grouping::none, digits).text == show(b, Grouping::none, digits).text)
          ++digits;
        ASSERT_EQ(digitsApart(a, b), digits) << a.rationalText() << " and " << b.rationalText();
        ASSERT_EQ(digitsApart(b, a), digits) << b.rationalText() << " and " << a.rationalText();
        ASSERT_EQ(digitsApart(Number(0) - a, Number(0) - b), digits) << "below zero";
      }
}

struct Percent {
  const char* name;
  Number part;
  Number whole;
  const char* text;
};

class ShowsPercent : public ::testing::TestWithParam<Percent> {};

TEST_P(ShowsPercent, withOneDecimalAndAHundredOnlyWhenEqual) {
  EXPECT_EQ(percentText(GetParam().part, GetParam().whole), GetParam().text);
}

INSTANTIATE_TEST_SUITE_P(
    Table, ShowsPercent,
    ::testing::Values(
        Percent{"equal", n(1, 3), n(2, 6), "100"}, Percent{"60 of 84", Number(60), Number(84), "71.4"},
        Percent{"80 of 84", Number(80), Number(84), "95.2"},
        Percent{"thousands", Number(14), Number(1), "1,400"},
        Percent{"half, no trailing zero", Number(1), Number(2), "50"},
        Percent{"99 97 is no hundred", Number(9997), Number(10000), "99.9"},
        Percent{"99 95 is no hundred", Number(9995), Number(10000), "99.9"},
        Percent{"99 94", Number(9994), Number(10000), "99.9"},
        Percent{"99 84", Number(9984), Number(10000), "99.8"},
        Percent{"100 02 is no hundred", Number(10002), Number(10000), "100.1"},
        Percent{"100 04 is no hundred", Number(100049), Number(100000), "100.1"},
        Percent{"100 05", Number(10005), Number(10000), "100.1"},
        Percent{"100 15", Number(10015), Number(10000), "100.2"},
        Percent{"almost equal below", Number::powerOfTen(20) - Number(1), Number::powerOfTen(20), "99.9"},
        Percent{"almost equal above", Number::powerOfTen(20) + Number(1), Number::powerOfTen(20), "100.1"},
        Percent{"ten-fold", Number(840), Number(84), "1,000"},
        Percent{"thousand-fold", Number(84), n(84, 1000), "100,000"},
        Percent{"nothing", Number(0), Number(84), "0"},
        Percent{"half goes up", Number(125), Number(100000), "0.1"},
        Percent{"0 05 goes up", Number(5), Number(10000), "0.1"}),
    test::NameOfRow());

TEST(PlainPercent, mayBeAHundred) {
  EXPECT_EQ(plainPercent(n(9997, 100)), "100");
  EXPECT_EQ(plainPercent(n(95, 1000)), "0.1");
  EXPECT_EQ(plainPercent(n(49, 1000)), "0");
  EXPECT_EQ(plainPercent(n(55, 10)), "5.5");
  EXPECT_EQ(plainPercent(Number(5)), "5");
}

struct OverBy {
  const char* name;
  Number value;
  const char* text;  ///< by how many percent it is over 100
};

class ShowsExcess : public ::testing::TestWithParam<OverBy> {};

TEST_P(ShowsExcess, NeverAsNothing) { EXPECT_EQ(excessText(GetParam().value, Number(100)), GetParam().text); }

INSTANTIATE_TEST_SUITE_P(
    Table, ShowsExcess,
    ::testing::Values(OverBy{"ten-fold", Number(1000), "900"}, OverBy{"thousands", Number(1500), "1,400"},
                      OverBy{"one decimal", n(10026, 100), "0.3"},
                      OverBy{"0 05 goes up", n(10005, 100), "0.1"},
                      OverBy{"less than 0 05 has one digit", n(1000499, 10000), "0.05"},
                      OverBy{"a little less", n(1000449, 10000), "0.04"},
                      OverBy{"a hair", Number(100) + Number::powerOfTen(-9), "0.000000001"},
                      OverBy{"nothing", Number(100), "0"}),
    test::NameOfRow());

TEST(FixedText, keepsItsZeros) {
  EXPECT_EQ(fixedText(n(7, 10), 2), "0.70");
  EXPECT_EQ(fixedText(Number(1), 2), "1.00");
  EXPECT_EQ(fixedText(Number(1), 0), "1");
  EXPECT_EQ(fixedText(n(5, 1000), 2), "0.01");
  EXPECT_EQ(fixedText(n(49, 10000), 2), "0.00");
  EXPECT_EQ(fixedText(n(-7, 10), 2), "-0.70");
  EXPECT_EQ(fixedText(n(-4, 1000), 2), "0.00");  // no minus zero
  EXPECT_EQ(fixedText(n(2, 3), 20), "0.66666666666666666667");
  EXPECT_EQ(fixedText(Number(1234567), 2), "1234567.00");
}

TEST(WithoutThousands, takesOutTheCommasOfNumbersAlone) {
  EXPECT_EQ(withoutThousands("≥ 1,200 g, < 1,499 g"), "≥ 1200 g, < 1499 g");
  EXPECT_EQ(withoutThousands("1,234,567 mcg/min"), "1234567 mcg/min");
  EXPECT_EQ(withoutThousands("4 to 6, or 8"), "4 to 6, or 8");
  EXPECT_EQ(withoutThousands(",5"), ",5");
  EXPECT_EQ(withoutThousands("5,"), "5,");
  EXPECT_EQ(withoutThousands(""), "");
}

TEST(ExactText, isTheShortestDecimalOrARatio) {
  EXPECT_EQ(exactText(n(70, 100)), "0.7");
  EXPECT_EQ(exactText(Number(-84)), "-84");
  EXPECT_EQ(exactText(n(185, 11)), "185/11");
  EXPECT_EQ(exactText(n(-1, 8)), "-0.125");
  EXPECT_EQ(exactText(Number::powerOfTen(-40)), "0." + std::string(39, '0') + "1");
  EXPECT_EQ(exactText(Number::powerOfTen(-41)), "1/1" + std::string(41, '0'));
}

}  // namespace
}  // namespace wardchalk::decimal_text_test
