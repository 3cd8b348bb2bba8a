#pragma once

#include <string_view>
#include <vector>

#include "core/practice/lines/student_line.h"

namespace wardchalk::practice {

/// Where the statements of a working stand, without space around them; at least one where anything is
/// written.
[[nodiscard]] std::vector<Span> statementsOf(std::string_view text);

/// Where a line begins behind a heading of any words and a colon ("want 100 mg, got 125 mg in 5 mL: 100 ÷ 125
/// × 5 = 4 mL"), or behind a formula in letters ("D/H × Q ="); 0 where there is none.
[[nodiscard]] std::size_t headingEnd(std::string_view text);

}  // namespace wardchalk::practice
