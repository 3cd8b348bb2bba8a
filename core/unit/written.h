#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"
#include "core/unit/quantity.h"
#include "core/unit/read_unit.h"

namespace wardchalk {

/// A quantity as it was written, before a field says what it may be: "120 mg/5 mL" is 120 mg per 5 mL.
struct Written {
  struct Per {
    std::optional<Number> value;  ///< the number after the slash, when one was written
    Unit unit;
  };
  Quantity first;
  std::vector<Quantity> more;  ///< further parts: the "3 oz" of "8 lb 3 oz"
  std::vector<Per> per;
};

/// Reads a number, one plain space, a unit, and whatever follows after slashes or as smaller parts. Refuses
/// unsafe and unknown spellings with what to write instead.
[[nodiscard]] Result<Written> readWritten(std::string_view text);

/// As readWritten, for an amount of medicine: ratio and percent strengths are refused with their mg/mL (H17).
[[nodiscard]] Result<Written> readWrittenDrug(std::string_view text);

}  // namespace wardchalk
