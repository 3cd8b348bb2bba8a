#include <algorithm>

#include "core/check/detail/factors.h"
#include "core/check/detail/telling.h"
#include "core/check/usable_volume.h"

namespace wardchalk::detail {

namespace {

/// Whether the order is unsafe by how it is prepared and by nothing else, as far as can be told (R19).
bool isUnsafeAsPrepared(const Notebook& notes) {
  const auto isUnsafe = [](const Finding& finding) { return finding.severity == Severity::unsafe; };
  return std::ranges::any_of(notes.findings, isUnsafe) &&
         std::ranges::all_of(notes.findings,
                             [&](const Finding& finding) {
                               if (!isUnsafe(finding)) return finding.severity > Severity::notCovered;
                               return finding.code == FindingCode::tooConcentrated ||
                                      finding.code == FindingCode::tooFast;
                             }) &&
         std::ranges::none_of(notes.needs,
                              [](const Need& need) { return need.forWhat == Need::For::verdict; });
}

/// The volume that the dose has in a stated concentration.
std::optional<Found> volumeAt(Notebook& notes, const Facts& facts, const Strength& concentration,
                              StaticText path) {
  if (!facts.doses.inOrderUnit(concentration.amount)) return std::nullopt;
  Chain chain{{factorOf(*facts.doses.ordered)}};
  convertAbove(chain, *facts.doses.unit, concentration.amount.unit);
  chain.factors.push_back(labelFactor(concentration, path).turned());
  convertAbove(chain, concentration.in.unit, Unit::mL);
  return notes.solveUnwritten(chain, {{Unit::mL}, {Unit::dose}}, Origin::step(StepId::volume));
}

void findVolumes(Notebook& notes, const Facts& facts, const Checks& checks, Remedy& remedy) {
  if (!checks.minimumVolume) return;
  remedy.leastVolume = Quantity{roundedUpVolume(checks.minimumVolume->value), checks.minimumVolume->unit};
  if (facts.size.kg)
    remedy.volumePerKg = Quantity{remedy.leastVolume->value / facts.size.kg->value(), Unit::mL};
  const auto& least = notes.given.reference.minConcentration;
  if (!least) return;
  const auto greatest = volumeAt(notes, facts, *least, path::minConcentration);
  if (greatest) remedy.greatestVolume = Quantity{roundedDownVolume(greatest->value()), greatest->amount.unit};
}

/// How long the dose takes at the greatest rate.
std::optional<Found> timeAtMostRate(Notebook& notes, const Facts& facts) {
  const auto& most = notes.given.reference.maxInfusionRate;
  if (!most) return std::nullopt;
  const Unit time = unitOf(most->perTime);
  const auto rate = rateChain(notes, facts.size, facts.doses, *most, path::maxInfusionRate, time);
  if (!rate) return std::nullopt;
  Chain chain{{factorOf(*facts.doses.ordered)}};
  for (const Factor& factor : rate->factors) chain.factors.push_back(factor.turned());
  convertAbove(chain, time, Unit::min);
  return notes.solveUnwritten(chain, {{Unit::min}, {Unit::dose}}, Origin::field(path::maxInfusionRate));
}

void findTime(Notebook& notes, const Facts& facts, Remedy& remedy) {
  std::optional<Number> longest;
  if (const auto& least = notes.given.reference.minInfusionTime)
    longest = converted(least->value, least->unit, Unit::min);
  if (const auto byRate = timeAtMostRate(notes, facts); byRate && (!longest || byRate->value() > *longest))
    longest = byRate->value();
  if (longest) remedy.leastTime = Quantity{longest->ceil(), Unit::min};
}

}  // namespace

std::optional<Remedy> findRemedy(Notebook& notes, const Facts& facts, const Checks& checks) {
  if (!isUnsafeAsPrepared(notes) || !facts.doses.ordered) return std::nullopt;
  Remedy remedy;
  if (notes.hasTold(FindingCode::tooConcentrated)) findVolumes(notes, facts, checks, remedy);
  if (notes.hasTold(FindingCode::tooFast)) findTime(notes, facts, remedy);
  return remedy;
}

}  // namespace wardchalk::detail
