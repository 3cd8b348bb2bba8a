#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

/// A surface outside these limits, in m², belongs to no child (design rule R11).
const Number& smallestSurface() {
  static const Number limit = Number::ratio(5, 100);
  return limit;
}
const Number& largestSurface() {
  static const Number limit(3);
  return limit;
}

void tellImplausible(Reckoning& reckoning) {
  Finding& finding = reckoning.tell(FindingCode::sizeImplausible, path::bsa,
                                    {{"entered", *reckoning.given.child.bsa}}, CheckId::size);
  if (reckoning.given.child.sizeConfirmed) finding.severity = Severity::ask;
}

void compareChartedSize(Reckoning& reckoning) {
  const auto& charted = reckoning.given.child.bsa;
  if (charted && (charted->value < smallestSurface() || charted->value > largestSurface())) {
    reckoning.check(CheckId::size).status = CheckStatus::outside;
    return tellImplausible(reckoning);
  }
  reckoning.notChecked(CheckId::size, reckoning.given.child.age ? WhyNot::missing : WhyNot::noAge);
}

/// |charted − computed| against a share of the computed, before rounding; decided on squares, without a root (R3).
void compareChartedWithComputed(Reckoning& reckoning) {
  const auto& charted = reckoning.given.child.bsa;
  if (!charted) return reckoning.doesNotApply(CheckId::bsaCharted);
  if (!reckoning.computedSquared) return reckoning.notChecked(CheckId::bsaCharted, WhyNot::noSize);
  const Number share = reckoning.rules.bsaDiffersPercent / Number(100);
  const Number& square = *reckoning.computedSquared;
  const Number chartedSquared = charted->value * charted->value;
  const Number up = Number(1) + share;
  const Number down = larger(Number(1) - share, Number(0));
  const bool near = chartedSquared <= up * up * square && chartedSquared >= down * down * square;
  const Number computed = square.rootRounded(20);
  const Quantity computedArea{computed, Unit::m2};
  reckoning.check(CheckId::bsaCharted).value = *charted;
  reckoning.check(CheckId::bsaCharted).limit = computedArea;
  reckoning.check(CheckId::bsaCharted).ratio = charted->value / computed;
  reckoning.m2Used = true;
  const Origin rule = Origin::rule("bsa_differs_percent");
  Side left{{(charted->value - computed).absolute(), {Unit::m2}, Origin::field(path::bsa)}, std::nullopt, {}};
  Side right{{computed * share, {Unit::m2}, rule}, std::nullopt, {}};
  right.chain = Chain{{over1({computed, {Unit::m2}, Origin::step(StepId::bsa)}),
                       {{reckoning.rules.bsaDiffersPercent, {}, rule}, {Number(100), {}, rule}}}};
  compare(reckoning, CheckId::bsaCharted, std::move(left), Relation::atMost, std::move(right), near);
  if (!near)
    reckoning.tell(FindingCode::bsaDiffers, path::bsa,
                   {{"charted", *charted}, {"computed", computedArea},
                    {"percent", plainPercent((charted->value - computed).absolute() * Number(100) / computed)}},
                   CheckId::bsaCharted);
}

}  // namespace

void compareSize(Reckoning& reckoning) {
  compareChartedSize(reckoning);
  compareChartedWithComputed(reckoning);
}

}  // namespace wardchalk::detail
