#include "core/check/detail/reckoning.h"

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
    chain.factors.push_back(factorOf(*kg));
    return true;
  }
  if (!m2) {
    if (!given.child.height) need(path::height, Need::For::verdict);
    if (!given.child.weight) need(path::weight, Need::For::verdict);
    return false;
  }
  m2Used = true;
  Factor surface = factorOf(*m2);
  surface.over.fixedDecimals = sheet.bsa->fixedDecimals;
  chain.factors.push_back(std::move(surface));
  return true;
}

std::optional<Found> Reckoning::solveStep(Section section, StepId id, Chain chain, const Units& wanted) {
  std::optional<Solution> solution = found(solve(chain, wanted));
  if (!solution) return std::nullopt;
  if (chain.factors.size() == 1) return found(foundBy(*solution, chain.factors.front().over.origin));
  std::optional<Found> value = found(foundBy(*solution, Origin::step(id)));
  const Number result = solution->product.exact;
  in(section).push_back(
      {id, wanted, Solved{std::move(chain), std::move(solution->product), result, -1}, {}, {}});
  return value;
}

std::optional<Found> Reckoning::solveUnwritten(const Chain& chain, const Units& wanted, Origin origin) {
  return found(foundBy(chain, wanted, origin));
}

std::optional<Number> sizeValue(const Reckoning& reckoning, PerSize size) {
  if (size == PerSize::none) return Number(1);
  const std::optional<Found>& found = size == PerSize::kg ? reckoning.kg : reckoning.m2;
  if (!found) return std::nullopt;
  return found->value();
}

Number inMl(const Quantity& volume) { return *converted(volume.value, volume.unit, Unit::mL); }

Number ceilAtLeastOne(const Number& x) { return larger(x.ceil(), Number(1)); }

Side sideOf(const Found& found) {
  return {{found.value(), {found.amount.unit}, found.origin}, std::nullopt, {}, found.under};
}

Quantity amountOf(const Side& side) { return {side.term.value, side.term.units.front()}; }

std::optional<Side> sideBy(Reckoning& reckoning, Chain chain, const Units& wanted) {
  const auto found = reckoning.solveUnwritten(chain, wanted, chain.factors.front().over.origin);
  if (!found) return std::nullopt;
  Side side = sideOf(*found);
  side.chain = std::move(chain);
  return side;
}

void compare(Reckoning& reckoning, CheckId id, Side left, Relation relation, Side right, bool holds) {
  if (!sameUnits(left.units(), right.units())) reckoning.failed = true;
  reckoning.check(id).status = holds ? CheckStatus::within : CheckStatus::outside;
  const Units wanted{left.term.units, left.under};
  reckoning.in(Section::comparisons)
      .push_back(
          {stepOf(id), wanted, Comparison{std::move(left), relation, std::move(right), holds}, {}, {}});
}

}  // namespace wardchalk::detail
