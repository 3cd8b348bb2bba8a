#pragma once

#include <string_view>

#include "core/practice/making/problem_draw.h"

namespace wardchalk {

/// What a medicine by this route is dosed in. Medicines in units, mmol and mEq are rare by mouth; none in
/// mmol or mEq goes into a muscle or under the skin (common practice, no source).
[[nodiscard]] std::string_view unitFor(ProblemDraw& draw, std::string_view route);

/// mmol and mEq: salts, in which a few for each kg are many.
[[nodiscard]] inline bool isSalt(std::string_view unit) { return unit == "mmol" || unit == "mEq"; }

}  // namespace wardchalk
