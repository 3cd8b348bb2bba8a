#include <algorithm>

#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

/// How finely an amount can be measured, and with what.
struct Device {
  Number step;
  std::optional<Syringe> syringe;
  int count = 0;
  bool byDecimals = false;
};

std::optional<SyringeKind> syringeKind(const std::optional<Route>& route) {
  if (!route) return std::nullopt;
  if (isInjection(*route)) return SyringeKind::injection;
  if (*route == Route::oral || *route == Route::enteral) return SyringeKind::oral;
  return std::nullopt;
}

/// The smallest syringe of the kind that holds the amount; none does: the largest.
const Syringe* syringeFor(const HouseRules& rules, SyringeKind kind, const Number& amountMl) {
  const Syringe* best = nullptr;
  for (const Syringe& syringe : rules.syringes) {
    if (syringe.kind != kind) continue;
    const bool holds = syringe.holdsMl >= amountMl;
    const bool bestHolds = best && best->holdsMl >= amountMl;
    const bool better = !best || (holds && (!bestHolds || syringe.holdsMl < best->holdsMl)) ||
                        (!holds && !bestHolds && syringe.holdsMl > best->holdsMl);
    if (better) best = &syringe;
  }
  return best;
}

Device volumeDevice(const Reckoning& reckoning, const Number& amountMl) {
  const HouseRules& rules = reckoning.rules;
  const int decimals = amountMl < Number(1) ? rules.volumeDecimalsBelow1Ml : rules.volumeDecimalsFrom1Ml;
  Device device{Number::powerOfTen(-decimals), std::nullopt, 0, true};
  const auto kind = syringeKind(reckoning.given.order.route);
  const Syringe* syringe = kind ? syringeFor(rules, *kind, amountMl) : nullptr;
  if (!syringe) return device;
  device.syringe = *syringe;
  device.count = 1;
  if (rules.roundTo == RoundTo::marks && syringe->marksMl >= device.step) {
    device.step = syringe->marksMl;
    device.byDecimals = false;
  }
  return device;
}

/// Whether every check that the ordered dose met is met by so many times it too (R9).
bool keepsEveryCheck(const Reckoning& reckoning, const Number& times) {
  return std::all_of(reckoning.bounds.begin(), reckoning.bounds.end(), [&](const DoseBound& bound) {
    return !bound.holdsFor(Number(1)) || bound.holdsFor(times);
  });
}

/// By how much so many times the ordered dose differ from it.
Number percentChange(const Number& times) { return (times - Number(1)).absolute() * Number(100); }

struct Neighbours {
  Number below;
  Number above;
};

Neighbours neighboursOf(const Number& amount, const Number& step) {
  const Number below = (amount / step).floor() * step;
  return {below, below == amount ? below : below + step};
}

/// What can be given in place of an amount, and the nearer one that was passed over because a check forbids
/// it.
struct Choice {
  std::optional<Number> measured;
  std::optional<Number> passedOver;
};

/// The nearer of the two neighbours that can be given: not zero, every check kept, and for a solid close
/// enough.
Choice measurable(const Reckoning& reckoning, const Number& amount, const Neighbours& around, bool solid) {
  const bool upFirst = around.above - amount <= amount - around.below;  // half up
  Choice choice;
  for (const Number& candidate :
       {upFirst ? around.above : around.below, upFirst ? around.below : around.above}) {
    if (candidate.isZero()) continue;
    const Number times = candidate / amount;  // the dose is in proportion to the amount
    if (solid && percentChange(times) > reckoning.rules.askRoundingPercent) continue;
    if (keepsEveryCheck(reckoning, times)) {
      choice.measured = candidate;
      return choice;
    }
    choice.passedOver = candidate;
  }
  return {};
}

/// A count of syringes, vials or tablets; more than a million are told as a million.
int ceilToInt(const Number& value) {
  int count = 0;
  for (const char digit : smaller(value.ceil(), Number(1000000)).rationalText())
    count = count * 10 + (digit - '0');
  return count;
}

/// Appends the label turned so that its drug unit is below, and what converts the order's unit to it.
Chain amountChain(const Reckoning& reckoning) {
  const StrengthFound& strength = *reckoning.sheet.strength;
  Chain chain{{factorOf(*reckoning.ordered)}};
  convertAbove(chain, *reckoning.unit, strength.drugUnit);
  if (strength.from != StrengthFrom::labelled) {
    chain.factors.push_back(strengthFactor(strength, Origin::step(StepId::strength)).turned());
    return chain;
  }
  const Strength& label = *reckoning.given.stock.strength;
  chain.factors.push_back(labelFactor(label, path::strength).turned());
  convertAbove(chain, label.in.unit, strength.in);
  return chain;
}

void askAboutCount(Reckoning& reckoning, std::string_view what, int count) {
  if (count <= reckoning.rules.manyUnits || reckoning.sheet.finding(FindingCode::manyUnits)) return;
  reckoning.tell(
      FindingCode::manyUnits, path::strength,
      {{"count", Number(count)}, {"what", std::string(what)}, {"many", Number(reckoning.rules.manyUnits)}});
}

void keepMeasured(Reckoning& reckoning, Give& give, const Choice& choice) {
  const Number& measured = *choice.measured;
  give.passedOver = choice.passedOver;
  const Number times = measured / give.exact.value;
  const Number change = percentChange(times);
  const Quantity& ordered = reckoning.ordered->amount;
  give.measured = measured;
  give.doseGiven = Quantity{ordered.value * times, ordered.unit};
  give.percentChange = plainPercent(change);
  if (change > reckoning.rules.askRoundingPercent)
    reckoning.tell(FindingCode::roundingChangesDose, path::strength,
                   {{"exact", give.exact},
                    {"measured", Quantity{measured, give.exact.unit}},
                    {"percent", plainPercent(change)}});
}

