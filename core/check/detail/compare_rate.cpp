#include "core/check/detail/reckoning.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// A rate for this child, in the order's drug unit and time: the chain, or none while a size is wanting.
std::optional<Chain> rateChain(Reckoning& reckoning, const DoseAmount& rate, std::string_view path, Unit time) {
  Chain chain{{doseFactor(rate, path)}};
  if (!reckoning.inOrderUnit(rate.amount) || !reckoning.addSizeFactor(chain, rate.perSize)) return std::nullopt;
  reckoning.addDrugConversion(chain, rate.amount.unit);
  for (const Factor& factor : conversionFactors(unitOf(rate.perTime), time, reckoning.rules.pounds))
    chain.factors.push_back(factor.turned());
  return chain;
}

std::string rateText(const Number& value, Unit drug, Unit time) {
  return printed(Quantity{value, drug}).append("/").append(idOf(time));
}

Side sideOf(Chain chain, Unit drug, Unit time) {
  const Number value = cancel(chain).exact;
  Side side{{value, {drug}, chain.factors.front().over.origin}, std::nullopt, rateText(value, drug, time)};
  if (chain.factors.size() > 1) side.chain = std::move(chain);
  return side;
}

void compareRates(Reckoning& reckoning, CheckId id, Side left, Relation relation, Side right, FindingCode outside) {
  const Number value = left.term.value;
  const Number limit = right.term.value;
  const bool holds = relation == Relation::atMost ? value <= limit : value >= limit;
  reckoning.check(id).value = left.text;
  reckoning.check(id).limit = right.text;
  reckoning.check(id).ratio = value / limit;
  const std::string_view limitName = relation == Relation::atMost ? "limit" : "expected";
  std::vector<Argument> arguments = {
      {"ordered", left.text}, {limitName, right.text}, {"percent", percentText(value, limit)}};
  if (!holds && relation == Relation::atMost) arguments.push_back({"over", excessText(value, limit)});
  compare(reckoning, id, std::move(left), relation, std::move(right), holds);
  if (!holds) reckoning.tell(outside, path::dose, std::move(arguments), id);
}

}  // namespace

void compareRate(Reckoning& reckoning) {
  if (!reckoning.isRate) return reckoning.doesNotApply(CheckId::rate, WhyNot::notARate);
  const DoseAmount& order = *reckoning.given.order.dose;
  const Reference& reference = reckoning.given.reference;
  reckoning.notChecked(CheckId::rate, WhyNot::missing);
  reckoning.notChecked(CheckId::low, WhyNot::notStated);
  if (!reference.high || !reference.high->isRate()) return;
  const Unit time = unitOf(order.perTime);
  const Unit drug = *reckoning.unit;
  std::optional<Chain> left = rateChain(reckoning, order, path::dose, time);
  std::optional<Chain> right = rateChain(reckoning, *reference.high, path::high, time);
  if (!left || !right) return reckoning.notChecked(CheckId::rate, WhyNot::noSize);
  const Side ordered = sideOf(std::move(*left), drug, time);
  compareRates(reckoning, CheckId::rate, ordered, Relation::atMost, sideOf(std::move(*right), drug, time),
               FindingCode::overRate);
  if (!reference.low) return;
  std::optional<Chain> low = rateChain(reckoning, *reference.low, path::low, time);
  if (low)
    compareRates(reckoning, CheckId::low, ordered, Relation::atLeast, sideOf(std::move(*low), drug, time),
                 FindingCode::belowLow);
}

}  // namespace wardchalk::detail
