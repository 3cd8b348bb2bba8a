#include "core/check/detail/reckoning.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// A stated concentration in the order's drug unit per mL.
Chain concentrationChain(const Reckoning& reckoning, const Strength& concentration, StaticText path) {
  Chain chain{{labelFactor(concentration, path)}};
  convertAbove(chain, concentration.amount.unit, *reckoning.unit);
  convertBelow(chain, concentration.in.unit, Unit::mL);
  return chain;
}

/// The ordered dose in the volume of the infusion.
Chain orderedConcentration(const Reckoning& reckoning, const Quantity& volume) {
  Chain chain{
      {factorOf(*reckoning.ordered),
       rateFactor(volume.value, volume.unit, Unit::dose, Origin::field(path::infusionVolume)).turned()}};
  convertBelow(chain, volume.unit, Unit::mL);
  return chain;
}

/// What was compared of the ordered dose is judged again for a measured one.
void keepBound(Reckoning& reckoning, CheckId id, Relation relation) {
  if (const auto& filled = reckoning.check(id).ratio) reckoning.bounds.push_back({id, relation, *filled});
}

void compareOneConcentration(Reckoning& reckoning, CheckId id, const std::optional<Strength>& stated,
                             StaticText path, Relation relation, FindingCode outside) {
  const auto& volume = reckoning.given.infusion.volume;
  if (!stated) return reckoning.notChecked(id, WhyNot::notStated);
  if (!volume || !reckoning.ordered || !reckoning.inOrderUnit(stated->amount))
    return reckoning.notChecked(id, WhyNot::missing);
  const Units wanted{{*reckoning.unit}, {Unit::mL}};
  compareSides(reckoning, id, sidePer(reckoning, orderedConcentration(reckoning, *volume), wanted), relation,
               sidePer(reckoning, concentrationChain(reckoning, *stated, path), wanted), outside,
               path::infusionVolume);
  keepBound(reckoning, id, relation);
  if (reckoning.check(id).status == CheckStatus::outside && reckoning.sheet.minimumVolume)
    reckoning.sheet.findings.back().arguments.push_back({"volume", *reckoning.sheet.minimumVolume});
}

/// Minimum volume = dose ÷ greatest concentration; it is shown whatever the verdict, since it says what to
/// change.
void findMinimumVolume(Reckoning& reckoning) {
  const auto& most = reckoning.given.reference.maxConcentration;
  if (!most || !reckoning.ordered || !reckoning.inOrderUnit(most->amount)) return;
  Chain chain{{factorOf(*reckoning.ordered)}};
  convertAbove(chain, *reckoning.unit, most->amount.unit);
  chain.factors.push_back(labelFactor(*most, path::maxConcentration).turned());
  convertAbove(chain, most->in.unit, Unit::mL);
  const auto volume =
      reckoning.solveStep(Section::amount, StepId::volume, std::move(chain), {{Unit::mL}, {Unit::dose}});
  if (volume) reckoning.sheet.minimumVolume = volume->amount;
}

std::optional<Side> timeSide(Reckoning& reckoning, const Quantity& time, StaticText path) {
  Chain chain{{entryFactor(time, path)}};
  convertAbove(chain, time.unit, Unit::min);
  return sidePer(reckoning, std::move(chain), {{Unit::min}, {}});
}

void compareTime(Reckoning& reckoning) {
  const auto& least = reckoning.given.reference.minInfusionTime;
  const auto& over = reckoning.given.infusion.over;
  if (!least) return reckoning.notChecked(CheckId::infusionTime, WhyNot::notStated);
  if (!over) return reckoning.notChecked(CheckId::infusionTime, WhyNot::missing);
  compareSides(reckoning, CheckId::infusionTime, timeSide(reckoning, *over, path::infusionOver),
               Relation::atLeast, timeSide(reckoning, *least, path::minInfusionTime), FindingCode::tooFast,
               path::infusionOver);
}

void compareSpeed(Reckoning& reckoning) {
  const auto& most = reckoning.given.reference.maxInfusionRate;
  const auto& over = reckoning.given.infusion.over;
  if (!most) return reckoning.notChecked(CheckId::infusionRate, WhyNot::notStated);
  if (!over || !reckoning.ordered) return reckoning.notChecked(CheckId::infusionRate, WhyNot::missing);
  const Unit time = unitOf(most->perTime);
  const Units wanted{{*reckoning.unit}, {time}};
  std::optional<Chain> limit = rateChain(reckoning, *most, path::maxInfusionRate, time);
  if (!limit) return reckoning.notChecked(CheckId::infusionRate, WhyNot::noSize);
  Chain speed{{factorOf(*reckoning.ordered),
               rateFactor(over->value, over->unit, Unit::dose, Origin::field(path::infusionOver)).turned()}};
  convertBelow(speed, over->unit, time);
  compareSides(reckoning, CheckId::infusionRate, sidePer(reckoning, std::move(speed), wanted),
               Relation::atMost, sidePer(reckoning, std::move(*limit), wanted), FindingCode::tooFast,
               path::infusionOver);
  keepBound(reckoning, CheckId::infusionRate, Relation::atMost);
}

}  // namespace

void compareInfusion(Reckoning& reckoning) {
  findMinimumVolume(reckoning);
  if (!reckoning.given.infusion.isStated() || reckoning.isRate) {
    for (const CheckId id :
         {CheckId::concentration, CheckId::concentrationLow, CheckId::infusionTime, CheckId::infusionRate})
      reckoning.doesNotApply(id, WhyNot::noInfusion);
    return;
  }
  const Reference& reference = reckoning.given.reference;
  compareOneConcentration(reckoning, CheckId::concentration, reference.maxConcentration,
                          path::maxConcentration, Relation::atMost, FindingCode::tooConcentrated);
  compareOneConcentration(reckoning, CheckId::concentrationLow, reference.minConcentration,
                          path::minConcentration, Relation::atLeast, FindingCode::tooDilute);
  compareTime(reckoning);
  compareSpeed(reckoning);
}

}  // namespace wardchalk::detail
