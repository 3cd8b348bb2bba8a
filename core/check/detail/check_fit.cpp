#include "core/check/detail/reckoning.h"

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
void checkUnitsMeet(Reckoning& reckoning) {
  const std::vector<DrugEntry> entries = drugEntries(reckoning.given);
  for (const DrugEntry& entry : entries) {
    if (dimensionOf(entry.unit) == dimensionOf(entries.front().unit)) continue;
    reckoning.tell(
        FindingCode::unitsDoNotMeet, entry.path,
        {{"first", std::string(idOf(entries.front().unit))}, {"second", std::string(idOf(entry.unit))}});
    return;
  }
}

void tellBasis(Reckoning& reckoning, StaticText field, std::string_view reason) {
  reckoning.tell(FindingCode::basisDoesNotFit, field, {{"reason", std::string(reason)}});
}

/// A rate against a dose, "continuous" without a rate, or a rate that is given in doses (R8).
void checkBasis(Reckoning& reckoning) {
  const Order& order = reckoning.given.order;
  const Reference& reference = reckoning.given.reference;
  if (!order.dose) return;
  if (reference.high && reference.high->isRate() != reckoning.isRate)
    return tellBasis(reckoning, path::high, reckoning.isRate ? "rate-against-dose" : "dose-against-rate");
  const bool continuous = order.schedule && order.schedule->isContinuous();
  if (continuous && !reckoning.isRate) return tellBasis(reckoning, path::dose, "continuous-without-rate");
  if (order.schedule && !continuous && reckoning.isRate)
    return tellBasis(reckoning, path::schedule, "rate-with-doses");
  const auto& own = reference.schedule;
  if (own && own->isContinuous() && !reckoning.isRate)
    return tellBasis(reckoning, path::referenceSchedule, "continuous-without-rate");
}

}  // namespace

void checkFit(Reckoning& reckoning) {
  checkUnitsMeet(reckoning);
  checkBasis(reckoning);
}

}  // namespace wardchalk::detail
