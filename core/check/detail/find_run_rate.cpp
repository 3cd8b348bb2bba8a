#include <functional>

#include "core/check/detail/factors.h"
#include "core/check/detail/giving.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// Whether a flow of so many times the exact one keeps what that one kept.
using Keeps = std::function<bool(const Number& times)>;

/// The nearer of the two settings around the flow that is not zero and keeps every check.
std::optional<Number> settingFor(const Number& exact, int decimals, const Keeps& keeps) {
  const Number step = Number::powerOfTen(-decimals);
  const Number below = (exact / step).floor() * step;
  const Number above = below == exact ? below : below + step;
  const bool upFirst = above - exact <= exact - below;  // half up
  for (const Number& candidate : {upFirst ? above : below, upFirst ? below : above})
    if (!candidate.isZero() && keeps(candidate / exact)) return candidate;
  return std::nullopt;
}

/// Writes the step for a flow, rounds it, and asks when rounding moves it too far.
std::optional<Flow> flowOf(Notebook& notes, StepId id, Chain chain, Unit over, Unit under, int decimals,
                           const Keeps& keeps) {
  const Units wanted{{over}, {under}};
  std::optional<Solution> solution = notes.found(solve(chain, wanted));
  if (!solution) return std::nullopt;
  const Number exact = solution->product.exact;
  Flow flow{{exact, over}, settingFor(exact, decimals, keeps), {}};
  const Number shown = flow.measured.value_or(exact);
  Step step{id, wanted, Solved{std::move(chain), std::move(solution->product), shown, -1}, {}, {}};
  if (shown != exact) step.rounding = Rounding{"rate_decimals", decimals};
  notes.in(Section::amount).push_back(std::move(step));
  const Number change = (shown - exact).absolute() * Number(100) / exact;
  flow.percentChange = plainPercent(change);
  if (!flow.measured || change > notes.rules.askRoundingPercent)
    notes.tell(FindingCode::roundingChangesRate, path::infusionOver,
               {{"exact", printed(flow.exact).append("/").append(idOf(under))},
                {"measured", flow.measured ? printed(Quantity{shown, over}).append("/").append(idOf(under))
                                           : std::string()},
                {"percent", flow.percentChange}});
  return flow;
}

// An infusion of one dose

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
void checkTimeBack(Notebook& notes, const Quantity& dose, RunRate& run) {
  const Quantity& volume = *notes.given.infusion.volume;
  const Found flow({*run.mlPerHour->measured, run.mlPerHour->exact.unit}, {Unit::h},
                   Origin::step(StepId::rate));
  Chain back{{entryFactor({inMl(volume), Unit::mL}, path::infusionVolume), factorOf(flow).turned()}};
  convertAbove(back, Unit::h, Unit::min);
  const auto minutes =
      notes.solveStep(Section::amount, StepId::backCheck, std::move(back), {{Unit::min}, {}});
  if (minutes) run.delivered = Delivered{dose, minutes->amount, {}};
}

RunRate doseFlow(Notebook& notes, const Found& ordered, const Checks& checks, const Give& give) {
  const Infusion& infusion = notes.given.infusion;
  const Number volume = inMl(*infusion.volume);
  const int decimals = notes.rules.rateDecimals;
  RunRate run;
  if (give.exact.unit == Unit::mL && *give.measured < volume)
    run.toAdd = Quantity{volume - *give.measured, Unit::mL};

  const Keeps keeps = [&](const Number& times) {
    return keepsTime(checks, give.doseGiven->value / ordered.value(), times);
  };
  Chain hourly = volumeOverTime(infusion);
  convertAbove(hourly, infusion.volume->unit, Unit::mL);
  convertBelow(hourly, infusion.over->unit, Unit::h);
  run.mlPerHour = flowOf(notes, StepId::rate, std::move(hourly), Unit::mL, Unit::h, decimals, keeps);
  if (infusion.dropFactor) {
    Chain drops = volumeOverTime(infusion);
    convertAbove(drops, infusion.volume->unit, Unit::mL);
    drops.factors.push_back(
        rateFactor(infusion.dropFactor->value, Unit::drop, Unit::mL, Origin::field(path::dropFactor)));
    convertBelow(drops, infusion.over->unit, Unit::min);
    run.dropsPerMinute = flowOf(notes, StepId::drops, std::move(drops), Unit::drop, Unit::min, 0, keeps);
  }
  if (run.mlPerHour && run.mlPerHour->measured) checkTimeBack(notes, *give.doseGiven, run);
  return run;
}

