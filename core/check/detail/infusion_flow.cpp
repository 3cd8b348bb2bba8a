#include "core/check/detail/factors.h"
#include "core/check/detail/flow.h"

namespace wardchalk::detail {

namespace {

Chain volumeOverTime(const Infusion& infusion) {
  return {{entriesFactor(*infusion.volume, path::infusionVolume, *infusion.over, path::infusionOver)}};
}

/// Whether `dose` times the ordered dose still runs long enough and slowly enough at so many times the exact
/// flow.
bool keepsTime(const Checks& checks, const Number& dose, const Number& times) {
  const auto filled = [&](CheckId id) -> std::optional<Number> {
    const Check& check = checks.check(id);
    return check.status == CheckStatus::within ? check.ratio : std::nullopt;
  };
  const std::optional<Number> time = filled(CheckId::infusionTime);
  if (time && *time / times < Number(1)) return false;
  const std::optional<Number> rate = filled(CheckId::infusionRate);
  return !rate || *rate * dose * times <= Number(1);
}

/// How long the infusion takes at the flow that is set.
void checkTimeBack(Notebook& notes, const Quantity& dose, const Found& set, RunRate& run) {
  const Quantity volume{inMl(*notes.given.infusion.volume), Unit::mL};
  Chain back{{entryFactor(volume, path::infusionVolume), factorOf(set).turned()}};
  convertAbove(back, Unit::h, Unit::min);
  const auto minutes =
      notes.solveStep(Section::amount, StepId::backCheck, std::move(back), {{Unit::min}, {}});
  if (minutes) run.delivered = Delivered{dose, minutes->amount, {}};
}

std::optional<Running> hourlyFlow(Notebook& notes, const Keeps& keeps) {
  const Infusion& infusion = notes.given.infusion;
  Chain hourly = volumeOverTime(infusion);
  convertAbove(hourly, infusion.volume->unit, Unit::mL);
  convertBelow(hourly, infusion.over->unit, Unit::h);
  return flowOf(notes, StepId::rate, std::move(hourly), {{Unit::mL}, {Unit::h}}, notes.rules.rateDecimals,
                keeps);
}

std::optional<Running> dropFlow(Notebook& notes, const Quantity& dropFactor, const Keeps& keeps) {
  const Infusion& infusion = notes.given.infusion;
  Chain drops = volumeOverTime(infusion);
  convertAbove(drops, infusion.volume->unit, Unit::mL);
  drops.factors.push_back(
      rateFactor(dropFactor.value, dropFactor.unit, Unit::mL, Origin::field(path::dropFactor)));
  convertBelow(drops, infusion.over->unit, Unit::min);
  return flowOf(notes, StepId::drops, std::move(drops), {{Unit::drop}, {Unit::min}}, 0, keeps);
}

RunRate doseFlow(Notebook& notes, const Found& ordered, const Checks& checks, const Give& give) {
  const Infusion& infusion = notes.given.infusion;
  const Number volume = inMl(*infusion.volume);
  RunRate run;
  if (give.exact.unit == Unit::mL && *give.measured < volume)
    run.toAdd = Quantity{volume - *give.measured, Unit::mL};
  const Keeps keeps = [&](const Number& times) {
    return keepsTime(checks, give.doseGiven->value / ordered.value(), times);
  };
  const std::optional<Running> hourly = hourlyFlow(notes, keeps);
  if (hourly) run.mlPerHour = hourly->flow;
  if (infusion.dropFactor)
    if (auto drops = dropFlow(notes, *infusion.dropFactor, keeps))
      run.dropsPerMinute = std::move(drops->flow);
  if (hourly && hourly->set) checkTimeBack(notes, *give.doseGiven, *hourly->set, run);
  return run;
}

/// An infusion cannot hold more of the medicine than it is: neither what the dose comes to, nor what is
/// measured of it.
bool holdsMedicine(Notebook& notes, const Give& give) {
  const Quantity volume{inMl(*notes.given.infusion.volume), Unit::mL};
  if (give.exact.unit != Unit::mL) return true;
  const bool holdsDose = volume.value >= give.exact.value;
  if (holdsDose && volume.value >= give.measured.value_or(give.exact.value)) return true;
  std::vector<Argument> arguments = {{"volume", volume}, {"exact", give.exact}};
  if (holdsDose) arguments.push_back({"measured", Quantity{*give.measured, Unit::mL}});
  notes.tell(FindingCode::volumeSmallerThanDrug, path::infusionVolume, std::move(arguments));
  return false;
}

}  // namespace

std::optional<RunRate> infusionFlow(Notebook& notes, const Found& ordered, const Checks& checks,
                                    const Give& give) {
  const Infusion& infusion = notes.given.infusion;
  if (!infusion.isStated()) return std::nullopt;
  if (!infusion.volume) {
    notes.need(path::infusionVolume, Need::For::amount);
    return std::nullopt;
  }
  if (!holdsMedicine(notes, give)) return std::nullopt;
  if (!infusion.over) {
    notes.need(path::infusionOver, Need::For::amount);
    return std::nullopt;
  }
  if (!give.measured) return std::nullopt;
  return doseFlow(notes, ordered, checks, give);
}

}  // namespace wardchalk::detail
