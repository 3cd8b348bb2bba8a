#include "core/practice/lines/answer_value.h"

#include <algorithm>

namespace wardchalk {

namespace {

constexpr int mostShownDecimals = 10;

/// "125 mg in 1 mL", "1008 mg/24 h": an answer, although it is written as a quotient.
bool isPerOne(const LineSide& side) {
  if (side.isSum || side.chain.rooted || side.chain.factors.size() != 1) return false;
  const Term& under = side.chain.factors.front().under;
  const bool hours = under.units == UnitProduct{Unit::h} && under.value == Number(24);
  return side.places.front().under.end > 0 && !under.units.empty() && (under.value == Number(1) || hours);
}

/// Decimals that the number above the bar needs to be written.
int decimalsNeeded(const Number& value) {
  int decimals = 0;
  while (decimals < mostShownDecimals && !value.endsWithin(decimals)) ++decimals;
  return decimals;
}

}  // namespace

AnswerValue answerOf(const StudentLine& line) {
  const LineSide& last = line.sides.back();
  if (!last.isAmount && isPerOne(last))
    return {last.value, last.exact,      {},   decimalsNeeded(last.chain.factors.front().over.value),
            last.units, !last.unitsOpen, true, last.at};
  return {last.value,    last.exact, last.typed,
          last.decimals, last.units, last.written != UnitsWritten::none && !last.unitsOpen,
          last.isAmount, last.at};
}

}  // namespace wardchalk
