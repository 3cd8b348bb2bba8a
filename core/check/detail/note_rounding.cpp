#include <algorithm>

#include "core/check/detail/reckoning.h"
#include "core/child/surface_formula.h"

namespace wardchalk::detail {

namespace {

Number squared(const Number& value) { return value * value; }

/// The square of the surface from exact cm and kg, before any rounding.
std::optional<Number> exactSurfaceSquared(const Reckoning& reckoning) {
  if (!reckoning.cmExact || !reckoning.kgExact) return std::nullopt;
  if (reckoning.rules.bsaFormula == BsaFormula::mosteller)
    return *reckoning.cmExact * *reckoning.kgExact / Number(mostellerMetric);
  return squared(
      surfaceByPowers(surfaceFormula(reckoning.rules.bsaFormula), *reckoning.cmExact, *reckoning.kgExact));
}

/// (exact size ÷ size used)², the square of the factor by which rounding and conversion have moved a dose per
/// that size. 1 for a flat dose and for a charted surface, which nobody rounded.
Number movedSquared(const Reckoning& reckoning, PerSize size) {
  if (size == PerSize::kg && reckoning.kg) return squared(*reckoning.kgExact / reckoning.kg->value());
  if (size != PerSize::m2 || !reckoning.m2 || reckoning.sheet.bsa->charted) return Number(1);
  const auto exact = exactSurfaceSquared(reckoning);
  return exact ? *exact / squared(reckoning.m2->value()) : Number(1);
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

void tellRounding(Reckoning& reckoning, CheckId id, const Again& again) {
  const Quantity ordered = std::get<Quantity>(reckoning.check(id).value);
  const Quantity limit = std::get<Quantity>(reckoning.check(id).limit);
  const Number unrounded = again.limitSquared.rootRounded(20);
  const int significant =
      std::max({digitsApart(ordered.value, limit.value), digitsApart(ordered.value, unrounded),
                digitsApart(limit.value, unrounded)});
  Finding& finding = reckoning.tell(FindingCode::roundingDecides, path::dose,
                                    {{"ordered", ordered, significant},
                                     {"limit", limit, significant},
                                     {"unrounded", Quantity{unrounded, limit.unit}, significant}},
                                    id);
  if (reckoning.check(id).status == CheckStatus::within && again.isClearlyOver())
    finding.severity = Severity::ask;
}

}  // namespace

void noteRounding(Reckoning& reckoning) {
  const auto& order = reckoning.given.order.dose;
  const auto& high = reckoning.given.reference.high;
  if (!order || !high) return;
  const Number orderMoved = movedSquared(reckoning, order->perSize);
  const Number limitMoved = movedSquared(reckoning, high->perSize);
  if (orderMoved == Number(1) && limitMoved == Number(1)) return;
  for (const CheckId id : {CheckId::single, CheckId::daily}) {
    const Check& check = reckoning.check(id);
    if (!check.isMade()) continue;
    const Again again{squared(std::get<Quantity>(check.value).value) * orderMoved,
                      squared(std::get<Quantity>(check.limit).value) * limitMoved};
    if (again.isWithin() == (check.status == CheckStatus::within)) continue;
    return tellRounding(reckoning, id, again);
  }
}

}  // namespace wardchalk::detail
