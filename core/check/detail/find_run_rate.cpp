#include <functional>

#include "core/check/detail/reckoning.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// Whether a flow keeps what the exact one kept.
using Keeps = std::function<bool(const Number& flow)>;

/// The nearer of the two settings around the flow that is not zero and keeps every check.
std::optional<Number> settingFor(const Number& exact, int decimals, const Keeps& keeps) {
  const Number step = Number::powerOfTen(-decimals);
  const Number below = (exact / step).floor() * step;
  const Number above = below == exact ? below : below + step;
  const bool upFirst = above - exact <= exact - below;  // half up
  for (const Number& candidate : {upFirst ? above : below, upFirst ? below : above})
    if (!candidate.isZero() && keeps(candidate)) return candidate;
  return std::nullopt;
}

/// Writes the step for a flow, rounds it, and asks when rounding moves it too far.
Flow flowOf(Reckoning& reckoning, StepId id, Chain chain, Unit over, Unit under, int decimals,
            const Keeps& keeps) {
  Product product = cancel(chain);
  const Number exact = product.exact;
  Flow flow{{exact, over}, settingFor(exact, decimals, keeps), {}};
  const Number shown = flow.measured.value_or(exact);
  Step step{id, {{over}, {under}}, Solved{std::move(chain), std::move(product), shown, -1}, {}, {}};
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
  return {{{{infusion.volume->value, {infusion.volume->unit}, Origin::field(path::infusionVolume)},
            {infusion.over->value, {infusion.over->unit}, Origin::field(path::infusionOver)}}}};
}

/// Whether the dose still runs long enough and slowly enough when it takes `minutes`.
bool keepsTime(const Reckoning& reckoning, const Number& minutes, const Number& dose) {
  const Reference& reference = reckoning.given.reference;
  const auto within = [&](CheckId id) { return reckoning.sheet.check(id).status == CheckStatus::within; };
  if (within(CheckId::infusionTime) &&
      minutes < *converted(reference.minInfusionTime->value, reference.minInfusionTime->unit, Unit::min))
    return false;
  if (!within(CheckId::infusionRate)) return true;
  const DoseAmount& most = *reference.maxInfusionRate;
  const Number perTime = *reckoning.inOrderUnit(most.amount) * *sizeValue(reckoning, most.perSize);
  return dose / *converted(minutes, Unit::min, unitOf(most.perTime)) <= perTime;
}

void findDoseFlow(Reckoning& reckoning) {
  const Infusion& infusion = reckoning.given.infusion;
  const Number volume = inMl(*infusion.volume);
  const Number& dose = reckoning.sheet.give->doseGiven->value;
  const int decimals = reckoning.rules.rateDecimals;
  RunRate run;
  const Give& give = *reckoning.sheet.give;
  if (give.exact.unit == Unit::mL && *give.measured < volume)
    run.toAdd = Quantity{volume - *give.measured, Unit::mL};

  Chain hourly = volumeOverTime(infusion);
  append(hourly, conversionFactors(infusion.volume->unit, Unit::mL, Pounds::exact));
  convertBelow(hourly, infusion.over->unit, Unit::h);
  run.mlPerHour =
      flowOf(reckoning, StepId::rate, std::move(hourly), Unit::mL, Unit::h, decimals,
             [&](const Number& flow) { return keepsTime(reckoning, volume * Number(60) / flow, dose); });
  if (infusion.dropFactor) {
    Chain drops = volumeOverTime(infusion);
    append(drops, conversionFactors(infusion.volume->unit, Unit::mL, Pounds::exact));
    drops.factors.push_back(
        rateFactor(infusion.dropFactor->value, Unit::drop, Unit::mL, Origin::field(path::dropFactor)));
    convertBelow(drops, infusion.over->unit, Unit::min);
    const Number allDrops = volume * infusion.dropFactor->value;
    run.dropsPerMinute =
        flowOf(reckoning, StepId::drops, std::move(drops), Unit::drop, Unit::min, 0,
               [&](const Number& flow) { return keepsTime(reckoning, allDrops / flow, dose); });
  }
  if (run.mlPerHour->measured) {
    const Origin rate = Origin::step(StepId::rate);
    Chain back{{over1({volume, {Unit::mL}, Origin::field(path::infusionVolume)}),
                {{Number(1), {Unit::h}, rate}, {*run.mlPerHour->measured, {Unit::mL}, rate}}}};
    append(back, conversionFactors(Unit::h, Unit::min, Pounds::exact));
    const Found minutes =
        reckoning.solveStep(Section::amount, StepId::backCheck, std::move(back), {{Unit::min}, {}});
    run.delivered = Delivered{*reckoning.sheet.give->doseGiven, Quantity{minutes.value, Unit::min}, {}};
  }
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
  const Origin origin = Origin::field(path::strength);
  append(chain, conversionFactors(*reckoning.unit, label.amount.unit, Pounds::exact));
  chain.factors.push_back(
      {{label.in.value, {label.in.unit}, origin}, {label.amount.value, {label.amount.unit}, origin}});
  append(chain, conversionFactors(label.in.unit, Unit::mL, Pounds::exact));
}

