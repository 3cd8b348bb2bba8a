#include "core/check/detail/factors.h"
#include "core/check/detail/flow.h"

namespace wardchalk::detail {

namespace {

/// The label with its drug unit below, and the volume in mL.
void appendLabel(const Strength& label, Unit drug, Chain& chain) {
  convertAbove(chain, drug, label.amount.unit);
  chain.factors.push_back(labelFactor(label, path::strength).turned());
  convertAbove(chain, label.in.unit, Unit::mL);
}

/// What the rounded rate gives, in the terms of the order.
void checkRateBack(Notebook& notes, const Facts& facts, const Found& set, RunRate& run) {
  const DoseAmount& order = *notes.given.order.dose;
  const Strength& label = *notes.given.stock.strength;
  Chain back{{factorOf(set)}};
  convertAbove(back, Unit::mL, label.in.unit);
  back.factors.push_back(labelFactor(label, path::strength));
  convertAbove(back, label.amount.unit, *facts.doses.unit);
  convertBelow(back, Unit::h, unitOf(order.perTime));
  Units wanted{{*facts.doses.unit}, {}};
  if (order.perSize != PerSize::none) {
    Chain size;
    if (!addSizeFactor(notes, facts.size, size, order.perSize)) return;
    back.factors.push_back(size.factors.front().turned());
    wanted.under.push_back(unitOf(order.perSize));
  }
  wanted.under.push_back(unitOf(order.perTime));
  const auto given = notes.solveStep(Section::amount, StepId::backCheck, std::move(back), wanted);
  if (given) run.delivered = Delivered{given->amount, std::nullopt, wanted.under};
}

/// A volume and a time that were entered beside the rate make a flow of their own: one that is further from
/// the ordered one than rounding may move it is asked about, since nobody can tell which of them is meant.
bool flowsAgree(Notebook& notes, const Chain& hourly) {
  const Infusion& infusion = notes.given.infusion;
  if (!infusion.volume || !infusion.over) return true;
  Chain entered{{entriesFactor(*infusion.volume, path::infusionVolume, *infusion.over, path::infusionOver)}};
  convertAbove(entered, infusion.volume->unit, Unit::mL);
  convertBelow(entered, infusion.over->unit, Unit::h);
  const Units wanted{{Unit::mL}, {Unit::h}};
  const auto byInfusion = notes.solveUnwritten(entered, wanted, Origin::field(path::infusionOver));
  const auto ordered = notes.solveUnwritten(hourly, wanted, Origin::step(StepId::rate));
  if (!byInfusion || !ordered) return false;
  const Number apart = (byInfusion->value() - ordered->value()).absolute() * Number(100) / ordered->value();
  if (apart <= notes.rules.askRoundingPercent) return true;
  const auto stated = [](const Found& flow) { return QuantityPer{flow.amount, flow.under}; };
  notes.tell(FindingCode::flowDiffers, path::infusionOver,
             {{"volume", *infusion.volume},
              {"over", *infusion.over},
              {"entered", stated(*byInfusion)},
              {"ordered", stated(*ordered)},
              {"percent", PlainPercent{apart}}});
  return false;
}

/// What runs in drops, of a chain in mL per the order's own time.
std::optional<Running> dripOf(Notebook& notes, Chain chain, const Quantity& dropFactor, const Keeps& keeps) {
  chain.factors.push_back(
      rateFactor(dropFactor.value, dropFactor.unit, Unit::mL, Origin::field(path::dropFactor)));
  convertBelow(chain, unitOf(notes.given.order.dose->perTime), Unit::min);
  return flowOf(notes, StepId::drops, std::move(chain), {{Unit::drop}, {Unit::min}}, 0, keeps);
}

}  // namespace

std::optional<RunRate> rateFlow(Notebook& notes, const Facts& facts, const Checks& checks) {
  const DoseAmount& order = *notes.given.order.dose;
  std::optional<Chain> chain =
      rateChain(notes, facts.size, facts.doses, order, path::dose, unitOf(order.perTime));
  if (!chain) return std::nullopt;
  appendLabel(*notes.given.stock.strength, *facts.doses.unit, *chain);
  Chain hourly = *chain;
  convertBelow(hourly, unitOf(order.perTime), Unit::h);
  if (!flowsAgree(notes, hourly)) return std::nullopt;
  // the flow is in proportion to the rate
  const Keeps keeps = [&](const Number& times) { return checks.areKeptBy(times); };
  RunRate run;
  const auto running = flowOf(notes, StepId::rate, std::move(hourly), {{Unit::mL}, {Unit::h}},
                              notes.rules.rateDecimals, keeps);
  if (running) run.mlPerHour = running->flow;
  if (const auto& dropFactor = notes.given.infusion.dropFactor)
    if (auto drip = dripOf(notes, std::move(*chain), *dropFactor, keeps)) run.dropsPerMinute = drip->flow;
  if (running && running->set) checkRateBack(notes, facts, *running->set, run);
  return run;
}

}  // namespace wardchalk::detail
