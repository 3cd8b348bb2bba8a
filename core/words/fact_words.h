#pragma once

#include <string>
#include <string_view>

#include "core/medicine/case.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// The entry at `path` as it was entered, with all its digits: "37 lb 4 oz", "120 mg per m² per dose".
/// Free text is isolated where it runs from the right, a choice is its id, a flag "yes". Empty where the
/// entry is absent.
[[nodiscard]] std::string enteredWords(std::string_view path, const Case& inputs);
[[nodiscard]] std::string enteredWords(const Quantity& quantity);

/// A dose as it was entered, a rate by its signs: "120 mg per m² per dose", "10 mcg/kg/min".
[[nodiscard]] std::string enteredShort(const DoseAmount& dose);
/// Both ends with all their digits, a unit that they share once: "100 to 120 mg per m² per dose", "4 to 10
/// mcg/kg/min", "900 mcg to 1.2 mg per dose".
[[nodiscard]] std::string enteredRange(const DoseAmount& low, const DoseAmount& high);
/// A limit of concentration as it was entered: "5 mg/mL", "5 mg in 2 mL".
[[nodiscard]] std::string enteredShort(const Strength& strength);

/// The entry at `path` as paper states it, as it was entered and as it was understood: "37 lb 4 oz (≈ 16.9
/// kg)", "120 mg per m² per dose", "every 12 hours (2 doses in 24 h, one every 12 h)". Empty where
/// the entry is absent.
[[nodiscard]] std::string factWords(std::string_view path, const Case& inputs, const HouseRules& rules);

}  // namespace wardchalk
