#pragma once

#include <string>
#include <vector>

#include "core/check/shown.h"

namespace wardchalk {

/// One line of what a worksheet says round its working; a view chooses how it looks.
struct OutlineLine {
  enum class Kind : std::uint8_t {
    line,
    heading,
    question,  ///< still to be settled
    settled,   ///< a question with how it was settled
    note,
    gap,  ///< nothing is said: what follows stands apart
  };
  Kind kind;
  std::string text;
};

/// Verdict, checks not made, questions, amount or why there is none, findings: what stands before the
/// working.
[[nodiscard]] std::vector<OutlineLine> outlineBefore(const Shown& shown);

/// House rules and cautions: what stands after it.
[[nodiscard]] std::vector<OutlineLine> outlineAfter(const Worksheet& sheet);

}  // namespace wardchalk
