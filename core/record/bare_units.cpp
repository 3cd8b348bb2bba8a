#include "core/record/bare_units.h"

namespace wardchalk {

UnitSystem systemOf(UnitSystem chosen, const HouseRules& rules) {
  return chosen == UnitSystem::none ? rules.unitSystem.value_or(UnitSystem::none) : chosen;
}

BareUnits bareUnits(UnitSystem chosen, const HouseRules& rules) {
  switch (systemOf(chosen, rules)) {
    case UnitSystem::none:
      break;
    case UnitSystem::metric:
      return {Unit::cm, rules.unitSystem == UnitSystem::metric ? std::optional(Unit::kg) : std::nullopt};
    case UnitSystem::household:
      return {Unit::in, std::nullopt};
  }
  return {};
}

}  // namespace wardchalk
