#include <algorithm>

#include "core/check/detail/factors.h"
#include "core/check/detail/giving.h"

namespace wardchalk::detail {

namespace {

/// What an amount is measured by.
struct Ground {
  Notebook& notes;
  const Facts& facts;
  const Checks& checks;
};

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

Device volumeDevice(const Notebook& notes, const Number& amountMl) {
  const HouseRules& rules = notes.rules;
  const int decimals = amountMl < Number(1) ? rules.volumeDecimalsBelow1Ml : rules.volumeDecimalsFrom1Ml;
  Device device{Number::powerOfTen(-decimals), std::nullopt, 0, true};
  const auto kind = syringeKind(notes.given.order.route);
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
bool keepsEveryCheck(const Checks& checks, const Number& times) {
  return std::all_of(checks.bounds.begin(), checks.bounds.end(), [&](const DoseBound& bound) {
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
Choice measurable(const Ground& ground, const Number& amount, const Neighbours& around, bool solid) {
  const bool upFirst = around.above - amount <= amount - around.below;  // half up
  Choice choice;
  for (const Number& candidate :
       {upFirst ? around.above : around.below, upFirst ? around.below : around.above}) {
    if (candidate.isZero()) continue;
    const Number times = candidate / amount;  // the dose is in proportion to the amount
    if (solid && percentChange(times) > ground.notes.rules.askRoundingPercent) continue;
    if (keepsEveryCheck(ground.checks, times)) {
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
Chain amountChain(const Notebook& notes, const Facts& facts) {
  const StrengthFound& strength = *facts.strengths.used;
  Chain chain{{factorOf(*facts.doses.ordered)}};
  convertAbove(chain, *facts.doses.unit, strength.drugUnit);
  if (strength.from != StrengthFrom::labelled) {
    chain.factors.push_back(strengthFactor(strength, Origin::step(StepId::strength)).turned());
    return chain;
  }
  const Strength& label = *notes.given.stock.strength;
  chain.factors.push_back(labelFactor(label, path::strength).turned());
  convertAbove(chain, label.in.unit, strength.in);
  return chain;
}

void askAboutCount(Notebook& notes, ArgumentWord what, int count) {
  if (count <= notes.rules.manyUnits || notes.hasTold(FindingCode::manyUnits)) return;
  notes.tell(FindingCode::manyUnits, path::strength,
             {{"count", Number(count)}, {"what", what}, {"many", Number(notes.rules.manyUnits)}});
}

void keepMeasured(const Ground& ground, Give& give, const Choice& choice) {
  const Number& measured = *choice.measured;
  give.passedOver = choice.passedOver;
  const Number times = measured / give.exact.value;
  const Number change = percentChange(times);
  const Quantity& ordered = ground.facts.doses.ordered->amount;
  give.measured = measured;
  give.doseGiven = Quantity{ordered.value * times, ordered.unit};
  give.percentChange = change;
  if (change > ground.notes.rules.askRoundingPercent)
    ground.notes.tell(FindingCode::roundingChangesDose, path::strength,
                      {{"exact", give.exact},
                       {"measured", Quantity{measured, give.exact.unit}},
                       {"percent", PlainPercent{change}}});
}

void askNotMeasurable(Notebook& notes, Give& give, const Neighbours& around) {
  for (const Number& neighbour : {around.below, around.above})
    if (!neighbour.isZero()) give.neighbours.push_back(neighbour);
  notes.tell(FindingCode::notMeasurable, path::strength,
             {{"exact", give.exact},
              {"below", Quantity{around.below, give.exact.unit}},
              {"above", Quantity{around.above, give.exact.unit}}});
}

void writeMeasuring(Notebook& notes, const Give& give, const Device& device, const Neighbours& around) {
  const bool onMark =
      !device.syringe || !give.measured || (*give.measured / device.syringe->marksMl).isWhole();
  Measuring body{give.exact,   give.measured, device.syringe,    give.syringes, device.step,
                 around.below, around.above,  device.byDecimals, onMark,        give.passedOver};
  notes.in(Section::amount).push_back({StepId::device, {{give.exact.unit}, {}}, std::move(body), {}, {}});
}

Quantity millilitres(const Number& mL) { return {mL, Unit::mL}; }

/// What is to be added, and what that makes: never by a powder whose own volume nobody counted (R22).
std::optional<Prepare> howToPrepare(const Stock& stock, const StrengthFound& strength) {
  if (*stock.kind != StockKind::powder || !stock.content) return std::nullopt;
  Prepare prepare{stock.diluent, stock.finalVolume, strength};
  if (stock.finalVolume && !stock.diluent && stock.displacement) {
    const Number rest = inMl(*stock.finalVolume) - inMl(*stock.displacement);
    if (rest > Number(0)) prepare.add = millilitres(rest);
  }
  if (stock.diluent && !stock.finalVolume && stock.displacement)
    prepare.makes = millilitres(inMl(*stock.diluent) + inMl(*stock.displacement));
  const bool powderIgnored =
      stock.diluent && stock.finalVolume && inMl(*stock.diluent) == inMl(*stock.finalVolume);
  if (powderIgnored) prepare.makes.reset();
  if (!prepare.add && !prepare.makes) return std::nullopt;
  return prepare;
}

void measureVolume(const Ground& ground, Give& give) {
  const Number& amount = give.exact.value;
  const Quantity& smallest = ground.notes.rules.smallestVolume;
  if (amount < *converted(smallest.value, smallest.unit, Unit::mL)) {
    ground.notes.tell(FindingCode::tooSmallToMeasure, path::strength,
                      {{"exact", give.exact}, {"smallest", smallest}});
    return;
  }
  Device device = volumeDevice(ground.notes, amount);
  const Neighbours around = neighboursOf(amount, device.step);
  give.syringe = device.syringe;
  if (const Choice choice = measurable(ground, amount, around, /*solid=*/false); choice.measured) {
    keepMeasured(ground, give, choice);
    if (device.syringe) give.syringes = ceilToInt(*give.measured / device.syringe->holdsMl);
    askAboutCount(ground.notes, ArgumentWord::syringes, give.syringes);
  } else {
    askNotMeasurable(ground.notes, give, around);
  }
  const Stock& stock = ground.notes.given.stock;
  if (give.doseGiven && *stock.kind == StockKind::powder && stock.content) {
    give.containers = ceilToInt(give.doseGiven->value / *ground.facts.doses.inOrderUnit(*stock.content));
    askAboutCount(ground.notes, ArgumentWord::vials, *give.containers);
  }
  if (give.measured) give.prepare = howToPrepare(stock, *ground.facts.strengths.used);
  writeMeasuring(ground.notes, give, device, around);
}

/// Solids by so many parts of one.
struct Parts {
  Number step;
  Neighbours around;
  Choice choice;
};

Parts byParts(const Ground& ground, const Number& exact, int parts) {
  const Number step = Number::ratio(1, parts);
  const Neighbours around = neighboursOf(exact, step);
  return {step, around, measurable(ground, exact, around, /*solid=*/true)};
}

/// As the stock divides; where nobody says whether a tablet may be cut, only if it makes no difference (R21).
std::optional<Parts> partsOf(const Ground& ground, const Number& exact) {
  const Stock& stock = ground.notes.given.stock;
  Parts whole = byParts(ground, exact, stock.isCapsule() ? 1 : stock.dividesInto.value_or(1));
  if (stock.isCapsule() || stock.dividesInto) return whole;
  for (const int parts : {2, 4})
    if (byParts(ground, exact, parts).choice.measured != whole.choice.measured) return std::nullopt;
  return whole;
}

void measureSolid(const Ground& ground, Give& give) {
  const bool capsule = give.exact.unit == Unit::capsule;
  const std::optional<Parts> parts = partsOf(ground, give.exact.value);
  if (!parts) return ground.notes.need(path::dividesInto, Need::For::amount);
  const Device device{parts->step, std::nullopt, 0, false};
  const Neighbours& around = parts->around;
  if (const Choice& choice = parts->choice; choice.measured) {
    keepMeasured(ground, give, choice);
    askAboutCount(ground.notes, capsule ? ArgumentWord::capsules : ArgumentWord::tablets,
                  ceilToInt(*give.measured));
  } else {
    askNotMeasurable(ground.notes, give, around);
  }
  writeMeasuring(ground.notes, give, device, around);
}

/// A tablet cannot be injected, nor an infusion swallowed (R9).
bool formFitsRoute(Notebook& notes) {
  const auto& route = notes.given.order.route;
  if (!route) return true;
  const bool solid = *notes.given.stock.kind == StockKind::solid;
  const bool poured = *route == Route::oral || *route == Route::rectal || *route == Route::inhaled ||
                      *route == Route::topical;
  if (!(solid && isInjection(*route)) && !(notes.given.infusion.isStated() && poured)) return true;
  notes.tell(FindingCode::formDiffersFromRoute, path::route,
             {{"form", solid ? ArgumentWord::solid : ArgumentWord::infusion}, {"route", *route}});
  return false;
}

bool strengthFitsKind(const Stock& stock, const Strengths& strengths) {
  const bool solid = *stock.kind == StockKind::solid;
  return solid == (dimensionOf(strengths.used->in) != Dimension::volume);
}

/// Whether the papers allow an amount at all.
bool amountIsKnown(Notebook& notes, const Facts& facts) {
  const Stock& stock = notes.given.stock;
  if (!notes.allowsAmount() || !facts.doses.ordered || !stock.kind || !formFitsRoute(notes)) return false;
  const Strengths& strengths = facts.strengths;
  return strengths.used && !strengths.amountWithheld && strengthFitsKind(stock, strengths);
}

}  // namespace

std::optional<Give> measure(Notebook& notes, const Facts& facts, const Checks& checks) {
  if (!amountIsKnown(notes, facts)) return std::nullopt;
  if (facts.strengths.mixing && !facts.doses.mixingShown)
    notes.in(Section::amount).push_back(*facts.strengths.mixing);
  const Unit in = facts.strengths.used->in;
  const auto amount =
      notes.solveStep(Section::amount, StepId::give, amountChain(notes, facts), {{in}, {Unit::dose}});
  if (!amount) return std::nullopt;
  Give give;
  give.exact = amount->amount;
  const Ground ground{notes, facts, checks};
  if (in == Unit::mL)
    measureVolume(ground, give);
  else
    measureSolid(ground, give);
  return give;
}

}  // namespace wardchalk::detail
