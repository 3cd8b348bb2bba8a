#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/marking/wanted_unit.h"
#include "core/practice/marking/wrong_values.h"

namespace wardchalk::detail {

/// A line with a number, taken apart: what it ends in, and what its working comes to.
struct NumberLine {
  TypedNumber typed;                ///< as it stands
  InWanted wanted;                  ///< in the wanted unit, where its unit fits
  std::optional<InWanted> worked;   ///< the last side that is worked out, exactly
  bool workedUnitsWritten = false;  ///< every number of it has its unit
  bool holds = true;                ///< no "=" of the line is false
};

/// Takes a read line apart; none if it ends in no number.
[[nodiscard]] std::optional<NumberLine> numberLine(const StudentLine& line, const Units& wanted);

/// What a line may come to, and what known mistakes make of it.
struct LineKey {
  StepId step;
  const RightValues& accepted;
  std::vector<Number> right;
  std::vector<WrongValue> wrong;
};

/// Marks it; everything but its writing.
[[nodiscard]] LineMark markNumberLine(const NumberLine& line, const LineKey& key);

}  // namespace wardchalk::detail
