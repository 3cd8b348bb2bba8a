#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

/// How much is in one dose, or in one day: what it is in is said by the question.
std::optional<Side> sideIn(Reckoning& reckoning, Unit one, const Found& found) {
  const std::optional<Found> amount = reckoning.found(inOne(one, found));
  if (!amount) return std::nullopt;
  return sideOf(*amount);
}

/// Two values as arguments, with digits added until they do not print alike.
std::vector<Argument> excessArguments(const Quantity& ordered, const Quantity& limit) {
  const int significant = digitsApart(ordered.value, limit.value);
  return {{"ordered", ordered, significant},
          {"limit", limit, significant},
          {"percent", percentText(ordered.value, limit.value)},
          {"over", excessText(ordered.value, limit.value)}};
}

/// An upper limit on the dose: made, shown, told when outside, and kept to be judged again for a measured
/// dose.
void compareUpper(Reckoning& reckoning, CheckId id, FindingCode over, std::optional<Side> left,
                  std::optional<Side> right) {
  if (!left || !right) return;
  const Quantity value = amountOf(*left);
  const Quantity limit = amountOf(*right);
  const bool holds = value.value <= limit.value;
  const Number filled = value.value / limit.value;
  reckoning.check(id).value = value;
  reckoning.check(id).limit = limit;
  reckoning.check(id).ratio = filled;
  reckoning.bounds.push_back({id, Relation::atMost, filled});
  compare(reckoning, id, std::move(*left), Relation::atMost, std::move(*right), holds);
  if (!holds) reckoning.tell(over, path::dose, excessArguments(value, limit), id);
}

WhyNot whyNoLimit(const Reckoning& reckoning) {
  const auto& high = reckoning.given.reference.high;
  if (high && !sizeValue(reckoning, high->perSize)) return WhyNot::noSize;
  return WhyNot::missing;
}

/// Why a maximum that is stated could not be worked out, or that none is stated.
WhyNot whyNoMaximum(const Reckoning& reckoning, const std::optional<DoseAmount>& maximum) {
  if (!maximum) return WhyNot::noMaximum;
  return sizeValue(reckoning, maximum->perSize) ? WhyNot::missing : WhyNot::noSize;
}

void compareSingle(Reckoning& reckoning) {
  if (!reckoning.ordered || !reckoning.limitDose)
    return reckoning.notChecked(CheckId::single, whyNoLimit(reckoning));
  compareUpper(reckoning, CheckId::single, FindingCode::overSingle,
               sideIn(reckoning, Unit::dose, *reckoning.ordered),
               sideIn(reckoning, Unit::dose, *reckoning.limitDose));
}

bool isPerWeek(const Reckoning& reckoning) {
  const auto& high = reckoning.given.reference.high;
  return high && high->perTime == PerTime::week;
}

void compareDaily(Reckoning& reckoning) {
  if (reckoning.once) return reckoning.doesNotApply(CheckId::daily, WhyNot::onceOnly);
  if (isPerWeek(reckoning)) return reckoning.doesNotApply(CheckId::daily);
  if (!reckoning.orderedDay) return reckoning.notChecked(CheckId::daily, WhyNot::missing);
  if (!reckoning.limitDay) {
    const WhyNot why = reckoning.limitDose ? WhyNot::noSchedule : whyNoLimit(reckoning);
    return reckoning.notChecked(CheckId::daily, why);
  }
  compareUpper(reckoning, CheckId::daily, FindingCode::overDaily,
               sideIn(reckoning, Unit::day, *reckoning.orderedDay),
               sideIn(reckoning, Unit::day, *reckoning.limitDay));
}

bool isLessThanDaily(const std::optional<Schedule>& schedule) {
  return schedule && schedule->isRepeated() && schedule->most < Number(1);
}

/// A dose a number of times a week.
std::optional<Side> weekly(Reckoning& reckoning, const Found& dose, const Number& timesAWeek,
                           StaticText path) {
  Chain chain{{factorOf(dose), rateFactor(timesAWeek, Unit::dose, Unit::week, Origin::field(path))}};
  return sideBy(reckoning, std::move(chain), {{dose.amount.unit}, {Unit::week}});
}

void comparePeriod(Reckoning& reckoning) {
  const auto& order = reckoning.given.order.schedule;
  const auto& own = reckoning.given.reference.schedule;
  if (reckoning.once) return reckoning.doesNotApply(CheckId::period, WhyNot::onceOnly);
  if (!isPerWeek(reckoning) && !isLessThanDaily(order) && !isLessThanDaily(own))
    return reckoning.doesNotApply(CheckId::period);
  if (!reckoning.ordered || !reckoning.n) return reckoning.notChecked(CheckId::period, WhyNot::missing);
  std::optional<Side> left = weekly(reckoning, *reckoning.ordered, *reckoning.n * Number(7), path::schedule);
  if (isPerWeek(reckoning)) {
    if (!reckoning.weekChain) return reckoning.notChecked(CheckId::period, whyNoLimit(reckoning));
    return compareUpper(reckoning, CheckId::period, FindingCode::overPeriod, std::move(left),
                        sideBy(reckoning, *reckoning.weekChain, {{*reckoning.unit}, {Unit::week}}));
  }
  if (!own || !own->isRepeated()) return reckoning.notChecked(CheckId::period, WhyNot::noSchedule);
  if (!reckoning.limitDose) return reckoning.notChecked(CheckId::period, whyNoLimit(reckoning));
  compareUpper(reckoning, CheckId::period, FindingCode::overPeriod, std::move(left),
               weekly(reckoning, *reckoning.limitDose, own->most * Number(7), path::referenceSchedule));
}

void compareMaxSingle(Reckoning& reckoning) {
  if (!reckoning.maxDose)
    return reckoning.notChecked(CheckId::maxSingle,
                                whyNoMaximum(reckoning, reckoning.given.reference.maxPerDose));
  if (!reckoning.ordered) return reckoning.notChecked(CheckId::maxSingle, WhyNot::missing);
  compareUpper(reckoning, CheckId::maxSingle, FindingCode::overMaxSingle,
               sideIn(reckoning, Unit::dose, *reckoning.ordered),
               sideIn(reckoning, Unit::dose, *reckoning.maxDose));
}

void compareMaxDaily(Reckoning& reckoning) {
  if (!reckoning.maxDay)
    return reckoning.notChecked(CheckId::maxDaily,
                                whyNoMaximum(reckoning, reckoning.given.reference.maxPerDay));
  const std::optional<Found>& day = reckoning.once ? reckoning.ordered : reckoning.orderedDay;
  if (!day) return reckoning.notChecked(CheckId::maxDaily, WhyNot::missing);
  compareUpper(reckoning, CheckId::maxDaily, FindingCode::overMaxDaily,
               sideIn(reckoning, reckoning.once ? Unit::dose : Unit::day, *day),
               sideIn(reckoning, Unit::day, *reckoning.maxDay));
}

}  // namespace

void compareDose(Reckoning& reckoning) {
  if (reckoning.isRate) {
    for (const CheckId id :
         {CheckId::single, CheckId::daily, CheckId::period, CheckId::maxSingle, CheckId::maxDaily})
      reckoning.doesNotApply(id);
    return;
  }
  compareSingle(reckoning);
  compareDaily(reckoning);
  comparePeriod(reckoning);
  compareMaxSingle(reckoning);
  compareMaxDaily(reckoning);
}

}  // namespace wardchalk::detail
