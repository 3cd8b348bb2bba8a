#include <functional>

#include "core/check/detail/reckoning.h"
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
std::optional<Flow> flowOf(Reckoning& reckoning, StepId id, Chain chain, Unit over, Unit under, int decimals,
                           const Keeps& keeps) {
  const Units wanted{{over}, {under}};
  std::optional<Solution> solution = reckoning.found(solve(chain, wanted));
  if (!solution) return std::nullopt;
  const Number exact = solution->product.exact;
  Flow flow{{exact, over}, settingFor(exact, decimals, keeps), {}};
  const Number shown = flow.measured.value_or(exact);
  Step step{id, wanted, Solved{std::move(chain), std::move(solution->product), shown, -1}, {}, {}};
  if (shown != exact) step.rounding = Rounding{"rate_decimals", decimals};
  reckoning.in(Section::amount).push_back(std::move(step));
  const Number change = (shown - exact).absolute() * Number(100) / exact;
  flow.percentChange = plainPercent(change);
  if (!flow.measured || change > reckoning.rules.askRoundingPercent)
    reckoning.tell(
        FindingCode::roundingChangesRate, path::infusionOver,
        {{"exact", printed(flow.exact).append("/").append(idOf(under))},
         {"measured",
          flow.measured ? printed(Quantity{shown, over}).append("/").append(idOf(under)) : std::string()},
         {"percent", flow.percentChange}});
  return flow;
}

// An infusion of one dose

Chain volumeOverTime(const Infusion& infusion) {
  return {{entriesFactor(*infusion.volume, path::infusionVolume, *infusion.over, path::infusionOver)}};
}

/// Whether the measured dose still runs long enough and slowly enough at so many times the exact flow.
bool keepsTime(const Reckoning& reckoning, const Number& times) {
  const auto filled = [&](CheckId id) -> std::optional<Number> {
    const Check& check = reckoning.sheet.check(id);
    return check.status == CheckStatus::within ? check.ratio : std::nullopt;
  };
  const std::optional<Number> time = filled(CheckId::infusionTime);
  if (time && *time / times < Number(1)) return false;
  const std::optional<Number> rate = filled(CheckId::infusionRate);
  const Number dose = reckoning.sheet.give->doseGiven->value / reckoning.ordered->value();
  return !rate || *rate * dose * times <= Number(1);
}

/// How long the infusion takes at the flow that is set.
void checkTimeBack(Reckoning& reckoning, RunRate& run) {
  const Quantity& volume = *reckoning.given.infusion.volume;
  const Found flow({*run.mlPerHour->measured, run.mlPerHour->exact.unit}, {Unit::h},
                   Origin::step(StepId::rate));
  Chain back{{entryFactor({inMl(volume), Unit::mL}, path::infusionVolume), factorOf(flow).turned()}};
  convertAbove(back, Unit::h, Unit::min);
  const auto minutes =
      reckoning.solveStep(Section::amount, StepId::backCheck, std::move(back), {{Unit::min}, {}});
  if (minutes) run.delivered = Delivered{*reckoning.sheet.give->doseGiven, minutes->amount, {}};
}

void findDoseFlow(Reckoning& reckoning) {
  const Infusion& infusion = reckoning.given.infusion;
  const Number volume = inMl(*infusion.volume);
  const int decimals = reckoning.rules.rateDecimals;
  RunRate run;
  const Give& give = *reckoning.sheet.give;
  if (give.exact.unit == Unit::mL && *give.measured < volume)
    run.toAdd = Quantity{volume - *give.measured, Unit::mL};

  const Keeps keeps = [&](const Number& times) { return keepsTime(reckoning, times); };
  Chain hourly = volumeOverTime(infusion);
  convertAbove(hourly, infusion.volume->unit, Unit::mL);
  convertBelow(hourly, infusion.over->unit, Unit::h);
  run.mlPerHour = flowOf(reckoning, StepId::rate, std::move(hourly), Unit::mL, Unit::h, decimals, keeps);
  if (infusion.dropFactor) {
    Chain drops = volumeOverTime(infusion);
    convertAbove(drops, infusion.volume->unit, Unit::mL);
    drops.factors.push_back(
        rateFactor(infusion.dropFactor->value, Unit::drop, Unit::mL, Origin::field(path::dropFactor)));
    convertBelow(drops, infusion.over->unit, Unit::min);
    run.dropsPerMinute = flowOf(reckoning, StepId::drops, std::move(drops), Unit::drop, Unit::min, 0, keeps);
  }
  if (run.mlPerHour && run.mlPerHour->measured) checkTimeBack(reckoning, run);
  reckoning.sheet.rate = std::move(run);
}

