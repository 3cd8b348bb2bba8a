#include "core/number/number.h"

#include <algorithm>
#include <array>
#include <bit>
#include <boost/multiprecision/cpp_int.hpp>
#include <cassert>
#include <limits>
#include <numeric>
#include <optional>
#include <utility>

namespace wardchalk {

namespace {

using boost::multiprecision::cpp_int;
using boost::multiprecision::cpp_rational;
__extension__ typedef __int128 Wide;
__extension__ typedef unsigned __int128 UnsignedWide;

constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();

UnsignedWide magnitude(Wide value) {
  return value < 0 ? UnsignedWide{0} - static_cast<UnsignedWide>(value) : static_cast<UnsignedWide>(value);
}

bool fitsWord(UnsignedWide value) { return value <= std::numeric_limits<std::uint64_t>::max(); }

/// `b` is not zero. The first step of division brings two sizes that lie far apart together; what is left is
/// done by shifts.
std::uint64_t commonDivisor(std::uint64_t a, std::uint64_t b) { return std::gcd(b, a % b); }

UnsignedWide commonDivisor(UnsignedWide a, UnsignedWide b) {
  while (b != 0) {
    if (fitsWord(a) && fitsWord(b))
      return commonDivisor(static_cast<std::uint64_t>(a), static_cast<std::uint64_t>(b));
    a = std::exchange(b, a % b);
  }
  return a;
}

/// Divides both by what they share. Most fit a word, where a division is short.
void reduce(UnsignedWide& over, UnsignedWide& under) {
  if (fitsWord(over) && fitsWord(under)) {
    const auto a = static_cast<std::uint64_t>(over);
    const auto b = static_cast<std::uint64_t>(under);
    const std::uint64_t common = commonDivisor(a, b);
    over = a / common;
    under = b / common;
    return;
  }
  const UnsignedWide common = commonDivisor(over, under);
  over /= common;
  under /= common;
}

struct Words {
  std::int64_t numerator;
  std::int64_t denominator;
};

/// Lowest terms, if they fit two words. The most are whole, and there is nothing to reduce.
std::optional<Words> reduced(Wide numerator, Wide denominator) {
  assert(denominator != 0);
  if (denominator == 1 && -largest <= numerator && numerator <= largest)
    return Words{static_cast<std::int64_t>(numerator), 1};
  const bool negative = (numerator < 0) != (denominator < 0);
  UnsignedWide over = magnitude(numerator);
  UnsignedWide under = magnitude(denominator);
  reduce(over, under);
  if (over > static_cast<UnsignedWide>(largest) || under > static_cast<UnsignedWide>(largest))
    return std::nullopt;
  const auto value = static_cast<std::int64_t>(over);
  return Words{negative ? -value : value, static_cast<std::int64_t>(under)};
}

/// Divides both by what they share; `under` is above zero.
void cancel(std::int64_t& over, std::int64_t& under) {
  if (under == 1) return;
  const auto common = static_cast<std::int64_t>(
      commonDivisor(static_cast<std::uint64_t>(magnitude(over)), static_cast<std::uint64_t>(under)));
  if (common == 1) return;
  over /= common;
  under /= common;
}

/// Of two in lowest terms, each with a denominator above zero; no value where two words are too small for it.
/// Only a numerator and the other's denominator can share anything: it goes before the numbers grow.
std::optional<Words> product(Words a, Words b) {
  cancel(a.numerator, b.denominator);
  cancel(b.numerator, a.denominator);
  const Wide over = Wide{a.numerator} * b.numerator;
  const Wide under = Wide{a.denominator} * b.denominator;
  if (over < -largest || over > largest || under > largest) return std::nullopt;
  return Words{static_cast<std::int64_t>(over), static_cast<std::int64_t>(under)};
}

cpp_int tenTo(int exponent) {
  return boost::multiprecision::pow(cpp_int(10), static_cast<unsigned>(exponent));
}

constexpr int wordPowers = 18;  // ten to the 18 still fits one word

constexpr auto wordPowersOfTen = [] {
  std::array<std::int64_t, wordPowers + 1> powers{1};
  for (std::size_t i = 1; i < powers.size(); ++i) powers[i] = powers[i - 1] * 10;
  return powers;
}();

std::int64_t wordTenTo(int exponent) { return wordPowersOfTen[static_cast<std::size_t>(exponent)]; }

cpp_int floorOf(const cpp_int& over, const cpp_int& under) {
  cpp_int quotient;
  cpp_int remainder;
  boost::multiprecision::divide_qr(over, under, quotient, remainder);
  if (remainder < 0) --quotient;
  return quotient;
}

}  // namespace

struct Number::Big {
  cpp_rational value;
};

/// The one door between the two representations.
struct BigAccess {
  static bool isBig(const Number& number) { return number.big_ != nullptr; }
  static std::int64_t over(const Number& number) { return number.numerator_; }
  static std::int64_t under(const Number& number) { return number.denominator_; }

