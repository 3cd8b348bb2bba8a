#pragma once

#include <string>

#include "core/unit/quantity.h"

namespace wardchalk {

// The safe form of what was read, in the spelling of files: nothing rounded, no thousands mark, no trailing
// zero. It reads as itself in its field.

/// "17.2 kg".
[[nodiscard]] std::string safeForm(const Quantity& quantity);
/// "37 lb 4 oz".
[[nodiscard]] std::string safeForm(const MixedQuantity& mixed);
/// "15 mg/kg/dose".
[[nodiscard]] std::string safeForm(const DoseAmount& dose);
/// "120 mg/5 mL", "25 mg/mL".
[[nodiscard]] std::string safeForm(const Strength& strength);

}  // namespace wardchalk
