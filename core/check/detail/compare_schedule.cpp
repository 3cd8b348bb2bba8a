#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

bool isInside(const Schedule& order, const Schedule& reference, bool asNeeded) {
  if (reference.isOnce()) return false;  // a repeated order is outside a schedule of one dose
  if (asNeeded) return order.most <= reference.most;
  return reference.fewest <= order.fewest && order.most <= reference.most;
}

void tellScheduleDiffers(Reckoning& reckoning, const Schedule& order, const Schedule& reference) {
  reckoning.tell(FindingCode::scheduleDiffers, path::schedule,
                 {{"ordered", order.text},
                  {"reference", reference.text},
                  {"more", std::string(order.most > reference.most || reference.isOnce() ? "more" : "less")}},
                 CheckId::schedule);
}

void compareWithReference(Reckoning& reckoning) {
  const auto& order = reckoning.given.order.schedule;
  const auto& reference = reckoning.given.reference.schedule;
  if (reckoning.once) return reckoning.doesNotApply(CheckId::schedule, WhyNot::onceOnly);
  if (!order) return reckoning.notChecked(CheckId::schedule, WhyNot::missing);
  if (!reference) return reckoning.notChecked(CheckId::schedule, WhyNot::noSchedule);
  if (order->isContinuous() != reference->isContinuous())
    return reckoning.notChecked(CheckId::schedule, WhyNot::missing);
  const bool inside = order->isContinuous() || isInside(*order, *reference, reckoning.given.order.asNeeded);
  reckoning.check(CheckId::schedule).value = order->text;
  reckoning.check(CheckId::schedule).limit = reference->text;
  Term left{Number(1), {}, Origin::field(path::schedule)};
  Term right{Number(1), {}, Origin::field(path::referenceSchedule)};
  compare(reckoning, CheckId::schedule, {left, std::nullopt, order->text}, Relation::inside,
          {right, std::nullopt, reference->text}, inside);
  if (!inside) tellScheduleDiffers(reckoning, *order, *reference);
}

/// A dose that is repeated under a reference that says nothing of how often (R6).
void askForSchedule(Reckoning& reckoning) {
  const Reference& reference = reckoning.given.reference;
  const auto& order = reckoning.given.order.schedule;
  if (!reference.high || reference.schedule || !order || order->isContinuous()) return;
  const bool perDose = reference.high->perTime == PerTime::dose;
  const bool daysTotalKnown = *reckoning.n >= Number(1) && reference.maxPerDay;
  if (perDose && order->isRepeated() && !daysTotalKnown)
    reckoning.tell(FindingCode::scheduleUnknown, path::referenceSchedule, {{"ordered", order->text}});
  if (reference.high->perTime == PerTime::day && *reckoning.n < Number(2))
    reckoning.tell(FindingCode::divisionUnknown, path::referenceSchedule, {{"ordered", order->text}});
}

/// An interval that does not divide the day: every 5 h (R4).
void askForInterval(Reckoning& reckoning) {
  const auto& order = reckoning.given.order.schedule;
  if (!order || !order->isRepeated() || reckoning.given.order.asNeeded) return;
  const auto isOdd = [](const Number& dosesADay) { return dosesADay > Number(1) && !dosesADay.isWhole(); };
  if (isOdd(order->fewest) || isOdd(order->most))
    reckoning.tell(FindingCode::intervalOdd, path::schedule, {{"ordered", order->text}});
}

}  // namespace

void compareSchedule(Reckoning& reckoning) {
  compareWithReference(reckoning);
  if (reckoning.isRate) return;
  askForSchedule(reckoning);
  askForInterval(reckoning);
}

}  // namespace wardchalk::detail
