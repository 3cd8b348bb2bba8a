#include <algorithm>

#include "core/check/detail/reckoning.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

std::optional<Chain> rateChain(Reckoning& reckoning, const DoseAmount& rate, StaticText path, Unit time) {
  Chain chain{{doseFactor(rate, path)}};
  if (!reckoning.inOrderUnit(rate.amount) || !reckoning.addSizeFactor(chain, rate.perSize))
    return std::nullopt;
  convertAbove(chain, rate.amount.unit, *reckoning.unit);
  convertBelow(chain, unitOf(rate.perTime), time);
  return chain;
}

std::optional<Side> sidePer(Reckoning& reckoning, Chain chain, const Units& wanted) {
  std::optional<Side> side = sideBy(reckoning, std::move(chain), wanted);
  if (!side) return std::nullopt;
  side->text = printed(amountOf(*side));
  if (!side->under.empty()) side->text.append("/").append(idOf(side->under.front()));
  if (side->chain->factors.size() == 1) side->chain.reset();
  return side;
}

namespace {

/// Adds digits to two sides that print alike and are not equal, until they differ (R1).
void tellApart(Side& left, Side& right) {
  if (left.text != right.text || left.term.value == right.term.value) return;
  const int significant = digitsApart(left.term.value, right.term.value);
  for (Side* side : {&left, &right}) {
    const std::string per = side->text.substr(std::min(side->text.find('/'), side->text.size()));
    side->text = printed(amountOf(*side), Grouping::commas, significant) + per;
  }
}

}  // namespace

void compareSides(Reckoning& reckoning, CheckId id, std::optional<Side> left, Relation relation,
                  std::optional<Side> right, FindingCode outside, StaticText field) {
  if (!left || !right) return;
  tellApart(*left, *right);
  const Number value = left->term.value;
  const Number limit = right->term.value;
  const bool holds = relation == Relation::atMost ? value <= limit : value >= limit;
  reckoning.check(id).value = left->text;
  reckoning.check(id).limit = right->text;
  reckoning.check(id).ratio = value / limit;
  const StaticText limitName =
      outside == FindingCode::belowLow ? StaticText("expected") : StaticText("limit");
  std::vector<Argument> arguments = {
      {"ordered", left->text}, {limitName, right->text}, {"percent", percentText(value, limit)}};
  if (!holds && relation == Relation::atMost) arguments.push_back({"over", excessText(value, limit)});
  compare(reckoning, id, std::move(*left), relation, std::move(*right), holds);
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
  const Units wanted{{*reckoning.unit}, {time}};
  std::optional<Chain> left = rateChain(reckoning, order, path::dose, time);
  std::optional<Chain> right = rateChain(reckoning, *reference.high, path::high, time);
  if (!left || !right) return reckoning.notChecked(CheckId::rate, WhyNot::noSize);
  const std::optional<Side> ordered = sidePer(reckoning, std::move(*left), wanted);
  compareSides(reckoning, CheckId::rate, ordered, Relation::atMost,
               sidePer(reckoning, std::move(*right), wanted), FindingCode::overRate, path::dose);
  if (!reference.low) return;
  std::optional<Chain> low = rateChain(reckoning, *reference.low, path::low, time);
  if (low)
    compareSides(reckoning, CheckId::low, ordered, Relation::atLeast,
                 sidePer(reckoning, std::move(*low), wanted), FindingCode::belowLow, path::dose);
}

}  // namespace wardchalk::detail
