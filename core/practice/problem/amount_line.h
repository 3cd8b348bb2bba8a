#pragma once

#include <optional>

#include "core/medicine/case.h"
#include "core/working/chain.h"
#include "core/working/step_id.h"

namespace wardchalk {

/// Whether a line says what is prepared or run once a dose may be given: the strength of a mixed powder, the
/// amount, the rate, the drops. A problem has the same ones whatever its verdict; otherwise a student would
/// read from the lines of a paper that the order is safe. Where it is not, "do not measure" is the right
/// answer to each.
[[nodiscard]] bool isAmountLine(StepId step);

/// The units of an amount line by the case alone, as the key has them where it works the line out. None where
/// nothing in hand is measured so.
[[nodiscard]] std::optional<Units> amountUnits(StepId step, const Case& given);

}  // namespace wardchalk
