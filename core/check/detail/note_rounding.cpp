#include <algorithm>

#include "core/check/detail/telling.h"
#include "core/child/surface_formula.h"

namespace wardchalk::detail {

namespace {

Number squared(const Number& value) { return value * value; }

/// The square of the surface from exact cm and kg, before any rounding.
std::optional<Number> exactSurfaceSquared(const HouseRules& rules, const Size& size) {
  if (!size.cmExact || !size.kgExact) return std::nullopt;
  if (rules.bsaFormula == BsaFormula::mosteller)
    return *size.cmExact * *size.kgExact / Number(mostellerMetric);
  return squared(surfaceByPowers(surfaceFormula(rules.bsaFormula), *size.cmExact, *size.kgExact));
}

/// (exact size ÷ size used)², the square of the factor by which rounding and conversion have moved a dose per
/// that size. 1 for a flat dose and for a charted surface, which nobody rounded.
Number movedSquared(const HouseRules& rules, const Size& size, PerSize per) {
  if (per == PerSize::kg && size.kg) return squared(*size.kgExact / size.kg->value());
  if (per != PerSize::m2 || !size.m2 || size.surface->charted) return Number(1);
  const auto exact = exactSurfaceSquared(rules, size);
  return exact ? *exact / squared(size.m2->value()) : Number(1);
}

/// The ordered and the safe amount of one check, worked again without rounding; roots are never taken, only
/// squares compared.
struct Again {
  Number orderedSquared;
  Number limitSquared;
  [[nodiscard]] bool isWithin() const { return orderedSquared <= limitSquared; }
  /// Over the unrounded limit by more than 1 %.
  [[nodiscard]] bool isClearlyOver() const {
    return orderedSquared > limitSquared * Number::ratio(10201, 10000);
  }
};

void tellRounding(Notebook& notes, const Check& check, const Again& again) {
  const Quantity ordered = std::get<Quantity>(check.value);
  const Quantity limit = std::get<Quantity>(check.limit);
  const Number unrounded = again.limitSquared.rootRounded(20);
  const int significant =
      std::max({digitsApart(ordered.value, limit.value), digitsApart(ordered.value, unrounded),
                digitsApart(limit.value, unrounded)});
  Finding& finding = notes.tell(FindingCode::roundingDecides, path::dose,
                                {{"ordered", ordered, significant},
                                 {"limit", limit, significant},
                                 {"unrounded", Quantity{unrounded, limit.unit}, significant}},
                                check.id);
  if (check.status == CheckStatus::within && again.isClearlyOver()) finding.severity = Severity::ask;
}

}  // namespace

void noteRounding(Notebook& notes, const Facts& facts, const Checks& checks) {
  const auto& order = notes.given.order.dose;
  const auto& high = notes.given.reference.high;
  if (!order || !high) return;
  const Number orderMoved = movedSquared(notes.rules, facts.size, order->perSize);
  const Number limitMoved = movedSquared(notes.rules, facts.size, high->perSize);
  if (orderMoved == Number(1) && limitMoved == Number(1)) return;
  for (const CheckId id : {CheckId::single, CheckId::daily}) {
    const Check& check = checks.check(id);
    if (!check.isMade()) continue;
    const Again again{squared(std::get<Quantity>(check.value).value) * orderMoved,
                      squared(std::get<Quantity>(check.limit).value) * limitMoved};
    if (again.isWithin() == (check.status == CheckStatus::within)) continue;
    return tellRounding(notes, check, again);
  }
}

}  // namespace wardchalk::detail
