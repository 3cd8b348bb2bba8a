#pragma once

#include <optional>

#include "core/practice/lines/student_working.h"
#include "core/practice/marking/line_mark.h"

namespace wardchalk::detail {

/// What is to be said of a constant that joins pounds and kilograms and stands in the working without its
/// unit: 2.2 and 0.4536, and both with more or fewer digits. None where there is none.
[[nodiscard]] std::optional<LineNote> barePoundsConstant(const StudentWorking& working);

}  // namespace wardchalk::detail
