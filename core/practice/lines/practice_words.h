#pragma once

#include <string>

#include "core/practice/lines/student_line.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

/// Why a line cannot be read and what to write, in a sentence.
[[nodiscard]] std::string sentence(const LineFault& fault, const Phrasebook& book);
/// What is better written otherwise, in a sentence.
[[nodiscard]] std::string sentence(const LineRemark& remark, const Phrasebook& book);

}  // namespace wardchalk
