#include <cassert>

#include "core/check/detail/comparing.h"
#include "core/check/usable_volume.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// A stated concentration in a drug unit per mL.
Chain concentrationChain(const Strength& concentration, StaticText path, Unit drug) {
  Chain chain{{labelFactor(concentration, path)}};
  convertAbove(chain, concentration.amount.unit, drug);
  convertBelow(chain, concentration.in.unit, Unit::mL);
  return chain;
}

/// The ordered dose in the volume of the infusion.
Chain orderedConcentration(const Comparing& comparing, const Quantity& volume) {
  Chain chain{
      {factorOf(*comparing.doses.ordered),
       rateFactor(volume.value, volume.unit, Unit::dose, Origin::field(path::infusionVolume)).turned()}};
  convertBelow(chain, volume.unit, Unit::mL);
  return chain;
}

void compareOneConcentration(Comparing& comparing, CheckId id, const std::optional<Strength>& stated,
                             StaticText path, Relation relation, FindingCode outside) {
  const auto& volume = comparing.given.infusion.volume;
  if (!stated) return comparing.notChecked(id, WhyNot::notStated);
  if (!volume || !comparing.doses.ordered || !comparing.doses.inOrderUnit(stated->amount))
    return comparing.notChecked(id, WhyNot::missing);
  const Units wanted{{*comparing.doses.unit}, {Unit::mL}};
  compareSides(comparing, id, sidePer(comparing.notes, orderedConcentration(comparing, *volume), wanted),
               relation,
               sidePer(comparing.notes, concentrationChain(*stated, path, *comparing.doses.unit), wanted),
               outside, path::infusionVolume);
  keepBound(comparing, id, relation);
  if (comparing.check(id).status == CheckStatus::outside && comparing.checks.minimumVolume)
    comparing.notes.findings.back().arguments.push_back(
        {"volume", Quantity{roundedUpVolume(comparing.checks.minimumVolume->value), Unit::mL}});
}

/// The step says the least volume as it can be made up to: less would be too concentrated.
void roundUpStep(Notebook& notes, const Number& exact) {
  const Number rounded = roundedUpVolume(exact);
  if (rounded == exact) return;
  Step& step = notes.in(Section::amount).back();  // the dose over the concentration always has one
  assert(step.id == StepId::volume);
  std::get<Solved>(step.body).result = rounded;
  step.rounding = Rounding{{}, exact < Number(10) ? 1 : 0};
}

/// Minimum volume = dose ÷ greatest concentration; it is shown whatever the verdict, since it says what to
/// change.
void findMinimumVolume(Comparing& comparing) {
  const auto& most = comparing.given.reference.maxConcentration;
  if (!most || !comparing.doses.ordered || !comparing.doses.inOrderUnit(most->amount)) return;
  Chain chain{{factorOf(*comparing.doses.ordered)}};
  convertAbove(chain, *comparing.doses.unit, most->amount.unit);
  chain.factors.push_back(labelFactor(*most, path::maxConcentration).turned());
  convertAbove(chain, most->in.unit, Unit::mL);
  const auto volume = comparing.notes.solveStep(Section::amount, StepId::volume, std::move(chain),
                                                {{Unit::mL}, {Unit::dose}});
  if (!volume) return;
  comparing.checks.minimumVolume = volume->amount;
  roundUpStep(comparing.notes, volume->value());
}

std::optional<Side> timeSide(Comparing& comparing, const Quantity& time, StaticText path) {
  Chain chain{{entryFactor(time, path)}};
  convertAbove(chain, time.unit, Unit::min);
  return sidePer(comparing.notes, std::move(chain), {{Unit::min}, {}});
}

void compareTime(Comparing& comparing) {
  const auto& least = comparing.given.reference.minInfusionTime;
  const auto& over = comparing.given.infusion.over;
  if (!least) return comparing.notChecked(CheckId::infusionTime, WhyNot::notStated);
  if (!over) return comparing.notChecked(CheckId::infusionTime, WhyNot::missing);
  compareSides(comparing, CheckId::infusionTime, timeSide(comparing, *over, path::infusionOver),
               Relation::atLeast, timeSide(comparing, *least, path::minInfusionTime), FindingCode::tooFast,
               path::infusionOver);
}

