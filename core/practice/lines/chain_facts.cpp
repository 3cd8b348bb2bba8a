#include "core/practice/lines/chain_facts.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/child/surface_formula.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/practice/problem/amount_line.h"
#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

/// Decimals that a number on the papers, or a constant, may have and still be written out.
constexpr int mostDecimals = 12;

/// The number as it can be written down: what was found in an earlier step as it is shown.
Number writable(const Term& term) {
  const Origin::Kind from = term.origin.kind;
  const bool found = from == Origin::Kind::step || from == Origin::Kind::none;
  if (!found && term.value.endsWithin(mostDecimals)) return term.value;
  const Result<Number> shown = readDecimal(show(term.value).text);
  return shown ? *shown : term.value;
}

Factor writable(Factor factor) {
  for (Term* term : {&factor.over, &factor.under}) term->value = writable(*term);
  return factor;
}

bool sameTerm(const Term& a, const Term& b) {
  return a.value == b.value && sameUnits({a.units, {}}, {b.units, {}});
}

bool sameFact(const Factor& a, const Factor& b) {
  return (sameTerm(a.over, b.over) && sameTerm(a.under, b.under)) ||
         (sameTerm(a.over, b.under) && sameTerm(a.under, b.over));
}

/// Facts gathered so far, each once whichever way up.
struct Table {
  std::vector<ChainFact> facts;

  void add(Factor factor, bool needed = false) {
    factor = writable(std::move(factor));
    const auto same = [&](const ChainFact& known) { return sameFact(known.factor, factor); };
    if (std::none_of(facts.begin(), facts.end(), same)) facts.push_back({std::move(factor), needed});
  }
  void add(const std::optional<DoseAmount>& dose, StaticText path, std::optional<PerTime> each = {}) {
    if (!dose) return;
    const Origin origin = Origin::field(path);
    Term under{Number(1), {}, origin};
    if (dose->perSize != PerSize::none) under.units.push_back(unitOf(dose->perSize));
    const PerTime time = dose->perTime == PerTime::none && each ? *each : dose->perTime;
    if (time != PerTime::none) under.units.push_back(unitOf(time));
    add({{dose->amount.value, {dose->amount.unit}, origin}, std::move(under)});
  }
  void add(const std::optional<Quantity>& quantity, Origin origin) {
    if (quantity) add({{quantity->value, {quantity->unit}, origin}, Term{}});
  }
  void add(const std::optional<MixedQuantity>& mixed, StaticText path) {
    if (!mixed) return;
    if (const auto total = totalIn(*mixed, mixed->smallestUnit()))
      add(Quantity{*total, mixed->smallestUnit()}, Origin::field(path));
  }
  void add(const std::optional<Strength>& strength, StaticText path) {
    if (!strength) return;
    const Origin origin = Origin::field(path);
    add({{strength->amount.value, {strength->amount.unit}, origin},
         {strength->in.value, {strength->in.unit}, origin}});
  }
  [[nodiscard]] bool uses(Unit unit) const {
    const auto has = [unit](const UnitProduct& units) {
      return std::find(units.begin(), units.end(), unit) != units.end();
    };
    return std::any_of(facts.begin(), facts.end(), [&](const ChainFact& fact) {
      return has(fact.factor.over.units) || has(fact.factor.under.units);
    });
  }
};

void addPapers(Table& table, const Case& given) {
  table.add(given.child.height, path::height);
  table.add(given.child.weight, path::weight);
  table.add(given.child.bsa, Origin::field(path::bsa));
  table.add(given.order.dose, path::dose, PerTime::dose);
  table.add(given.reference.low, path::low);
  table.add(given.reference.high, path::high);
  table.add(given.reference.maxPerDose, path::maxPerDose, PerTime::dose);
  table.add(given.reference.maxPerDay, path::maxPerDay, PerTime::day);
  table.add(given.reference.maxConcentration, path::maxConcentration);
  table.add(given.stock.strength, path::strength);
  table.add(given.stock.content, Origin::field(path::content));
  table.add(given.stock.diluent, Origin::field(path::diluent));
  table.add(given.stock.finalVolume, Origin::field(path::finalVolume));
  table.add(given.stock.displacement, Origin::field(path::displacement));
  table.add(given.infusion.volume, Origin::field(path::infusionVolume));
  table.add(given.infusion.over, Origin::field(path::infusionOver));
  if (given.infusion.dropFactor)
    table.add({{given.infusion.dropFactor->value, {Unit::drop}, Origin::field(path::dropFactor)},
               {Number(1), {Unit::mL}, Origin::field(path::dropFactor)}});
}

