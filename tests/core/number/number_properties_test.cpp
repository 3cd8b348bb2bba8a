#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <boost/multiprecision/cpp_int.hpp>
#include <string>
#include <vector>

#include "core/number/decimal_text.h"
#include "core/number/number.h"

// Boost's rational is the oracle here: the same sums by other code than the two machine words that Number
// keeps.

namespace wardchalk::number_properties_test {
namespace {

using Oracle = boost::multiprecision::cpp_rational;
using Whole = boost::multiprecision::cpp_int;

/// A value held both ways; built from digits, so that word-sized and much larger values both come up.
struct Both {
  Number number;
  Oracle oracle;
};

std::string textOf(const Oracle& value) {
  std::string text = numerator(value).str();
  if (denominator(value) != 1) text.append("/").append(denominator(value).str());
  return text;
}

Both madeFrom(std::int64_t a, std::int64_t b, std::int64_t c, std::int64_t d, bool large) {
  const std::int64_t under = b == 0 ? 1 : b;
  Both both{Number::ratio(a, under), Oracle(Whole(a), Whole(1)) / Oracle(Whole(under), Whole(1))};
  if (!large) return both;
  const std::int64_t by = d == 0 ? 1 : d;
  both.number = both.number * Number(c) / Number(by);
  both.oracle = both.oracle * Oracle(Whole(c), Whole(1)) / Oracle(Whole(by), Whole(1));
  return both;
}

Both any() {
  const auto small = *rc::gen::inRange<std::int64_t>(-2000, 2000);
  const auto word = *rc::gen::arbitrary<std::int64_t>();
  const auto wide = *rc::gen::inRange<std::int64_t>(INT64_MIN, INT64_MAX);
  const bool isSmall = *rc::gen::arbitrary<bool>();
  const bool large = *rc::gen::arbitrary<bool>();
  const auto under = *rc::gen::inRange<std::int64_t>(1, 5000);
  return madeFrom(isSmall ? small : wide, isSmall ? under : word, wide, word, large);
}

RC_GTEST_PROP(NumberProperty, arithmeticAgreesWithTheOracle, ()) {
  const Both a = any();
  const Both b = any();
  RC_ASSERT((a.number + b.number).rationalText() == textOf(a.oracle + b.oracle));
  RC_ASSERT((a.number - b.number).rationalText() == textOf(a.oracle - b.oracle));
  RC_ASSERT((a.number * b.number).rationalText() == textOf(a.oracle * b.oracle));
  if (!b.number.isZero()) RC_ASSERT((a.number / b.number).rationalText() == textOf(a.oracle / b.oracle));
}

RC_GTEST_PROP(NumberProperty, comparisonAgreesWithTheOracle, ()) {
  const Both a = any();
  const Both b = any();
  RC_ASSERT((a.number < b.number) == (a.oracle < b.oracle));
  RC_ASSERT((a.number == b.number) == (a.oracle == b.oracle));
  RC_ASSERT(a.number == a.number && !(a.number < a.number));
}

RC_GTEST_PROP(NumberProperty, fieldLaws, ()) {
  const Number a = any().number;
  const Number b = any().number;
  const Number c = any().number;
  RC_ASSERT(a + b == b + a);
  RC_ASSERT(a * b == b * a);
  RC_ASSERT((a + b) + c == a + (b + c));
  RC_ASSERT((a * b) * c == a * (b * c));
  RC_ASSERT(a * (b + c) == a * b + a * c);
  RC_ASSERT(a - a == Number(0));
  if (!b.isZero()) RC_ASSERT((a / b) * b == a);
}

RC_GTEST_PROP(NumberProperty, floorAndCeilHoldTheValueBetweenThem, ()) {
  const Number a = any().number;
  RC_ASSERT(a.floor().isWhole() && a.ceil().isWhole());
  RC_ASSERT(a.floor() <= a && a < a.floor() + Number(1));
  RC_ASSERT(a.ceil() >= a && a > a.ceil() - Number(1));
}

RC_GTEST_PROP(NumberProperty, roundedIsNearestAndHalfGoesUpInMagnitude, ()) {
  const Number a = any().number;
  const int decimals = *rc::gen::inRange(0, 8);
  const Number unit = Number::powerOfTen(-decimals);
  const Number rounded = a.rounded(decimals);
  RC_ASSERT(rounded.endsWithin(decimals));
  const Number away = rounded.absolute() - a.absolute();  // above zero when it went up
  RC_ASSERT(away <= unit / Number(2));
  RC_ASSERT(away > Number(0) - unit / Number(2));
  RC_ASSERT(rounded.isZero() || rounded.isNegative() == a.isNegative());
}

RC_GTEST_PROP(NumberProperty, rootIsCutAndRoundedToTheRightSide, ()) {
  const Number x = any().number.absolute();
  const int decimals = *rc::gen::inRange(0, 12);
  const Number unit = Number::powerOfTen(-decimals);
  const Number half = unit / Number(2);
  const Number cut = x.rootCut(decimals);
  const Number rounded = x.rootRounded(decimals);
  RC_ASSERT(cut.endsWithin(decimals) && rounded.endsWithin(decimals));
  RC_ASSERT(cut * cut <= x && x < (cut + unit) * (cut + unit));
  if (!rounded.isZero()) RC_ASSERT((rounded - half) * (rounded - half) <= x);
  RC_ASSERT(x < (rounded + half) * (rounded + half));
}

RC_GTEST_PROP(NumberProperty, aSquareHasItsRoot, ()) {
  const Number a = any().number.absolute();
  RC_ASSERT((a * a).hasExactRoot());
  if (a.isWhole()) RC_ASSERT((a * a).rootRounded(0) == a);
}

RC_GTEST_PROP(NumberProperty, digitsReadBackAsTheyWereWritten, ()) {
  const auto units = *rc::gen::inRange<std::int64_t>(0, 10000000);
  const auto thousandths = *rc::gen::inRange<int>(0, 10000);
  std::string decimals = std::to_string(thousandths);
  decimals.insert(0, 4 - std::min<std::size_t>(4, decimals.size()), '0');
  const std::string text = std::to_string(units) + "." + decimals;
  const Result<Number> number = readDecimal(text);
  RC_ASSERT(static_cast<bool>(number));
  RC_ASSERT(*number == Number::ratio(units * 10000 + thousandths, 10000));
  RC_ASSERT(fixedText(*number, 4) == text);
  RC_ASSERT(*readDecimal(show(*number).text) == *number);
}

RC_GTEST_PROP(NumberProperty, anyTextIsReadExactlyOrRefused, (const std::string& text)) {
  const Result<Number> number = readDecimal(text);
  if (!number) {
    RC_ASSERT(text.starts_with(number.refusal().typed));
    return;
  }
  RC_ASSERT(text.find_first_not_of("0123456789.") == std::string::npos);
  RC_ASSERT(text.front() != '.' && text.back() != '.');
}

}  // namespace
}  // namespace wardchalk::number_properties_test
