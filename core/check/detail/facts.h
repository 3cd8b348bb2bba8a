#pragma once

#include "core/check/detail/limits.h"

namespace wardchalk::detail {

/// Everything that is known before the first comparison.
struct Facts {
  Size size;
  Strengths strengths;
  Doses doses;
  Limits limits;
};

[[nodiscard]] Facts findFacts(Notebook& notes);

/// Tells of papers that cannot be compared: other units of the medicine, a rate against a dose.
void checkFit(Notebook& notes);

}  // namespace wardchalk::detail
