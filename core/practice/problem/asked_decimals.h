#pragma once

#include <optional>

#include "core/check/worksheet.h"
#include "core/working/step_id.h"

namespace wardchalk {

/// How many decimals a line asks for at least, by the house rules and by what stands on the papers, so that
/// the number tells nothing of the answer: kilograms, surfaces, rates and amounts by their rules, doses by
/// the digits of the ordered one. None for what is asked for whole or in parts: tablets, syringes, a verdict.
[[nodiscard]] std::optional<int> askedDecimals(StepId step, const Worksheet& key);

/// The same of an amount below 1 mL, where its rule differs.
[[nodiscard]] std::optional<int> askedDecimalsBelowOne(StepId step, const Worksheet& key);

}  // namespace wardchalk
