#pragma once

#include "core/medicine/case.h"

namespace wardchalk {

/// The entries of the child's size that something is worked out or judged by: a limit, a maximum, the order,
/// a band. Comparing sizes with one another uses none. It follows from the entries alone, whether or not
/// anything can be worked out yet.
struct SizesUsed {
  bool weight = false;  ///< for itself, or within the computed surface; not behind a charted one
  bool height = false;
  bool surface = false;  ///< by whichever way it is known
};

[[nodiscard]] SizesUsed sizesUsed(const Case& given);

}  // namespace wardchalk
