#pragma once

#include <string>

#include "core/practice/problem/problem.h"

namespace wardchalk::test {

/// The right answer to a line, as a student would write it: "0.70 m²", "80 mg", "safe", "do not measure".
[[nodiscard]] std::string rightAnswer(const Problem& problem, std::size_t ask);

/// An answer to a line that nobody would accept: a number far too large in the right unit, or the opposite
/// verdict.
[[nodiscard]] std::string wrongAnswer(const Problem& problem, std::size_t ask);

}  // namespace wardchalk::test
