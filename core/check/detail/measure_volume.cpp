#include <algorithm>

#include "core/check/detail/measuring.h"

namespace wardchalk::detail {

namespace {

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

/// Less than this cannot be measured reliably.
Number smallestMl(const HouseRules& rules) {
  return *converted(rules.smallestVolume.value, rules.smallestVolume.unit, Unit::mL);
}

/// How finely an amount can be measured.
struct Fineness {
  Number step;
  bool byDecimals = true;
};

/// By the coarser of the marks and the house decimals; without a syringe, or where the house rounds so, by
/// the decimals alone.
Fineness finenessOf(const HouseRules& rules, const Syringe* syringe, const Number& amountMl) {
  const int decimals = amountMl < Number(1) ? rules.volumeDecimalsBelow1Ml : rules.volumeDecimalsFrom1Ml;
  const Number step = Number::powerOfTen(-decimals);
  if (syringe && rules.roundTo == RoundTo::marks && syringe->marksMl >= step)
    return {syringe->marksMl, false};
  return {step};
}

/// An amount as it is drawn, in one syringe or none, or with a full one before.
struct Drawn {
  std::optional<Syringe> syringe;
  Fineness fineness;
  Neighbours around;
  Choice choice;
  Number change;  ///< of the dose, in percent; none measured: 0
  int count = 0;  ///< of syringes
  std::optional<Syringe> full;
};

Drawn drawnIn(const Ground& ground, const Number& amount, const Syringe* syringe) {
  Drawn drawn;
  if (syringe) drawn.syringe = *syringe;
  drawn.fineness = finenessOf(ground.notes.rules, syringe, amount);
  drawn.around = neighboursOf(amount, drawn.fineness.step);
  drawn.choice =
      nearest(ground, amount, drawn.around, [](const Number& candidate) { return !candidate.isZero(); });
  if (!drawn.choice.measured) return drawn;
  drawn.change = percentChange(*drawn.choice.measured, amount);
  if (syringe) drawn.count = ceilToInt(*drawn.choice.measured / syringe->holdsMl);
  return drawn;
}

/// One syringe full and the rest in the smallest that holds it (R20); none where none holds it or it is less
/// than can be measured, or where no mark for it keeps every check.
std::optional<Drawn> drawnAfter(const Ground& ground, const Number& amount, const Syringe& full) {
  const HouseRules& rules = ground.notes.rules;
  const Number rest = amount - full.holdsMl;
  if (rest <= Number(0) || rest < smallestMl(rules)) return std::nullopt;
  const Syringe* syringe = syringeFor(rules, full.kind, rest);
  if (syringe->holdsMl < rest) return std::nullopt;
  Drawn drawn;
  drawn.syringe = *syringe;
  drawn.full = full;
  drawn.count = 2;
  drawn.fineness = finenessOf(rules, syringe, rest);
  const Neighbours around = neighboursOf(rest, drawn.fineness.step);
  drawn.around = {full.holdsMl + around.below, full.holdsMl + around.above};
  drawn.choice = nearest(ground, amount, drawn.around, [&](const Number& candidate) {
    return candidate > full.holdsMl && candidate <= full.holdsMl + syringe->holdsMl;
  });
  if (!drawn.choice.measured) return std::nullopt;
  drawn.change = percentChange(*drawn.choice.measured, amount);
  return drawn;
}

/// The pair that comes closest; of those that come as close, that with the larger full one.
std::optional<Drawn> closestPair(const Ground& ground, SyringeKind kind, const Number& amount) {
  std::optional<Drawn> best;
  for (const Syringe& full : ground.notes.rules.syringes) {
    if (full.kind != kind) continue;
    std::optional<Drawn> pair = drawnAfter(ground, amount, full);
    if (!pair) continue;
    const bool closer = !best || pair->change < best->change ||
                        (pair->change == best->change && full.holdsMl > best->full->holdsMl);
    if (closer) best = std::move(pair);
  }
  return best;
}

/// Two syringes are two injections into a muscle or under the skin.
bool mayBeTwo(const Notebook& notes) {
  const auto& route = notes.given.order.route;
  return notes.rules.roundTo == RoundTo::marks && *route != Route::intramuscular &&
         *route != Route::subcutaneous;
}

/// Whether a pair is so much closer than what is drawn alone that nobody need be asked.
bool isBetter(const Drawn& pair, const Drawn& alone, const HouseRules& rules) {
  if (pair.change > rules.askRoundingPercent) return false;
  if (!alone.choice.measured) return true;
  return alone.count > 1 ? pair.change <= alone.change : pair.change * Number(2) <= alone.change;
}

/// In one syringe, or in two where one would be asked about or several are needed.
Drawn drawn(const Ground& ground, const Number& amount) {
  const HouseRules& rules = ground.notes.rules;
  const auto kind = syringeKind(ground.notes.given.order.route);
  Drawn alone = drawnIn(ground, amount, kind ? syringeFor(rules, *kind, amount) : nullptr);
  const bool fits = alone.choice.measured && alone.change <= rules.askRoundingPercent && alone.count <= 1;
  if (!alone.syringe || fits || !mayBeTwo(ground.notes)) return alone;
  std::optional<Drawn> pair = closestPair(ground, *kind, amount);
  return pair && isBetter(*pair, alone, rules) ? *std::move(pair) : alone;
}

/// What the syringe shows lies on a mark of it, and not between two.
bool isOnMark(const Drawn& drawn) {
  if (!drawn.syringe || !drawn.choice.measured) return true;
  const Number before = drawn.full ? drawn.full->holdsMl : Number(0);
  return ((*drawn.choice.measured - before) / drawn.syringe->marksMl).isWhole();
}

Measuring measuringOf(const Drawn& drawn, const Give& give) {
  const int count = drawn.full ? 1 : drawn.count;
  return {give.exact,          give.measured,      drawn.syringe,      count,
          drawn.fineness.step, drawn.around.below, drawn.around.above, drawn.fineness.byDecimals,
          isOnMark(drawn),     give.passedOver,    drawn.full};
}

void keepDevice(Give& give, const Drawn& drawn) {
  if (drawn.full)
    give.pair = SyringePair{*drawn.full, *drawn.syringe, *drawn.choice.measured - drawn.full->holdsMl};
  else
    give.syringe = drawn.syringe;
  give.syringes = drawn.count;
}

void countVials(const Ground& ground, Give& give) {
  const Stock& stock = ground.notes.given.stock;
  if (!give.doseGiven || *stock.kind != StockKind::powder || !stock.content) return;
  give.containers = ceilToInt(give.doseGiven->value / *ground.facts.doses.inOrderUnit(*stock.content));
  askAboutCount(ground.notes, ArgumentWord::vials, *give.containers);
}

bool isTooSmall(Notebook& notes, const Give& give) {
  if (give.exact.value >= smallestMl(notes.rules)) return false;
  notes.tell(FindingCode::tooSmallToMeasure, path::strength,
             {{"exact", give.exact}, {"smallest", notes.rules.smallestVolume}});
  return true;
}

}  // namespace

void measureVolume(const Ground& ground, Give& give) {
  if (isTooSmall(ground.notes, give)) return;
  const Drawn found = drawn(ground, give.exact.value);
  keepDevice(give, found);
  if (found.choice.measured) {
    keepMeasured(ground, give, found.choice);
    askAboutCount(ground.notes, ArgumentWord::syringes, give.syringes);
    give.prepare = howToPrepare(ground.notes.given.stock, *ground.facts.strengths.used);
  } else {
    askNotMeasurable(ground.notes, give, found.around);
  }
  countVials(ground, give);
  writeMeasuring(ground.notes, measuringOf(found, give));
}

}  // namespace wardchalk::detail
