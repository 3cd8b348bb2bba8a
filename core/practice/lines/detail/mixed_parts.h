#pragma once

#include <variant>
#include <vector>

#include "core/practice/lines/detail/line_part.h"

namespace wardchalk::practice {

/// Why parts of falling size do not make one amount, and the place of it in the line.
struct PartsFault {
  LineFaultCode code;
  Span at;
};

/// Whether two amounts may be parts of one: each with one unit, and both of one dimension.
[[nodiscard]] bool areAlike(const Part& one, const Part& other);

/// "7 lb 8 oz" as one amount in its smallest unit, or in pounds. All parts are alike.
[[nodiscard]] std::variant<Part, PartsFault> putTogether(const std::vector<Part>& parts);

}  // namespace wardchalk::practice
