#include "core/check/detail/reckoning.h"
#include "core/child/size_slip.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

/// A surface outside these limits, in m², belongs to no child (R11).
const Number& smallestSurface() {
  static const Number limit = Number::ratio(5, 100);
  return limit;
}
const Number& largestSurface() {
  static const Number limit(3);
  return limit;
}

/// A charted surface that belongs to no child. True when it was told.
bool tellChartedSurface(Reckoning& reckoning) {
  const auto& charted = reckoning.given.child.bsa;
  if (!charted || (charted->value >= smallestSurface() && charted->value <= largestSurface())) return false;
  reckoning.check(CheckId::size).value = *charted;
  Finding& finding =
      reckoning.tell(FindingCode::sizeImplausible, path::bsa, {{"entered", *charted}}, CheckId::size);
  if (reckoning.given.child.sizeConfirmed) finding.severity = Severity::ask;
  return true;
}

WhyNot reasonOf(NotJudged why) {
  switch (why) {
    case NotJudged::newborn:
      return WhyNot::newborn;
    case NotJudged::adult:
      return WhyNot::adult;
    case NotJudged::noAge:
      return WhyNot::noAge;
    case NotJudged::noSize:
      break;
  }
  return WhyNot::noSize;
}

/// "37.9 kg, 103 cm": what the check looked at.
std::string sizeText(const Child& child) {
  std::string text;
  if (child.weight) text = printed(*child.weight);
  if (child.height) text.append(text.empty() ? "" : ", ").append(printed(*child.height));
  return text;
}

/// What was entered and the slips that would explain it, as the sentences need them.
std::vector<Argument> sizeArguments(const Child& child) {
  std::vector<Argument> arguments;
  if (child.weight) arguments.push_back({"weight", printed(*child.weight)});
  if (child.height) arguments.push_back({"height", printed(*child.height)});
  if (child.age) arguments.push_back({"age", printed(child.age->written)});
  const std::vector<SizeSlip> slips = slipsThatExplain(child);
  if (!slips.empty()) arguments.push_back({"slip", std::string(idOf(slips.front()))});
  if (slips.size() > 1) arguments.push_back({"other_slip", std::string(idOf(slips.back()))});
  return arguments;
}

void tellImplausibleSize(Reckoning& reckoning, const SizeFaults& faults) {
  const Child& child = reckoning.given.child;
  std::vector<Argument> arguments = sizeArguments(child);
  const std::string_view what = !faults.height ? "weight" : !faults.weight ? "height" : "both";
  arguments.push_back({"what", std::string(what)});
  Finding& finding = reckoning.tell(FindingCode::sizeImplausible, faults.weight ? path::weight : path::height,
                                    std::move(arguments), CheckId::size);
  if (child.sizeConfirmed) finding.severity = Severity::ask;
}

/// One finding for one cause. A weight and a height that are both unlikely and do not go together are one
/// question; if they do go together each is told, since only the age joins them.
void tellUnlikelySize(Reckoning& reckoning, const SizeFaults& faults) {
  const std::vector<Argument> arguments = sizeArguments(reckoning.given.child);
  const auto tell = [&](FindingCode code, StaticText field) {
    reckoning.tell(code, field, arguments, CheckId::size);
  };
  const bool both = faults.weight && faults.height;
  if (faults.weightForHeight && both == (faults.weight || faults.height))
    return tell(FindingCode::weightUnlikelyForHeight, path::weight);
  if (faults.weight) tell(FindingCode::weightUnlikely, path::weight);
  if (faults.height) tell(FindingCode::heightUnlikely, path::height);
}

/// Weight and height against those of other children (R11). It wants nothing: what is not known leaves it
/// unmade.
void compareWithGrowth(Reckoning& reckoning) {
  const Child& child = reckoning.given.child;
  if (const auto why = whyNotJudged(child)) return reckoning.notChecked(CheckId::size, reasonOf(*why));
  Check& check = reckoning.check(CheckId::size);
  const SizeJudgement judged = judgeSize(child, bodySizeOf(child));
  check.status = judged.unlikely.any() ? CheckStatus::outside : CheckStatus::within;
  check.why.reset();
  check.value = sizeText(child);
  if (judged.implausible.any())
    tellImplausibleSize(reckoning, judged.implausible);
  else if (judged.unlikely.any())
    tellUnlikelySize(reckoning, judged.unlikely);
}

void compareChildSize(Reckoning& reckoning) {
  compareWithGrowth(reckoning);
  if (!tellChartedSurface(reckoning)) return;
  Check& check = reckoning.check(CheckId::size);
  check.status = CheckStatus::outside;
  check.why.reset();
}

/// Whether the order would pass or fail by the computed surface where the charted one says otherwise: then
/// the question decides the verdict and not only the figures. "within": it is within by the charted one
/// alone.
std::optional<std::string> decidedByCharted(const Reckoning& reckoning) {
  const auto& order = reckoning.given.order.dose;
  const auto& high = reckoning.given.reference.high;
  if (!order || !high) return std::nullopt;
  const Number moved = *reckoning.computedM2 / reckoning.given.child.bsa->value;
  const Number orderMoved = order->perSize == PerSize::m2 ? moved : Number(1);
  const Number limitMoved = high->perSize == PerSize::m2 ? moved : Number(1);
  for (const CheckId id : {CheckId::single, CheckId::daily, CheckId::period}) {
    const Check& check = reckoning.sheet.check(id);
    if (!check.isMade() || !check.ratio) continue;
    const bool within = check.status == CheckStatus::within;
    if ((*check.ratio * orderMoved <= limitMoved) != within) return within ? "within" : "over";
  }
  return std::nullopt;
}

/// |charted − computed| against a share of the computed, before rounding; decided on squares, without a root
/// (R3).
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
  const Found computedArea({computed, Unit::m2}, {}, Origin::step(StepId::bsa));
  reckoning.check(CheckId::bsaCharted).value = *charted;
  reckoning.check(CheckId::bsaCharted).limit = computedArea.amount;
  reckoning.check(CheckId::bsaCharted).ratio = charted->value / computed;
  reckoning.m2Used = true;
  const Origin rule = Origin::rule("bsa_differs_percent");
  const Found apart({(charted->value - computed).absolute(), charted->unit}, {}, Origin::field(path::bsa));
  std::optional<Side> right =
      sideBy(reckoning, {{factorOf(computedArea), percentFactor(reckoning.rules.bsaDiffersPercent, rule)}},
             computedArea.units());
  if (!right) return;
  right->term.origin = rule;
  compare(reckoning, CheckId::bsaCharted, sideOf(apart), Relation::atMost, std::move(*right), near);
  if (near) return;
  std::vector<Argument> arguments = {
      {"charted", *charted},
      {"computed", computedArea.amount},
      {"percent", plainPercent((charted->value - computed).absolute() * Number(100) / computed)}};
  if (const auto decides = decidedByCharted(reckoning)) arguments.push_back({"order", *decides});
  reckoning.tell(FindingCode::bsaDiffers, path::bsa, std::move(arguments), CheckId::bsaCharted);
}

}  // namespace

void compareSize(Reckoning& reckoning) {
  compareChildSize(reckoning);
  compareChartedWithComputed(reckoning);
}

}  // namespace wardchalk::detail
