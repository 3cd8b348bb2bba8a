#pragma once

#include <string>

#include "core/working/step.h"

namespace wardchalk {

// Parts of a step read aloud, with units in words.

/// "0.70 square metres".
[[nodiscard]] std::string spokenTerm(const Term& term);

/// "120 milligrams per square metre per dose", "5 millilitres over 120 milligrams".
[[nodiscard]] std::string spokenFactor(const Factor& factor);

/// "84 milligrams in one dose".
[[nodiscard]] std::string spokenAmount(const Number& value, int fixedDecimals, const Units& units);

/// "milligrams per dose", "milligrams squared per millilitre".
[[nodiscard]] std::string spokenUnits(const Units& units);

/// One side of a comparison: "80 milligrams", "at least 2 years"; with at least so many significant digits.
[[nodiscard]] std::string spokenSide(const Side& side, int significant);

/// "80 milligrams is not more than 84 milligrams: true"; `truth` is what stands after the colon.
[[nodiscard]] std::string spokenClaim(const Comparison& comparison, const std::string& truth);

}  // namespace wardchalk
