#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

void capDoses(Reckoning& reckoning) {
  const std::optional<int> most = reckoning.given.order.maxDosesPerDay;
  if (!most || !reckoning.n || Number(*most) >= *reckoning.n) return;
  reckoning.tell(
      FindingCode::capApplied, path::maxDosesPerDay,
      {{"limit", Quantity{Number(*most), Unit::dose}}, {"uncapped", Quantity{*reckoning.n, Unit::dose}}});
  reckoning.n = Number(*most);
}

/// The drug unit everything is shown in: the order's, or the stock's when the order is in mL.
std::optional<Unit> orderUnit(const Case& given) {
  if (!given.order.dose) return std::nullopt;
  const Unit unit = given.order.dose->amount.unit;
  if (measuresDrug(unit)) return unit;
  if (given.stock.strength) return given.stock.strength->amount.unit;
  if (given.stock.content) return given.stock.content->unit;
  return std::nullopt;
}

/// Appends "× 5 mL → mg" for an order in mL. False when the strength is not known.
bool addStrength(Reckoning& reckoning, Chain& chain) {
  if (reckoning.given.order.dose->amount.unit != Unit::mL) return true;
  if (!reckoning.sheet.strength || reckoning.sheet.strength->in != Unit::mL) return false;
  const StrengthFound& strength = *reckoning.sheet.strength;
  reckoning.strengthUsed = true;
  if (strength.from == StrengthFrom::labelled) {
    const Strength& label = *reckoning.given.stock.strength;
    convertAbove(chain, Unit::mL, label.in.unit);
    chain.factors.push_back(labelFactor(label, path::strength));
  } else {
    chain.factors.push_back(strengthFactor(strength, Origin::step(StepId::strength)));
  }
  return true;
}

/// The order for this child, in its drug unit per dose or per day.
std::optional<Chain> orderedChain(Reckoning& reckoning) {
  const DoseAmount& dose = *reckoning.given.order.dose;
  Chain chain{{doseFactor(dose, path::dose)}};
  if (!reckoning.addSizeFactor(chain, dose.perSize)) return std::nullopt;
  if (!reckoning.unit || !addStrength(reckoning, chain)) {
    reckoning.need(path::strength, Need::For::verdict);
    return std::nullopt;
  }
  return chain;
}

void findFromDose(Reckoning& reckoning, Chain chain) {
  const Unit unit = *reckoning.unit;
  reckoning.ordered =
      reckoning.solveStep(Section::ordered, StepId::orderedDose, std::move(chain), {{unit}, {Unit::dose}});
  if (!reckoning.ordered || !reckoning.n) return;
  Chain day{{factorOf(*reckoning.ordered), dosesADay(reckoning.n->ceil(), path::schedule)}};
  reckoning.orderedDay =
      reckoning.solveStep(Section::ordered, StepId::orderedDay, std::move(day), {{unit}, {Unit::day}});
}

void findFromDay(Reckoning& reckoning, Chain chain) {
  const Unit unit = *reckoning.unit;
  if (reckoning.n && *reckoning.n < Number(1)) {
    reckoning.tell(FindingCode::basisDoesNotFit, path::dose, {{"reason", std::string("day-or-dose")}});
    return;
  }
  reckoning.orderedDay =
      reckoning.solveStep(Section::ordered, StepId::orderedDay, std::move(chain), {{unit}, {Unit::day}});
  if (!reckoning.n) {
    reckoning.orderedDay.reset();  // how much is given in 24 h hangs on the schedule
    return;
  }
  if (!reckoning.orderedDay) return;
  Chain dose{
      {factorOf(*reckoning.orderedDay), dosesADay(ceilAtLeastOne(*reckoning.n), path::schedule).turned()}};
  reckoning.ordered =
      reckoning.solveStep(Section::ordered, StepId::orderedDose, std::move(dose), {{unit}, {Unit::dose}});
}

}  // namespace

void findSchedule(Reckoning& reckoning) {
  const Order& order = reckoning.given.order;
  reckoning.isRate = order.dose && order.dose->isRate();
  reckoning.unit = orderUnit(reckoning.given);
  if (order.schedule && !order.schedule->isContinuous()) {
    reckoning.once = order.schedule->isOnce();
    reckoning.n = order.schedule->most;
    capDoses(reckoning);
  }
  if (!order.dose) reckoning.need(path::dose, Need::For::verdict);
  if (!order.schedule && !reckoning.isRate) reckoning.need(path::schedule, Need::For::verdict);
}

void findOrder(Reckoning& reckoning) {
  if (!reckoning.given.order.dose || reckoning.isRate) return;
  std::optional<Chain> chain = orderedChain(reckoning);
  if (!chain) return;
  if (reckoning.given.order.dose->perTime == PerTime::day)
    findFromDay(reckoning, std::move(*chain));
  else
    findFromDose(reckoning, std::move(*chain));
  if (reckoning.ordered) reckoning.sheet.orderedDose = reckoning.ordered->amount;
  if (reckoning.orderedDay) reckoning.sheet.orderedDay = reckoning.orderedDay->amount;
}

}  // namespace wardchalk::detail
