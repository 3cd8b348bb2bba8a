#include "core/practice/lines/answer_value.h"

namespace wardchalk {

AnswerValue answerOf(const StudentLine& line) {
  const LineSide& last = line.sides.back();
  return {last.value,    last.exact, last.typed,
          last.decimals, last.units, last.written != UnitsWritten::none && !last.unitsOpen,
          last.isAmount, last.at};
}

}  // namespace wardchalk