void askNotMeasurable(Reckoning& reckoning, Give& give, const Neighbours& around) {
  for (const Number& neighbour : {around.below, around.above})
    if (!neighbour.isZero()) give.neighbours.push_back(neighbour);
  reckoning.tell(FindingCode::notMeasurable, path::strength,
                 {{"exact", give.exact},
                  {"below", Quantity{around.below, give.exact.unit}},
                  {"above", Quantity{around.above, give.exact.unit}}});
}

void writeMeasuring(Reckoning& reckoning, const Give& give, const Device& device, const Neighbours& around) {
  const bool onMark =
      !device.syringe || !give.measured || (*give.measured / device.syringe->marksMl).isWhole();
  Measuring body{give.exact,   give.measured, device.syringe,    give.syringes, device.step,
                 around.below, around.above,  device.byDecimals, onMark,        give.passedOver};
  reckoning.in(Section::amount).push_back({StepId::device, {{give.exact.unit}, {}}, std::move(body), {}, {}});
}

void measureVolume(Reckoning& reckoning, Give& give) {
  const Number& amount = give.exact.value;
  const Quantity& smallest = reckoning.rules.smallestVolume;
  if (amount < *converted(smallest.value, smallest.unit, Unit::mL)) {
    reckoning.tell(FindingCode::tooSmallToMeasure, path::strength,
                   {{"exact", give.exact}, {"smallest", smallest}});
    return;
  }
  Device device = volumeDevice(reckoning, amount);
  const Neighbours around = neighboursOf(amount, device.step);
  give.syringe = device.syringe;
  if (const Choice choice = measurable(reckoning, amount, around, /*solid=*/false); choice.measured) {
    keepMeasured(reckoning, give, choice);
    if (device.syringe) give.syringes = ceilToInt(*give.measured / device.syringe->holdsMl);
    askAboutCount(reckoning, "syringes", give.syringes);
  } else {
    askNotMeasurable(reckoning, give, around);
  }
  const Stock& stock = reckoning.given.stock;
  if (give.doseGiven && *stock.kind == StockKind::powder && stock.content) {
    give.containers = ceilToInt(give.doseGiven->value / *reckoning.inOrderUnit(*stock.content));
    askAboutCount(reckoning, "vials", *give.containers);
  }
  writeMeasuring(reckoning, give, device, around);
}

void measureSolid(Reckoning& reckoning, Give& give) {
  const bool capsule = give.exact.unit == Unit::capsule;
  const Device device{Number::ratio(1, capsule ? 1 : reckoning.given.stock.dividesInto), std::nullopt, 0,
                      false};
  const Neighbours around = neighboursOf(give.exact.value, device.step);
  if (const Choice choice = measurable(reckoning, give.exact.value, around, /*solid=*/true);
      choice.measured) {
    keepMeasured(reckoning, give, choice);
    askAboutCount(reckoning, capsule ? "capsules" : "tablets", ceilToInt(*give.measured));
  } else {
    askNotMeasurable(reckoning, give, around);
  }
  writeMeasuring(reckoning, give, device, around);
}

/// A tablet cannot be injected, nor an infusion swallowed (R9).
bool formFitsRoute(Reckoning& reckoning) {
  const auto& route = reckoning.given.order.route;
  if (!route) return true;
  const bool solid = *reckoning.given.stock.kind == StockKind::solid;
  const bool poured = *route == Route::oral || *route == Route::rectal || *route == Route::inhaled ||
                      *route == Route::topical;
  if (!(solid && isInjection(*route)) && !(reckoning.given.infusion.isStated() && poured)) return true;
  reckoning.tell(FindingCode::formDiffersFromRoute, path::route,
                 {{"form", std::string(solid ? "solid" : "infusion")}, {"route", std::string(idOf(*route))}});
  return false;
}

bool strengthFitsKind(const Reckoning& reckoning) {
  const bool solid = *reckoning.given.stock.kind == StockKind::solid;
  return solid == (dimensionOf(reckoning.sheet.strength->in) != Dimension::volume);
}

}  // namespace

void measure(Reckoning& reckoning) {
  Worksheet& sheet = reckoning.sheet;
  const bool allowed = sheet.verdict == VerdictKind::safe || sheet.verdict == VerdictKind::ask;
  if (!allowed || !reckoning.ordered || !reckoning.given.stock.kind || !formFitsRoute(reckoning)) return;
  if (!sheet.strength || reckoning.amountWithheld || !strengthFitsKind(reckoning)) return;
  Chain chain = amountChain(reckoning);
  reckoning.strengthUsed = true;
  if (reckoning.strengthStep) reckoning.in(Section::amount).push_back(std::move(*reckoning.strengthStep));
  reckoning.strengthStep.reset();
  const Unit in = sheet.strength->in;
  const auto amount =
      reckoning.solveStep(Section::amount, StepId::give, std::move(chain), {{in}, {Unit::dose}});
  if (!amount) return;
  Give give;
  give.exact = amount->amount;
  if (in == Unit::mL)
    measureVolume(reckoning, give);
  else
    measureSolid(reckoning, give);
  sheet.give = std::move(give);
}

}  // namespace wardchalk::detail