  static cpp_rational toBig(const Number& number) {
    if (number.big_) return number.big_->value;
    return cpp_rational(cpp_int(number.numerator_), cpp_int(number.denominator_));
  }

  static Number fromWords(Words words) {
    Number number;
    number.numerator_ = words.numerator;
    number.denominator_ = words.denominator;
    return number;
  }

  static Number fromBig(const cpp_rational& value) {
    const cpp_int over = boost::multiprecision::numerator(value);
    const cpp_int under = boost::multiprecision::denominator(value);
    if (abs(over) <= largest && under <= largest)
      return fromWords({static_cast<std::int64_t>(over), static_cast<std::int64_t>(under)});
    Number number;
    number.big_ = std::make_shared<const Number::Big>(Number::Big{value});
    return number;
  }
};

namespace {

bool bothWords(const Number& a, const Number& b) { return !BigAccess::isBig(a) && !BigAccess::isBig(b); }

/// Value × 10^(2·decimals) as one whole number over another: the integer root of what is whole in it is the
/// root cut after `decimals` decimals.
struct BigScaled {
  cpp_int over;
  cpp_int under;
  [[nodiscard]] cpp_int root() const { return sqrt(floorOf(over, under)); }
};

BigScaled scaledForRoot(const Number& number, int decimals) {
  const cpp_rational value = BigAccess::toBig(number);
  return {boost::multiprecision::numerator(value) * tenTo(2 * decimals),
          boost::multiprecision::denominator(value)};
}

struct ScaledForRoot {
  std::uint64_t whole;  ///< the whole part of value × 10^(2·decimals)
  bool quarterLeft;     ///< what is left of it is a quarter or more
};

/// The same within two words; no value where they are too small for it.
std::optional<ScaledForRoot> wordScaledForRoot(const Number& number, int decimals) {
  if (BigAccess::isBig(number) || decimals < 0 || 2 * decimals > wordPowers) return std::nullopt;
  const auto under = static_cast<UnsignedWide>(BigAccess::under(number));
  const UnsignedWide scaled =
      static_cast<UnsignedWide>(BigAccess::over(number)) * static_cast<UnsignedWide>(wordTenTo(2 * decimals));
  const UnsignedWide whole = scaled / under;
  if (!fitsWord(whole)) return std::nullopt;
  return ScaledForRoot{static_cast<std::uint64_t>(whole), 4 * (scaled - whole * under) >= under};
}

/// `under` is not zero, and twice of it fits a word; halves are rounded up.
UnsignedWide nearestQuotient(UnsignedWide over, UnsignedWide under) {
  const UnsignedWide doubled = 2 * over + under;
  if (fitsWord(doubled)) return static_cast<std::uint64_t>(doubled) / static_cast<std::uint64_t>(2 * under);
  return doubled / (2 * under);
}

/// How many steps of ten to the minus `decimals`, which are not below zero, the size of the number is, half
/// up; no value where words are too small for it.
std::optional<std::int64_t> wordSteps(const Number& number, int decimals) {
  assert(decimals >= 0);
  if (BigAccess::isBig(number) || decimals > wordPowers) return std::nullopt;
  const UnsignedWide over =
      magnitude(BigAccess::over(number)) * static_cast<UnsignedWide>(wordTenTo(decimals));
  const UnsignedWide steps = nearestQuotient(over, static_cast<UnsignedWide>(BigAccess::under(number)));
  if (steps > static_cast<UnsignedWide>(largest)) return std::nullopt;
  return static_cast<std::int64_t>(steps);
}

/// How many digits stand before the point, and for what is below one, less one for each nought after it.
int wordPlace(UnsignedWide over, UnsignedWide under) {
  int place = 0;
  for (UnsignedWide power = under; over >= power; power *= 10) ++place;
  if (place > 0) return place;
  for (over *= 10; over < under; over *= 10) --place;
  return place;
}

/// The same for any number.
cpp_int bigSteps(const Number& number, int decimals) {
  const cpp_rational value = BigAccess::toBig(number);
  const cpp_int over = abs(boost::multiprecision::numerator(value)) * tenTo(decimals);
  const cpp_int under = boost::multiprecision::denominator(value);
  return (2 * over + under) / (2 * under);
}

/// The whole part of the root, found bit by bit from the highest.
std::uint64_t wordRoot(std::uint64_t value) {
  std::uint64_t root = 0;
  for (std::uint64_t bit = std::uint64_t{1} << 31U; bit != 0; bit >>= 1U)
    if ((root | bit) * (root | bit) <= value) root |= bit;
  return root;
}

/// Half up: r + 1/2 <= √x is r² + r + 1/4 <= x, so that the whole part of x decides, and a quarter beside it.
std::uint64_t roundedRoot(const ScaledForRoot& scaled) {
  const std::uint64_t root = wordRoot(scaled.whole);
  const std::uint64_t above = scaled.whole - root * root;  // at most 2·root
  return above > root || (above == root && scaled.quarterLeft) ? root + 1 : root;
}

bool isSquare(std::int64_t value) {
  const auto size = static_cast<std::uint64_t>(value);
  const std::uint64_t root = wordRoot(size);
  return root * root == size;
}

int twosIn(std::uint64_t value) { return std::countr_zero(value); }
int twosIn(const cpp_int& value) { return static_cast<int>(boost::multiprecision::lsb(value)); }

/// The decimals of what is a whole number over `under`, in lowest terms: it ends if nothing but twos and
/// fives is under the bar, and each decimal takes away one of both.
template <typename Whole>
std::optional<int> decimalsUnder(Whole under) {
  const int twos = twosIn(under);
  under >>= static_cast<unsigned>(twos);
  int fives = 0;
  for (; under % 5 == 0; ++fives) under /= 5;
  return under == 1 ? std::optional(std::max(twos, fives)) : std::nullopt;
}

Number overPowerOfTen(std::uint64_t digits, int decimals) {
  return Number::ratio(static_cast<std::int64_t>(digits), wordTenTo(decimals));
}

Number overPowerOfTen(const cpp_int& digits, int decimals) {
  return BigAccess::fromBig(cpp_rational(digits, tenTo(decimals)));
}

}  // namespace

Number Number::ratio(std::int64_t numerator, std::int64_t denominator) {
  if (const auto words = reduced(numerator, denominator)) return BigAccess::fromWords(*words);
  // Divided, since the library takes no negative denominator.
  return BigAccess::fromBig(cpp_rational(cpp_int(numerator)) / cpp_rational(cpp_int(denominator)));
}

Number Number::fromDigits(std::string_view digits, int decimals) {
  if (digits.size() <= wordPowers && decimals <= wordPowers) {
    std::int64_t value = 0;
    for (const char digit : digits) value = value * 10 + (digit - '0');
    return ratio(value, wordTenTo(decimals));
  }
  // Built digit by digit: the library's own text reader takes a leading zero for octal.
  cpp_int value = 0;
  for (const char digit : digits) value = value * 10 + (digit - '0');
  return overPowerOfTen(value, decimals);
}

Number Number::powerOfTen(int exponent) {
  const int size = exponent < 0 ? -exponent : exponent;
  const Number power =
      size <= wordPowers ? Number(wordTenTo(size)) : BigAccess::fromBig(cpp_rational(tenTo(size)));
  return exponent < 0 ? Number(1) / power : power;
}

bool Number::isZero() const { return !big_ && numerator_ == 0; }

bool Number::isWhole() const {
  return big_ ? boost::multiprecision::denominator(big_->value) == 1 : denominator_ == 1;
}

bool Number::isNegative() const { return big_ ? big_->value < 0 : numerator_ < 0; }

Number Number::absolute() const { return isNegative() ? Number(0) - *this : *this; }

Number Number::floor() const {
  if (big_) {
    const cpp_int over = boost::multiprecision::numerator(big_->value);
    return BigAccess::fromBig(cpp_rational(floorOf(over, boost::multiprecision::denominator(big_->value))));
  }
  const std::int64_t quotient = numerator_ / denominator_;
  return Number(numerator_ % denominator_ < 0 ? quotient - 1 : quotient);
}

Number Number::ceil() const { return Number(0) - (Number(0) - *this).floor(); }

Number Number::rounded(int decimals) const {
  if (decimals < 0) {
    const Number unit = powerOfTen(-decimals);
    return (*this / unit).rounded(0) * unit;
  }
  if (!big_ && endsWithin(decimals)) return *this;
  if (const auto steps = wordSteps(*this, decimals))
    return ratio(isNegative() ? -*steps : *steps, wordTenTo(decimals));
  const cpp_int steps = bigSteps(*this, decimals);
  return overPowerOfTen(isNegative() ? cpp_int(-steps) : steps, decimals);
}

std::string Number::roundedDigits(int decimals) const {
  assert(decimals >= 0);
  if (const auto steps = wordSteps(*this, decimals)) return std::to_string(*steps);
  return bigSteps(*this, decimals).str();
}

int Number::firstPlace() const {
  assert(!isZero());
  if (!big_) return wordPlace(magnitude(numerator_), static_cast<UnsignedWide>(denominator_));
  Number size = absolute();
  const Number whole = size.floor();
  if (!whole.isZero()) return static_cast<int>(whole.rationalText().size());
  const Number ten(10);
  int place = 0;
  for (size = size * ten; size < Number(1); size = size * ten) --place;
  return place;
}

bool Number::endsWithin(int decimals) const {
  if (decimals < 0) return (*this * powerOfTen(decimals)).isWhole();
  if (big_) return tenTo(decimals) % boost::multiprecision::denominator(big_->value) == 0;
  if (decimals <= wordPowers) return wordTenTo(decimals) % denominator_ == 0;
  return tenTo(decimals) % denominator_ == 0;
}

std::optional<int> Number::decimals(int most) const {
  const std::optional<int> count = big_ ? decimalsUnder(boost::multiprecision::denominator(big_->value))
                                        : decimalsUnder(static_cast<std::uint64_t>(denominator_));
  return count && *count <= most ? count : std::nullopt;
}

std::string Number::rationalText() const {
  if (!big_) {
    std::string text = std::to_string(numerator_);
    if (denominator_ != 1) text.append("/").append(std::to_string(denominator_));
    return text;
  }
  std::string text = boost::multiprecision::numerator(big_->value).str();
  if (!isWhole()) text.append("/").append(boost::multiprecision::denominator(big_->value).str());
  return text;
}

Number Number::rootCut(int decimals) const {
  assert(!isNegative());
  if (const auto scaled = wordScaledForRoot(*this, decimals))
    return overPowerOfTen(wordRoot(scaled->whole), decimals);
  return overPowerOfTen(scaledForRoot(*this, decimals).root(), decimals);
}

Number Number::rootRounded(int decimals) const {
  assert(!isNegative());
  if (const auto scaled = wordScaledForRoot(*this, decimals))
    return overPowerOfTen(roundedRoot(*scaled), decimals);
  const BigScaled big = scaledForRoot(*this, decimals);
  cpp_int root = big.root();
  // root + 1/2 <= √(value)·10^d, squared and multiplied out: no root is taken in the comparison.
  const cpp_int twice = 2 * root + 1;
  if (twice * twice * big.under <= 4 * big.over) ++root;
  return overPowerOfTen(root, decimals);
}

bool Number::hasExactRoot() const {
  if (!big_) return !isNegative() && isSquare(numerator_) && isSquare(denominator_);
  const cpp_rational value = BigAccess::toBig(*this);
  const cpp_int over = boost::multiprecision::numerator(value);
  const cpp_int under = boost::multiprecision::denominator(value);
  const cpp_int overRoot = sqrt(over);
  const cpp_int underRoot = sqrt(under);
  return overRoot * overRoot == over && underRoot * underRoot == under;
}

double Number::roughly() const {
  constexpr std::int64_t exact = std::int64_t{1} << 53U;  // up to here every whole number is a floating one
  if (!big_ && numerator_ < exact && numerator_ > -exact && denominator_ < exact)
    return static_cast<double>(numerator_) / static_cast<double>(denominator_);
  return static_cast<double>(BigAccess::toBig(*this));
}

Number operator+(const Number& a, const Number& b) {
  if (bothWords(a, b)) {
    const Wide over = Wide{a.numerator_} * b.denominator_ + Wide{b.numerator_} * a.denominator_;
    if (const auto words = reduced(over, Wide{a.denominator_} * b.denominator_))
      return BigAccess::fromWords(*words);
  }
  return BigAccess::fromBig(BigAccess::toBig(a) + BigAccess::toBig(b));
}

Number operator-(const Number& a, const Number& b) {
  if (bothWords(a, b)) {
    const Wide over = Wide{a.numerator_} * b.denominator_ - Wide{b.numerator_} * a.denominator_;
    if (const auto words = reduced(over, Wide{a.denominator_} * b.denominator_))
      return BigAccess::fromWords(*words);
  }
  return BigAccess::fromBig(BigAccess::toBig(a) - BigAccess::toBig(b));
}

Number operator*(const Number& a, const Number& b) {
  if (bothWords(a, b)) {
    if (const auto words = product({a.numerator_, a.denominator_}, {b.numerator_, b.denominator_}))
      return BigAccess::fromWords(*words);
  }
  return BigAccess::fromBig(BigAccess::toBig(a) * BigAccess::toBig(b));
}

Number operator/(const Number& a, const Number& b) {
  assert(!b.isZero());
  if (bothWords(a, b) && b.numerator_ >= -largest) {
    const bool negative = b.numerator_ < 0;
    const Words upsideDown{negative ? -b.denominator_ : b.denominator_,
                           negative ? -b.numerator_ : b.numerator_};
    if (const auto words = product({a.numerator_, a.denominator_}, upsideDown))
      return BigAccess::fromWords(*words);
  }
  return BigAccess::fromBig(BigAccess::toBig(a) / BigAccess::toBig(b));
}

bool operator==(const Number& a, const Number& b) {
  if (bothWords(a, b)) return a.numerator_ == b.numerator_ && a.denominator_ == b.denominator_;
  return BigAccess::toBig(a) == BigAccess::toBig(b);
}

std::strong_ordering operator<=>(const Number& a, const Number& b) {
  if (bothWords(a, b)) {
    const Wide left = Wide{a.numerator_} * b.denominator_;
    const Wide right = Wide{b.numerator_} * a.denominator_;
    return left < right   ? std::strong_ordering::less
           : right < left ? std::strong_ordering::greater
                          : std::strong_ordering::equal;
  }
  const int order = BigAccess::toBig(a).compare(BigAccess::toBig(b));
  return order < 0   ? std::strong_ordering::less
         : order > 0 ? std::strong_ordering::greater
                     : std::strong_ordering::equal;
}

}  // namespace wardchalk
