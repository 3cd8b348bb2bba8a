#include "core/check/detail/factors.h"
#include "core/check/detail/measuring.h"

namespace wardchalk::detail {

namespace {

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

/// Solids by so many parts of one.
struct Parts {
  Number step;
  Neighbours around;
  Choice choice;
};

Parts byParts(const Ground& ground, const Number& exact, int parts) {
  const Number step = Number::ratio(1, parts);
  const Neighbours around = neighboursOf(exact, step);
  const Measurable closeEnough = [&](const Number& candidate) {
    return !candidate.isZero() && percentChange(candidate, exact) <= ground.notes.rules.askRoundingPercent;
  };
  return {step, around, nearest(ground, exact, around, closeEnough)};
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
  const Neighbours& around = parts->around;
  if (const Choice& choice = parts->choice; choice.measured) {
    keepMeasured(ground, give, choice);
    askAboutCount(ground.notes, capsule ? ArgumentWord::capsules : ArgumentWord::tablets,
                  ceilToInt(*give.measured));
  } else {
    askNotMeasurable(ground.notes, give, around);
  }
  writeMeasuring(ground.notes, {give.exact, give.measured, std::nullopt, 0, parts->step, around.below,
                                around.above, false, true, give.passedOver, std::nullopt});
}

bool strengthFitsKind(const Stock& stock, const Strengths& strengths) {
  const bool solid = *stock.kind == StockKind::solid;
  return solid == (dimensionOf(strengths.used->in) != Dimension::volume);
}

/// Whether the papers allow an amount at all.
bool amountIsKnown(const Notebook& notes, const Facts& facts) {
  const Stock& stock = notes.given.stock;
  if (!facts.doses.ordered || !stock.kind) return false;
  const Strengths& strengths = facts.strengths;
  return strengths.used && !strengths.amountWithheld && strengthFitsKind(stock, strengths);
}

}  // namespace

std::optional<Give> measure(Notebook& notes, const Facts& facts, const Checks& checks) {
  if (!amountIsKnown(notes, facts)) return std::nullopt;
  if (facts.strengths.mixing && !facts.doses.mixingShown)
    notes.write(Section::amount, *facts.strengths.mixing);
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
