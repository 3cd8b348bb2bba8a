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
  const Units wanted{{Unit::kg}, {}};
  std::optional<Solution> solution = reckoning.found(solve(chain, wanted));
  if (!solution) return;
  reckoning.kg = reckoning.found(foundBy(*solution, total.term.origin));
  if (!reckoning.kg) return;
  Number& result = reckoning.kg->amount.value;
  const std::optional<int> decimals = reckoning.rules.kilogramDecimals;
  if (decimals) result = result.rounded(*decimals);
  const bool rounds = result != solution->product.exact;
  reckoning.sheet.weight = WeightFound{result};
  if (chain.factors.size() == 1 && !rounds) return;
  reckoning.kg->origin = Origin::step(StepId::weight);
  Step step{StepId::weight,
            wanted,
            Solved{std::move(chain), std::move(solution->product), result, -1},
            {},
            std::move(total.sums)};
  if (rounds) step.rounding = Rounding{"kilogram_decimals", *decimals};
  reckoning.weightSteps.push_back(std::move(step));
}

/// The height in cm, as typed or by a step of its own.
std::optional<Found> heightInCm(Reckoning& reckoning) {
  Totalled total = totalled(*reckoning.given.child.height, path::height);
  Chain chain = convertedChain(total, Unit::cm, reckoning.rules.pounds);
  const Units wanted{{Unit::cm}, {}};
  std::optional<Solution> solution = reckoning.found(solve(chain, wanted));
  if (!solution) return std::nullopt;
  if (chain.factors.size() == 1) return reckoning.found(foundBy(*solution, total.term.origin));
  std::optional<Found> cm = reckoning.found(foundBy(*solution, Origin::step(StepId::height)));
  const Number result = solution->product.exact;
  reckoning.surfaceSteps.push_back({StepId::height,
                                    wanted,
                                    Solved{std::move(chain), std::move(solution->product), result, -1},
                                    {},
                                    std::move(total.sums)});
  return cm;
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

std::optional<Chain> metricChain(Reckoning& reckoning) {
  const std::optional<Found> cm = heightInCm(reckoning);
  if (!cm || !reckoning.kg) return std::nullopt;
  return Chain{{factorOf(*cm), factorOf(*reckoning.kg),
                mostellerFactor(mostellerMetric, Unit::cm, Unit::kg, "mosteller-metric")},
               /*rooted=*/true};
}

void keepSurface(Reckoning& reckoning, Step step, const Quantity& result, const Number& cut) {
  step.rounding = Rounding{"bsa_decimals", bsaWorkingDecimals(reckoning.rules)};
  reckoning.surfaceSteps.push_back(std::move(step));
  reckoning.computedM2 = result.value;
  if (reckoning.m2) return;  // a charted surface is used as given
  const int fixed = reckoning.rules.bsaDecimals.value_or(-1);
  reckoning.m2 = Found(result, {}, Origin::step(StepId::bsa));
  reckoning.sheet.bsa = SurfaceFound{result.value, false, cut, fixed};
}

void findByMosteller(Reckoning& reckoning) {
  std::vector<Sum> sums;
  reckoning.household =
      isHouseholdHeight(*reckoning.given.child.height) && isHouseholdWeight(*reckoning.given.child.weight);
  std::optional<Chain> chain = reckoning.household ? householdChain(reckoning, sums) : metricChain(reckoning);
  const Units wanted{{Unit::m2}, {}};
  std::optional<Solution> solution = chain ? reckoning.found(solve(*chain, wanted)) : std::nullopt;
  if (!solution) return;
  const Number square = solution->product.exact;
  reckoning.computedSquared = square;
  const Number result = square.rootRounded(bsaWorkingDecimals(reckoning.rules));
  Solved solved{std::move(*chain), std::move(solution->product), result,
                reckoning.rules.bsaDecimals.value_or(-1)};
  keepSurface(reckoning, {StepId::bsa, wanted, std::move(solved), {}, std::move(sums)},
              {result, solution->units.over.front()}, square.rootCut(6));
}

void findByFormula(Reckoning& reckoning) {
  const SurfaceFormula& formula = surfaceFormula(reckoning.rules.bsaFormula);
  const std::optional<Found> cm = heightInCm(reckoning);
  if (!cm || !reckoning.kg) return;
  const Number surface = surfaceByPowers(formula, cm->value(), reckoning.kg->value());
  reckoning.computedSquared = surface * surface;
  const Number result = surface.rounded(bsaWorkingDecimals(reckoning.rules));
  SurfaceByFormula body{formula.name,
                        {formula.factor, {}, Origin::rule("bsa_formula")},
                        factorOf(*cm).over,
                        formula.heightPower,
                        factorOf(*reckoning.kg).over,
                        formula.weightPower,
                        surface,
                        result,
                        reckoning.rules.bsaDecimals.value_or(-1)};
  const Number cut = (surface * Number::powerOfTen(6)).floor() * Number::powerOfTen(-6);
  keepSurface(reckoning, {StepId::bsa, {{Unit::m2}, {}}, std::move(body), {}, {}}, {result, Unit::m2}, cut);
}

}  // namespace

void findSize(Reckoning& reckoning) {
  findWeight(reckoning);
  const Child& child = reckoning.given.child;
  if (child.height) reckoning.cmExact = *totalIn(*child.height, Unit::cm);
  if (child.bsa) {
    reckoning.m2 = Found(*child.bsa, {}, Origin::field(path::bsa));
    reckoning.sheet.bsa = SurfaceFound{child.bsa->value, true, std::nullopt, -1};
  }
  if (!child.height || !child.weight) return;
  if (reckoning.rules.bsaFormula == BsaFormula::mosteller)
    findByMosteller(reckoning);
  else
    findByFormula(reckoning);
}

}  // namespace wardchalk::detail
