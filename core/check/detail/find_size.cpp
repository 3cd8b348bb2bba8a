#include "core/check/detail/factors.h"
#include "core/check/detail/size.h"
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
Chain convertedChain(const Totalled& total, Unit unit, Pounds pounds) {
  Chain chain{{over1(total.term)}};
  append(chain, conversionFactors(total.term.units.front(), unit, pounds));
  return chain;
}

void findWeight(Notebook& notes, Size& size) {
  if (!notes.given.child.weight) return;
  const MixedQuantity& weight = *notes.given.child.weight;
  size.kgExact = *totalIn(weight, Unit::kg);
  Totalled total = totalled(weight, path::weight);
  Chain chain = convertedChain(total, Unit::kg, notes.rules.pounds);
  const Units wanted{{Unit::kg}, {}};
  std::optional<Solution> solution = notes.found(solve(chain, wanted));
  if (!solution) return;
  size.kg = notes.found(foundBy(*solution, total.term.origin));
  if (!size.kg) return;
  Number& result = size.kg->amount.value;
  const std::optional<int> decimals = notes.rules.kilogramDecimals;
  if (decimals) result = result.rounded(*decimals);
  const bool rounds = result != solution->product.exact;
  if (chain.factors.size() == 1 && !rounds) return;
  size.kg->origin = Origin::step(StepId::weight);
  if (!notes.writesSteps()) return;
  Step step{StepId::weight,
            wanted,
            Solved{std::move(chain), std::move(solution->product), result, -1},
            {},
            std::move(total.sums)};
  if (rounds) step.rounding = Rounding{"kilogram_decimals", *decimals};
  notes.weightSteps.push_back(std::move(step));
}

/// The height in cm, as typed or by a step of its own.
std::optional<Found> heightInCm(Notebook& notes) {
  Totalled total = totalled(*notes.given.child.height, path::height);
  Chain chain = convertedChain(total, Unit::cm, notes.rules.pounds);
  const Units wanted{{Unit::cm}, {}};
  std::optional<Solution> solution = notes.found(solve(chain, wanted));
  if (!solution) return std::nullopt;
  if (chain.factors.size() == 1) return notes.found(foundBy(*solution, total.term.origin));
  std::optional<Found> cm = notes.found(foundBy(*solution, Origin::step(StepId::height)));
  if (!notes.writesSteps()) return cm;
  const Number result = solution->product.exact;
  notes.surfaceSteps.push_back({StepId::height,
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
Chain householdChain(const Notebook& notes, std::vector<Sum>& sums) {
  Totalled height = totalled(*notes.given.child.height, path::height);
  Totalled weight = totalled(*notes.given.child.weight, path::weight);
  Chain chain{{}, /*rooted=*/true};
  append(chain, convertedChain(height, Unit::in, notes.rules.pounds).factors);
  append(chain, convertedChain(weight, Unit::lb, notes.rules.pounds).factors);
  chain.factors.push_back(mostellerFactor(mostellerHousehold, Unit::in, Unit::lb, "mosteller-household"));
  for (Totalled* total : {&height, &weight})
    for (Sum& sum : total->sums) sums.push_back(std::move(sum));
  return chain;
}

std::optional<Chain> metricChain(Notebook& notes, Size& size) {
  const std::optional<Found> cm = heightInCm(notes);
  if (!cm || !size.kg) return std::nullopt;
  return Chain{{factorOf(*cm), factorOf(*size.kg),
                mostellerFactor(mostellerMetric, Unit::cm, Unit::kg, "mosteller-metric")},
               /*rooted=*/true};
}

void keepSurface(Notebook& notes, Size& size, Step step, const Quantity& result, const Number& cut) {
  if (notes.writesSteps()) {
    step.rounding = Rounding{"bsa_decimals", bsaWorkingDecimals(notes.rules)};
    notes.surfaceSteps.push_back(std::move(step));
  }
  size.computedM2 = result;
  if (size.m2) return;  // a charted surface is used as given
  const int fixed = notes.rules.bsaDecimals.value_or(-1);
  size.m2 = Found(result, {}, Origin::step(StepId::bsa));
  size.surface = SurfaceFound{result.value, false, cut, fixed};
}

void findByMosteller(Notebook& notes, Size& size) {
  std::vector<Sum> sums;
  size.household =
      isHouseholdHeight(*notes.given.child.height) && isHouseholdWeight(*notes.given.child.weight);
  std::optional<Chain> chain = size.household ? householdChain(notes, sums) : metricChain(notes, size);
  const Units wanted{{Unit::m2}, {}};
  std::optional<Solution> solution = chain ? notes.found(solve(*chain, wanted)) : std::nullopt;
  if (!solution) return;
  const Number square = solution->product.exact;
  size.computedSquared = square;
  const Number result = square.rootRounded(bsaWorkingDecimals(notes.rules));
  Solved solved{std::move(*chain), std::move(solution->product), result,
                notes.rules.bsaDecimals.value_or(-1)};
  keepSurface(notes, size, {StepId::bsa, wanted, std::move(solved), {}, std::move(sums)},
              {result, solution->units.over.front()}, square.rootCut(6));
}

void findByFormula(Notebook& notes, Size& size) {
  const SurfaceFormula& formula = surfaceFormula(notes.rules.bsaFormula);
  const std::optional<Found> cm = heightInCm(notes);
  if (!cm || !size.kg) return;
  const Number surface = surfaceByPowers(formula, cm->value(), size.kg->value());
  size.computedSquared = surface * surface;
  const Number result = surface.rounded(bsaWorkingDecimals(notes.rules));
  SurfaceByFormula body{formula.name,
                        {formula.factor, {}, Origin::rule("bsa_formula")},
                        factorOf(*cm).over,
                        formula.heightPower,
                        factorOf(*size.kg).over,
                        formula.weightPower,
                        surface,
                        result,
                        notes.rules.bsaDecimals.value_or(-1)};
  const Number cut = (surface * Number::powerOfTen(6)).floor() * Number::powerOfTen(-6);
  keepSurface(notes, size, {StepId::bsa, {{Unit::m2}, {}}, std::move(body), {}, {}}, {result, Unit::m2}, cut);
}

}  // namespace

Size findSize(Notebook& notes) {
  Size size;
  findWeight(notes, size);
  const Child& child = notes.given.child;
  if (child.height) size.cmExact = *totalIn(*child.height, Unit::cm);
  if (child.bsa) {
    size.m2 = Found(*child.bsa, {}, Origin::field(path::bsa));
    size.surface = SurfaceFound{child.bsa->value, true, std::nullopt, -1};
  }
  if (!child.height || !child.weight) return size;
  if (notes.rules.bsaFormula == BsaFormula::mosteller)
    findByMosteller(notes, size);
  else
    findByFormula(notes, size);
  return size;
}

}  // namespace wardchalk::detail
