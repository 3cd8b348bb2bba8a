#pragma once

#include <string>

#include "core/number/decimal_text.h"
#include "core/unit/quantity.h"

namespace wardchalk {

/// "16.9 kg", "≈ 3.13 mL", "2 drops": as a person reads it.
[[nodiscard]] std::string printed(const Quantity& quantity, Grouping grouping = Grouping::commas,
                                  int significant = 4);
/// "8 lb 3 oz", "4 years 2 months".
[[nodiscard]] std::string printed(const MixedQuantity& mixed);
/// "80 mg", "4 mg/kg", "240 mg/m²/day": a dose as an order or a reference states it.
[[nodiscard]] std::string printed(const DoseAmount& dose);
/// "120 mg in 5 mL".
[[nodiscard]] std::string printed(const Strength& strength);

/// "16.9 kg", "2 drop": the spelling of files, without thousands commas.
[[nodiscard]] std::string filed(const Quantity& quantity, int significant = 4);

/// The unit's printed sign for this many of it.
[[nodiscard]] std::string_view signFor(Unit unit, const Number& value);

}  // namespace wardchalk
