#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/practice/lines/student_line.h"

namespace wardchalk::practice {

/// A piece of a side worked out: factors multiplied together, and what is known of them.
struct Part {
  Chain chain;
  std::vector<FactorPlace> places;
  Span at;
  bool exact = true;
  bool open = false;  ///< its units cannot be told (see LineSide::unitsOpen)
  int named = 0;      ///< numbers written with units
  int bare = 0;       ///< numbers written without
  bool isSum = false;
  bool isParts = false;
  bool isUnits = false;   ///< units alone, after a slash
  int decimals = -1;      ///< of one number alone: decimals typed
  int rootDecimals = -1;  ///< of a root of one number
  bool isAmount = false;  ///< one number with its units
  std::string typed;      ///< of one number alone
};

/// A number with the units written after it, which may be none; `at` is the place of what stands above the
/// bar.
[[nodiscard]] Part amountPart(const Number& value, Units units, Span at, Span underAt = {});

/// What a part comes to: its number, its units, the root taken where it is one.
struct Worth {
  Number value;
  Units units;
  Product product;
  bool exact;
  bool open;
};
[[nodiscard]] Worth worthOf(const Part& part);

/// The product of two.
[[nodiscard]] Part times(Part left, Part right);
/// The quotient of two; `right` is not zero. A single amount goes below the bar of the factor before it.
[[nodiscard]] Part dividedBy(Part left, Part right);
/// The square root of a part.
[[nodiscard]] Part rootOfPart(Part part, Span at);

/// Whether two can be added: units alike, or one written without any.
[[nodiscard]] bool canBeAdded(const Worth& left, bool leftBare, const Worth& right, bool rightBare);
/// Their sum, or what is left when the second is taken away.
[[nodiscard]] Part sumOf(const Part& left, const Part& right, bool minus);

}  // namespace wardchalk::practice
