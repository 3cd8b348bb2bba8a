// Chains put together by hand: what is on the table, what each change does, and that a chain is read back as
// it stands.
#include "core/practice/lines/chain_builder.h"

#include <algorithm>

#include "core/check/work_out.h"
#include "core/practice/lines/student_line.h"
#include "tests/property/for_all.h"
#include "tests/support/golden_cases.h"

namespace wardchalk::test::chain_builder_test {

namespace {

Factor amountIn(int over, Unit overUnit, int under, Unit underUnit) {
  return {{Number(over), {overUnit}, {}}, {Number(under), {underUnit}, {}}};
}

ChainFact fact(Factor factor) { return {std::move(factor), true}; }

const ChainFact order = fact({{Number(80), {Unit::mg}, {}}, Term{}});
const ChainFact label = fact(amountIn(120, Unit::mg, 5, Unit::mL));

TEST(ChainBuilder, aLabelTheRightWayUpLeavesMillilitres) {
  ChainWork work{{}, {{Unit::mL}, {}}};
  EXPECT_FALSE(stateOf(work).isWanted);
  work = withFact(work, order, 0);
  work = withFact(work, label, 1);
  const ChainState wrong = stateOf(work);
  EXPECT_FALSE(wrong.isWanted);
  EXPECT_TRUE(sameUnits(*wrong.left, {{Unit::mg, Unit::mg}, {Unit::mL}}));  // mg²/mL
  const ChainState right = stateOf(withTurned(work, 1));
  EXPECT_TRUE(right.isWanted);
  EXPECT_EQ(right.value, Number::ratio(10, 3));
  EXPECT_EQ(right.product.pairs.size(), 1U);
  EXPECT_EQ(lineText(withTurned(work, 1).chain), "80 mg × 5 mL/120 mg");
}

TEST(ChainBuilder, changesLeaveWhatWentBeforeAsItWas) {
  const ChainWork empty{{}, {{Unit::mL}, {}}};
  const ChainWork one = withFact(empty, order, 99);
  const ChainWork two = withFact(one, label, 0);
  EXPECT_TRUE(empty.chain.factors.empty());
  EXPECT_EQ(one.chain.factors.size(), 1U);
  EXPECT_EQ(two.chain.factors.front(), label.factor);
  EXPECT_EQ(withMoved(two, 0, 1).chain.factors.back(), label.factor);
  EXPECT_EQ(withMoved(withMoved(two, 0, 1), 1, 0), two);
  EXPECT_EQ(without(two, 0), one);
  EXPECT_EQ(withTurned(withTurned(two, 1), 1), two);
  EXPECT_EQ(withRoot(withRoot(two, true), false), two);
}

TEST(ChainBuilder, aPlaceThatIsNotThereChangesNothing) {
  const ChainWork one = withFact({{}, {}}, order, 0);
  EXPECT_EQ(without(one, 1), one);
  EXPECT_EQ(withTurned(one, 1), one);
  EXPECT_EQ(withMoved(one, 1, 0), one);
  EXPECT_EQ(withMoved(one, 0, 7), one);
  EXPECT_EQ(lineText(Chain{}), "");
  EXPECT_EQ(lineText(Chain{{}, true}), "");
}

TEST(ChainBuilder, aRootOfUnitsThatHaveNoneIsNotWanted) {
  const ChainWork work = withRoot(withFact({{}, {{Unit::mg}, {}}}, order, 0), true);
  EXPECT_FALSE(stateOf(work).left.has_value());
  EXPECT_FALSE(stateOf(work).isWanted);
}

TEST(ChainBuilder, oneOverSomeDosesIsNotHalfADose) {
  const ChainWork turned =
      withTurned(withFact({{}, {}}, fact({{Number(2), {Unit::dose}, {}}, Term{}}), 0), 0);
  EXPECT_EQ(lineText(turned.chain), "1/(2 doses)");
  const ReadLine read = readStudentLine(lineText(turned.chain));
  EXPECT_EQ(std::get<StudentLine>(read).sides.front().value, Number::ratio(1, 2));
  EXPECT_EQ(std::get<StudentLine>(read).sides.front().units, (Units{{}, {Unit::dose}}));
}

bool usesBothGrams(const Chain& chain) {
  bool medicine = false;
  bool child = false;
  for (const Factor& factor : chain.factors)
    for (const Term* term : {&factor.over, &factor.under})
      for (const Unit unit : term->units) {
        medicine = medicine || unit == Unit::g;
        child = child || unit == Unit::bodyG;
      }
  return medicine && child;
}

Gram gramOf(const Chain& chain) {
  for (const Factor& factor : chain.factors)
    for (const Term* term : {&factor.over, &factor.under})
      for (const Unit unit : term->units)
        if (unit == Unit::bodyG) return Gram::child;
  return Gram::medicine;
}

/// What differs when the chain is written as a line and read again.
std::string wrongRoundTrip(const ChainWork& work) {
  if (work.chain.factors.empty() || usesBothGrams(work.chain)) return {};
  const std::string text = lineText(work.chain);
  if (text.size() > longestLine) return {};
  const ReadLine read = readStudentLine(text, gramOf(work.chain));
  const auto* line = std::get_if<StudentLine>(&read);
  if (!line) return text + ": refused: " + std::string(idOf(std::get<LineFault>(read).code));
  const LineSide& side = line->sides.front();
  const ChainState state = stateOf(work);
  if (side.value != state.value || side.exact != state.exact) return text + ": another value";
  if (side.unitsOpen == state.left.has_value()) return text + ": units told otherwise";
  if (state.left && !sameUnits(side.units, *state.left)) return text + ": other units";
  return side.product.pairs.size() == state.product.pairs.size() ? "" : text + ": other units cancel";
}

const std::vector<Worksheet>& goldenSheets() {
  static const std::vector<Worksheet> sheets = [] {
    std::vector<Worksheet> all;
    for (const GoldenCase& golden : goldenCases()) all.push_back(workOut(golden.given, golden.rules));
    return all;
  }();
  return sheets;
}

bool holds(const std::vector<ChainFact>& facts, const Factor& factor) {
  return std::any_of(facts.begin(), facts.end(), [&](const ChainFact& known) {
    if (!known.needed) return false;
    for (const Factor& way : {known.factor, known.factor.turned()}) {
      const bool units =
          sameUnits({way.over.units, way.under.units}, {factor.over.units, factor.under.units});
      const Number ratio = way.over.value / way.under.value / (factor.over.value / factor.under.value);
      // a number that does not end is written with four digits
      if (units && ratio > Number::ratio(999, 1000) && ratio < Number::ratio(1001, 1000)) return true;
    }
    return false;
  });
}

bool isOfAStep(const Term& term) { return term.origin.kind == Origin::Kind::step && !term.isPlainOne(); }

/// A student who found what the key went on with.
std::vector<OwnResult> foundIn(const Worksheet& sheet) {
  std::vector<OwnResult> own;
  for (const Step& step : sheet.steps) {
    const auto* solved = std::get_if<Solved>(&step.body);
    if (!solved) continue;
    for (const Factor& factor : solved->chain.factors)
      for (const Term* term : {&factor.over, &factor.under}) {
        // of two terms of one step, the 1 of a dose is no result
        const Term& other = term == &factor.over ? factor.under : factor.over;
        const bool ofTheDose = term->value == Number(1) && isOfAStep(other) &&
                               (term == &factor.under || other.value != Number(1));
        if (!isOfAStep(*term) || ofTheDose) continue;
        const auto id = std::ranges::find(stepIds, term->origin.name.view());
        own.push_back({static_cast<StepId>(id - stepIds.begin()), term->value});
      }
  }
  return own;
}

TEST(ChainFacts, holdNothingOfAnEarlierStepThatTheStudentHasNotFound) {
  int steps = 0;
  for (const Worksheet& sheet : goldenSheets())
    for (const Step& step : sheet.steps) {
      for (const ChainFact& fact : chainFacts(sheet, step.id, {})) {
        EXPECT_FALSE(isOfAStep(fact.factor.over) || isOfAStep(fact.factor.under)) << idOf(step.id);
      }
      const auto* solved = std::get_if<Solved>(&step.body);
      steps += solved && std::ranges::any_of(solved->chain.factors,
                                             [](const Factor& factor) {
                                               return isOfAStep(factor.over) || isOfAStep(factor.under);
                                             })
                   ? 1
                   : 0;
    }
  EXPECT_GT(steps, 50);
}

TEST(ChainFacts, holdTheStudentsOwnResultAsItWasFound) {
  for (const Worksheet& sheet : goldenSheets()) {
    const Step* step = sheet.step(StepId::limitDose);
    const auto* solved = step ? std::get_if<Solved>(&step->body) : nullptr;
    const bool byWeight = solved && std::ranges::any_of(solved->chain.factors, [](const Factor& factor) {
                            return factor.over.origin == Origin::step(StepId::weight);
                          });
    if (!byWeight) continue;
    const OwnResult own{StepId::weight, Number(99)};
    const auto facts = chainFacts(sheet, StepId::limitDose, std::span(&own, 1));
    EXPECT_TRUE(std::ranges::any_of(facts, [](const ChainFact& fact) {
      return fact.factor.over.value == Number(99) && fact.factor.over.units == UnitProduct{Unit::kg};
    }));
    for (const ChainFact& fact : facts)
      EXPECT_TRUE(!isOfAStep(fact.factor.over) || fact.factor.over.value == Number(99));
  }
}

TEST(ChainFacts, holdTheChainOfTheKeyAndMore) {
  int steps = 0;
  int withMore = 0;
  for (const Worksheet& sheet : goldenSheets())
    for (const Step& step : sheet.steps) {
      const auto* solved = std::get_if<Solved>(&step.body);
      const std::vector<ChainFact> facts = chainFacts(sheet, step.id, foundIn(sheet));
      EXPECT_EQ(facts.empty(), solved == nullptr);
      if (!solved) continue;
      ++steps;
      for (const Factor& factor : solved->chain.factors)
        EXPECT_TRUE(holds(facts, factor))
            << sheet.given.title << ' ' << idOf(step.id) << ' ' << factor.over.value.rationalText() << '/'
            << factor.under.value.rationalText();
      const auto spare = [](const ChainFact& one) { return !one.needed; };
      withMore += std::any_of(facts.begin(), facts.end(), spare) ? 1 : 0;
    }
  EXPECT_GT(steps, 150);
  EXPECT_EQ(withMore, steps);
}

TEST(ChainFacts, standOnceWhicheverWayUp) {
  for (const Worksheet& sheet : goldenSheets())
    for (const Step& step : sheet.steps) {
      const std::vector<ChainFact> facts = chainFacts(sheet, step.id, foundIn(sheet));
      for (std::size_t i = 0; i < facts.size(); ++i)
        for (std::size_t j = i + 1; j < facts.size(); ++j) {
          EXPECT_FALSE(facts[i].factor.over.value == facts[j].factor.over.value &&
                       facts[i].factor.over.units == facts[j].factor.over.units &&
                       facts[i].factor.under.value == facts[j].factor.under.value &&
                       facts[i].factor.under.units == facts[j].factor.under.units);
        }
    }
}

TEST(ChainProperties, whatIsBuiltIsReadBack) {
  int built = 0;
  forAll(4000, [&built](Choices& choices) -> std::string {
    const Worksheet& sheet = goldenSheets()[choices.below(static_cast<std::uint32_t>(goldenSheets().size()))];
    if (sheet.steps.empty()) return {};
    const Step& step = sheet.steps[choices.below(static_cast<std::uint32_t>(sheet.steps.size()))];
    const std::vector<ChainFact> facts = chainFacts(sheet, step.id, foundIn(sheet));
    if (facts.empty()) return {};
    ChainWork work{{}, step.lookingFor};
    for (int i = choices.between(1, 7); i > 0; --i) {
      const auto& chosen = facts[choices.below(static_cast<std::uint32_t>(facts.size()))];
      work = withFact(std::move(work), chosen, choices.below(8));
      if (choices.onceIn(2)) work = withTurned(std::move(work), choices.below(8));
      if (choices.onceIn(4)) work = withMoved(std::move(work), choices.below(8), choices.below(8));
      const std::string wrong = wrongRoundTrip(work);
      if (!wrong.empty()) return wrong;
      ++built;
    }
    return wrongRoundTrip(withRoot(std::move(work), true));
  });
  EXPECT_GT(built, 5000);
}

}  // namespace

}  // namespace wardchalk::test::chain_builder_test