std::optional<RunRate> infusionFlow(Notebook& notes, const Found& ordered, const Checks& checks,
                                    const Give& give) {
  const Infusion& infusion = notes.given.infusion;
  if (!infusion.isStated()) return std::nullopt;
  if (!infusion.volume) {
    notes.need(path::infusionVolume, Need::For::amount);
    return std::nullopt;
  }
  const Quantity volume{inMl(*infusion.volume), Unit::mL};
  if (give.exact.unit == Unit::mL && volume.value < give.exact.value) {
    notes.tell(FindingCode::volumeSmallerThanDrug, path::infusionVolume,
               {{"volume", volume}, {"exact", give.exact}});
    return std::nullopt;
  }
  if (!infusion.over) {
    notes.need(path::infusionOver, Need::For::amount);
    return std::nullopt;
  }
  if (!give.measured) return std::nullopt;
  return doseFlow(notes, ordered, checks, give);
}

// A rate order

/// The label with its drug unit below, and the volume in mL.
void appendLabel(const Strength& label, Unit drug, Chain& chain) {
  convertAbove(chain, drug, label.amount.unit);
  chain.factors.push_back(labelFactor(label, path::strength).turned());
  convertAbove(chain, label.in.unit, Unit::mL);
}

/// Whether the rate that so many times the exact flow give keeps the limits that the order kept. The flow is
/// in proportion to the rate.
bool keepsRate(const Checks& checks, const Number& times) {
  const auto keeps = [&](CheckId id, bool upper) {
    const Check& check = checks.check(id);
    if (check.status != CheckStatus::within || !check.ratio) return true;
    const Number ratio = *check.ratio * times;
    return upper ? ratio <= Number(1) : ratio >= Number(1);
  };
  return keeps(CheckId::rate, true) && keeps(CheckId::low, false);
}

/// What the rounded rate gives, in the terms of the order.
void checkRateBack(Notebook& notes, const Facts& facts, RunRate& run) {
  const DoseAmount& order = *notes.given.order.dose;
  const Strength& label = *notes.given.stock.strength;
  const Found flow({*run.mlPerHour->measured, run.mlPerHour->exact.unit}, {Unit::h},
                   Origin::step(StepId::rate));
  Chain back{{factorOf(flow)}};
  convertAbove(back, Unit::mL, label.in.unit);
  back.factors.push_back(labelFactor(label, path::strength));
  convertAbove(back, label.amount.unit, *facts.doses.unit);
  convertBelow(back, Unit::h, unitOf(order.perTime));
  Units wanted{{*facts.doses.unit}, {}};
  std::string per;
  if (order.perSize != PerSize::none) {
    Chain size;
    if (!addSizeFactor(notes, facts.size, size, order.perSize)) return;
    back.factors.push_back(size.factors.front().turned());
    wanted.under.push_back(unitOf(order.perSize));
    per = std::string(idOf(unitOf(order.perSize))) + "/";
  }
  wanted.under.push_back(unitOf(order.perTime));
  const auto given = notes.solveStep(Section::amount, StepId::backCheck, std::move(back), wanted);
  if (given)
    run.delivered = Delivered{given->amount, std::nullopt, per + std::string(idOf(unitOf(order.perTime)))};
}

std::optional<RunRate> rateFlow(Notebook& notes, const Facts& facts, const Checks& checks) {
  const DoseAmount& order = *notes.given.order.dose;
  std::optional<Chain> chain =
      rateChain(notes, facts.size, facts.doses, order, path::dose, unitOf(order.perTime));
  if (!chain) return std::nullopt;
  appendLabel(*notes.given.stock.strength, *facts.doses.unit, *chain);
  Chain hourly = *chain;
  convertBelow(hourly, unitOf(order.perTime), Unit::h);
  const Keeps keeps = [&](const Number& times) { return keepsRate(checks, times); };
  RunRate run;
  run.mlPerHour =
      flowOf(notes, StepId::rate, std::move(hourly), Unit::mL, Unit::h, notes.rules.rateDecimals, keeps);
  if (const auto& dropFactor = notes.given.infusion.dropFactor) {
    Chain drops = std::move(*chain);
    drops.factors.push_back(
        rateFactor(dropFactor->value, Unit::drop, Unit::mL, Origin::field(path::dropFactor)));
    convertBelow(drops, unitOf(order.perTime), Unit::min);
    run.dropsPerMinute = flowOf(notes, StepId::drops, std::move(drops), Unit::drop, Unit::min, 0, keeps);
  }
  if (run.mlPerHour && run.mlPerHour->measured) checkRateBack(notes, facts, run);
  return run;
}

/// A running rate is read from the strength in the bag; it must be a liquid.
bool bagIsKnown(const Stock& stock, const Strengths& strengths) {
  return stock.strength && dimensionOf(stock.strength->in.unit) == Dimension::volume &&
         !strengths.amountWithheld;
}

}  // namespace

std::optional<RunRate> findRunRate(Notebook& notes, const Facts& facts, const Checks& checks,
                                   const std::optional<Give>& give) {
  if (!facts.doses.isRate)
    return give ? infusionFlow(notes, *facts.doses.ordered, checks, *give) : std::nullopt;
  if (!notes.allowsAmount() || !bagIsKnown(notes.given.stock, facts.strengths)) return std::nullopt;
  return rateFlow(notes, facts, checks);
}

}  // namespace wardchalk::detail
