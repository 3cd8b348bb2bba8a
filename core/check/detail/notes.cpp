#include "core/check/detail/reckoning.h"
#include "core/child/surface_formula.h"

namespace wardchalk::detail {

namespace {

/// Under this weight surface-area dosing can overdose an infant. Source: cancer-care guidance, and labels
/// that change to mg/kg at 10 kg (UK summaries of product characteristics, section 4.2).
const Number& smallChildKg() {
  static const Number kg(10);
  return kg;
}

bool isPerSurface(const std::optional<DoseAmount>& dose) { return dose && dose->perSize == PerSize::m2; }

void noteSmallChild(Reckoning& reckoning) {
  if (!isPerSurface(reckoning.given.reference.high) && !isPerSurface(reckoning.given.order.dose)) return;
  if (!reckoning.kg || reckoning.kg->value() >= smallChildKg()) return;
  reckoning.tell(FindingCode::smallChildBsa, path::weight, {{"weight", reckoning.kg->amount}});
}

void noteAsNeeded(Reckoning& reckoning) {
  const Order& order = reckoning.given.order;
  if (!order.asNeeded || !reckoning.n || reckoning.once) return;
  reckoning.tell(FindingCode::asNeededCountedAtMostFrequent, path::asNeeded,
                 {{"doses", Quantity{*reckoning.n, Unit::dose}}});
}

/// The household constant moves the surface by a tenth of a percent, which can move its last decimal.
void noteHouseholdConstant(Reckoning& reckoning) {
  if (!reckoning.household || !reckoning.sheet.bsa || reckoning.sheet.bsa->charted || !reckoning.m2Used)
    return;
  const int decimals = bsaWorkingDecimals(reckoning.rules);
  const Number exact =
      (*reckoning.cmExact * *reckoning.kgExact / Number(mostellerMetric)).rootRounded(decimals);
  if (exact == reckoning.m2->value()) return;
  reckoning.tell(
      FindingCode::householdConstant, path::height,
      {{"used", fixedText(reckoning.m2->value(), decimals)}, {"exact", fixedText(exact, decimals)}});
}

}  // namespace

void noteTheRest(Reckoning& reckoning) {
  noteSmallChild(reckoning);
  noteAsNeeded(reckoning);
  noteHouseholdConstant(reckoning);
  if (reckoning.given.reference.high && reckoning.given.reference.source.empty())
    reckoning.tell(FindingCode::sourceNotStated, path::source);
}

}  // namespace wardchalk::detail
