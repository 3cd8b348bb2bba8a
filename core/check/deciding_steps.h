#pragma once

#include <set>

#include "core/check/worksheet.h"

namespace wardchalk {

/// The steps of a working that decide: the comparisons that did not hold or, where all did, the one that is
/// fullest; what is set or measured in the end (the flow of an infusion, else the amount); and every step
/// that these rest on. All steps where there is nothing to decide by.
[[nodiscard]] std::set<StepId> decidingSteps(const Worksheet& sheet);

}  // namespace wardchalk
