#pragma once

#include "core/practice/lines/student_line.h"

namespace wardchalk {

/// What a line ends in: the student's answer.
struct AnswerValue {
  Number value;       ///< as typed; what it comes to where the last side is worked ("80 mg × 5 mL / 120 mg")
  bool exact = true;  ///< false: cut after 20 decimals
  std::string typed;  ///< the number as typed, "0.70"; empty where the last side is worked, or is parts
  int decimals = -1;  ///< decimals typed; -1 where there is no such number
  Units units;
  bool hasUnits = false;  ///< units are written; whether they are the right ones is for the marker
  bool isAmount = false;  ///< a plain answer and no expression that is still to be worked out
  Span at;
};

/// The last side of a line. Of a comparison it is the right-hand side.
[[nodiscard]] AnswerValue answerOf(const StudentLine& line);

}  // namespace wardchalk
