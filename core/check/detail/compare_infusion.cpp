#include "core/check/detail/reckoning.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// A stated concentration in the order's drug unit per mL.
Chain concentrationChain(const Reckoning& reckoning, const Strength& concentration, StaticText path) {
  const Origin origin = Origin::field(path);
  Chain chain{{{{concentration.amount.value, {concentration.amount.unit}, origin},
                {concentration.in.value, {concentration.in.unit}, origin}}}};
  reckoning.addDrugConversion(chain, concentration.amount.unit);
  convertBelow(chain, concentration.in.unit, Unit::mL);
  return chain;
}

/// The ordered dose in the volume of the infusion.
Chain orderedConcentration(const Reckoning& reckoning, const Quantity& volume) {
  Chain chain{
      {foundFactor(*reckoning.ordered, *reckoning.unit, Unit::dose),
       rateFactor(volume.value, volume.unit, Unit::dose, Origin::field(path::infusionVolume)).turned()}};
  convertBelow(chain, volume.unit, Unit::mL);
  return chain;
}

void compareOneConcentration(Reckoning& reckoning, CheckId id, const std::optional<Strength>& stated,
                             StaticText path, Relation relation, FindingCode outside) {
  const auto& volume = reckoning.given.infusion.volume;
  if (!stated) return reckoning.notChecked(id, WhyNot::notStated);
  if (!volume || !reckoning.ordered || !reckoning.inOrderUnit(stated->amount))
    return reckoning.notChecked(id, WhyNot::missing);
  const Unit unit = *reckoning.unit;
  Side right = sidePer(concentrationChain(reckoning, *stated, path), unit, "mL");
  reckoning.bounds.push_back({id, Number(1) / inMl(*volume), relation, right.term.value});
  compareSides(reckoning, id, sidePer(orderedConcentration(reckoning, *volume), unit, "mL"), relation,
               std::move(right), outside, path::infusionVolume);
  if (reckoning.check(id).status == CheckStatus::outside && reckoning.sheet.minimumVolume)
    reckoning.sheet.findings.back().arguments.push_back({"volume", *reckoning.sheet.minimumVolume});
}

/// Minimum volume = dose ÷ greatest concentration; it is shown whatever the verdict, since it says what to
/// change.
void findMinimumVolume(Reckoning& reckoning) {
  const auto& most = reckoning.given.reference.maxConcentration;
  if (!most || !reckoning.ordered || !reckoning.inOrderUnit(most->amount)) return;
  Chain chain{{foundFactor(*reckoning.ordered, *reckoning.unit, Unit::dose)}};
  append(chain, conversionFactors(*reckoning.unit, most->amount.unit, Pounds::exact));
  const Origin origin = Origin::field(path::maxConcentration);
  chain.factors.push_back(
      {{most->in.value, {most->in.unit}, origin}, {most->amount.value, {most->amount.unit}, origin}});
  append(chain, conversionFactors(most->in.unit, Unit::mL, Pounds::exact));
  const Found volume =
      reckoning.solveStep(Section::amount, StepId::volume, std::move(chain), {{Unit::mL}, {Unit::dose}});
  reckoning.sheet.minimumVolume = Quantity{volume.value, Unit::mL};
}

Side timeSide(const Quantity& time, StaticText path) {
  Chain chain{{over1({time.value, {time.unit}, Origin::field(path)})}};
  append(chain, conversionFactors(time.unit, Unit::min, Pounds::exact));
  const Number minutes = cancel(chain).exact;
  Side side{{minutes, {Unit::min}, Origin::field(path)}, std::nullopt, printed(Quantity{minutes, Unit::min})};
  if (chain.factors.size() > 1) side.chain = std::move(chain);
  return side;
}

void compareTime(Reckoning& reckoning) {
  const auto& least = reckoning.given.reference.minInfusionTime;
  const auto& over = reckoning.given.infusion.over;
  if (!least) return reckoning.notChecked(CheckId::infusionTime, WhyNot::notStated);
  if (!over) return reckoning.notChecked(CheckId::infusionTime, WhyNot::missing);
  compareSides(reckoning, CheckId::infusionTime, timeSide(*over, path::infusionOver), Relation::atLeast,
               timeSide(*least, path::minInfusionTime), FindingCode::tooFast, path::infusionOver);
}

void compareSpeed(Reckoning& reckoning) {
  const auto& most = reckoning.given.reference.maxInfusionRate;
  const auto& over = reckoning.given.infusion.over;
  if (!most) return reckoning.notChecked(CheckId::infusionRate, WhyNot::notStated);
  if (!over || !reckoning.ordered) return reckoning.notChecked(CheckId::infusionRate, WhyNot::missing);
  const Unit time = unitOf(most->perTime);
  const Unit unit = *reckoning.unit;
  std::optional<Chain> limit = rateChain(reckoning, *most, path::maxInfusionRate, time);
  if (!limit) return reckoning.notChecked(CheckId::infusionRate, WhyNot::noSize);
  Chain speed{{foundFactor(*reckoning.ordered, unit, Unit::dose),
               rateFactor(over->value, over->unit, Unit::dose, Origin::field(path::infusionOver)).turned()}};
  convertBelow(speed, over->unit, time);
  Side right = sidePer(std::move(*limit), unit, idOf(time));
  const Number duration = *converted(over->value, over->unit, time);
  reckoning.bounds.push_back(
      {CheckId::infusionRate, Number(1) / duration, Relation::atMost, right.term.value});
  compareSides(reckoning, CheckId::infusionRate, sidePer(std::move(speed), unit, idOf(time)),
               Relation::atMost, std::move(right), FindingCode::tooFast, path::infusionOver);
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