const Number* ownOf(StepId step, std::span<const OwnResult> own) {
  const auto found =
      std::find_if(own.begin(), own.end(), [&](const OwnResult& one) { return one.step == step; });
  return found == own.end() ? nullptr : &found->value;
}

/// A factor of the key's as it lies on the table: an earlier step's with the student's own number; none where
/// the student has found none.
std::optional<Factor> ownFactor(Factor factor, std::span<const OwnResult> own) {
  const auto isOfStep = [](const Term& term) {
    return term.origin.kind == Origin::Kind::step && !term.isPlainOne();
  };
  // 84 mg over 1 dose is one result, whichever way up: its number is the one that is not the dose's
  const bool turned = factor.over.value == Number(1) && isOfStep(factor.under);
  Term& term = turned || !isOfStep(factor.over) ? factor.under : factor.over;
  if (!isOfStep(term)) return factor;
  const auto step = std::find(stepIds.begin(), stepIds.end(), term.origin.name.view());
  const Number* found =
      step == stepIds.end() ? nullptr : ownOf(static_cast<StepId>(step - stepIds.begin()), own);
  if (!found) return std::nullopt;
  if (term.value != *found) term.fixedDecimals = -1;
  term.value = *found;
  return factor;
}

void addEarlierSteps(Table& table, StepId step, std::span<const OwnResult> own) {
  const Number* kg = step > StepId::weight ? ownOf(StepId::weight, own) : nullptr;
  const Number* m2 = step > StepId::bsa ? ownOf(StepId::bsa, own) : nullptr;
  if (kg) table.add(Quantity{*kg, Unit::kg}, Origin::step(StepId::weight));
  if (m2) table.add(Quantity{*m2, Unit::m2}, Origin::step(StepId::bsa));
}

bool isOfCalendar(Unit unit) { return unit == Unit::month || unit == Unit::year; }

void addConversions(Table& table, Pounds pounds) {
  std::vector<Factor> touching;
  for (const Conversion& fact : allConversions())
    if ((table.uses(fact.from) || table.uses(fact.to)) && !isOfCalendar(fact.from) && !isOfCalendar(fact.to))
      touching.push_back(conversionFactor(fact));
  if (table.uses(Unit::lb))
    for (Factor& factor : conversionFactors(Unit::lb, Unit::kg, pounds))
      touching.push_back(std::move(factor));
  for (Factor& factor : touching) table.add(std::move(factor));
}

Factor surfaceConstant(int divisor, Unit length, Unit mass, StaticText name) {
  const Origin origin = Origin::constant(name);
  return {{Number(1), {Unit::m2, Unit::m2}, origin}, {Number(divisor), {length, mass}, origin}};
}

/// Papers first, then earlier steps, then constants; each kind by name and number.
void putInOrder(std::vector<ChainFact>& facts) {
  std::stable_sort(facts.begin(), facts.end(), [](const ChainFact& a, const ChainFact& b) {
    const Origin& left = a.factor.over.origin;
    const Origin& right = b.factor.over.origin;
    if (left.kind != right.kind) return left.kind < right.kind;
    if (left.name != right.name) return left.name.view() < right.name.view();
    return a.factor.over.value < b.factor.over.value;
  });
}

}  // namespace

std::vector<ChainFact> chainFacts(const Worksheet& key, StepId step, std::span<const OwnResult> own) {
  const Step* asked = key.step(step);
  const auto* solved = asked ? std::get_if<Solved>(&asked->body) : nullptr;
  if (asked ? !solved : !isAmountLine(step)) return {};
  Table table;
  if (solved)
    for (const Factor& factor : solved->chain.factors)
      if (auto known = ownFactor(factor, own)) table.add(*std::move(known), /*needed=*/true);
  addPapers(table, key.given);
  addEarlierSteps(table, step, own);
  addConversions(table, key.rules.pounds);
  if (step == StepId::bsa) {
    table.add(surfaceConstant(mostellerMetric, Unit::cm, Unit::kg, "mosteller-metric"));
    table.add(surfaceConstant(mostellerHousehold, Unit::in, Unit::lb, "mosteller-household"));
  }
  putInOrder(table.facts);
  return std::move(table.facts);
}

}  // namespace wardchalk
