#include "core/practice/marking/wanted_unit.h"

#include <algorithm>
#include <optional>

#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

bool isPer(Unit unit) { return unit == Unit::dose || unit == Unit::day; }

UnitProduct withoutPer(UnitProduct units) {
  units.eraseIf(isPer);
  return units;
}

/// How many of `wanted` one of `units` comes to, matched one by one; none if they do not pair.
std::optional<Number> pileFactor(const UnitProduct& units, UnitProduct wanted) {
  if (units.size() != wanted.size()) return std::nullopt;
  Number factor(1);
  for (const Unit unit : units) {
    const auto partner =
        std::ranges::find(wanted, dimensionOf(unit), [](Unit other) { return dimensionOf(other); });
    if (partner == wanted.end()) return std::nullopt;
    const auto step = converted(Number(1), unit, *partner);
    if (!step) return std::nullopt;
    factor = factor * *step;
    wanted.erase(partner);
  }
  return factor;
}

std::optional<Number> factorTo(const Units& units, const Units& wanted) {
  const auto over = pileFactor(units.over, wanted.over);
  const auto under = pileFactor(units.under, wanted.under);
  if (!over || !under) return std::nullopt;
  return *over / *under;
}

}  // namespace

InWanted inWantedUnit(const Number& value, const Units& units, const Units& wanted) {
  if (units.over.empty() && units.under.empty()) return {UnitFit::leftOut, value};
  if (const auto factor = factorTo(units, wanted)) return {UnitFit::fits, value * *factor};
  const Units bare{units.over, withoutPer(units.under)};
  const auto factor = factorTo(bare, {wanted.over, withoutPer(wanted.under)});
  if (!factor) return {UnitFit::different, value};
  const bool saysPer = bare.under.size() != units.under.size();
  const bool wantsPer = withoutPer(wanted.under).size() != wanted.under.size();
  return {saysPer && wantsPer ? UnitFit::otherPer : UnitFit::fits, value * *factor};
}

}  // namespace wardchalk
