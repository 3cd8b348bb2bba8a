#pragma once

#include <vector>

#include "core/practice/lines/student_line.h"

namespace wardchalk::practice {

/// How the units of two sides meet to the letter, whatever their numbers.
[[nodiscard]] UnitsMeet unitsMeet(const LineSide& left, const LineSide& right);

/// How two sides that are joined by a relation stand to one another.
[[nodiscard]] LineLink linkOf(const LineSide& left, const LineSide& right, LineRelation relation, Span at);

}  // namespace wardchalk::practice
