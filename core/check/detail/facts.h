#pragma once

#include "core/check/detail/limits.h"

namespace wardchalk::detail {

/// Everything that is known before the first comparison.
struct Facts {
  Size size;
  Strengths strengths;
  Doses doses;
  Limits limits;
  /// The reference is for another medicine than the order: nothing of it is worked out or held against the
  /// order (R13).
  bool otherMedicine = false;
};

[[nodiscard]] Facts findFacts(Notebook& notes);
/// The same for a child whose size was found before, by the same rules.
[[nodiscard]] Facts findFacts(Notebook& notes, Size size);

/// Tells of papers that cannot be compared: other units of the medicine, a rate against a dose.
void checkFit(Notebook& notes);

}  // namespace wardchalk::detail
