#pragma once

#include <string>

#include "core/practice/lines/student_line.h"

namespace wardchalk {

/// Why a line cannot be read and what to write, in a sentence.
[[nodiscard]] std::string sentence(const LineFault& fault);
/// What is better written otherwise, in a sentence.
[[nodiscard]] std::string sentence(const LineRemark& remark);

}  // namespace wardchalk
