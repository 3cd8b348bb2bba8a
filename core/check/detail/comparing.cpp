#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

void Comparing::notChecked(CheckId id, WhyNot why) {
  check(id).status = CheckStatus::notChecked;
  check(id).why = why;
}

void Comparing::doesNotApply(CheckId id, std::optional<WhyNot> why) {
  check(id).status = CheckStatus::doesNotApply;
  check(id).why = why;
}

Side sideOf(const Found& found) {
  return {{found.value(), {found.amount.unit}, found.origin}, std::nullopt, {}, found.under};
}

Quantity amountOf(const Side& side) { return {side.term.value, side.term.units.front()}; }

std::optional<Side> sideBy(Notebook& notes, Chain chain, const Units& wanted) {
  const auto found = notes.solveUnwritten(chain, wanted, chain.factors.front().over.origin);
  if (!found) return std::nullopt;
  Side side = sideOf(*found);
  side.chain = std::move(chain);
  return side;
}

void keepBound(Comparing& comparing, CheckId id, Relation relation) {
  if (const auto& filled = comparing.check(id).ratio)
    comparing.checks.bounds.push_back({id, relation, *filled});
}

void compare(Comparing& comparing, CheckId id, Side left, Relation relation, Side right, bool holds) {
  if (!sameUnits(left.units(), right.units())) comparing.notes.failed = true;
  comparing.check(id).status = holds ? CheckStatus::within : CheckStatus::outside;
  comparing.check(id).why.reset();
  if (!comparing.notes.writesSteps()) return;
  const Units wanted = left.units();
  comparing.notes.write(
      Section::comparisons,
      {stepOf(id), wanted, Comparison{std::move(left), relation, std::move(right), holds}, {}, {}});
}

}  // namespace wardchalk::detail
