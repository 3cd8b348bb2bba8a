#include "core/entry/detail/unit_list.h"

#include <algorithm>

namespace wardchalk::entry {

namespace {

/// What a quantity in this unit is, told to who typed it into another field.
RefusalCode codeFor(Unit typed) {
  switch (dimensionOf(typed)) {
    case Dimension::bodyMass:
      return RefusalCode::weightHere;
    case Dimension::length:
      return RefusalCode::heightHere;
    case Dimension::bodySurface:
      return RefusalCode::surfaceHere;
    case Dimension::volume:
      return RefusalCode::volumeHere;
    case Dimension::time:
      return RefusalCode::timeHere;
    case Dimension::drugMass:
    case Dimension::drugUnits:
    case Dimension::drugMoles:
    case Dimension::drugEquivalents:
      return RefusalCode::doseHere;
    default:
      return RefusalCode::unitUnfit;
  }
}

}  // namespace

bool contains(UnitList units, Unit unit) {
  return std::find(units.begin(), units.end(), unit) != units.end();
}

std::string listOf(UnitList units) {
  std::string list;
  for (const Unit unit : units) list.append(list.empty() ? "" : ", ").append(idOf(unit));
  return list;
}

Refusal unfit(Unit typed, std::string_view text, UnitList fitting) {
  // a unit of the same kind that does not fit ("5 mL/h" as an order, "1 day" as a running time) is only that
  const bool sameKind = std::any_of(fitting.begin(), fitting.end(),
                                    [typed](Unit unit) { return dimensionOf(unit) == dimensionOf(typed); });
  return hintedRefusal(sameKind ? RefusalCode::unitUnfit : codeFor(typed), text, listOf(fitting));
}

}  // namespace wardchalk::entry
