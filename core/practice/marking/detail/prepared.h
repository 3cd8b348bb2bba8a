#pragma once

#include "core/practice/problem/problem.h"

namespace wardchalk::detail {

/// The problem as if its order might be given: the same papers, with a reference that allows what is ordered.
/// Where only the measuring is withheld, what is in hand is as strong as ever, and is marked by this.
[[nodiscard]] Problem asIfAllowed(const Problem& problem);

}  // namespace wardchalk::detail