void findInfusion(Reckoning& reckoning) {
  const Infusion& infusion = reckoning.given.infusion;
  if (!infusion.isStated() || !reckoning.sheet.give) return;
  if (!infusion.volume) return reckoning.need(path::infusionVolume, Need::For::amount);
  const Quantity volume{inMl(*infusion.volume), Unit::mL};
  if (reckoning.sheet.give->exact.unit == Unit::mL && volume.value < reckoning.sheet.give->exact.value) {
    reckoning.tell(FindingCode::volumeSmallerThanDrug, path::infusionVolume,
                   {{"volume", volume}, {"exact", reckoning.sheet.give->exact}});
    return;
  }
  if (!infusion.over) return reckoning.need(path::infusionOver, Need::For::amount);
  if (reckoning.sheet.give->measured) findDoseFlow(reckoning);
}

// A rate order

/// The label with its drug unit below, and the volume in mL.
void appendLabel(const Reckoning& reckoning, Chain& chain) {
  const Strength& label = *reckoning.given.stock.strength;
  convertAbove(chain, *reckoning.unit, label.amount.unit);
  chain.factors.push_back(labelFactor(label, path::strength).turned());
  convertAbove(chain, label.in.unit, Unit::mL);
}

/// Whether the rate that so many times the exact flow give keeps the limits that the order kept. The flow is
/// in proportion to the rate.
bool keepsRate(const Reckoning& reckoning, const Number& times) {
  const auto keeps = [&](CheckId id, bool upper) {
    const Check& check = reckoning.sheet.check(id);
    if (check.status != CheckStatus::within || !check.ratio) return true;
    const Number ratio = *check.ratio * times;
    return upper ? ratio <= Number(1) : ratio >= Number(1);
  };
  return keeps(CheckId::rate, true) && keeps(CheckId::low, false);
}

/// What the rounded rate gives, in the terms of the order.
void checkBack(Reckoning& reckoning, RunRate& run) {
  const DoseAmount& order = *reckoning.given.order.dose;
  const Strength& label = *reckoning.given.stock.strength;
  const Found flow({*run.mlPerHour->measured, run.mlPerHour->exact.unit}, {Unit::h},
                   Origin::step(StepId::rate));
  Chain back{{factorOf(flow)}};
  convertAbove(back, Unit::mL, label.in.unit);
  back.factors.push_back(labelFactor(label, path::strength));
  convertAbove(back, label.amount.unit, *reckoning.unit);
  convertBelow(back, Unit::h, unitOf(order.perTime));
  Units wanted{{*reckoning.unit}, {}};
  std::string per;
  if (order.perSize != PerSize::none) {
    Chain size;
    if (!reckoning.addSizeFactor(size, order.perSize)) return;
    back.factors.push_back(size.factors.front().turned());
    wanted.under.push_back(unitOf(order.perSize));
    per = std::string(idOf(unitOf(order.perSize))) + "/";
  }
  wanted.under.push_back(unitOf(order.perTime));
  const auto given = reckoning.solveStep(Section::amount, StepId::backCheck, std::move(back), wanted);
  if (given)
    run.delivered = Delivered{given->amount, std::nullopt, per + std::string(idOf(unitOf(order.perTime)))};
}

void findRateFlow(Reckoning& reckoning) {
  const DoseAmount& order = *reckoning.given.order.dose;
  std::optional<Chain> chain = rateChain(reckoning, order, path::dose, unitOf(order.perTime));
  if (!chain) return;
  appendLabel(reckoning, *chain);
  Chain hourly = *chain;
  convertBelow(hourly, unitOf(order.perTime), Unit::h);
  const Keeps keeps = [&](const Number& times) { return keepsRate(reckoning, times); };
  RunRate run;
  run.mlPerHour = flowOf(reckoning, StepId::rate, std::move(hourly), Unit::mL, Unit::h,
                         reckoning.rules.rateDecimals, keeps);
  if (const auto& dropFactor = reckoning.given.infusion.dropFactor) {
    Chain drops = std::move(*chain);
    drops.factors.push_back(
        rateFactor(dropFactor->value, Unit::drop, Unit::mL, Origin::field(path::dropFactor)));
    convertBelow(drops, unitOf(order.perTime), Unit::min);
    run.dropsPerMinute = flowOf(reckoning, StepId::drops, std::move(drops), Unit::drop, Unit::min, 0, keeps);
  }
  if (run.mlPerHour && run.mlPerHour->measured) checkBack(reckoning, run);
  reckoning.sheet.rate = std::move(run);
}

/// A running rate is read from the strength in the bag; it must be a liquid.
bool bagIsKnown(const Reckoning& reckoning) {
  const Stock& stock = reckoning.given.stock;
  return stock.strength && dimensionOf(stock.strength->in.unit) == Dimension::volume &&
         !reckoning.amountWithheld;
}

}  // namespace

void findRunRate(Reckoning& reckoning) {
  const VerdictKind verdict = reckoning.sheet.verdict;
  if (verdict != VerdictKind::safe && verdict != VerdictKind::ask) return;
  if (!reckoning.isRate)
    findInfusion(reckoning);
  else if (bagIsKnown(reckoning))
    findRateFlow(reckoning);
}

}  // namespace wardchalk::detail
