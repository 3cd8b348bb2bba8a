#pragma once

#include "core/practice/problem/problem.h"

namespace wardchalk {

/// Whether every known slip that a student could make on an asked line comes to a value of its own: more than
/// 3 % from that of every other slip on the line, and from the right one. Where two lie closer, nobody could
/// tell which was made, and the problem teaches nothing. Slips that cannot be made in this case do not count.
[[nodiscard]] bool slipsAreApart(const Problem& problem);

}  // namespace wardchalk
