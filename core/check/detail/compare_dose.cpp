#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

namespace {

/// How much is in one dose, or in one day: what it is in is said by the question.
std::optional<Side> sideIn(Comparing& comparing, Unit one, const Found& found) {
  const std::optional<Found> amount = comparing.notes.found(inOne(one, found));
  if (!amount) return std::nullopt;
  return sideOf(*amount);
}

/// Two values as arguments, with digits added until they do not print alike.
std::vector<Argument> excessArguments(const Quantity& ordered, const Quantity& limit) {
  const int significant = digitsApart(ordered.value, limit.value);
  return {{"ordered", ordered, significant},
          {"limit", limit, significant},
          {"percent", Percent{ordered.value, limit.value}},
          {"over", Excess{ordered.value, limit.value}}};
}

/// An upper limit on the dose: made, shown, told when outside, and kept to be judged again for a measured
/// dose.
void compareUpper(Comparing& comparing, CheckId id, FindingCode over, std::optional<Side> left,
                  std::optional<Side> right) {
  if (!left || !right) return;
  const Quantity value = amountOf(*left);
  const Quantity limit = amountOf(*right);
  const bool holds = value.value <= limit.value;
  const Number filled = value.value / limit.value;
  comparing.check(id).value = value;
  comparing.check(id).limit = limit;
  comparing.check(id).ratio = filled;
  comparing.checks.bounds.push_back({id, Relation::atMost, filled});
  compare(comparing, id, std::move(*left), Relation::atMost, std::move(*right), holds);
  if (!holds) comparing.notes.tell(over, path::dose, excessArguments(value, limit), id);
}

WhyNot whyNoLimit(const Comparing& comparing) {
  const auto& high = comparing.given.reference.high;
  if (high && !sizeValue(comparing.size, high->perSize)) return WhyNot::noSize;
  return WhyNot::missing;
}

/// Why a maximum that is stated could not be worked out, or that none is stated.
WhyNot whyNoMaximum(const Comparing& comparing, const std::optional<DoseAmount>& maximum) {
  if (!maximum) return WhyNot::noMaximum;
  return sizeValue(comparing.size, maximum->perSize) ? WhyNot::missing : WhyNot::noSize;
}

void compareSingle(Comparing& comparing) {
  if (!comparing.doses.ordered || !comparing.limits.dose)
    return comparing.notChecked(CheckId::single, whyNoLimit(comparing));
  compareUpper(comparing, CheckId::single, FindingCode::overSingle,
               sideIn(comparing, Unit::dose, *comparing.doses.ordered),
               sideIn(comparing, Unit::dose, *comparing.limits.dose));
}

bool isPerWeek(const Comparing& comparing) {
  const auto& high = comparing.given.reference.high;
  return high && high->perTime == PerTime::week;
}

void compareDaily(Comparing& comparing) {
  if (comparing.doses.once) return comparing.doesNotApply(CheckId::daily, WhyNot::onceOnly);
  if (comparing.doses.oneDose) return comparing.notChecked(CheckId::daily, WhyNot::noOrderSchedule);
  if (isPerWeek(comparing)) return comparing.doesNotApply(CheckId::daily);
  if (!comparing.doses.orderedDay) return comparing.notChecked(CheckId::daily, WhyNot::missing);
  if (!comparing.limits.day) {
    const WhyNot why = comparing.limits.dose ? WhyNot::noSchedule : whyNoLimit(comparing);
    return comparing.notChecked(CheckId::daily, why);
  }
  compareUpper(comparing, CheckId::daily, FindingCode::overDaily,
               sideIn(comparing, Unit::day, *comparing.doses.orderedDay),
               sideIn(comparing, Unit::day, *comparing.limits.day));
}

bool isLessThanDaily(const std::optional<Schedule>& schedule) {
  return schedule && schedule->isRepeated() && schedule->most < Number(1);
}

/// A dose a number of times a week.
std::optional<Side> weekly(Comparing& comparing, const Found& dose, const Number& timesAWeek,
                           StaticText path) {
  Chain chain{{factorOf(dose), rateFactor(timesAWeek, Unit::dose, Unit::week, Origin::field(path))}};
  return sideBy(comparing.notes, std::move(chain), {{dose.amount.unit}, {Unit::week}});
}

void comparePeriod(Comparing& comparing) {
  const auto& order = comparing.given.order.schedule;
  const auto& own = comparing.given.reference.schedule;
  if (comparing.doses.once) return comparing.doesNotApply(CheckId::period, WhyNot::onceOnly);
  if (comparing.doses.oneDose) return comparing.notChecked(CheckId::period, WhyNot::noOrderSchedule);
  if (!isPerWeek(comparing) && !isLessThanDaily(order) && !isLessThanDaily(own))
    return comparing.doesNotApply(CheckId::period);
  if (!comparing.doses.ordered || !comparing.doses.n)
    return comparing.notChecked(CheckId::period, WhyNot::missing);
  std::optional<Side> left =
      weekly(comparing, *comparing.doses.ordered, *comparing.doses.n * Number(7), path::schedule);
  if (isPerWeek(comparing)) {
    if (!comparing.limits.weekChain) return comparing.notChecked(CheckId::period, whyNoLimit(comparing));
    return compareUpper(
        comparing, CheckId::period, FindingCode::overPeriod, std::move(left),
        sideBy(comparing.notes, *comparing.limits.weekChain, {{*comparing.doses.unit}, {Unit::week}}));
  }
  if (!own || !own->isRepeated()) return comparing.notChecked(CheckId::period, WhyNot::noSchedule);
  if (!comparing.limits.dose) return comparing.notChecked(CheckId::period, whyNoLimit(comparing));
  compareUpper(comparing, CheckId::period, FindingCode::overPeriod, std::move(left),
               weekly(comparing, *comparing.limits.dose, own->most * Number(7), path::referenceSchedule));
}

void compareMaxSingle(Comparing& comparing) {
  if (!comparing.limits.maxDose)
    return comparing.notChecked(CheckId::maxSingle,
                                whyNoMaximum(comparing, comparing.given.reference.maxPerDose));
  if (!comparing.doses.ordered) return comparing.notChecked(CheckId::maxSingle, WhyNot::missing);
  compareUpper(comparing, CheckId::maxSingle, FindingCode::overMaxSingle,
               sideIn(comparing, Unit::dose, *comparing.doses.ordered),
               sideIn(comparing, Unit::dose, *comparing.limits.maxDose));
}

/// So many of the ordered doses; what they are in is said by the question.
std::optional<Side> sideOfDoses(Comparing& comparing, int count) {
  const Found& dose = *comparing.doses.ordered;
  const Origin most = Origin::field(path::maxDosesPerDay);
  return sideBy(comparing.notes, {{factorOf(dose), over1({Number(count), {Unit::dose}, most})}},
                {{dose.amount.unit}, {}});
}

/// An order that does not say how often: its most doses are held against the day's maximum, or its day's
/// total; else one dose alone can be too much, and none that is measured may be (R15).
void compareUnscheduledDay(Comparing& comparing) {
  const auto over = [&](std::optional<Side> left) {
    compareUpper(comparing, CheckId::maxDaily, FindingCode::overMaxDaily, std::move(left),
                 sideIn(comparing, Unit::day, *comparing.limits.maxDay));
  };
  const Doses& doses = comparing.doses;
  if (doses.dayAsOrdered) return over(sideIn(comparing, Unit::day, *doses.dayAsOrdered));
  if (!doses.ordered) return comparing.notChecked(CheckId::maxDaily, WhyNot::missing);
  if (const auto& most = comparing.given.order.maxDosesPerDay) return over(sideOfDoses(comparing, *most));
  const Number filled = doses.ordered->value() / comparing.limits.maxDay->value();
  if (filled > Number(1)) return over(sideIn(comparing, Unit::dose, *doses.ordered));
  comparing.notChecked(CheckId::maxDaily, WhyNot::noOrderSchedule);
  comparing.checks.bounds.push_back({CheckId::maxDaily, Relation::atMost, filled});
}

void compareMaxDaily(Comparing& comparing) {
  if (!comparing.limits.maxDay)
    return comparing.notChecked(CheckId::maxDaily,
                                whyNoMaximum(comparing, comparing.given.reference.maxPerDay));
  if (!comparing.given.order.schedule) return compareUnscheduledDay(comparing);
  const std::optional<Found>& day =
      comparing.doses.once ? comparing.doses.ordered : comparing.doses.orderedDay;
  if (!day) return comparing.notChecked(CheckId::maxDaily, WhyNot::missing);
  compareUpper(comparing, CheckId::maxDaily, FindingCode::overMaxDaily,
               sideIn(comparing, comparing.doses.once ? Unit::dose : Unit::day, *day),
               sideIn(comparing, Unit::day, *comparing.limits.maxDay));
}

/// What a rate gives in all of a day.
std::optional<Found> wholeDay(Comparing& comparing) {
  const DoseAmount& rate = *comparing.given.order.dose;
  const Unit time = unitOf(rate.perTime);
  std::optional<Chain> chain =
      rateChain(comparing.notes, comparing.size, comparing.doses, rate, path::dose, time);
  if (!chain) return std::nullopt;
  append(*chain, runningInDay({}, time));
  return comparing.notes.solveUnwritten(*chain, {{*comparing.doses.unit}, {Unit::day}},
                                        Origin::step(StepId::orderedDay));
}

/// An order that is to run on, and a run time that ends within the day: if that is the time of one bag, the
/// day's total is that of all day.
void askHowLong(Comparing& comparing) {
  const auto& schedule = comparing.given.order.schedule;
  const auto over = endsWithinDay(comparing.given.infusion);
  if (!over || !schedule || !schedule->isContinuous()) return;
  if (comparing.check(CheckId::maxDaily).status != CheckStatus::within) return;
  const std::optional<Found> day = wholeDay(comparing);
  if (!day) return;
  const Quantity& most = comparing.limits.maxDay->amount;
  const Number filled = day->value() / most.value;
  if (filled <= Number(1))
    return comparing.checks.bounds.push_back({CheckId::maxDaily, Relation::atMost, filled});
  const int significant = digitsApart(day->value(), most.value);
  comparing.notes.tell(FindingCode::runTimeOpen, path::infusionOver,
                       {{"over", *over}, {"ordered", day->amount, significant}, {"limit", most, significant}},
                       CheckId::maxDaily);
}

/// A rate in 24 h against the day's maximum.
void compareDayOfRate(Comparing& comparing) {
  const auto& stated = comparing.given.reference.maxPerDay;
  if (!comparing.limits.maxDay)
    return comparing.notChecked(CheckId::maxDaily, whyNoMaximum(comparing, stated));
  if (!comparing.doses.orderedDay) return comparing.notChecked(CheckId::maxDaily, WhyNot::noSize);
  compareUpper(comparing, CheckId::maxDaily, FindingCode::overMaxDaily,
               sideIn(comparing, Unit::day, *comparing.doses.orderedDay),
               sideIn(comparing, Unit::day, *comparing.limits.maxDay));
  askHowLong(comparing);
}

/// A rate has no single doses: a maximum for one that is stated beside it is held against nothing.
void compareDosesOfRate(Comparing& comparing) {
  for (const CheckId id : {CheckId::single, CheckId::daily, CheckId::period, CheckId::maxSingle})
    comparing.doesNotApply(id);
  if (comparing.given.reference.maxPerDose) comparing.notChecked(CheckId::maxSingle, WhyNot::isARate);
  compareDayOfRate(comparing);
}

}  // namespace

void compareDose(Comparing& comparing) {
  if (comparing.doses.isRate) return compareDosesOfRate(comparing);
  compareSingle(comparing);
  compareDaily(comparing);
  comparePeriod(comparing);
  compareMaxSingle(comparing);
  compareMaxDaily(comparing);
}

}  // namespace wardchalk::detail
