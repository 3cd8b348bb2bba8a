#pragma once

#include "core/number/number.h"
#include "core/working/chain.h"

namespace wardchalk {

/// How the unit of an answer stands to the one that is wanted.
enum class UnitFit : std::uint8_t {
  fits,       ///< the same, or another of the same dimension (0.08 g for 80 mg)
  leftOut,    ///< no unit at all
  otherPer,   ///< mg/day where mg/dose is wanted
  different,  ///< mL where mg is wanted
};

struct InWanted {
  UnitFit fit = UnitFit::fits;
  Number value;  ///< in the wanted unit where it fits; else as it stands
};

/// An answer in the unit that is wanted. "Per dose" and "per day" may be left out of it, but not be the wrong
/// one.
[[nodiscard]] InWanted inWantedUnit(const Number& value, const Units& units, const Units& wanted);

}  // namespace wardchalk
