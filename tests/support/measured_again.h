#pragma once

#include "tests/support/bounds_again.h"

namespace wardchalk::test {

/// What is measured of a dose in mL, worked from R9 and R20 by code that shares nothing with that of the
/// core.
struct MeasuredAgain {
  std::optional<Number> measured;  ///< none: not measurable
  std::optional<Number> full;      ///< what a first syringe holds, drawn full
  std::optional<Number> rest;      ///< what is then drawn in a second
  std::optional<Number> holds;     ///< that second one, or the only one
};

/// Of a liquid whose dose is at least the smallest volume. `again` knows the dose, its bounds and the
/// strength.
[[nodiscard]] MeasuredAgain measureAgain(const Case& inputs, const HouseRules& rules,
                                         const WorkedAgain& again);

}  // namespace wardchalk::test
