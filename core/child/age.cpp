#include "core/child/age.h"

#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

Number daysIn(const Number& value, Unit unit) { return *converted(value, unit, Unit::day); }

}  // namespace

Number Age::days() const {
  Number total;
  for (const Quantity& part : written.parts) total = total + daysIn(part.value, part.unit);
  return total;
}

bool Age::isInWholeYears() const {
  return written.parts.size() == 1 && written.parts.front().unit == Unit::year &&
         written.parts.front().value.isWhole();
}

bool Age::endIsOpen() const {
  const Unit last = written.smallestUnit();
  return (last == Unit::year || last == Unit::month) && written.parts.back().value.isWhole();
}

Number Age::endDays() const {
  return endIsOpen() ? days() + daysIn(Number(1), written.smallestUnit()) : days();
}

}  // namespace wardchalk
