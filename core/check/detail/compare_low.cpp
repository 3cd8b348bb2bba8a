#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

/// What is compared with the low end: the dose, its total in a day or in a week, and the most the maxima let
/// be given.
struct Basis {
  Number perDose;                          ///< doses that the compared value is made of
  Unit per;                                ///< in which time, or a dose
  std::optional<Found> high;               ///< the reference's high end on the same basis
  std::optional<Found> most;               ///< the lowest of what the maxima allow; none when none is stated
  StaticText mostFrom = path::maxPerDose;  ///< which maximum that is
};

/// The lower of two, either of which may be absent; of equal ones the first.
const std::optional<Found>& lowerOf(const std::optional<Found>& first, const std::optional<Found>& other) {
  return other && (!first || other->value() < first->value()) ? other : first;
}

/// The lower of what the two maxima allow on the basis, and which of them it is.
void lowerMaxima(Basis& basis, const std::optional<Found>& byDose, const std::optional<Found>& byDay) {
  const std::optional<Found>& lower = lowerOf(byDose, byDay);
  if (lower && &lower == &byDay) basis.mostFrom = path::maxPerDay;
  basis.most = lower;
}

/// A maximum on another basis: a share of it, or so many times it.
std::optional<Found> rescaled(Reckoning& reckoning, const std::optional<Found>& maximum, Chain by, Unit per) {
  if (!maximum) return std::nullopt;
  by.factors.insert(by.factors.begin(), factorOf(*maximum));
  return reckoning.solveUnwritten(by, {{maximum->amount.unit}, {per}}, maximum->origin);
}

Basis perDoseBasis(Reckoning& reckoning) {
  Basis basis{Number(1), Unit::dose, reckoning.limitDose, {}};
  std::optional<Found> byDay;
  if (reckoning.n)
    byDay = rescaled(reckoning, reckoning.maxDay, {{dosesADay(reckoning.n->ceil(), path::schedule).turned()}},
                     Unit::dose);
  lowerMaxima(basis, reckoning.maxDose, byDay);
  return basis;
}

Basis perDayBasis(Reckoning& reckoning) {
  const Number times = larger(*reckoning.n, Number(1));
  Basis basis{times, Unit::day, reckoning.limitDay, {}};
  lowerMaxima(basis, rescaled(reckoning, reckoning.maxDose, {{dosesADay(times, path::schedule)}}, Unit::day),
              reckoning.maxDay);
  return basis;
}

Basis perWeekBasis(Reckoning& reckoning) {
  Chain week;
  convertBelow(week, Unit::day, Unit::week);
  return {*reckoning.n * Number(7), Unit::week, reckoning.limitWeek,
          rescaled(reckoning, reckoning.maxDay, std::move(week), Unit::week), path::maxPerDay};
}

/// A maximum is stated and could not be worked out, or its share of a dose hangs on a schedule that is
/// missing.
bool maximumUnknown(const Reckoning& reckoning) {
  const Reference& reference = reckoning.given.reference;
  if (reference.maxPerDose && !reckoning.maxDose) return true;
  return reference.maxPerDay && (!reckoning.maxDay || !reckoning.n);
}

/// Whether the sides of the comparison say what they are per: a week must not be taken for a day. What is in
/// one dose or in one day is said by the finding.
bool saysTime(const Basis& basis) { return basis.per == Unit::week; }

/// A value of the basis as it stands in the comparison.
std::optional<Found> comparedOn(Reckoning& reckoning, const Basis& basis, const Found& found) {
  return saysTime(basis) ? found : reckoning.found(inOne(basis.per, found));
}

struct Bound {
  Side side;
  FindingCode code;
  Quantity
      expected;  ///< what the sentence names: the low end, or the usual dose of which too little was ordered
};

/// The reference's own low end, or what the maxima allow where that is less.
std::optional<Bound> statedBound(Reckoning& reckoning, const Basis& basis) {
  if (!reckoning.low) return std::nullopt;
  const std::optional<Found>& lower = lowerOf(reckoning.low, basis.most);
  const bool capped = &lower != &reckoning.low;
  std::optional<Found> compared = comparedOn(reckoning, basis, *lower);
  if (!compared) return std::nullopt;
  if (capped) compared->origin = Origin::field(basis.mostFrom);
  Side side = sideOf(*compared);
  if (!capped) side.chain = reckoning.lowWeekChain;
  return Bound{std::move(side), FindingCode::belowLow, compared->amount};
}

