#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

std::optional<Side> sidePer(Notebook& notes, Chain chain, const Units& wanted) {
  std::optional<Side> side = sideBy(notes, std::move(chain), wanted);
  if (!side) return std::nullopt;
  side->stated = QuantityPer{amountOf(*side), side->under};
  if (side->chain->factors.size() == 1) side->chain.reset();
  return side;
}

namespace {

/// Adds digits to two sides that print alike and are not equal, until they differ (R1).
void tellApart(Side& left, Side& right) {
  const int significant = digitsApart(left.term.value, right.term.value);
  for (Side* side : {&left, &right})
    if (auto* per = std::get_if<QuantityPer>(&side->stated)) per->significant = significant;
}

}  // namespace

void compareSides(Comparing& comparing, CheckId id, std::optional<Side> left, Relation relation,
                  std::optional<Side> right, FindingCode outside, StaticText field) {
  if (!left || !right) return;
  tellApart(*left, *right);
  const Number value = left->term.value;
  const Number limit = right->term.value;
  const bool holds = relation == Relation::atMost ? value <= limit : value >= limit;
  comparing.check(id).value = left->stated;
  comparing.check(id).limit = right->stated;
  comparing.check(id).ratio = value / limit;
  const StaticText limitName =
      outside == FindingCode::belowLow ? StaticText("expected") : StaticText("limit");
  std::vector<Argument> arguments = {
      {"ordered", left->stated}, {limitName, right->stated}, {"percent", Percent{value, limit}}};
  if (!holds && relation == Relation::atMost) arguments.push_back({"over", Excess{value, limit}});
  compare(comparing, id, std::move(*left), relation, std::move(*right), holds);
  if (!holds) comparing.notes.tell(outside, field, std::move(arguments), id);
}

void keepAsWritten(Comparing& comparing, CheckId id, const DoseAmount& written, WrittenIn side) {
  const Check& check = comparing.check(id);
  if (written.perSize == PerSize::none || !check.ratio) return;
  // both sides are in proportion to what is written
  const Number& amount = written.amount.value;
  const Number value = side == WrittenIn::value ? amount : amount * *check.ratio;
  const Number limit = side == WrittenIn::value ? amount / *check.ratio : amount;
  const int significant = digitsApart(value, limit);
  const auto inTerms = [&](const Number& number) {
    return QuantityPer{
        {number, written.amount.unit}, {unitOf(written.perSize), unitOf(written.perTime)}, significant};
  };
  comparing.checks.asWritten.push_back({id, inTerms(value), inTerms(limit)});
  if (check.status != CheckStatus::outside) return;
  std::vector<Argument>& arguments = comparing.notes.findings.back().arguments;
  arguments.push_back({"ordered_as_written", inTerms(value)});
  arguments.push_back({"limit_as_written", inTerms(limit)});
}

void compareRate(Comparing& comparing) {
  if (!comparing.doses.isRate) return comparing.doesNotApply(CheckId::rate, WhyNot::notARate);
  const DoseAmount& order = *comparing.given.order.dose;
  const Reference& reference = comparing.given.reference;
  comparing.notChecked(CheckId::rate, WhyNot::missing);
  comparing.notChecked(CheckId::low, WhyNot::notStated);
  if (!reference.high || !reference.high->isRate()) return;
  const Unit time = unitOf(order.perTime);
  const Units wanted{{*comparing.doses.unit}, {time}};
  std::optional<Chain> left =
      rateChain(comparing.notes, comparing.size, comparing.doses, order, path::dose, time);
  std::optional<Chain> right =
      rateChain(comparing.notes, comparing.size, comparing.doses, *reference.high, path::high, time);
  if (!left || !right) return comparing.notChecked(CheckId::rate, WhyNot::noSize);
  const std::optional<Side> ordered = sidePer(comparing.notes, std::move(*left), wanted);
  compareSides(comparing, CheckId::rate, ordered, Relation::atMost,
               sidePer(comparing.notes, std::move(*right), wanted), FindingCode::overRate, path::dose);
  keepAsWritten(comparing, CheckId::rate, order, WrittenIn::value);
  if (!reference.low) return;
  std::optional<Chain> low =
      rateChain(comparing.notes, comparing.size, comparing.doses, *reference.low, path::low, time);
  if (!low) return;
  compareSides(comparing, CheckId::low, ordered, Relation::atLeast,
               sidePer(comparing.notes, std::move(*low), wanted), FindingCode::belowLow, path::dose);
  keepAsWritten(comparing, CheckId::low, order, WrittenIn::value);
}

}  // namespace wardchalk::detail
