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

/// An amount as it is drawn.
struct Drawn {
  std::optional<Syringe> syringe;
  Fineness fineness;
  Neighbours around;
  Choice choice;
};

Drawn drawnIn(const Ground& ground, const Number& amount, const Syringe* syringe) {
  Drawn drawn;
  if (syringe) drawn.syringe = *syringe;
  drawn.fineness = finenessOf(ground.notes.rules, syringe, amount);
  drawn.around = neighboursOf(amount, drawn.fineness.step);
  drawn.choice =
      nearest(ground, amount, drawn.around, [](const Number& candidate) { return !candidate.isZero(); });
  return drawn;
}

/// Every amount of a syringe is on a mark of it, or between two.
bool isOnMark(const Drawn& drawn) {
  return !drawn.syringe || !drawn.choice.measured ||
         (*drawn.choice.measured / drawn.syringe->marksMl).isWhole();
}

Measuring measuringOf(const Drawn& drawn, const Give& give) {
  return {give.exact,          give.measured,      give.syringe,       give.syringes,
          drawn.fineness.step, drawn.around.below, drawn.around.above, drawn.fineness.byDecimals,
          isOnMark(drawn),     give.passedOver};
}

void countVials(const Ground& ground, Give& give) {
  const Stock& stock = ground.notes.given.stock;
  if (!give.doseGiven || *stock.kind != StockKind::powder || !stock.content) return;
  give.containers = ceilToInt(give.doseGiven->value / *ground.facts.doses.inOrderUnit(*stock.content));
  askAboutCount(ground.notes, ArgumentWord::vials, *give.containers);
}

bool isTooSmall(Notebook& notes, const Give& give) {
  const Quantity& smallest = notes.rules.smallestVolume;
  if (give.exact.value >= *converted(smallest.value, smallest.unit, Unit::mL)) return false;
  notes.tell(FindingCode::tooSmallToMeasure, path::strength, {{"exact", give.exact}, {"smallest", smallest}});
  return true;
}

}  // namespace

void measureVolume(const Ground& ground, Give& give) {
  if (isTooSmall(ground.notes, give)) return;
  const Number& amount = give.exact.value;
  const auto kind = syringeKind(ground.notes.given.order.route);
  const Syringe* syringe = kind ? syringeFor(ground.notes.rules, *kind, amount) : nullptr;
  const Drawn drawn = drawnIn(ground, amount, syringe);
  give.syringe = drawn.syringe;
  if (drawn.choice.measured) {
    keepMeasured(ground, give, drawn.choice);
    if (syringe) give.syringes = ceilToInt(*give.measured / syringe->holdsMl);
    askAboutCount(ground.notes, ArgumentWord::syringes, give.syringes);
    give.prepare = howToPrepare(ground.notes.given.stock, *ground.facts.strengths.used);
  } else {
    askNotMeasurable(ground.notes, give, drawn.around);
  }
  countVials(ground, give);
  writeMeasuring(ground.notes, measuringOf(drawn, give));
}

}  // namespace wardchalk::detail
