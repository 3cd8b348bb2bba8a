#pragma once

#include <string>
#include <string_view>

#include "core/number/refusal.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// Appends the problem as one JSON object on one line, without a line break.
void writeProblem(std::string& out, const Problem& problem);

/// Reads a problem file whole or refuses it whole, with the path of what is wrong. The case is worked again
/// by the rules in the file: a key that does not follow from them is refused, so that nobody is marked by a
/// key that was tampered with. Words may differ from ours, since sentences change from version to version;
/// figures, ids and codes may not.
[[nodiscard]] Result<Problem> readProblem(std::string_view json);

}  // namespace wardchalk
