#pragma once

#include <string>
#include <vector>

#include "core/practice/problem/problem.h"

namespace wardchalk {

/// The answer to a line as a key prints it: "120 mg/(m²·dose) × 0.70 m² = 84 mg in one dose", "do not
/// measure: ask first".
[[nodiscard]] std::string keyAnswer(const Ask& ask, const Worksheet& key);

/// Problems as text for paper: the papers of each, its lines to fill in, and after all of them the keys with
/// their chains. Ends with a line break.
[[nodiscard]] std::string problemsText(const std::vector<Problem>& problems);

}  // namespace wardchalk
