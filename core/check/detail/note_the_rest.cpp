#include "core/check/detail/telling.h"
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

void noteSmallChild(Notebook& notes, const Size& size) {
  if (!isPerSurface(notes.given.reference.high) && !isPerSurface(notes.given.order.dose)) return;
  if (!size.kg || size.kg->value() >= smallChildKg()) return;
  notes.tell(FindingCode::smallChildBsa, path::weight, {{"weight", size.kg->amount}});
}

void noteAsNeeded(Notebook& notes, const Doses& doses) {
  const Order& order = notes.given.order;
  if (!order.asNeeded || !doses.n || doses.once) return;
  notes.tell(FindingCode::asNeededCountedAtMostFrequent, path::asNeeded,
             {{"doses", Quantity{doses.fewerFit() ? doses.fitting->count : *doses.n, Unit::dose}}});
}

/// The household constant moves the surface by a tenth of a percent, which can move its last decimal.
void noteHouseholdConstant(Notebook& notes, const Size& size) {
  if (!size.household || !size.surface || size.surface->charted || !notes.surfaceUsed) return;
  const int decimals = bsaWorkingDecimals(notes.rules);
  const Number exact = (*size.cmExact * *size.kgExact / Number(mostellerMetric)).rootRounded(decimals);
  if (exact == size.m2->value()) return;
  notes.tell(FindingCode::householdConstant, path::height,
             {{"used", FixedNumber{size.m2->value(), decimals}}, {"exact", FixedNumber{exact, decimals}}});
}

}  // namespace

void noteTheRest(Notebook& notes, const Facts& facts) {
  noteSmallChild(notes, facts.size);
  noteAsNeeded(notes, facts.doses);
  if (facts.doses.oneDose) notes.tell(FindingCode::oneDoseJudged, path::schedule);
  noteHouseholdConstant(notes, facts.size);
  if (notes.given.reference.high && notes.given.reference.source.empty())
    notes.tell(FindingCode::sourceNotStated, path::source);
}

}  // namespace wardchalk::detail
