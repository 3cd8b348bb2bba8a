#pragma once

#include <string_view>

#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/replay.h"
#include "core/practice/problem/problem.h"

namespace wardchalk::detail {

/// Marks what the student says of the order as a whole, against what the student's own numbers say.
[[nodiscard]] LineMark markVerdict(const Worksheet& key, const Replay& carried, std::string_view text);

/// Marks a comparison written as an inequality ("150 mg ≤ 249.5 mg").
[[nodiscard]] LineMark markComparison(const Problem& problem, const Replay& carried, StepId step,
                                      const StudentLine& line);

/// Marks the answer "do not measure".
[[nodiscard]] LineMark markNothingMeasured(const Worksheet& key, const Replay& carried);

}  // namespace wardchalk::detail
