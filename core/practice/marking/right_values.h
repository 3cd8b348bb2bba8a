#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/practice/marking/replay.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// A student's answer to an earlier line, in the unit of its step.
struct CarriedAnswer {
  StepId step;
  Number value;
  bool right;  ///< it was a right value, so that the student may have worked on with more digits than were
               ///< written
};

/// A number as a student writes it, in the wanted unit.
struct TypedNumber {
  Number value;
  int decimals;  ///< typed; many where it is exact by itself (a fraction, a worked side)
};

enum class Acceptance : std::uint8_t { no, asRounded, asCut, roundedTooFar };

/// A problem worked by every convention that is accepted: its own rules and both shipped sets, with the
/// surface rounded to two decimals, to more, or not at all.
class RightValues {
 public:
  explicit RightValues(const Problem& problem);

  /// What the line may come to, with the student's own earlier answers carried on.
  [[nodiscard]] std::vector<Number> of(StepId line, std::span<const CarriedAnswer> carried) const;
  /// Whether the number is one of these, and how it was rounded.
  [[nodiscard]] Acceptance accept(StepId line, const TypedNumber& typed,
                                  std::span<const Number> values) const;
  /// Whether an exact, unrounded value is one of these, within what accepted conversions differ by.
  [[nodiscard]] static bool isNear(const Number& value, std::span<const Number> values);

 private:
  [[nodiscard]] Acceptance acceptOne(StepId line, const TypedNumber& typed, const Number& value) const;
  [[nodiscard]] std::optional<int> decimalsAsked(StepId line, const Number& value) const;
  [[nodiscard]] int fewestDecimals(StepId line, const Number& value) const;
  [[nodiscard]] bool isOnDevice(const Number& typed, const Number& value) const;

  const Problem& problem_;
  std::vector<Worksheet> worked_;
};

/// Half a per cent below what two published conversions of a pound, or of the household formula, differ by
/// would be too little: 2.2 against 2.2046 is 0.21 %, 3131 against exact conversion 0.10 %; both at once stay
/// below this.
[[nodiscard]] const Number& routeTolerance();

/// Whether what the size allows in one dose or in a day is more than a maximum that the problem states.
[[nodiscard]] bool isOverMaximum(const Worksheet& worked, StepId line, const Number& value);

/// The answers as numbers that take the place of the key's.
[[nodiscard]] std::vector<Instead> insteadOf(std::span<const CarriedAnswer> carried);

}  // namespace wardchalk
