#include "core/check/detail/comparing.h"
#include "core/child/size_slip.h"

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
bool tellChartedSurface(Comparing& comparing) {
  const auto& charted = comparing.given.child.bsa;
  if (!charted || (charted->value >= smallestSurface() && charted->value <= largestSurface())) return false;
  comparing.check(CheckId::size).value = *charted;
  Finding& finding =
      comparing.notes.tell(FindingCode::sizeImplausible, path::bsa, {{"entered", *charted}}, CheckId::size);
  if (comparing.given.child.sizeConfirmed) finding.severity = Severity::ask;
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

/// What was entered and the slips that would explain it, as the sentences need them.
std::vector<Argument> sizeArguments(const Child& child) {
  std::vector<Argument> arguments;
  if (child.weight) arguments.push_back({"weight", *child.weight});
  if (child.height) arguments.push_back({"height", *child.height});
  if (child.age) arguments.push_back({"age", child.age->written});
  const std::vector<SizeSlip> slips = slipsThatExplain(child);
  if (!slips.empty()) arguments.push_back({"slip", slips.front()});
  if (slips.size() > 1) arguments.push_back({"other_slip", slips.back()});
  return arguments;
}

void tellImplausibleSize(Comparing& comparing, const SizeFaults& faults) {
  const Child& child = comparing.given.child;
  std::vector<Argument> arguments = sizeArguments(child);
  const ArgumentWord what = !faults.height   ? ArgumentWord::weight
                            : !faults.weight ? ArgumentWord::height
                                             : ArgumentWord::both;
  arguments.push_back({"what", what});
  Finding& finding =
      comparing.notes.tell(FindingCode::sizeImplausible, faults.weight ? path::weight : path::height,
                           std::move(arguments), CheckId::size);
  if (child.sizeConfirmed) finding.severity = Severity::ask;
}

/// One finding for one cause. A weight and a height that are both unlikely and do not go together are one
/// question; if they do go together each is told, since only the age joins them.
void tellUnlikelySize(Comparing& comparing, const SizeFaults& faults) {
  const std::vector<Argument> arguments = sizeArguments(comparing.given.child);
  const auto tell = [&](FindingCode code, StaticText field) {
    comparing.notes.tell(code, field, arguments, CheckId::size);
  };
  const bool both = faults.weight && faults.height;
  if (faults.weightForHeight && both == (faults.weight || faults.height))
    return tell(FindingCode::weightUnlikelyForHeight, path::weight);
  if (faults.weight) tell(FindingCode::weightUnlikely, path::weight);
  if (faults.height) tell(FindingCode::heightUnlikely, path::height);
}

/// Weight and height against those of other children (R11). It wants nothing: what is not known leaves it
/// unmade.
void compareWithGrowth(Comparing& comparing) {
  const Child& child = comparing.given.child;
  const auto why = whyNotJudged(child);
  const SizeJudgement judged = !why                        ? judgeSize(child, bodySizeOf(child))
                               : why == NotJudged::newborn ? judgeTooLarge(child, bodySizeOf(child))
                                                           : SizeJudgement{};
  if (why && !judged.unlikely.any()) return comparing.notChecked(CheckId::size, reasonOf(*why));
  Check& check = comparing.check(CheckId::size);
  check.status = judged.unlikely.any() ? CheckStatus::outside : CheckStatus::within;
  check.why.reset();
  check.value = StatedSize{child.weight, child.height};
  if (judged.implausible.any())
    tellImplausibleSize(comparing, judged.implausible);
  else if (judged.unlikely.any())
    tellUnlikelySize(comparing, judged.unlikely);
}

void compareChildSize(Comparing& comparing) {
  compareWithGrowth(comparing);
  if (!tellChartedSurface(comparing)) return;
  Check& check = comparing.check(CheckId::size);
  check.status = CheckStatus::outside;
  check.why.reset();
}

/// Whether the order would pass or fail by the computed surface where the charted one says otherwise: then
/// the question decides the verdict and not only the figures. `within`: it is within by the charted one
/// alone.
std::optional<ArgumentWord> decidedByCharted(const Comparing& comparing) {
  const auto& order = comparing.given.order.dose;
  const auto& high = comparing.given.reference.high;
  if (!order || !high) return std::nullopt;
  const Number moved = comparing.size.computedM2->value / comparing.given.child.bsa->value;
  const Number orderMoved = order->perSize == PerSize::m2 ? moved : Number(1);
  const Number limitMoved = high->perSize == PerSize::m2 ? moved : Number(1);
  for (const CheckId id : {CheckId::single, CheckId::daily, CheckId::period}) {
    const Check& check = comparing.checks.check(id);
    if (!check.isMade() || !check.ratio) continue;
    const bool within = check.status == CheckStatus::within;
    if ((*check.ratio * orderMoved <= limitMoved) != within)
      return within ? ArgumentWord::within : ArgumentWord::over;
  }
  return std::nullopt;
}

/// |charted − computed| against a share of the computed, before rounding; decided on squares, without a root
/// (R3).
void compareChartedWithComputed(Comparing& comparing) {
  const auto& charted = comparing.given.child.bsa;
  if (!charted) return comparing.doesNotApply(CheckId::bsaCharted);
  if (!comparing.size.computedSquared) return comparing.notChecked(CheckId::bsaCharted, WhyNot::noSize);
  const Number share = comparing.rules.bsaDiffersPercent / Number(100);
  const Number& square = *comparing.size.computedSquared;
  const Number chartedSquared = charted->value * charted->value;
  const Number up = Number(1) + share;
  const Number down = larger(Number(1) - share, Number(0));
  const bool near = chartedSquared <= up * up * square && chartedSquared >= down * down * square;
  const Number computed = square.rootRounded(20);
  const Found computedArea({computed, comparing.size.computedM2->unit}, {}, Origin::step(StepId::bsa));
  comparing.check(CheckId::bsaCharted).value = *charted;
  comparing.check(CheckId::bsaCharted).limit = computedArea.amount;
  comparing.check(CheckId::bsaCharted).ratio = charted->value / computed;
  comparing.notes.surfaceUsed = true;
  const Origin rule = Origin::rule("bsa_differs_percent");
  const Found apart({(charted->value - computed).absolute(), charted->unit}, {}, Origin::field(path::bsa));
  std::optional<Side> right = sideBy(
      comparing.notes, {{factorOf(computedArea), percentFactor(comparing.rules.bsaDiffersPercent, rule)}},
      computedArea.units());
  if (!right) return;
  right->term.origin = rule;
  compare(comparing, CheckId::bsaCharted, sideOf(apart), Relation::atMost, std::move(*right), near);
  if (near) return;
  std::vector<Argument> arguments = {
      {"charted", *charted},
      {"computed", computedArea.amount},
      {"percent", PlainPercent{(charted->value - computed).absolute() * Number(100) / computed}}};
  if (const auto decides = decidedByCharted(comparing)) arguments.push_back({"order", *decides});
  comparing.notes.tell(FindingCode::bsaDiffers, path::bsa, std::move(arguments), CheckId::bsaCharted);
}

}  // namespace

void compareSize(Comparing& comparing) {
  compareChildSize(comparing);
  compareChartedWithComputed(comparing);
}

}  // namespace wardchalk::detail
