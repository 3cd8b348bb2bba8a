#include "core/check/detail/measuring.h"

namespace wardchalk::detail {

Neighbours neighboursOf(const Number& amount, const Number& step) {
  const Number below = (amount / step).floor() * step;
  return {below, below == amount ? below : below + step};
}

Choice nearest(const Ground& ground, const Number& amount, const Neighbours& around,
               const Measurable& canBe) {
  const bool upFirst = around.above - amount <= amount - around.below;  // half up
  Choice choice;
  for (const Number& candidate :
       {upFirst ? around.above : around.below, upFirst ? around.below : around.above}) {
    if (!canBe(candidate)) continue;
    if (ground.checks.areKeptBy(candidate / amount)) {  // the dose is in proportion to the amount
      choice.measured = candidate;
      return choice;
    }
    choice.passedOver = candidate;
  }
  return {};
}

Number percentChange(const Number& measured, const Number& exact) {
  return (measured / exact - Number(1)).absolute() * Number(100);
}

int ceilToInt(const Number& value) {
  int count = 0;
  for (const char digit : smaller(value.ceil(), Number(1000000)).rationalText())
    count = count * 10 + (digit - '0');
  return count;
}

void askAboutCount(Notebook& notes, ArgumentWord what, int count) {
  if (count <= notes.rules.manyUnits || notes.hasTold(FindingCode::manyUnits)) return;
  notes.tell(FindingCode::manyUnits, path::strength,
             {{"count", Number(count)}, {"what", what}, {"many", Number(notes.rules.manyUnits)}});
}

void keepMeasured(const Ground& ground, Give& give, const Choice& choice) {
  const Number& measured = *choice.measured;
  give.passedOver = choice.passedOver;
  const Number change = percentChange(measured, give.exact.value);
  const Quantity& ordered = ground.facts.doses.ordered->amount;
  give.measured = measured;
  give.doseGiven = Quantity{ordered.value * (measured / give.exact.value), ordered.unit};
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

void writeMeasuring(Notebook& notes, Measuring body) {
  const Unit unit = body.exact.unit;
  notes.write(Section::amount, {StepId::device, {{unit}, {}}, std::move(body), {}, {}});
}

}  // namespace wardchalk::detail
