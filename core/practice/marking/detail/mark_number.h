#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/practice/lines/student_working.h"
#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/marking/wanted_unit.h"
#include "core/practice/marking/wrong_values.h"

namespace wardchalk::detail {

/// A line with a number, taken apart: what it ends in, and what its working comes to.
struct NumberLine {
  TypedNumber typed;  ///< as it stands
  InWanted wanted;    ///< in the wanted unit, where its unit fits
  std::optional<InWanted>
      worked;  ///< the last side that is worked out, exactly, as the result beside it takes it
  std::optional<Number> before;     ///< the one amount before the result: "8.333 mL rounds to 8.8 mL"
  bool workedUnitsWritten = false;  ///< every number of it has its unit
  Units workedUnits;                ///< left of it after cancelling
  bool unitsClash = false;          ///< two measures of size stand in it, above and below, and do not cancel
  bool sidesAgree = true;           ///< no amount is said to equal another: "4 mL = 12 mL"
};

/// Takes a working apart; none if it ends in no number.
[[nodiscard]] std::optional<NumberLine> numberLine(const StudentWorking& working, const Units& wanted);

/// What a line may come to, and what known mistakes make of it.
struct LineKey {
  StepId step;
  const RightValues& accepted;
  std::vector<Number> right;
  WrongValues wrong;
  bool bareConstant = false;  ///< 2.2 or 0.4536 stands in the working without its unit
};

/// Marks it; everything but its writing.
[[nodiscard]] LineMark markNumberLine(const NumberLine& line, const LineKey& key);

}  // namespace wardchalk::detail
