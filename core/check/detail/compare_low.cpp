#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

namespace {

/// A figure as it is compared, and the chain that leads to it where that has to be shown.
struct Figure {
  Figure(Found value, std::optional<Chain> shown = std::nullopt)
      : found(std::move(value)), chain(std::move(shown)) {}

  Found found;
  std::optional<Chain> chain;
  std::optional<Number> among;  ///< doses of a day that it is shared among, where those are several
};

/// What is compared with the low end: the dose, its total in a day or in a week, and the most the maxima let
/// be given.
struct Basis {
  Number perDose;                          ///< doses that the compared value is made of
  Unit per;                                ///< in which time, or a dose
  std::optional<Figure> low;               ///< the reference's low end
  std::optional<Figure> high;              ///< its high end on the same basis
  std::optional<Figure> most;              ///< the lowest of what the maxima allow; none when none is stated
  StaticText mostFrom = path::maxPerDose;  ///< which maximum that is
  bool isShare = false;                    ///< a day's amounts are shared among its doses
};

/// The lower of two, either of which may be absent; of equal ones the first.
const std::optional<Figure>& lowerOf(const std::optional<Figure>& first, const std::optional<Figure>& other) {
  return other && (!first || other->found.value() < first->found.value()) ? other : first;
}

/// The lower of what the two maxima allow on the basis, and which of them it is.
void lowerMaxima(Basis& basis, const std::optional<Figure>& byDose, const std::optional<Figure>& byDay) {
  const std::optional<Figure>& lower = lowerOf(byDose, byDay);
  if (lower && &lower == &byDay) basis.mostFrom = path::maxPerDay;
  basis.most = lower;
}

/// The low end on its own basis.
std::optional<Figure> ownLow(const Comparing& comparing) {
  if (!comparing.limits.low) return std::nullopt;
  return Figure(*comparing.limits.low, comparing.limits.lowWeekChain);
}

/// A maximum on another basis: a share of it, or so many times it.
std::optional<Found> rescaled(Comparing& comparing, const std::optional<Found>& maximum, Chain by, Unit per) {
  if (!maximum) return std::nullopt;
  by.factors.insert(by.factors.begin(), factorOf(*maximum));
  return comparing.notes.solveUnwritten(by, {{maximum->amount.unit}, {per}}, maximum->origin);
}

Basis perDoseBasis(Comparing& comparing) {
  Basis basis{Number(1), Unit::dose, ownLow(comparing), comparing.limits.dose, {}};
  std::optional<Found> byDay;
  if (comparing.doses.n)
    byDay = rescaled(comparing, comparing.limits.maxDay,
                     {{dosesADay(comparing.doses.n->ceil(), path::schedule).turned()}}, Unit::dose);
  lowerMaxima(basis, comparing.limits.maxDose, byDay);
  return basis;
}

/// Among how many doses a day's amounts are shared, where one dose is held against them: the ends of the
/// range, and the day's maximum.
struct Sharing {
  MostDoses ofDay;
  MostDoses ofMaximum;
};

/// The most doses that the reference gives in a day: they leave the least for one, so that no dose which the
/// reference itself would give is called too little.
MostDoses dosesOfReference(const Comparing& comparing) {
  return {ceilAtLeastOne(comparing.given.reference.schedule->most), Origin::field(path::referenceSchedule)};
}

/// Of an order as needed, its own most doses where those are more: given as often as it lets be, smaller
/// doses reach the low end of the day all the same.
Sharing sharingAsNeeded(const Comparing& comparing, const MostDoses& ofReference) {
  const bool known = comparing.doses.n || comparing.given.order.maxDosesPerDay;
  if (!known) return {ofReference, ofReference};
  const MostDoses own = orderedCount(comparing);
  const MostDoses& more = own.count > ofReference.count ? own : ofReference;
  return {more, more};
}

/// An order that does not say how often shares the day's maximum among its most doses, where it states them
/// (R15). Of one that is given once nothing else follows in the day: both are shared as the reference gives.
Sharing sharingOf(const Comparing& comparing) {
  const MostDoses ofReference = dosesOfReference(comparing);
  if (comparing.doses.once) return {ofReference, ofReference};
  if (comparing.given.order.asNeeded) return sharingAsNeeded(comparing, ofReference);
  const auto& most = comparing.given.order.maxDosesPerDay;
  if (!most) return {ofReference, ofReference};
  return {ofReference, {Number(*most), Origin::field(path::maxDosesPerDay)}};
}

/// One dose's share of a day's amount, with the chain that says among how many it is shared.
std::optional<Figure> shareOf(Comparing& comparing, const std::optional<Found>& day, const MostDoses& doses) {
  if (!day) return std::nullopt;
  Chain chain{{factorOf(*day), rateFactor(doses.count, Unit::dose, Unit::day, doses.from).turned()}};
  const auto share = comparing.notes.solveUnwritten(chain, {{day->amount.unit}, {Unit::dose}}, day->origin);
  if (!share) return std::nullopt;
  Figure figure(*share, std::move(chain));
  if (doses.count > Number(1)) figure.among = doses.count;
  return figure;
}

/// One dose of a reference per day that says how often, where the order does not say how many doses there
/// will be: once, as needed, or nothing at all. A day's low end is no low end of one dose, but by its
/// schedule the reference tells what one dose of it is; a tenth of that would pass in silence otherwise.
Basis shareBasis(Comparing& comparing) {
  const Sharing sharing = sharingOf(comparing);
  Basis basis{Number(1),
              Unit::dose,
              shareOf(comparing, comparing.limits.low, sharing.ofDay),
              shareOf(comparing, comparing.limits.day, sharing.ofDay),
              {}};
  lowerMaxima(basis, comparing.limits.maxDose,
              shareOf(comparing, comparing.limits.maxDay, sharing.ofMaximum));
  basis.isShare = true;
  return basis;
}

/// One dose of an order that does not say how often, by a reference for a dose (R15): the day's maximum is
/// shared among the order's most doses, where it states them.
Basis oneDoseBasis(Comparing& comparing) {
  const Number most(comparing.given.order.maxDosesPerDay.value_or(1));
  Basis basis{Number(1), Unit::dose, ownLow(comparing), comparing.limits.dose, {}};
  lowerMaxima(basis, comparing.limits.maxDose,
              rescaled(comparing, comparing.limits.maxDay, {{dosesADay(most, path::maxDosesPerDay).turned()}},
                       Unit::dose));
  return basis;
}

Basis perDayBasis(Comparing& comparing) {
  const Number times = larger(*comparing.doses.n, Number(1));
  Basis basis{times, Unit::day, ownLow(comparing), comparing.limits.day, {}};
  lowerMaxima(basis,
              rescaled(comparing, comparing.limits.maxDose, {{dosesADay(times, path::schedule)}}, Unit::day),
              comparing.limits.maxDay);
  return basis;
}

Basis perWeekBasis(Comparing& comparing) {
  Chain week;
  convertBelow(week, Unit::day, Unit::week);
  return {*comparing.doses.n * Number(7),
          Unit::week,
          ownLow(comparing),
          comparing.limits.week,
          rescaled(comparing, comparing.limits.maxDay, std::move(week), Unit::week),
          path::maxPerDay};
}

/// A maximum is stated and could not be worked out, or its share of a dose hangs on a schedule that is
/// missing.
bool maximumUnknown(const Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  if (reference.maxPerDose && !comparing.limits.maxDose) return true;
  const bool countKnown = comparing.doses.n || comparing.doses.oneDose;
  return reference.maxPerDay && (!comparing.limits.maxDay || !countKnown);
}

/// Whether the sides of the comparison say what they are per: a week must not be taken for a day, and a share
/// is that of one dose. What is in one dose or in one day is said by the finding elsewhere.
bool saysTime(const Basis& basis) { return basis.per == Unit::week || basis.isShare; }

/// A value of the basis as it stands in the comparison.
std::optional<Found> comparedOn(Comparing& comparing, const Basis& basis, const Found& found) {
  return saysTime(basis) ? found : comparing.notes.found(inOne(basis.per, found));
}

struct Bound {
  Side side;
  FindingCode code;
  Quantity
      expected;  ///< what the sentence names: the low end, or the usual dose of which too little was ordered
  std::optional<Number> among;  ///< of how many doses of a day that is one
};

/// The reference's own low end, or what the maxima allow where that is less.
std::optional<Bound> statedBound(Comparing& comparing, const Basis& basis) {
  if (!basis.low) return std::nullopt;
  const std::optional<Figure>& lower = lowerOf(basis.low, basis.most);
  std::optional<Found> compared = comparedOn(comparing, basis, lower->found);
  if (!compared) return std::nullopt;
  if (&lower != &basis.low) compared->origin = Origin::field(basis.mostFrom);
  Side side = sideOf(*compared);
  side.chain = lower->chain;
  return Bound{std::move(side), FindingCode::belowLow, compared->amount, lower->among};
}

/// A share of the usual dose: "90 mg over 100 mg" as a chain, so that the reader sees where the bound comes
/// from.
std::optional<Bound> usualBound(Comparing& comparing, const Basis& basis) {
  if (!basis.high) return std::nullopt;
  const std::optional<Figure>& lower = lowerOf(basis.high, basis.most);
  std::optional<Found> usual = comparedOn(comparing, basis, lower->found);
  if (!usual) return std::nullopt;
  if (&lower != &basis.high) usual->origin = Origin::field(basis.mostFrom);
  const Origin rule = Origin::rule("ask_below_percent");
  Chain chain = lower->chain ? *lower->chain : Chain{{factorOf(*usual)}};
  chain.factors.push_back(percentFactor(comparing.rules.askBelowPercent, rule));
  std::optional<Side> side = sideBy(comparing.notes, std::move(chain), usual->units());
  if (!side) return std::nullopt;
  side->term.origin = rule;
  return Bound{std::move(*side), FindingCode::belowUsual, usual->amount, lower->among};
}

std::optional<Bound> boundOf(Comparing& comparing, const Basis& basis) {
  return comparing.given.reference.low ? statedBound(comparing, basis) : usualBound(comparing, basis);
}

/// The ordered doses on the basis. One dose alone needs no chain, unless its week must be said.
std::optional<Side> orderedSide(Comparing& comparing, const Basis& basis) {
  const Found& dose = *comparing.doses.ordered;
  const Origin origin = Origin::field(path::schedule);
  if (basis.isShare) return sideOf(dose);
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

std::vector<Argument> argumentsFor(const Quantity& ordered, const Bound& bound, Unit per) {
  const int significant = digitsApart(ordered.value, bound.expected.value);
  std::vector<Argument> arguments = {{"ordered", ordered, significant},
                                     {"expected", bound.expected, significant},
                                     {"percent", Percent{ordered.value, bound.expected.value}},
                                     {"per", per}};
  if (bound.among) arguments.push_back({"among", Quantity{*bound.among, Unit::dose}});
  return arguments;
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
    comparing.notes.tell(bound->code, path::dose, argumentsFor(value, *bound, basis.per), CheckId::low);
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

/// A day's or a week's amount, of which nothing says how much one dose is: of a dose that is ordered once or
/// as needed nobody can tell what it is a part of.
std::optional<WhyNot> whyLeftOut(const Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  const bool perWeek = reference.high && reference.high->perTime == PerTime::week;
  const bool perDay = reference.high && reference.high->perTime == PerTime::day;
  if (isDayShared(reference) || (!perDay && !perWeek)) return std::nullopt;
  if (comparing.doses.once || (comparing.doses.oneDose && perWeek)) return WhyNot::onceOnly;
  if (comparing.given.order.asNeeded) return WhyNot::asNeeded;
  return std::nullopt;
}

/// Whether the order leaves open how many doses there will be, of a reference that shares its day.
bool isHeldByShare(const Comparing& comparing) {
  const Doses& doses = comparing.doses;
  return isDayShared(comparing.given.reference) &&
         (doses.once || doses.oneDose || (comparing.given.order.asNeeded && doses.n));
}

}  // namespace

void compareLow(Comparing& comparing) {
  const auto& high = comparing.given.reference.high;
  if (comparing.doses.isRate) return;  // compared as a rate
  if (const auto why = whyLeftOut(comparing)) return comparing.doesNotApply(CheckId::low, *why);
  if (const auto why = whyNotMade(comparing)) return comparing.notChecked(CheckId::low, *why);
  if (isHeldByShare(comparing)) return compareWith(comparing, shareBasis(comparing));
  if (high->perTime != PerTime::day && high->perTime != PerTime::week)
    return compareWith(comparing,
                       comparing.doses.oneDose ? oneDoseBasis(comparing) : perDoseBasis(comparing));
  if (!comparing.doses.n) return comparing.notChecked(CheckId::low, WhyNot::missing);
  compareWith(comparing, high->perTime == PerTime::day ? perDayBasis(comparing) : perWeekBasis(comparing));
}

}  // namespace wardchalk::detail
