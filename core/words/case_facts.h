#pragma once

#include <string>
#include <vector>

#include "core/medicine/case.h"

namespace wardchalk {

/// One paper of a case in a line: "order", "Plover 80 mg by mouth every 12 hours".
struct Fact {
  std::string label;
  std::string text;
  friend bool operator==(const Fact&, const Fact&) = default;
};

/// What was entered of child, order, reference and stock, paper by paper as it was entered; nothing is worked
/// out. A paper that states nothing is left out.
[[nodiscard]] std::vector<Fact> caseFacts(const Case& inputs);

/// The children that a reference is meant for, in words: "at least 2 years, below 12 years"; empty for all.
[[nodiscard]] std::string bandWords(const Reference& reference);

}  // namespace wardchalk
