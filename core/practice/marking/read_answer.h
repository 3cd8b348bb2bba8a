#pragma once

#include <string_view>

#include "core/practice/lines/student_working.h"
#include "core/working/step.h"

namespace wardchalk {

/// Reads what a student wrote for a step (UTF-8; any bytes are answered): "= 84 mg" is an answer, and a gram
/// in a line about the child's weight is the child's.
[[nodiscard]] ReadWorking readAnswer(StepId step, std::string_view text);

}  // namespace wardchalk
