#pragma once

#include <string_view>
#include <vector>

#include "core/practice/problem/problem.h"

namespace wardchalk::test {

/// A wrong answer to a line as a student would come to it, and the number of the mistake.
struct MadeMistake {
  std::string_view number;
  Number value;  ///< in the unit of the line's step
};

/// The numbered mistakes that could be made on this line and everything before it be right, by plain formulas
/// from the papers: W kg, L lb, H cm, I in, A m², n doses in a day, S mg in v mL on the label. A second
/// opinion beside the product, which carries mistakes through the chains of its key instead.
[[nodiscard]] std::vector<MadeMistake> mistakesOn(const Problem& problem, StepId line);

/// The rarer ones, E102 to E114, by plain formulas as well. Problems do not keep them apart from the others.
[[nodiscard]] std::vector<MadeMistake> rareMistakesOn(const Problem& problem, StepId line);

/// The line's right value before it is rounded.
[[nodiscard]] Number rightOn(const Problem& problem, StepId line);

}  // namespace wardchalk::test
