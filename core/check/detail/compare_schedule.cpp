#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

namespace {

bool isInside(const Schedule& order, const Schedule& reference, bool asNeeded) {
  if (order.isContinuous() || reference.isContinuous()) return order.kind == reference.kind;
  if (reference.isOnce()) return false;  // a repeated order is outside a schedule of one dose
  if (asNeeded) return order.most <= reference.most;
  return reference.fewest <= order.fewest && order.most <= reference.most;
}

/// Whether the order is more or less often; a rate that runs on is neither.
std::optional<ArgumentWord> howItDiffers(const Schedule& order, const Schedule& reference) {
  if (order.isContinuous()) return std::nullopt;
  return order.most > reference.most || reference.isOnce() ? ArgumentWord::more : ArgumentWord::less;
}

void tellScheduleDiffers(Comparing& comparing, const Schedule& order, const Schedule& reference) {
  std::vector<Argument> arguments = {{"ordered", order}, {"reference", reference}};
  if (const auto how = howItDiffers(order, reference)) arguments.push_back({"more", *how});
  comparing.notes.tell(FindingCode::scheduleDiffers, path::schedule, std::move(arguments), CheckId::schedule);
}

void compareWithReference(Comparing& comparing) {
  const auto& order = comparing.given.order.schedule;
  const auto& reference = comparing.given.reference.schedule;
  if (comparing.doses.once) return comparing.doesNotApply(CheckId::schedule, WhyNot::onceOnly);
  if (!order)
    return comparing.notChecked(CheckId::schedule,
                                comparing.doses.oneDose ? WhyNot::noOrderSchedule : WhyNot::missing);
  if (!reference) return comparing.notChecked(CheckId::schedule, WhyNot::noSchedule);
  const bool rate = comparing.doses.isRate;
  const bool fits = order->isContinuous() ? rate : !rate && !reference->isContinuous();
  if (!fits)  // told by the basis
    return comparing.notChecked(CheckId::schedule, WhyNot::missing);
  const bool inside = isInside(*order, *reference, comparing.given.order.asNeeded);
  comparing.check(CheckId::schedule).value = *order;
  comparing.check(CheckId::schedule).limit = *reference;
  Term left{Number(1), {}, Origin::field(path::schedule)};
  Term right{Number(1), {}, Origin::field(path::referenceSchedule)};
  compare(comparing, CheckId::schedule, {left, std::nullopt, *order}, Relation::inside,
          {right, std::nullopt, *reference}, inside);
  if (!inside) tellScheduleDiffers(comparing, *order, *reference);
}

void askHowOften(Comparing& comparing, FindingCode code) {
  Finding& finding =
      comparing.notes.tell(code, path::referenceSchedule, {{"ordered", *comparing.given.order.schedule}});
  if (comparing.rules.referenceScheduleMissing == ReferenceScheduleMissing::note)
    finding.severity = Severity::note;
}

/// A dose that is repeated under a reference that says nothing of how often (R6).
void askForSchedule(Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  const auto& order = comparing.given.order.schedule;
  if (!reference.high || reference.schedule || !order || order->isContinuous()) return;
  const bool perDose = reference.high->perTime == PerTime::dose;
  const bool severalAllowed = comparing.limits.mostDoses && comparing.limits.mostDoses->count >= Number(2);
  const bool daysTotalKnown = *comparing.doses.n >= Number(1) && (reference.maxPerDay || severalAllowed);
  if (perDose && order->isRepeated() && !daysTotalKnown) askHowOften(comparing, FindingCode::scheduleUnknown);
  if (reference.high->perTime == PerTime::day && *comparing.doses.n < Number(2))
    askHowOften(comparing, FindingCode::divisionUnknown);
}

}  // namespace

void askForInterval(Comparing& comparing) {
  const auto& order = comparing.given.order.schedule;
  if (!order || !order->isRepeated() || comparing.given.order.asNeeded || comparing.doses.isRate) return;
  const auto isOdd = [](const Number& dosesADay) { return dosesADay > Number(1) && !dosesADay.isWhole(); };
  if (isOdd(order->fewest) || isOdd(order->most))
    comparing.notes.tell(FindingCode::intervalOdd, path::schedule, {{"ordered", *order}});
}

void compareSchedule(Comparing& comparing) {
  compareWithReference(comparing);
  if (comparing.doses.isRate) return;
  askForSchedule(comparing);
}

}  // namespace wardchalk::detail