void compareSpeed(Comparing& comparing) {
  const auto& most = comparing.given.reference.maxInfusionRate;
  const auto& over = comparing.given.infusion.over;
  if (!most) return comparing.notChecked(CheckId::infusionRate, WhyNot::notStated);
  if (!over || !comparing.doses.ordered) return comparing.notChecked(CheckId::infusionRate, WhyNot::missing);
  const Unit time = unitOf(most->perTime);
  const Units wanted{{*comparing.doses.unit}, {time}};
  std::optional<Chain> limit =
      rateChain(comparing.notes, comparing.size, comparing.doses, *most, path::maxInfusionRate, time);
  if (!limit) return comparing.notChecked(CheckId::infusionRate, WhyNot::noSize);
  Chain speed{{factorOf(*comparing.doses.ordered),
               rateFactor(over->value, over->unit, Unit::dose, Origin::field(path::infusionOver)).turned()}};
  convertBelow(speed, over->unit, time);
  compareSides(comparing, CheckId::infusionRate, sidePer(comparing.notes, std::move(speed), wanted),
               Relation::atMost, sidePer(comparing.notes, std::move(*limit), wanted), FindingCode::tooFast,
               path::infusionOver);
  keepAsWritten(comparing, CheckId::infusionRate, *most, WrittenIn::limit);
  keepBound(comparing, CheckId::infusionRate, Relation::atMost);
}

/// What is in the bag against a stated concentration, in the unit of that. No rate changes it.
void compareBag(Comparing& comparing, CheckId id, const std::optional<Strength>& stated, StaticText path,
                Relation relation, FindingCode outside) {
  if (!stated) return comparing.notChecked(id, WhyNot::notStated);
  const std::optional<Strength> bag = bagOf(comparing.given.stock, comparing.strengths);
  const Unit drug = stated->amount.unit;
  if (!bag || dimensionOf(bag->amount.unit) != dimensionOf(drug))
    return comparing.notChecked(id, WhyNot::missing);
  const Units wanted{{drug}, {Unit::mL}};
  compareSides(comparing, id,
               sidePer(comparing.notes, concentrationChain(*bag, path::strength, drug), wanted), relation,
               sidePer(comparing.notes, concentrationChain(*stated, path, drug), wanted), outside,
               path::strength);
}

/// A rate runs out of its bag, and as long as the order says.
void compareRunning(Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  compareBag(comparing, CheckId::concentration, reference.maxConcentration, path::maxConcentration,
             Relation::atMost, FindingCode::tooConcentrated);
  compareBag(comparing, CheckId::concentrationLow, reference.minConcentration, path::minConcentration,
             Relation::atLeast, FindingCode::tooDilute);
  if (reference.minInfusionTime) return compareTime(comparing);
  comparing.doesNotApply(CheckId::infusionTime, WhyNot::isARate);
}

}  // namespace

void compareInfusion(Comparing& comparing) {
  findMinimumVolume(comparing);
  if (comparing.doses.isRate) return compareRunning(comparing);
  if (!comparing.given.infusion.isStated()) {
    for (const CheckId id :
         {CheckId::concentration, CheckId::concentrationLow, CheckId::infusionTime, CheckId::infusionRate})
      comparing.doesNotApply(id, WhyNot::noInfusion);
    return;
  }
  const Reference& reference = comparing.given.reference;
  compareOneConcentration(comparing, CheckId::concentration, reference.maxConcentration,
                          path::maxConcentration, Relation::atMost, FindingCode::tooConcentrated);
  compareOneConcentration(comparing, CheckId::concentrationLow, reference.minConcentration,
                          path::minConcentration, Relation::atLeast, FindingCode::tooDilute);
  compareTime(comparing);
  compareSpeed(comparing);
}

}  // namespace wardchalk::detail
