#pragma once

#include <string>

#include "core/practice/lines/student_working.h"

namespace wardchalk {

/// How a working was understood, a line for each statement: "400 mg × 1/5 mL = 80 mg/mL". It is told before
/// anything is marked, so that nobody is marked on what was not meant; it says nothing of right or wrong. A
/// sum, and parts as in 7 lb 8 oz, stand as their total; numbers in words as figures, and units as they are
/// best written.
[[nodiscard]] std::string understoodText(const StudentWorking& working);

}  // namespace wardchalk
