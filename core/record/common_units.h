#pragma once

#include "core/medicine/case.h"
#include "core/unit/conversion.h"

namespace wardchalk {

/// The case with every quantity in one unit of its dimension, every strength per one, and free text in small
/// letters without spaces: two cases that mean the same are equal so. For comparing alone; nothing is worked
/// out from it.
[[nodiscard]] Case inCommonUnits(Case inputs, Pounds pounds);

}  // namespace wardchalk
