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

/// The entry at `path` as paper states it, as it was entered and as it was understood: "37 lb 4 oz (≈ 16.9
/// kg)", "120 mg per m² per dose", "every 12 hours (2 doses in 24 h, one every 12 h)". Empty where
/// the entry is absent.
[[nodiscard]] std::string factWords(std::string_view path, const Case& inputs, const HouseRules& rules);

}  // namespace wardchalk
