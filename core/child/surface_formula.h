#pragma once

#include <string_view>

#include "core/number/number.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// A published formula BSA = factor × height^heightPower × weight^weightPower, height in cm and weight in kg.
struct SurfaceFormula {
  BsaFormula formula;
  std::string_view id;    ///< in house-rules files: "haycock"
  std::string_view name;  ///< as printed: "Haycock"
  Number factor;
  Number heightPower;
  Number weightPower;
  std::string_view source;
};

/// Mosteller's divisor for cm and kg, 3600 cm·kg/m⁴. Source: Mosteller RD. N Engl J Med 1987;317:1098, as
/// read in Pharmacology for Nurses, OpenStax 2024, section 2.4.
inline constexpr int mostellerMetric = 3600;

/// The divisor for inches and pounds, 3131 in·lb/m⁴. Source: the household form of Mosteller's formula,
/// usually credited to Lam TK, Leung DT. N Engl J Med 1988;318:1130 (credit from memory). It is 0.1 % low
/// against exact conversion.
inline constexpr int mostellerHousehold = 3131;

/// The formula's figures and source. Mosteller's powers are one half.
[[nodiscard]] const SurfaceFormula& surfaceFormula(BsaFormula formula);

/// The surface in m², right to at least 45 digits and cut there. Both sizes are above zero.
[[nodiscard]] Number surfaceByPowers(const SurfaceFormula& formula, const Number& heightCm,
                                     const Number& weightKg);

}  // namespace wardchalk
