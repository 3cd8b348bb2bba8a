#include <cassert>

#include "core/check/detail/reckoning.h"
#include "core/child/surface_formula.h"

namespace wardchalk::detail {

namespace {

/// A quantity in parts as one term, and the adding-up if there was any.
struct Totalled {
  Term term;
  std::vector<Sum> sums;
};

/// What a nurse adds parts up in: ounces into pounds (sixteenths end), feet into inches (twelfths do not).
Unit sumUnit(const MixedQuantity& mixed) {
  return mixed.parts.front().unit == Unit::lb ? Unit::lb : mixed.smallestUnit();
}

Totalled totalled(const MixedQuantity& mixed, StaticText path) {
  const Unit unit = sumUnit(mixed);
  const Number total = *totalIn(mixed, unit);
  Totalled result{{total, {unit}, Origin::field(path)}, {}};
  if (mixed.parts.size() > 1) result.sums.push_back({mixed.parts, {total, unit}});
  return result;
}

bool isHouseholdWeight(const MixedQuantity& weight) {
  return weight.smallestUnit() == Unit::lb || weight.smallestUnit() == Unit::oz;
}

bool isHouseholdHeight(const MixedQuantity& height) {
  return height.smallestUnit() == Unit::in || height.smallestUnit() == Unit::ft;
}

/// The total over 1, followed by its conversion to `unit`.
Chain convertedChain(const Totalled& size, Unit unit, Pounds pounds) {
  Chain chain{{over1(size.term)}};
  append(chain, conversionFactors(size.term.units.front(), unit, pounds));
  return chain;
}

void findWeight(Reckoning& reckoning) {
  if (!reckoning.given.child.weight) return;
  const MixedQuantity& weight = *reckoning.given.child.weight;
  reckoning.kgExact = *totalIn(weight, Unit::kg);
  Totalled total = totalled(weight, path::weight);
  Chain chain = convertedChain(total, Unit::kg, reckoning.rules.pounds);
  Product product = cancel(chain);
  const std::optional<int> decimals = reckoning.rules.kilogramDecimals;
  const Number result = decimals ? product.exact.rounded(*decimals) : product.exact;
  const bool rounds = result != product.exact;
  reckoning.sheet.weight = WeightFound{result};
  if (chain.factors.size() == 1 && !rounds) {
    reckoning.kg = Found{result, total.term.origin};
    return;
  }
  Step step{StepId::weight,
            {{Unit::kg}, {}},
            Solved{std::move(chain), std::move(product), result, -1},
            {},
            std::move(total.sums)};
  if (rounds) step.rounding = Rounding{"kilogram_decimals", *decimals};
  reckoning.weightSteps.push_back(std::move(step));
  reckoning.kg = Found{result, Origin::step(StepId::weight)};
}

/// The height in cm, as typed or by a step of its own.
Found heightInCm(Reckoning& reckoning) {
  Totalled total = totalled(*reckoning.given.child.height, path::height);
  Chain chain = convertedChain(total, Unit::cm, reckoning.rules.pounds);
  Product product = cancel(chain);
  const Number result = product.exact;
  if (chain.factors.size() == 1) return {result, total.term.origin};
  reckoning.surfaceSteps.push_back({StepId::height,
                                    {{Unit::cm}, {}},
                                    Solved{std::move(chain), std::move(product), result, -1},
                                    {},
                                    std::move(total.sums)});
  return {result, Origin::step(StepId::height)};
}

Factor mostellerFactor(int divisor, Unit length, Unit mass, StaticText name) {
  const Origin origin = Origin::constant(name);
  return {{Number(1), {Unit::m2, Unit::m2}, origin}, {Number(divisor), {length, mass}, origin}};
}

/// Inches and pounds as typed, under the household constant.
Chain householdChain(Reckoning& reckoning, std::vector<Sum>& sums) {
  Totalled height = totalled(*reckoning.given.child.height, path::height);
  Totalled weight = totalled(*reckoning.given.child.weight, path::weight);
  Chain chain{{}, /*rooted=*/true};
  append(chain, convertedChain(height, Unit::in, reckoning.rules.pounds).factors);
  append(chain, convertedChain(weight, Unit::lb, reckoning.rules.pounds).factors);
  chain.factors.push_back(mostellerFactor(mostellerHousehold, Unit::in, Unit::lb, "mosteller-household"));
  for (Totalled* total : {&height, &weight})
    for (Sum& sum : total->sums) sums.push_back(std::move(sum));
  return chain;
}

Chain metricChain(Reckoning& reckoning) {
  const Found cm = heightInCm(reckoning);
  Chain chain{{}, /*rooted=*/true};
  chain.factors.push_back(over1({cm.value, {Unit::cm}, cm.origin}));
  chain.factors.push_back(over1({reckoning.kg->value, {Unit::kg}, reckoning.kg->origin}));
  chain.factors.push_back(mostellerFactor(mostellerMetric, Unit::cm, Unit::kg, "mosteller-metric"));
  return chain;
}

void keepSurface(Reckoning& reckoning, Step step, const Number& result, const Number& cut) {
  step.rounding = Rounding{"bsa_decimals", bsaWorkingDecimals(reckoning.rules)};
  reckoning.surfaceSteps.push_back(std::move(step));
  reckoning.computedM2 = result;
  if (reckoning.m2) return;  // a charted surface is used as given
  const int fixed = reckoning.rules.bsaDecimals.value_or(-1);
  reckoning.m2 = Found{result, Origin::step(StepId::bsa)};
  reckoning.sheet.bsa = SurfaceFound{result, false, cut, fixed};
}

void findByMosteller(Reckoning& reckoning) {
  std::vector<Sum> sums;
  reckoning.household =
      isHouseholdHeight(*reckoning.given.child.height) && isHouseholdWeight(*reckoning.given.child.weight);
  Chain chain = reckoning.household ? householdChain(reckoning, sums) : metricChain(reckoning);
  Solution solution = solve(chain, {{Unit::m2}, {}});
  assert(solution.wanted);
  const Number square = solution.product.exact;
  reckoning.computedSquared = square;
  const Number result = square.rootRounded(bsaWorkingDecimals(reckoning.rules));
  Solved solved{std::move(chain), std::move(solution.product), result,
                reckoning.rules.bsaDecimals.value_or(-1)};
  keepSurface(reckoning, {StepId::bsa, {{Unit::m2}, {}}, std::move(solved), {}, std::move(sums)}, result,
              square.rootCut(6));
}

void findByFormula(Reckoning& reckoning) {
  const SurfaceFormula& formula = surfaceFormula(reckoning.rules.bsaFormula);
  const Found cm = heightInCm(reckoning);
  const Number surface = surfaceByPowers(formula, cm.value, reckoning.kg->value);
  reckoning.computedSquared = surface * surface;
  const Number result = surface.rounded(bsaWorkingDecimals(reckoning.rules));
  SurfaceByFormula body{formula.name,
                        {formula.factor, {}, Origin::rule("bsa_formula")},
                        {cm.value, {Unit::cm}, cm.origin},
                        formula.heightPower,
                        {reckoning.kg->value, {Unit::kg}, reckoning.kg->origin},
                        formula.weightPower,
                        surface,
                        result,
                        reckoning.rules.bsaDecimals.value_or(-1)};
  const Number cut = (surface * Number::powerOfTen(6)).floor() * Number::powerOfTen(-6);
  keepSurface(reckoning, {StepId::bsa, {{Unit::m2}, {}}, std::move(body), {}, {}}, result, cut);
}

}  // namespace

void findSize(Reckoning& reckoning) {
  findWeight(reckoning);
  const Child& child = reckoning.given.child;
  if (child.height) reckoning.cmExact = *totalIn(*child.height, Unit::cm);
  if (child.bsa) {
    reckoning.m2 = Found{child.bsa->value, Origin::field(path::bsa)};
    reckoning.sheet.bsa = SurfaceFound{child.bsa->value, true, std::nullopt, -1};
  }
  if (!child.height || !child.weight) return;
  if (reckoning.rules.bsaFormula == BsaFormula::mosteller)
    findByMosteller(reckoning);
  else
    findByFormula(reckoning);
}

}  // namespace wardchalk::detail
