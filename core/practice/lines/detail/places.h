#pragma once

#include "core/practice/lines/student_line.h"

namespace wardchalk::practice {

/// Moves every place of the line so many bytes on: it was read from a part of a text.
void shiftPlaces(StudentLine& line, std::size_t by);
/// Puts every place of the line at one: it was read from other words than those that stand there.
void standAt(StudentLine& line, Span at);

}  // namespace wardchalk::practice
