// What holds of every chain: what is left after cancelling is what was looked for, or there is no result.
#include <map>

#include "core/check/work_out.h"
#include "core/working/chain.h"
#include "tests/property/for_all.h"

namespace wardchalk::test::working_properties_test {

namespace {

/// How often each unit stands above the bar more than below; counted without the core's cancelling.
std::map<Unit, int> balance(const Chain& chain) {
  std::map<Unit, int> count;
  for (const Factor& factor : chain.factors) {
    for (const Unit unit : factor.over.units) ++count[unit];
    for (const Unit unit : factor.under.units) --count[unit];
  }
  std::erase_if(count, [](const auto& entry) { return entry.second == 0; });
  return count;
}

std::map<Unit, int> balance(const Units& units, int times = 1) {
  Chain chain{{Factor{Term{Number(1), units.over, {}}, Term{Number(1), units.under, {}}}}};
  std::map<Unit, int> count = balance(chain);
  for (auto& [unit, uses] : count) uses *= times;
  return count;
}

/// The chain's product, factor by factor.
Number productOf(const Chain& chain) {
  Number product(1);
  for (const Factor& factor : chain.factors) product = product * factor.over.value / factor.under.value;
  return product;
}

const Unit* unitAt(const Chain& chain, const Place& place) {
  const Factor& factor = chain.factors.at(static_cast<std::size_t>(place.factor));
  const UnitProduct& units = place.over ? factor.over.units : factor.under.units;
  const auto use = static_cast<std::size_t>(place.use);
  if (use >= units.size()) throw std::out_of_range("no such use");
  return units.begin() + use;
}

/// Every cancelled pair is one use above and one below of the unit it names, and no use is struck out twice.
std::string wrongPairs(const Chain& chain, const Product& product) {
  std::vector<const Unit*> struck;
  for (const Cancellation& pair : product.pairs) {
    if (!pair.above.over || pair.below.over) return "a pair on one side of the bar";
    for (const Place& place : {pair.above, pair.below}) {
      const Unit* unit = unitAt(chain, place);
      if (*unit != pair.unit) return "a pair of different units";
      if (std::find(struck.begin(), struck.end(), unit) != struck.end()) return "a unit struck out twice";
      struck.push_back(unit);
    }
  }
  return {};
}

std::string wrongStep(const Step& step) {
  const auto* solved = std::get_if<Solved>(&step.body);
  if (!solved) return {};
  const std::map<Unit, int> wanted = balance(step.lookingFor, solved->chain.rooted ? 2 : 1);
  if (balance(solved->chain) != wanted) return "what is left is not what was looked for";
  if (balance(solved->product.left) != wanted) return "the product's units are not what was looked for";
  if (productOf(solved->chain) != solved->product.exact) return "another product";
  if (!solved->chain.rooted && !step.rounding && solved->result != solved->product.exact)
    return "another result";
  return wrongPairs(solved->chain, solved->product);
}

Term drawTerm(Choices& choices) {
  constexpr Unit units[] = {Unit::mg, Unit::kg,  Unit::mL,  Unit::dose,
                            Unit::m2, Unit::day, Unit::mcg, Unit::bodyG};
  Term term{Number(choices.between(1, 99)), {}, {}};
  for (int uses = choices.between(0, 2); uses > 0; --uses) term.units.push_back(units[choices.below(8)]);
  return term;
}

}  // namespace

TEST(WorkingProperties, everyStepEndsInTheUnitItLooksFor) {
  long steps = 0;
  forAll(10000, [&](Choices& choices) -> std::string {
    const RandomCase random = choices.onceIn(10) ? randomRateCase(choices) : randomCase(choices);
    for (const Step& step : workOut(caseOf(random.entries), rulesFor(random.rules)).steps) {
      ++steps;
      const std::string wrong = wrongStep(step);
      if (!wrong.empty()) return std::string(idOf(step.id)) + ": " + wrong + shown(random);
    }
    return {};
  });
  std::cout << "  " << steps << " steps\n";
}

TEST(WorkingProperties, aChainHasAResultOnlyInTheUnitsThatAreLeft) {
  int wanted = 0;
  forAll(20000, [&](Choices& choices) -> std::string {
    Chain chain;
    for (int factors = choices.between(1, 4); factors > 0; --factors)
      chain.factors.push_back({drawTerm(choices), drawTerm(choices)});
    Units target{drawTerm(choices).units, drawTerm(choices).units};
    if (choices.onceIn(3)) target = cancel(chain).left;
    const std::optional<Solution> solution = solve(chain, target);
    const Product product = cancel(chain);
    const bool same = balance(chain) == balance(target);
    wanted += same ? 1 : 0;
    if (balance(product.left) != balance(chain)) return "other units are left";
    if (product.exact != productOf(chain)) return "another product";
    // A target that itself holds a unit above and below is not what cancelling leaves; only reduced targets
    // are met.
    const bool reduced = target.over.size() + target.under.size() == [&] {
      std::size_t uses = 0;
      for (const auto& [unit, count] : balance(target))
        uses += static_cast<std::size_t>(count < 0 ? -count : count);
      return uses;
    }();
    if (solution && (solution->product != product || !sameUnits(solution->units, target)))
      return "a result that is not the product";
    if (solution.has_value() != (same && reduced))
      return "a result in units that are not left, or none in those that are";
    return wrongPairs(chain, product);
  });
  EXPECT_GT(wanted, 1000);
}

}  // namespace wardchalk::test::working_properties_test
