#include <algorithm>

#include "core/check/detail/reckoning.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

std::optional<Chain> rateChain(Reckoning& reckoning, const DoseAmount& rate, StaticText path, Unit time) {
  Chain chain{{doseFactor(rate, path)}};
  if (!reckoning.inOrderUnit(rate.amount) || !reckoning.addSizeFactor(chain, rate.perSize))
    return std::nullopt;
  reckoning.addDrugConversion(chain, rate.amount.unit);
  for (const Factor& factor : conversionFactors(unitOf(rate.perTime), time, reckoning.rules.pounds))
    chain.factors.push_back(factor.turned());
  return chain;
}

Side sidePer(Chain chain, Unit over, std::string_view under) {
  const Number value = cancel(chain).exact;
  Side side{{value, {over}, chain.factors.front().over.origin},
            std::nullopt,
            printed(Quantity{value, over}).append("/").append(under)};
  if (chain.factors.size() > 1) side.chain = std::move(chain);
  return side;
}

namespace {

/// Adds digits to two sides that print alike and are not equal, until they differ (R1).
void tellApart(Side& left, Side& right) {
  if (left.text != right.text || left.term.value == right.term.value) return;
  const int significant = digitsApart(left.term.value, right.term.value);
  for (Side* side : {&left, &right}) {
    const std::string per = side->text.substr(std::min(side->text.find('/'), side->text.size()));
    side->text =
        printed(Quantity{side->term.value, side->term.units.front()}, Grouping::commas, significant) + per;
  }
}

}  // namespace

void compareSides(Reckoning& reckoning, CheckId id, Side left, Relation relation, Side right,
                  FindingCode outside, StaticText field) {
  tellApart(left, right);
  const Number value = left.term.value;
  const Number limit = right.term.value;
  const bool holds = relation == Relation::atMost ? value <= limit : value >= limit;
  reckoning.check(id).value = left.text;
  reckoning.check(id).limit = right.text;
  reckoning.check(id).ratio = value / limit;
  const StaticText limitName =
      outside == FindingCode::belowLow ? StaticText("expected") : StaticText("limit");
  std::vector<Argument> arguments = {
      {"ordered", left.text}, {limitName, right.text}, {"percent", percentText(value, limit)}};
  if (!holds && relation == Relation::atMost) arguments.push_back({"over", excessText(value, limit)});
  compare(reckoning, id, std::move(left), relation, std::move(right), holds);
  if (!holds) reckoning.tell(outside, field, std::move(arguments), id);
}

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
  const Side ordered = sidePer(std::move(*left), drug, idOf(time));
  compareSides(reckoning, CheckId::rate, ordered, Relation::atMost,
               sidePer(std::move(*right), drug, idOf(time)), FindingCode::overRate, path::dose);
  if (!reference.low) return;
  std::optional<Chain> low = rateChain(reckoning, *reference.low, path::low, time);
  if (low)
    compareSides(reckoning, CheckId::low, ordered, Relation::atLeast,
                 sidePer(std::move(*low), drug, idOf(time)), FindingCode::belowLow, path::dose);
}

}  // namespace wardchalk::detail