/// Whether the rate that this flow gives keeps the limits that the order kept. The flow is in proportion to
/// the rate.
bool keepsRate(const Reckoning& reckoning, const Number& flow, const Number& exact) {
  const auto keeps = [&](CheckId id, bool upper) {
    const Check& check = reckoning.sheet.check(id);
    if (check.status != CheckStatus::within || !check.ratio) return true;
    const Number ratio = *check.ratio * flow / exact;
    return upper ? ratio <= Number(1) : ratio >= Number(1);
  };
  return keeps(CheckId::rate, true) && keeps(CheckId::low, false);
}

/// What the rounded rate gives, in the terms of the order.
void checkBack(Reckoning& reckoning, RunRate& run) {
  const DoseAmount& order = *reckoning.given.order.dose;
  const Strength& label = *reckoning.given.stock.strength;
  const Origin rate = Origin::step(StepId::rate);
  const Origin origin = Origin::field(path::strength);
  Chain back{{{{*run.mlPerHour->measured, {Unit::mL}, rate}, {Number(1), {Unit::h}, rate}}}};
  append(back, conversionFactors(Unit::mL, label.in.unit, Pounds::exact));
  back.factors.push_back(
      {{label.amount.value, {label.amount.unit}, origin}, {label.in.value, {label.in.unit}, origin}});
  append(back, conversionFactors(label.amount.unit, *reckoning.unit, Pounds::exact));
  convertBelow(back, Unit::h, unitOf(order.perTime));
  Units wanted{{*reckoning.unit}, {}};
  std::string per;
  if (order.perSize != PerSize::none) {
    Chain size;
    reckoning.addSizeFactor(size, order.perSize);
    back.factors.push_back(size.factors.front().turned());
    wanted.under.push_back(unitOf(order.perSize));
    per = std::string(idOf(unitOf(order.perSize))) + "/";
  }
  wanted.under.push_back(unitOf(order.perTime));
  const Found given = reckoning.solveStep(Section::amount, StepId::backCheck, std::move(back), wanted);
  run.delivered =
      Delivered{reckoning.inUnit(given.value), std::nullopt, per + std::string(idOf(unitOf(order.perTime)))};
}

void findRateFlow(Reckoning& reckoning) {
  const DoseAmount& order = *reckoning.given.order.dose;
  std::optional<Chain> chain = rateChain(reckoning, order, path::dose, unitOf(order.perTime));
  if (!chain) return;
  appendLabel(reckoning, *chain);
  Chain hourly = *chain;
  convertBelow(hourly, unitOf(order.perTime), Unit::h);
  const Number exact = cancel(hourly).exact;
  RunRate run;
  run.mlPerHour =
      flowOf(reckoning, StepId::rate, std::move(hourly), Unit::mL, Unit::h, reckoning.rules.rateDecimals,
             [&](const Number& flow) { return keepsRate(reckoning, flow, exact); });
  if (const auto& dropFactor = reckoning.given.infusion.dropFactor) {
    Chain drops = std::move(*chain);
    drops.factors.push_back(
        rateFactor(dropFactor->value, Unit::drop, Unit::mL, Origin::field(path::dropFactor)));
    convertBelow(drops, unitOf(order.perTime), Unit::min);
    const Number exactDrops = cancel(drops).exact;
    run.dropsPerMinute = flowOf(reckoning, StepId::drops, std::move(drops), Unit::drop, Unit::min, 0,
                                [&](const Number& flow) { return keepsRate(reckoning, flow, exactDrops); });
  }
  if (run.mlPerHour->measured) checkBack(reckoning, run);
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
