#pragma once

#include <compare>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace wardchalk {

/// An exact rational number. Nothing in the core is computed in floating point, so that an order exactly at a
/// limit is never read as over it. Values are always in lowest terms with a positive denominator. Small
/// values are held in two machine words; larger ones move to arbitrary precision by themselves, so nothing
/// overflows.
class Number {
 public:
  Number() = default;
  explicit Number(std::int64_t whole) : numerator_(whole) {}

  /// `numerator / denominator`; the denominator is not zero (a zero here is a bug of ours, not an input).
  [[nodiscard]] static Number ratio(std::int64_t numerator, std::int64_t denominator);

  /// Reads digits only, base ten, any length: the value of `digits` divided by ten to the `decimals`.
  /// The caller has checked that `digits` holds nothing but 0-9.
  [[nodiscard]] static Number fromDigits(std::string_view digits, int decimals);

  /// Ten to the `exponent`, which may be negative.
  [[nodiscard]] static Number powerOfTen(int exponent);

  [[nodiscard]] bool isZero() const;
  [[nodiscard]] bool isWhole() const;
  [[nodiscard]] bool isNegative() const;
  [[nodiscard]] Number absolute() const;

  /// The greatest whole number not above, and the smallest whole number not below.
  [[nodiscard]] Number floor() const;
  [[nodiscard]] Number ceil() const;

  /// The nearest multiple of ten to the minus `decimals`, which may be negative; half rounds up in magnitude.
  [[nodiscard]] Number rounded(int decimals) const;

  /// The digits of what `rounded` gives, without sign and point: how many steps of ten to the minus
  /// `decimals`, which are none or more, it is. "1235" for −12.345 and two decimals, "0" where nothing is
  /// left.
  [[nodiscard]] std::string roundedDigits(int decimals) const;

  /// The place of the first digit that is not 0: 3 for 100 to 999, 1 for 1 to 9, 0 for 0.1, −1 for 0.01. The
  /// value is not zero.
  [[nodiscard]] int firstPlace() const;

  /// Whether the value ends within `decimals` decimals.
  [[nodiscard]] bool endsWithin(int decimals) const;

  /// The fewest decimals that the value ends within, where they are `most` or fewer; no value for others, and
  /// for one that does not end.
  [[nodiscard]] std::optional<int> decimals(int most) const;

  /// Rational text in lowest terms: "7/10", "84".
  [[nodiscard]] std::string rationalText() const;

  /// The square root, cut (never rounded) after `decimals` decimals. The value is not negative.
  [[nodiscard]] Number rootCut(int decimals) const;

  /// The square root, rounded half up to `decimals` decimals. Decided by comparing whole numbers, exactly.
  [[nodiscard]] Number rootRounded(int decimals) const;

  /// Whether the square root is rational.
  [[nodiscard]] bool hasExactRoot() const;

  /// The nearest floating number, whatever the locale: to judge how likely a size is, and for no dose.
  [[nodiscard]] double roughly() const;

  friend Number operator+(const Number& a, const Number& b);
  friend Number operator-(const Number& a, const Number& b);
  friend Number operator*(const Number& a, const Number& b);
  /// `b` is not zero: zero quantities are refused where they are read.
  friend Number operator/(const Number& a, const Number& b);
  friend bool operator==(const Number& a, const Number& b);
  friend std::strong_ordering operator<=>(const Number& a, const Number& b);

  struct Big;  // arbitrary precision, known to number.cpp alone

 private:
  friend struct BigAccess;
  std::int64_t numerator_ = 0;
  std::int64_t denominator_ = 1;
  std::shared_ptr<const Big> big_;  // set only when the value does not fit the two words
};

/// The smaller and the larger of two numbers.
[[nodiscard]] inline const Number& smaller(const Number& a, const Number& b) { return b < a ? b : a; }
[[nodiscard]] inline const Number& larger(const Number& a, const Number& b) { return a < b ? b : a; }

}  // namespace wardchalk
