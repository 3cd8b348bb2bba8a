#include "core/practice/marking/detail/papers.h"

#include <algorithm>

#include "core/unit/conversion.h"

namespace wardchalk::detail {

namespace {

bool isIn(const MixedQuantity& mixed, std::initializer_list<Unit> units) {
  return std::ranges::find(units, mixed.parts.front().unit) != units.end();
}

void readWeight(const MixedQuantity& weight, Papers& papers) {
  papers.inGrams = isIn(weight, {Unit::g, Unit::bodyG});
  if (!isIn(weight, {Unit::lb, Unit::oz})) return;
  papers.pounds = totalIn(weight, Unit::lb);
  if (weight.parts.size() != 2) return;
  papers.wholePounds = weight.parts.front().value;
  papers.ounces = weight.parts.back().value;
}

void readHeight(const MixedQuantity& height, Papers& papers) {
  papers.cm = totalIn(height, Unit::cm);
  papers.inMetres = isIn(height, {Unit::m});
  if (isIn(height, {Unit::in, Unit::ft})) papers.inches = totalIn(height, Unit::in);
  if (height.parts.front().unit != Unit::ft) return;
  papers.wholeFeet = height.parts.front().value;
  papers.overFeet = height.parts.size() == 2 ? height.parts.back().value : Number(0);
}

Number dosesOf(const std::optional<Schedule>& schedule) {
  return schedule && schedule->isRepeated() ? larger(schedule->most.ceil(), Number(1)) : Number(1);
}

/// The term of a factor in this unit alone.
const Term* termIn(const Factor& factor, bool over, Unit unit) {
  const Term& term = over ? factor.over : factor.under;
  return term.units == UnitProduct{unit} ? &term : nullptr;
}

std::optional<Number> countOf(const Chain& chain, bool dosesOver) {
  for (const Factor& factor : chain.factors) {
    const Term* doses = termIn(factor, dosesOver, Unit::dose);
    if (doses && termIn(factor, !dosesOver, Unit::day)) return doses->value;
  }
  return std::nullopt;
}

}  // namespace

Papers papersOf(const Worksheet& key) {
  Papers papers;
  const Case& given = key.given;
  if (key.weight) papers.kg = key.weight->kg;
  if (key.bsa) papers.m2 = key.bsa->m2;
  if (given.child.weight) readWeight(*given.child.weight, papers);
  if (given.child.height) readHeight(*given.child.height, papers);
  if (given.child.age && given.child.age->written.parts.front().unit == Unit::year)
    papers.years = given.child.age->written.parts.front().value;
  papers.orderDoses = dosesOf(given.order.schedule);
  papers.referenceDoses = given.reference.schedule ? dosesOf(given.reference.schedule) : papers.orderDoses;
  if (given.stock.strength) {
    papers.labelAmount = given.stock.strength->amount.value;
    papers.labelIn = given.stock.strength->in.value;
    papers.labelStatesVolume = dimensionOf(given.stock.strength->in.unit) == Dimension::volume;
  }
  if (given.infusion.over)
    papers.hours = converted(given.infusion.over->value, given.infusion.over->unit, Unit::h);
  if (given.infusion.volume)
    papers.volume = converted(given.infusion.volume->value, given.infusion.volume->unit, Unit::mL);
  return papers;
}

std::optional<Number> dosesSharing(const Chain& chain) { return countOf(chain, false); }
std::optional<Number> dosesCounted(const Chain& chain) { return countOf(chain, true); }

}  // namespace wardchalk::detail
