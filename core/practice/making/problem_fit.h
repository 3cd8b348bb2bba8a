#pragma once

#include "core/practice/making/problem_sketch.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// Whether the key comes to what was aimed at, and to nothing besides that would be asked about: the size is
/// ordinary, the amount can be measured, and nothing hangs on a rounding.
[[nodiscard]] bool isAsMeant(const Problem& problem, const ProblemSketch& sketch, ProblemAim aim);

/// Whether every school comes to the same verdict, the same truth of each check and a measurable amount:
/// worked again by both shipped sets of rules, and with the surface to 2 and 3 decimals and with all digits.
/// None of the amounts that a verdict hangs on lies within 3 % of its limit.
[[nodiscard]] bool isSameInEverySchool(const Problem& problem, const ProblemSketch& sketch, ProblemAim aim);

}  // namespace wardchalk
