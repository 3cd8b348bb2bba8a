#include "core/check/detail/factors.h"

namespace wardchalk::detail {

Factor doseFactor(const DoseAmount& dose, StaticText path) {
  const Origin origin = Origin::field(path);
  Term under{Number(1), {}, origin};
  if (dose.perSize != PerSize::none) under.units.push_back(unitOf(dose.perSize));
  under.units.push_back(unitOf(dose.perTime));
  return {{dose.amount.value, {dose.amount.unit}, origin}, std::move(under)};
}

Factor rateFactor(const Number& count, Unit over, Unit under, Origin origin) {
  return {{count, {over}, origin}, {Number(1), {under}, origin}};
}

Factor dosesADay(const Number& count, StaticText path) {
  return rateFactor(count, Unit::dose, Unit::day, Origin::field(path));
}

Factor labelFactor(const Strength& label, StaticText path) {
  return entriesFactor(label.amount, path, label.in, path);
}

Factor strengthFactor(const StrengthFound& strength, Origin origin) {
  return rateFactor(strength.perOne, strength.drugUnit, strength.in, origin);
}

Factor entriesFactor(const Quantity& over, StaticText overPath, const Quantity& under, StaticText underPath) {
  return {{over.value, {over.unit}, Origin::field(overPath)},
          {under.value, {under.unit}, Origin::field(underPath)}};
}

Factor percentFactor(const Number& percent, Origin rule) {
  return {{percent, {}, rule}, {Number(100), {}, rule}};
}

Factor entryFactor(const Quantity& entry, StaticText path) {
  return over1({entry.value, {entry.unit}, Origin::field(path)});
}

Factor over1(Term term) { return {std::move(term), Term{}}; }

Number inMl(const Quantity& volume) { return *converted(volume.value, volume.unit, Unit::mL); }

void append(Chain& chain, std::vector<Factor> factors) {
  for (Factor& factor : factors) chain.factors.push_back(std::move(factor));
}

void convertAbove(Chain& chain, Unit from, Unit to) {
  append(chain, conversionFactors(from, to, Pounds::exact));
}

void convertBelow(Chain& chain, Unit from, Unit to) {
  for (const Factor& factor : conversionFactors(from, to, Pounds::exact))
    chain.factors.push_back(factor.turned());
}

}  // namespace wardchalk::detail
