#include "core/check/detail/facts.h"

namespace wardchalk::detail {

namespace {

struct DrugEntry {
  Unit unit;
  StaticText path;
};

void add(std::vector<DrugEntry>& entries, const std::optional<DoseAmount>& dose, StaticText path) {
  if (dose && measuresDrug(dose->amount.unit)) entries.push_back({dose->amount.unit, path});
}

void add(std::vector<DrugEntry>& entries, const std::optional<Strength>& strength, StaticText path) {
  if (strength) entries.push_back({strength->amount.unit, path});
}

/// Every entry that states an amount of the medicine, in the order of the papers.
std::vector<DrugEntry> drugEntries(const Case& given) {
  std::vector<DrugEntry> entries;
  add(entries, given.order.dose, path::dose);
  add(entries, given.reference.high, path::high);
  add(entries, given.reference.low, path::low);
  add(entries, given.reference.maxPerDose, path::maxPerDose);
  add(entries, given.reference.maxPerDay, path::maxPerDay);
  add(entries, given.reference.maxConcentration, path::maxConcentration);
  add(entries, given.reference.minConcentration, path::minConcentration);
  add(entries, given.reference.maxInfusionRate, path::maxInfusionRate);
  add(entries, given.stock.strength, path::strength);
  if (given.stock.content) entries.push_back({given.stock.content->unit, path::content});
  return entries;
}

/// mg and units never meet: what the medicine is measured in must be the same on every paper (R8).
void checkUnitsMeet(Notebook& notes) {
  const std::vector<DrugEntry> entries = drugEntries(notes.given);
  for (const DrugEntry& entry : entries) {
    if (dimensionOf(entry.unit) == dimensionOf(entries.front().unit)) continue;
    notes.tell(FindingCode::unitsDoNotMeet, entry.path,
               {{"first", entries.front().unit}, {"second", entry.unit}});
    return;
  }
}

void tellBasis(Notebook& notes, StaticText field, ArgumentWord reason) {
  notes.tell(FindingCode::basisDoesNotFit, field, {{"reason", reason}});
}

/// A rate against a dose, "continuous" without a rate, or a rate that is given in doses (R8).
void checkBasis(Notebook& notes) {
  const Order& order = notes.given.order;
  const Reference& reference = notes.given.reference;
  if (!order.dose) return;
  const bool isRate = order.dose->isRate();
  if (reference.high && reference.high->isRate() != isRate)
    return tellBasis(notes, path::high,
                     isRate ? ArgumentWord::rateAgainstDose : ArgumentWord::doseAgainstRate);
  const bool continuous = order.schedule && order.schedule->isContinuous();
  if (continuous && !isRate) return tellBasis(notes, path::dose, ArgumentWord::continuousWithoutRate);
  if (order.schedule && !continuous && isRate)
    return tellBasis(notes, path::schedule, ArgumentWord::rateWithDoses);
  const auto& own = reference.schedule;
  if (own && own->isContinuous() && !isRate)
    return tellBasis(notes, path::referenceSchedule, ArgumentWord::continuousWithoutRate);
}

}  // namespace

void checkFit(Notebook& notes) {
  checkUnitsMeet(notes);
  checkBasis(notes);
}

}  // namespace wardchalk::detail
