#pragma once

#include <optional>

#include "core/rules/house_rules.h"
#include "core/unit/unit.h"

namespace wardchalk {

/// The units that stand in empty lines before typing, and that a bare number is then in.
struct BareUnits {
  std::optional<Unit> height;
  std::optional<Unit> weight;
  friend bool operator==(const BareUnits&, const BareUnits&) = default;
};

/// The system that counts: the user's own choice, or else the house's.
[[nodiscard]] UnitSystem systemOf(UnitSystem chosen, const HouseRules& rules);

/// A weight has a unit only where the agreed house rules say metric: pounds taken for kilograms are more than
/// twice the child, and one person's choice at one desk is no agreement (H48).
[[nodiscard]] BareUnits bareUnits(UnitSystem chosen, const HouseRules& rules);

}  // namespace wardchalk