/// A share of the usual dose: "90 mg over 100 mg" as a chain, so that the reader sees where the bound comes
/// from.
std::optional<Bound> usualBound(Reckoning& reckoning, const Basis& basis) {
  if (!basis.high) return std::nullopt;
  const std::optional<Found>& lower = lowerOf(basis.high, basis.most);
  std::optional<Found> usual = comparedOn(reckoning, basis, *lower);
  if (!usual) return std::nullopt;
  if (&lower != &basis.high) usual->origin = Origin::field(basis.mostFrom);
  const Origin rule = Origin::rule("ask_below_percent");
  Chain chain{{factorOf(*usual), percentFactor(reckoning.rules.askBelowPercent, rule)}};
  std::optional<Side> side = sideBy(reckoning, std::move(chain), usual->units());
  if (!side) return std::nullopt;
  side->term.origin = rule;
  return Bound{std::move(*side), FindingCode::belowUsual, usual->amount};
}

std::optional<Bound> boundOf(Reckoning& reckoning, const Basis& basis) {
  return reckoning.given.reference.low ? statedBound(reckoning, basis) : usualBound(reckoning, basis);
}

/// The ordered doses on the basis. One dose alone needs no chain, unless its week must be said.
std::optional<Side> orderedSide(Reckoning& reckoning, const Basis& basis) {
  const Found& dose = *reckoning.ordered;
  const Origin origin = Origin::field(path::schedule);
  if (saysTime(basis))
    return sideBy(reckoning, {{factorOf(dose), rateFactor(basis.perDose, Unit::dose, basis.per, origin)}},
                  {{dose.amount.unit}, {basis.per}});
  if (basis.perDose != Number(1))
    return sideBy(reckoning, {{factorOf(dose), over1({basis.perDose, {Unit::dose}, origin})}},
                  {{dose.amount.unit}, {}});
  const std::optional<Found> one = reckoning.found(inOne(Unit::dose, dose));
  if (!one) return std::nullopt;
  return sideOf(*one);
}

std::vector<Argument> argumentsFor(const Quantity& ordered, const Quantity& expected, Unit per) {
  const int significant = digitsApart(ordered.value, expected.value);
  return {{"ordered", ordered, significant},
          {"expected", expected, significant},
          {"percent", percentText(ordered.value, expected.value)},
          {"per", std::string(idOf(per))}};
}

void compareWith(Reckoning& reckoning, const Basis& basis) {
  std::optional<Bound> bound = boundOf(reckoning, basis);
  std::optional<Side> left = orderedSide(reckoning, basis);
  if (!bound || !left) return reckoning.notChecked(CheckId::low, WhyNot::missing);
  const Quantity value = amountOf(*left);
  const Quantity limit = amountOf(bound->side);
  const bool holds = value.value >= limit.value;
  const Number filled = value.value / limit.value;
  reckoning.check(CheckId::low).value = value;
  reckoning.check(CheckId::low).limit = limit;
  reckoning.check(CheckId::low).ratio = filled;
  reckoning.bounds.push_back({CheckId::low, Relation::atLeast, filled});
  compare(reckoning, CheckId::low, std::move(*left), Relation::atLeast, std::move(bound->side), holds);
  if (!holds)
    reckoning.tell(bound->code, path::dose, argumentsFor(value, bound->expected, basis.per), CheckId::low);
}

/// Why the check is not made for this kind of order or reference; none when it is.
std::optional<WhyNot> whyNotMade(const Reckoning& reckoning) {
  const Reference& reference = reckoning.given.reference;
  if (reference.limitOnly) return WhyNot::limitOnly;
  if (!reference.high) return WhyNot::missing;
  if (!sizeValue(reckoning, reference.high->perSize)) return WhyNot::noSize;
  if (!reckoning.ordered || maximumUnknown(reckoning)) return WhyNot::missing;
  return std::nullopt;
}

}  // namespace

void compareLow(Reckoning& reckoning) {
  const auto& high = reckoning.given.reference.high;
  if (reckoning.isRate) return;  // compared as a rate
  const bool perTime = high && (high->perTime == PerTime::day || high->perTime == PerTime::week);
  if (perTime && reckoning.once) return reckoning.doesNotApply(CheckId::low, WhyNot::onceOnly);
  if (perTime && reckoning.given.order.asNeeded)
    return reckoning.doesNotApply(CheckId::low, WhyNot::asNeeded);
  if (const auto why = whyNotMade(reckoning)) return reckoning.notChecked(CheckId::low, *why);
  if (!perTime) return compareWith(reckoning, perDoseBasis(reckoning));
  if (!reckoning.n) return reckoning.notChecked(CheckId::low, WhyNot::missing);
  compareWith(reckoning, high->perTime == PerTime::day ? perDayBasis(reckoning) : perWeekBasis(reckoning));
}

}  // namespace wardchalk::detail
