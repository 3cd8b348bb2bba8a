#include <algorithm>

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
  for (Side* side : {&left, &right}) std::get<QuantityPer>(side->stated).significant = significant;
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

namespace {

/// A rate for this child, in the order's drug unit per `time`.
std::optional<Side> rateSide(Comparing& comparing, const DoseAmount& rate, StaticText path, Unit time) {
  std::optional<Chain> chain = rateChain(comparing.notes, comparing.size, comparing.doses, rate, path, time);
  if (!chain) return std::nullopt;
  return sidePer(comparing.notes, *std::move(chain), {{*comparing.doses.unit}, {time}});
}

/// The day's maximum spread over the time that the rate runs in a day.
std::optional<Side> mostOfDay(Comparing& comparing, Unit time) {
  const std::optional<Found>& day = comparing.limits.maxDay;
  if (!day) return std::nullopt;
  Chain chain{{factorOf(*day)}};
  for (const Factor& factor : runningInDay(comparing.given.infusion, time))
    chain.factors.push_back(factor.turned());
  std::optional<Side> side = sidePer(comparing.notes, std::move(chain), {{*comparing.doses.unit}, {time}});
  if (side) side->term.origin = Origin::field(path::maxPerDay);
  return side;
}

/// The low end, or what a maximum allows where that is less (R7); none while one of them is not known.
std::optional<Side> leastRate(Comparing& comparing, Unit time) {
  const Reference& reference = comparing.given.reference;
  std::vector<std::optional<Side>> bounds = {rateSide(comparing, *reference.low, path::low, time)};
  if (const auto& most = reference.maxInfusionRate)
    bounds.push_back(rateSide(comparing, *most, path::maxInfusionRate, time));
  if (reference.maxPerDay) bounds.push_back(mostOfDay(comparing, time));
  if (std::ranges::any_of(bounds, [](const auto& bound) { return !bound; })) return std::nullopt;
  return *std::ranges::min_element(
      bounds, [](const auto& a, const auto& b) { return a->term.value < b->term.value; });
}

WhyNot whyNoRate(const Comparing& comparing, const DoseAmount& limit) {
  const auto known = [&](const DoseAmount& rate) {
    return sizeValue(comparing.size, rate.perSize).has_value();
  };
  return known(limit) && known(*comparing.given.order.dose) ? WhyNot::missing : WhyNot::noSize;
}

/// The ordered rate against the reference's own high end.
void compareHigh(Comparing& comparing) {
  const DoseAmount& order = *comparing.given.order.dose;
  const auto& high = comparing.given.reference.high;
  if (!high || !high->isRate()) return comparing.notChecked(CheckId::rate, WhyNot::missing);
  const Unit time = unitOf(order.perTime);
  std::optional<Side> ordered = rateSide(comparing, order, path::dose, time);
  std::optional<Side> most = rateSide(comparing, *high, path::high, time);
  if (!ordered || !most) return comparing.notChecked(CheckId::rate, WhyNot::noSize);
  compareSides(comparing, CheckId::rate, std::move(ordered), Relation::atMost, std::move(most),
               FindingCode::overRate, path::dose);
  keepAsWritten(comparing, CheckId::rate, order, WrittenIn::value);
  keepBound(comparing, CheckId::rate, Relation::atMost);
}

/// The ordered rate against how fast the medicine may run in, in the terms of that limit.
void compareFastest(Comparing& comparing) {
  const auto& most = comparing.given.reference.maxInfusionRate;
  if (!most) return comparing.notChecked(CheckId::infusionRate, WhyNot::notStated);
  const DoseAmount& order = *comparing.given.order.dose;
  const Unit time = unitOf(most->perTime);
  std::optional<Side> ordered = rateSide(comparing, order, path::dose, time);
  std::optional<Side> fastest = rateSide(comparing, *most, path::maxInfusionRate, time);
  if (!ordered || !fastest) return comparing.notChecked(CheckId::infusionRate, whyNoRate(comparing, *most));
  compareSides(comparing, CheckId::infusionRate, std::move(ordered), Relation::atMost, std::move(fastest),
               FindingCode::tooFast, path::dose);
  keepAsWritten(comparing, CheckId::infusionRate, *most, WrittenIn::limit);
  keepBound(comparing, CheckId::infusionRate, Relation::atMost);
}

/// The ordered rate against the low end, where one is stated.
void compareLowRate(Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  const Check& rate = comparing.check(CheckId::rate);
  if (!reference.low) return comparing.notChecked(CheckId::low, WhyNot::notStated);
  if (!rate.isMade()) return comparing.notChecked(CheckId::low, *rate.why);
  const DoseAmount& order = *comparing.given.order.dose;
  const Unit time = unitOf(order.perTime);
  std::optional<Side> least = leastRate(comparing, time);
  if (!least) return comparing.notChecked(CheckId::low, WhyNot::missing);
  compareSides(comparing, CheckId::low, rateSide(comparing, order, path::dose, time), Relation::atLeast,
               std::move(least), FindingCode::belowLow, path::dose);
  keepAsWritten(comparing, CheckId::low, order, WrittenIn::value);
  keepBound(comparing, CheckId::low, Relation::atLeast);
}

}  // namespace

void compareRate(Comparing& comparing) {
  if (!comparing.doses.isRate) return comparing.doesNotApply(CheckId::rate, WhyNot::notARate);
  compareHigh(comparing);
  compareFastest(comparing);
  compareLowRate(comparing);
}

}  // namespace wardchalk::detail
