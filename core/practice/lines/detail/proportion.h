#pragma once

#include <optional>
#include <string_view>

#include "core/practice/lines/student_line.h"

namespace wardchalk::practice {

/// Reads a proportion with one unknown as the line that works it out: "80 mg : x mL = 25 mg : 1 mL" as 80 mg
/// × 1 mL/25 mg. Its units are open: what x counts is told by the line that names it. None if it is no such
/// proportion.
[[nodiscard]] std::optional<StudentLine> readProportion(std::string_view text, Gram gram);

}  // namespace wardchalk::practice
