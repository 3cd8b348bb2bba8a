#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

namespace {

/// What is compared with the low end: the dose, its total in a day or in a week, and the most the maxima let
/// be given.
struct Basis {
  Number perDose;                           ///< doses that the compared value is made of
  Unit per;                                 ///< in which time, or a dose
  std::optional<Found> high;                ///< the reference's high end on the same basis
  std::optional<Found> most;                ///< the lowest of what the maxima allow; none when none is stated
  StaticText mostFrom = path::maxPerDose;   ///< which maximum that is
  std::optional<Found> low = std::nullopt;  ///< the reference's low end, where it is not on its own basis
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
std::optional<Found> rescaled(Comparing& comparing, const std::optional<Found>& maximum, Chain by, Unit per) {
  if (!maximum) return std::nullopt;
  by.factors.insert(by.factors.begin(), factorOf(*maximum));
  return comparing.notes.solveUnwritten(by, {{maximum->amount.unit}, {per}}, maximum->origin);
}

Basis perDoseBasis(Comparing& comparing) {
  Basis basis{Number(1), Unit::dose, comparing.limits.dose, {}};
  std::optional<Found> byDay;
  if (comparing.doses.n)
    byDay = rescaled(comparing, comparing.limits.maxDay,
                     {{dosesADay(comparing.doses.n->ceil(), path::schedule).turned()}}, Unit::dose);
  lowerMaxima(basis, comparing.limits.maxDose, byDay);
  return basis;
}

/// One dose of an order that does not say how often. A day's amount is shared among the most doses that the
/// reference gives, and the day's maximum among the order's most doses, where it states them (R15).
Basis oneDoseBasis(Comparing& comparing, bool perDay) {
  const auto& own = comparing.given.reference.schedule;
  const Number shared = perDay ? ceilAtLeastOne(own->most) : Number(1);
  const Chain share{{dosesADay(shared, path::referenceSchedule).turned()}};
  Basis basis{Number(1), Unit::dose, comparing.limits.dose, {}};
  if (perDay) {
    basis.high = rescaled(comparing, comparing.limits.day, share, Unit::dose);
    basis.low = rescaled(comparing, comparing.limits.low, share, Unit::dose);
  }
  const auto& most = comparing.given.order.maxDosesPerDay;
  const Chain day = most ? Chain{{dosesADay(Number(*most), path::maxDosesPerDay).turned()}} : share;
  lowerMaxima(basis, comparing.limits.maxDose, rescaled(comparing, comparing.limits.maxDay, day, Unit::dose));
  return basis;
}

Basis perDayBasis(Comparing& comparing) {
  const Number times = larger(*comparing.doses.n, Number(1));
  Basis basis{times, Unit::day, comparing.limits.day, {}};
  lowerMaxima(basis,
              rescaled(comparing, comparing.limits.maxDose, {{dosesADay(times, path::schedule)}}, Unit::day),
              comparing.limits.maxDay);
  return basis;
}

Basis perWeekBasis(Comparing& comparing) {
  Chain week;
  convertBelow(week, Unit::day, Unit::week);
  return {*comparing.doses.n * Number(7), Unit::week, comparing.limits.week,
          rescaled(comparing, comparing.limits.maxDay, std::move(week), Unit::week), path::maxPerDay};
}

/// A maximum is stated and could not be worked out, or its share of a dose hangs on a schedule that is
/// missing.
bool maximumUnknown(const Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  if (reference.maxPerDose && !comparing.limits.maxDose) return true;
  const bool countKnown = comparing.doses.n || comparing.doses.oneDose;
  return reference.maxPerDay && (!comparing.limits.maxDay || !countKnown);
}

/// Whether the sides of the comparison say what they are per: a week must not be taken for a day. What is in
/// one dose or in one day is said by the finding.
bool saysTime(const Basis& basis) { return basis.per == Unit::week; }

/// A value of the basis as it stands in the comparison.
std::optional<Found> comparedOn(Comparing& comparing, const Basis& basis, const Found& found) {
  return saysTime(basis) ? found : comparing.notes.found(inOne(basis.per, found));
}

struct Bound {
  Side side;
  FindingCode code;
  Quantity
      expected;  ///< what the sentence names: the low end, or the usual dose of which too little was ordered
};

/// The reference's own low end, or what the maxima allow where that is less.
std::optional<Bound> statedBound(Comparing& comparing, const Basis& basis) {
  const std::optional<Found>& low = basis.low ? basis.low : comparing.limits.low;
  if (!low) return std::nullopt;
  const std::optional<Found>& lower = lowerOf(low, basis.most);
  const bool capped = &lower != &low;
  std::optional<Found> compared = comparedOn(comparing, basis, *lower);
  if (!compared) return std::nullopt;
  if (capped) compared->origin = Origin::field(basis.mostFrom);
  Side side = sideOf(*compared);
  if (!capped) side.chain = comparing.limits.lowWeekChain;
  return Bound{std::move(side), FindingCode::belowLow, compared->amount};
}

/// A share of the usual dose: "90 mg over 100 mg" as a chain, so that the reader sees where the bound comes
/// from.
std::optional<Bound> usualBound(Comparing& comparing, const Basis& basis) {
  if (!basis.high) return std::nullopt;
  const std::optional<Found>& lower = lowerOf(basis.high, basis.most);
  std::optional<Found> usual = comparedOn(comparing, basis, *lower);
  if (!usual) return std::nullopt;
  if (&lower != &basis.high) usual->origin = Origin::field(basis.mostFrom);
  const Origin rule = Origin::rule("ask_below_percent");
  Chain chain{{factorOf(*usual), percentFactor(comparing.rules.askBelowPercent, rule)}};
  std::optional<Side> side = sideBy(comparing.notes, std::move(chain), usual->units());
  if (!side) return std::nullopt;
  side->term.origin = rule;
  return Bound{std::move(*side), FindingCode::belowUsual, usual->amount};
}

std::optional<Bound> boundOf(Comparing& comparing, const Basis& basis) {
  return comparing.given.reference.low ? statedBound(comparing, basis) : usualBound(comparing, basis);
}

/// The ordered doses on the basis. One dose alone needs no chain, unless its week must be said.
std::optional<Side> orderedSide(Comparing& comparing, const Basis& basis) {
  const Found& dose = *comparing.doses.ordered;
  const Origin origin = Origin::field(path::schedule);
  if (saysTime(basis))
    return sideBy(comparing.notes,
                  {{factorOf(dose), rateFactor(basis.perDose, Unit::dose, basis.per, origin)}},
                  {{dose.amount.unit}, {basis.per}});
  if (basis.perDose != Number(1))
    return sideBy(comparing.notes, {{factorOf(dose), over1({basis.perDose, {Unit::dose}, origin})}},
                  {{dose.amount.unit}, {}});
  const std::optional<Found> one = comparing.notes.found(inOne(Unit::dose, dose));
  if (!one) return std::nullopt;
  return sideOf(*one);
}

std::vector<Argument> argumentsFor(const Quantity& ordered, const Quantity& expected, Unit per) {
  const int significant = digitsApart(ordered.value, expected.value);
  return {{"ordered", ordered, significant},
          {"expected", expected, significant},
          {"percent", Percent{ordered.value, expected.value}},
          {"per", per}};
}

void compareWith(Comparing& comparing, const Basis& basis) {
  std::optional<Bound> bound = boundOf(comparing, basis);
  std::optional<Side> left = orderedSide(comparing, basis);
  if (!bound || !left) return comparing.notChecked(CheckId::low, WhyNot::missing);
  const Quantity value = amountOf(*left);
  const Quantity limit = amountOf(bound->side);
  const bool holds = value.value >= limit.value;
  const Number filled = value.value / limit.value;
  comparing.check(CheckId::low).value = value;
  comparing.check(CheckId::low).limit = limit;
  comparing.check(CheckId::low).ratio = filled;
  comparing.checks.bounds.push_back({CheckId::low, Relation::atLeast, filled});
  compare(comparing, CheckId::low, std::move(*left), Relation::atLeast, std::move(bound->side), holds);
  if (!holds)
    comparing.notes.tell(bound->code, path::dose, argumentsFor(value, bound->expected, basis.per),
                         CheckId::low);
}

/// Why the check is not made for this kind of order or reference; none when it is.
std::optional<WhyNot> whyNotMade(const Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  if (reference.limitOnly) return WhyNot::limitOnly;
  if (!reference.high) return WhyNot::missing;
  if (!sizeValue(comparing.size, reference.high->perSize)) return WhyNot::noSize;
  if (!comparing.doses.ordered || maximumUnknown(comparing)) return WhyNot::missing;
  return std::nullopt;
}

}  // namespace

void compareLow(Comparing& comparing) {
  const auto& high = comparing.given.reference.high;
  if (comparing.doses.isRate) return;  // compared as a rate
  const bool perTime = high && (high->perTime == PerTime::day || high->perTime == PerTime::week);
  const bool perWeek = high && high->perTime == PerTime::week;
  if (perTime && (comparing.doses.once || (comparing.doses.oneDose && perWeek)))
    return comparing.doesNotApply(CheckId::low, WhyNot::onceOnly);
  if (perTime && comparing.given.order.asNeeded)
    return comparing.doesNotApply(CheckId::low, WhyNot::asNeeded);
  if (const auto why = whyNotMade(comparing)) return comparing.notChecked(CheckId::low, *why);
  if (comparing.doses.oneDose) return compareWith(comparing, oneDoseBasis(comparing, perTime));
  if (!perTime) return compareWith(comparing, perDoseBasis(comparing));
  if (!comparing.doses.n) return comparing.notChecked(CheckId::low, WhyNot::missing);
  compareWith(comparing, high->perTime == PerTime::day ? perDayBasis(comparing) : perWeekBasis(comparing));
}

}  // namespace wardchalk::detail
