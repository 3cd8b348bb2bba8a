#include "core/check/detail/doses.h"
#include "core/check/detail/factors.h"
#include "core/check/detail/limits.h"

namespace wardchalk::detail {

namespace {

void capDoses(Notebook& notes, Doses& doses) {
  const std::optional<int> most = notes.given.order.maxDosesPerDay;
  if (!most || !doses.n || Number(*most) >= *doses.n) return;
  notes.tell(FindingCode::capApplied, path::maxDosesPerDay,
             {{"limit", Quantity{Number(*most), Unit::dose}}, {"uncapped", Quantity{*doses.n, Unit::dose}}});
  doses.n = Number(*most);
  doses.nFrom = path::maxDosesPerDay;
}

/// Before there is an order, what is safe is shown in the reference's own unit: the method begins there.
std::optional<Unit> referenceUnit(const Reference& reference) {
  for (const auto& stated : {reference.high, reference.low, reference.maxPerDose, reference.maxPerDay})
    if (stated && measuresDrug(stated->amount.unit)) return stated->amount.unit;
  return std::nullopt;
}

/// The drug unit everything is shown in: the order's, or the stock's when the order is in mL.
std::optional<Unit> drugUnit(const Case& given) {
  if (!given.order.dose) return referenceUnit(given.reference);
  const Unit unit = given.order.dose->amount.unit;
  if (measuresDrug(unit)) return unit;
  if (given.stock.strength) return given.stock.strength->amount.unit;
  if (given.stock.content) return given.stock.content->unit;
  return std::nullopt;
}

/// Appends "× 5 mL → mg" for an order in mL. False when the strength is not known.
bool addStrength(const Notebook& notes, const Strengths& strengths, Chain& chain) {
  if (notes.given.order.dose->amount.unit != Unit::mL) return true;
  if (!strengths.used || strengths.used->in != Unit::mL) return false;
  const StrengthFound& strength = *strengths.used;
  if (strength.from == StrengthFrom::labelled) {
    const Strength& label = *notes.given.stock.strength;
    convertAbove(chain, Unit::mL, label.in.unit);
    chain.factors.push_back(labelFactor(label, path::strength));
  } else {
    chain.factors.push_back(strengthFactor(strength, Origin::step(StepId::strength)));
  }
  return true;
}

/// The order for this child, in its drug unit per dose or per day.
std::optional<Chain> orderedChain(Notebook& notes, const Size& size, const Strengths& strengths,
                                  const Doses& doses) {
  const DoseAmount& dose = *notes.given.order.dose;
  Chain chain{{doseFactor(dose, path::dose)}};
  if (!addSizeFactor(notes, size, chain, dose.perSize)) return std::nullopt;
  if (!doses.unit || !addStrength(notes, strengths, chain)) {
    notes.need(path::strength, Need::For::verdict);
    return std::nullopt;
  }
  return chain;
}

/// A day's amount that is given less than once a day: each dose, or per day? (R5)
bool isDayOrDose(const Notebook& notes, const Doses& doses) {
  const auto& dose = notes.given.order.dose;
  return dose && dose->perTime == PerTime::day && doses.n && *doses.n < Number(1);
}

/// How many whole doses a day's amount holds.
std::optional<MostDoses> dosesHeld(Notebook& notes, const Found& day, const Found& dose) {
  const auto count = notes.solveUnwritten({{factorOf(day), factorOf(dose).turned()}},
                                          {{Unit::dose}, {Unit::day}}, day.origin);
  if (!count) return std::nullopt;
  return MostDoses{count->value().floor(), count->origin};
}

void lowerCount(std::optional<MostDoses>& most, const std::optional<MostDoses>& candidate) {
  if (candidate && (!most || candidate->count < most->count)) most = candidate;
}

/// The least of the reference's most doses and of what its day's amounts hold (R14).
void findFitting(Notebook& notes, Doses& doses, const Limits& limits, const std::optional<Found>& dose) {
  if (!doses.open) return;
  doses.fitting = limits.mostDoses;
  if (dose && limits.maxDay) lowerCount(doses.fitting, dosesHeld(notes, *limits.maxDay, *dose));
  if (dose && limits.day && isDayShared(notes.given.reference))
    lowerCount(doses.fitting, dosesHeld(notes, *limits.day, *dose));
}

/// The most given in any 24 h, by the dose and how many are counted.
void findDayOfDoses(Notebook& notes, Doses& doses) {
  const bool fewer = doses.fewerFit();
  const Number count = fewer ? doses.fitting->count : doses.n->ceil();
  const Origin from = fewer ? doses.fitting->from : Origin::field(path::schedule);
  Chain day{{factorOf(*doses.ordered), rateFactor(count, Unit::dose, Unit::day, from)}};
  doses.orderedDay =
      notes.solveStep(Section::ordered, StepId::orderedDay, std::move(day), {{*doses.unit}, {Unit::day}});
}

void findFromDose(Notebook& notes, Doses& doses, const Limits& limits, Chain chain) {
  doses.ordered =
      notes.solveStep(Section::ordered, StepId::orderedDose, std::move(chain), {{*doses.unit}, {Unit::dose}});
  findFitting(notes, doses, limits, doses.ordered);
  if (doses.ordered && doses.n) findDayOfDoses(notes, doses);
}

/// A day's amount shared among the doses of the order, of which fewer may be given in 24 h: then what is
/// given in 24 h is less than the amount that stands in the order.
void findFewerOfDay(Notebook& notes, Doses& doses, Chain chain) {
  chain.factors.push_back(dosesADay(ceilAtLeastOne(*doses.n), path::schedule).turned());
  doses.ordered =
      notes.solveStep(Section::ordered, StepId::orderedDose, std::move(chain), {{*doses.unit}, {Unit::dose}});
  if (doses.ordered) findDayOfDoses(notes, doses);
}

void findFromDay(Notebook& notes, Doses& doses, const Limits& limits, Chain chain) {
  const Unit unit = *doses.unit;
  if (doses.open) {
    Chain dose = chain;
    dose.factors.push_back(dosesADay(ceilAtLeastOne(*doses.n), path::schedule).turned());
    findFitting(notes, doses, limits,
                notes.solveUnwritten(dose, {{unit}, {Unit::dose}}, Origin::step(StepId::orderedDose)));
    if (doses.fewerFit()) return findFewerOfDay(notes, doses, std::move(chain));
  }
  doses.orderedDay =
      notes.solveStep(Section::ordered, StepId::orderedDay, std::move(chain), {{unit}, {Unit::day}});
  if (!doses.n) {
    doses.dayAsOrdered = std::move(doses.orderedDay);
    doses.orderedDay.reset();  // how much is given in 24 h hangs on the schedule
    return;
  }
  if (!doses.orderedDay) return;
  Chain dose{{factorOf(*doses.orderedDay), dosesADay(ceilAtLeastOne(*doses.n), path::schedule).turned()}};
  doses.ordered =
      notes.solveStep(Section::ordered, StepId::orderedDose, std::move(dose), {{unit}, {Unit::dose}});
}

/// Whether an order that does not say how often may be judged for one dose: not where a day's or a week's
/// amount would have to be divided, and nothing says by how many (R15).
bool isJudgedForOneDose(const Notebook& notes, const Doses& doses) {
  const Order& order = notes.given.order;
  const Reference& reference = notes.given.reference;
  if (!order.dose || order.schedule || doses.isRate ||
      notes.rules.orderScheduleMissing != OrderScheduleMissing::oneDose)
    return false;
  const auto isShared = [](const std::optional<DoseAmount>& dose) {
    return dose && (dose->perTime == PerTime::day || dose->perTime == PerTime::week);
  };
  return !isShared(order.dose) && (!isShared(reference.high) || reference.schedule);
}

/// How often, and in which unit.
Doses scheduled(Notebook& notes) {
  const Order& order = notes.given.order;
  Doses doses;
  doses.isRate = order.dose && order.dose->isRate();
  doses.unit = drugUnit(notes.given);
  if (order.schedule && !order.schedule->isContinuous()) {
    doses.once = order.schedule->isOnce();
    doses.n = order.schedule->most;
    doses.nFrom = path::schedule;
    doses.open = order.asNeeded && !order.maxDosesPerDay && !doses.once;
    capDoses(notes, doses);
  }
  if (!order.dose) notes.need(path::dose, Need::For::verdict);
  doses.oneDose = isJudgedForOneDose(notes, doses);
  if (!order.schedule && !doses.isRate && !doses.oneDose) notes.need(path::schedule, Need::For::verdict);
  return doses;
}

/// What a rate gives in a day.
std::optional<Chain> rateInDay(Notebook& notes, const Size& size, const Doses& doses) {
  const DoseAmount& rate = *notes.given.order.dose;
  const Unit time = unitOf(rate.perTime);
  std::optional<Chain> chain = rateChain(notes, size, doses, rate, path::dose, time);
  if (chain) append(*chain, runningInDay(notes.given.infusion, time));
  return chain;
}

/// A day of a rate is worked out where there is a maximum for it.
void findDayOfRate(Notebook& notes, Doses& doses, const Limits& limits) {
  if (!doses.chain || !limits.maxDay) return;
  doses.orderedDay =
      notes.solveStep(Section::ordered, StepId::orderedDay, *doses.chain, {{*doses.unit}, {Unit::day}});
}

/// An order in mL is compared by the strength: then the mixing is shown where it is used.
void showMixing(Notebook& notes, const Strengths& strengths, Doses& doses) {
  if (notes.given.order.dose->amount.unit != Unit::mL || !strengths.mixing) return;
  notes.write(Section::ordered, *strengths.mixing);
  doses.mixingShown = true;
}

}  // namespace

std::optional<Number> Doses::inOrderUnit(const Quantity& quantity) const {
  if (!unit) return std::nullopt;
  return converted(quantity.value, quantity.unit, *unit);
}

bool isDayShared(const Reference& reference) {
  return reference.high && reference.high->perTime == PerTime::day && reference.schedule &&
         !reference.schedule->isContinuous();
}

Number ceilAtLeastOne(const Number& x) { return larger(x.ceil(), Number(1)); }

bool Doses::fewerFit() const {
  return fitting && n && fitting->count >= Number(1) && fitting->count < ceilAtLeastOne(*n);
}

Doses findDoses(Notebook& notes, const Size& size, const Strengths& strengths) {
  Doses doses = scheduled(notes);
  if (doses.isRate) doses.chain = rateInDay(notes, size, doses);
  if (!notes.given.order.dose || doses.isRate) return doses;
  if (isDayOrDose(notes, doses))
    notes.tell(FindingCode::basisDoesNotFit, path::dose, {{"reason", ArgumentWord::dayOrDose}});
  doses.chain = orderedChain(notes, size, strengths, doses);
  if (doses.chain) showMixing(notes, strengths, doses);
  return doses;
}

void findOrdered(Notebook& notes, Doses& doses, const Limits& limits) {
  if (doses.isRate) return findDayOfRate(notes, doses, limits);
  if (!doses.chain || isDayOrDose(notes, doses)) return findFitting(notes, doses, limits, std::nullopt);
  if (notes.given.order.dose->perTime == PerTime::day)
    findFromDay(notes, doses, limits, *doses.chain);
  else
    findFromDose(notes, doses, limits, *doses.chain);
}

}  // namespace wardchalk::detail
