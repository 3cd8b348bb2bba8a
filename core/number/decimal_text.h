#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/number/number.h"
#include "core/number/refusal.h"

namespace wardchalk {

/// Most digits an entry may have, so that a stuck key is noticed and no entry can exhaust memory.
inline constexpr std::size_t mostDigits = 30;

/// Reads a number as a nurse may write it and nothing else (R1): digits with at most one point and a digit on
/// both sides of it. A sign, comma, space, exponent, second point or needless leading zero is refused, never
/// repaired. The same in every locale.
[[nodiscard]] Result<Number> readDecimal(std::string_view text);

/// As readDecimal, and refuses zero: no dose, size, strength, volume or time is zero.
[[nodiscard]] Result<Number> readPositive(std::string_view text);

/// How thousands are set off in printed numbers.
enum class Grouping { none, commas };

/// A number as it is shown to a person (R1).
struct ShownNumber {
  std::string text;
  bool exact;  ///< false: the text is rounded, and "≈" stands before it
  /// The text with "≈ " before it where it is not exact.
  [[nodiscard]] std::string marked() const { return exact ? text : "≈ " + text; }
};

/// Exact if it ends within 4 decimals, otherwise rounded to `significant` digits. No trailing zero (T01).
[[nodiscard]] ShownNumber show(const Number& value, Grouping grouping = Grouping::none, int significant = 4);

/// Significant digits (4 or more) with which two unequal numbers do not print alike (R1); 4 for equal ones.
[[nodiscard]] int digitsApart(const Number& a, const Number& b);

/// Two unequal numbers shown so that they do not print alike: digits are added until they differ.
[[nodiscard]] std::pair<ShownNumber, ShownNumber> showApart(const Number& a, const Number& b,
                                                            Grouping grouping = Grouping::none);

/// The text without the commas that set off thousands in it: "≥ 1,200 g, < 1,499 g" is "≥ 1200 g, < 1499 g".
/// For files.
[[nodiscard]] std::string withoutThousands(std::string_view text);

/// Rounded to `decimals` and written with exactly as many: 0.7 at 2 is "0.70". For body surface area alone.
[[nodiscard]] std::string fixedText(const Number& value, int decimals);

/// The shortest decimal if the value ends within 40 decimals ("0.70" is "0.7"), else rational text
/// ("185/11"). For files.
[[nodiscard]] std::string exactText(const Number& value, Grouping grouping = Grouping::none);

/// A part of a whole in percent with one decimal; never "100" unless they are equal (R1). Thousands have
/// commas, here and in the next two: files take them out.
[[nodiscard]] std::string percentText(const Number& part, const Number& whole);

/// By how many percent `value` is over `limit`, in one decimal or, where that would read 0, in its first
/// digit.
[[nodiscard]] std::string excessText(const Number& value, const Number& limit);

/// A percentage that is not a comparison (a change, a threshold): one decimal, no trailing zero.
[[nodiscard]] std::string plainPercent(const Number& percent);

}  // namespace wardchalk
