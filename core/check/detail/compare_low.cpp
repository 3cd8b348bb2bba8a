#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

/// What is compared with the low end: the dose, its total in a day or in a week, and the most the maxima let
/// be given.
struct Basis {
  Number perDose;                          ///< doses that the compared value is made of
  Unit per;                                ///< in which time, or a dose
  std::optional<Found> high;               ///< the reference's high end on the same basis
  std::optional<Number> most;              ///< the lowest of what the maxima allow; none when none is stated
  StaticText mostFrom = path::maxPerDose;  ///< which maximum that is
};

/// Keeps the lower of two, either of which may be absent.
void lower(std::optional<Number>& most, const std::optional<Number>& other) {
  if (other && (!most || *other < *most)) most = other;
}

/// The lower of what the two maxima allow on the basis, and which of them it is.
void lowerMaxima(Basis& basis, const std::optional<Number>& byDose, const std::optional<Number>& byDay) {
  basis.most = byDose;
  lower(basis.most, byDay);
  if (byDay && (!byDose || *byDay < *byDose)) basis.mostFrom = path::maxPerDay;
}

std::optional<Number> scaled(const std::optional<Found>& found, const Number& factor) {
  if (!found) return std::nullopt;
  return found->value * factor;
}

Basis perDoseBasis(const Reckoning& reckoning) {
  Basis basis{Number(1), Unit::dose, reckoning.limitDose, {}};
  const std::optional<Number> byDay =
      reckoning.n ? scaled(reckoning.maxDay, Number(1) / reckoning.n->ceil()) : std::nullopt;
  lowerMaxima(basis, scaled(reckoning.maxDose, Number(1)), byDay);
  return basis;
}

Basis perDayBasis(const Reckoning& reckoning) {
  const Number times = larger(*reckoning.n, Number(1));
  Basis basis{times, Unit::day, reckoning.limitDay, {}};
  lowerMaxima(basis, scaled(reckoning.maxDose, times), scaled(reckoning.maxDay, Number(1)));
  return basis;
}

Basis perWeekBasis(const Reckoning& reckoning) {
  return {*reckoning.n * Number(7), Unit::week, reckoning.limitWeek, scaled(reckoning.maxDay, Number(7)),
          path::maxPerDay};
}

/// A maximum is stated and could not be worked out, or its share of a dose hangs on a schedule that is
/// missing.
bool maximumUnknown(const Reckoning& reckoning) {
  const Reference& reference = reckoning.given.reference;
  if (reference.maxPerDose && !reckoning.maxDose) return true;
  return reference.maxPerDay && (!reckoning.maxDay || !reckoning.n);
}

struct Bound {
  Found value;
  FindingCode code;
  Number
      expected;  ///< what the sentence names: the low end, or the usual dose of which too little was ordered
};

std::optional<Bound> boundOf(const Reckoning& reckoning, const Basis& basis) {
  if (reckoning.given.reference.low) {
    if (!reckoning.low) return std::nullopt;
    std::optional<Number> bound = reckoning.low->value;
    lower(bound, basis.most);
    const Origin origin =
        *bound == reckoning.low->value ? reckoning.low->origin : Origin::field(basis.mostFrom);
    return Bound{{*bound, origin}, FindingCode::belowLow, *bound};
  }
  if (!basis.high) return std::nullopt;
  std::optional<Number> usual = basis.high->value;
  lower(usual, basis.most);
  const Number bound = *usual * reckoning.rules.askBelowPercent / Number(100);
  return Bound{{bound, Origin::rule("ask_below_percent")}, FindingCode::belowUsual, *usual};
}

/// Whether the sides of the comparison say what they are per: a week must not be taken for a day.
bool saysTime(const Basis& basis) { return basis.per == Unit::week; }

Factor usualFactor(const Basis& basis, const Found& usual, Unit unit) {
  return saysTime(basis) ? foundFactor(usual, unit, basis.per) : over1({usual.value, {unit}, usual.origin});
}

/// "90 mg over 100 mg" as a chain, so that the reader sees where the bound comes from.
Side boundSide(const Reckoning& reckoning, const Bound& bound, const Basis& basis) {
  const Unit unit = *reckoning.unit;
  Side side{{bound.value.value, {unit}, bound.value.origin}, std::nullopt, {}};
  if (bound.code == FindingCode::belowLow) {
    if (reckoning.lowWeekChain && bound.value.value == reckoning.low->value)
      side.chain = reckoning.lowWeekChain;
    return side;
  }
  const Origin usual =
      basis.high->value == bound.expected ? basis.high->origin : Origin::field(basis.mostFrom);
  const Origin rule = Origin::rule("ask_below_percent");
  side.chain = Chain{{usualFactor(basis, {bound.expected, usual}, unit),
                      {{reckoning.rules.askBelowPercent, {}, rule}, {Number(100), {}, rule}}}};
  return side;
}

Side orderedSide(const Reckoning& reckoning, const Basis& basis) {
  const Unit unit = *reckoning.unit;
  const Found& dose = *reckoning.ordered;
  Side side{{dose.value * basis.perDose, {unit}, dose.origin}, std::nullopt, {}};
  if (basis.perDose == Number(1)) return side;
  const Origin origin = Origin::field(path::schedule);
  side.chain = Chain{{foundFactor(dose, unit, Unit::dose),
                      saysTime(basis) ? rateFactor(basis.perDose, Unit::dose, basis.per, origin)
                                      : over1({basis.perDose, {Unit::dose}, origin})}};
  return side;
}

std::vector<Argument> argumentsFor(const Quantity& ordered, const Quantity& expected, Unit per) {
  const int significant = digitsApart(ordered.value, expected.value);
  return {{"ordered", ordered, significant},
          {"expected", expected, significant},
          {"percent", percentText(ordered.value, expected.value)},
          {"per", std::string(idOf(per))}};
}

void compareWith(Reckoning& reckoning, const Basis& basis) {
  const std::optional<Bound> bound = boundOf(reckoning, basis);
  if (!bound) return reckoning.notChecked(CheckId::low, WhyNot::missing);
  Side left = orderedSide(reckoning, basis);
  const Quantity value = reckoning.inUnit(left.term.value);
  const bool holds = value.value >= bound->value.value;
  reckoning.check(CheckId::low).value = value;
  reckoning.check(CheckId::low).limit = reckoning.inUnit(bound->value.value);
  reckoning.check(CheckId::low).ratio = value.value / bound->value.value;
  reckoning.bounds.push_back({CheckId::low, basis.perDose, Relation::atLeast, bound->value.value});
  compare(reckoning, CheckId::low, std::move(left), Relation::atLeast, boundSide(reckoning, *bound, basis),
          holds);
  if (!holds)
    reckoning.tell(bound->code, path::dose, argumentsFor(value, reckoning.inUnit(bound->expected), basis.per),
                   CheckId::low);
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
