#pragma once

#include <string>
#include <vector>

#include "core/unit/quantity.h"
#include "core/unit/unit_product.h"
#include "core/working/chain.h"

namespace wardchalk {

/// Spelling for the eye ("m²", "drops") or for files ("m2", "drop").
enum class Spelling : std::uint8_t { printed, filed };

/// Units multiplied together: "m²·dose", "cm·kg", "m⁴"; in files "m2·dose", "m4".
[[nodiscard]] std::string unitsText(const UnitProduct& units, Spelling spelling);

/// The units of a term beside its number: "20 drops", "2 doses", "1 dose"; the last takes the plural.
[[nodiscard]] std::string unitsBeside(const Number& value, const UnitProduct& units);
/// One unit of a term beside its number.
[[nodiscard]] std::string_view unitBeside(const Term& term, std::size_t use);

/// "mg/dose", "mL/h", "mg²/mL", "mcg/kg/min"; in files several below the stroke stand in parentheses:
/// "mcg/(kg·min)".
[[nodiscard]] std::string unitsText(const Units& units, Spelling spelling);

/// What an amount is per, to stand behind it: "/mL", "/kg/day", in files "/(kg·day)"; empty for a plain
/// amount.
[[nodiscard]] std::string perText(const UnitProduct& under, Spelling spelling);

/// A term's number as it stands in a chain: "120", "0.70", "≈16.82", "1,200".
[[nodiscard]] std::string valueText(const Term& term);
/// A value with its fixed decimals, if it has any.
[[nodiscard]] std::string valueText(const Number& value, int fixedDecimals);

/// Units spoken: "square metres", "milligrams", "milligrams per dose".
[[nodiscard]] std::string spoken(const UnitProduct& units, bool many);

}  // namespace wardchalk
