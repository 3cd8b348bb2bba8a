#include "core/check/detail/reckoning.h"

#include <algorithm>
#include <cassert>

namespace wardchalk::detail {

void Reckoning::need(StaticText path, Need::For forWhat, bool finer) {
  for (Need& need : sheet.needs) {
    if (need.path != path) continue;
    if (forWhat == Need::For::verdict) need.forWhat = forWhat;
    return;
  }
  sheet.needs.push_back({path, forWhat, finer});
}

Finding& Reckoning::tell(FindingCode code, StaticText field, std::vector<Argument> arguments,
                         std::optional<CheckId> check) {
  sheet.findings.push_back({code, usualSeverity(code), check, field, std::move(arguments)});
  return sheet.findings.back();
}

void Reckoning::notChecked(CheckId id, WhyNot why) {
  check(id).status = CheckStatus::notChecked;
  check(id).why = why;
}

void Reckoning::doesNotApply(CheckId id, std::optional<WhyNot> why) {
  check(id).status = CheckStatus::doesNotApply;
  check(id).why = why;
}

std::optional<Number> Reckoning::inOrderUnit(const Quantity& quantity) const {
  if (!unit) return std::nullopt;
  return converted(quantity.value, quantity.unit, *unit);
}

bool Reckoning::addSizeFactor(Chain& chain, PerSize size) {
  if (size == PerSize::none) return true;
  if (size == PerSize::kg) {
    if (!kg) {
      need(path::weight, Need::For::verdict);
      return false;
    }
    kgUsed = true;
    chain.factors.push_back(over1({kg->value, {Unit::kg}, kg->origin}));
    return true;
  }
  if (!m2) {
    if (!given.child.height) need(path::height, Need::For::verdict);
    if (!given.child.weight) need(path::weight, Need::For::verdict);
    return false;
  }
  m2Used = true;
  chain.factors.push_back(over1({m2->value, {Unit::m2}, m2->origin, sheet.bsa->fixedDecimals}));
  return true;
}

void Reckoning::addDrugConversion(Chain& chain, Unit from) const {
  append(chain, conversionFactors(from, *unit, rules.pounds));
}

Found Reckoning::solveStep(Section section, StepId id, Chain chain, const Units& wanted) {
  Solution solution = solve(chain, wanted);
  assert(solution.wanted);
  if (chain.factors.size() == 1) return {solution.product.exact, chain.factors.front().over.origin};
  const Number result = solution.product.exact;
  in(section).push_back(
      {id, wanted, Solved{std::move(chain), std::move(solution.product), result, -1}, {}, {}});
  return {result, Origin::step(id)};
}

std::optional<Number> sizeValue(const Reckoning& reckoning, PerSize size) {
  if (size == PerSize::none) return Number(1);
  const std::optional<Found>& found = size == PerSize::kg ? reckoning.kg : reckoning.m2;
  if (!found) return std::nullopt;
  return found->value;
}

Factor doseFactor(const DoseAmount& dose, StaticText path) {
  const Origin origin = Origin::field(path);
  Term under{Number(1), {}, origin};
  if (dose.perSize != PerSize::none) under.units.push_back(unitOf(dose.perSize));
  under.units.push_back(unitOf(dose.perTime));
  return {{dose.amount.value, {dose.amount.unit}, origin}, std::move(under)};
}

Factor foundFactor(const Found& found, Unit over, Unit under) {
  return {{found.value, {over}, found.origin}, {Number(1), {under}, found.origin}};
}

Factor rateFactor(const Number& count, Unit over, Unit under, Origin origin) {
  return {{count, {over}, origin}, {Number(1), {under}, origin}};
}

Factor over1(Term term) { return {std::move(term), Term{}}; }

void append(Chain& chain, std::vector<Factor> factors) {
  for (Factor& factor : factors) chain.factors.push_back(std::move(factor));
}

void convertBelow(Chain& chain, Unit from, Unit to) {
  for (const Factor& factor : conversionFactors(from, to, Pounds::exact))
    chain.factors.push_back(factor.turned());
}

Number inMl(const Quantity& volume) { return *converted(volume.value, volume.unit, Unit::mL); }

Number ceilAtLeastOne(const Number& x) { return larger(x.ceil(), Number(1)); }

void compare(Reckoning& reckoning, CheckId id, Side left, Relation relation, Side right, bool holds) {
  reckoning.check(id).status = holds ? CheckStatus::within : CheckStatus::outside;
  const Units wanted{left.term.units, {}};
  reckoning.in(Section::comparisons)
      .push_back(
          {stepOf(id), wanted, Comparison{std::move(left), relation, std::move(right), holds}, {}, {}});
}

}  // namespace wardchalk::detail
