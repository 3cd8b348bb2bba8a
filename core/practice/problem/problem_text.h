#pragma once

#include <string>
#include <vector>

#include "core/practice/problem/problem.h"

namespace wardchalk {

/// Problems as text for paper: the papers of each, its lines to fill in, and after all of them the keys with
/// their chains. Ends with a line break.
[[nodiscard]] std::string problemsText(const std::vector<Problem>& problems);

}  // namespace wardchalk
