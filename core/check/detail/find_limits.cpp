#include "core/check/detail/reckoning.h"

namespace wardchalk::detail {

namespace {

/// How often the reference gives the dose, and where that is written.
struct Often {
  Number fewest;
  Number most;
  StaticText path;
};

/// By the reference's own schedule; without one by the order's (the taught method), if that is known.
std::optional<Often> dividingSchedule(const Reckoning& reckoning) {
  const auto& own = reckoning.given.reference.schedule;
  if (own && !own->isContinuous()) return Often{own->fewest, own->most, path::referenceSchedule};
  if (!own && reckoning.n) return Often{*reckoning.n, *reckoning.n, path::schedule};
  return std::nullopt;
}

bool referenceOnce(const Reckoning& reckoning) {
  const auto& own = reckoning.given.reference.schedule;
  return own && own->isOnce();
}

/// The dose for this child in the order's drug unit; none while a size it wants is not known or the units do
/// not meet.
std::optional<Chain> sizedChain(Reckoning& reckoning, const DoseAmount& dose, StaticText path) {
  if (!reckoning.inOrderUnit(dose.amount)) return std::nullopt;
  Chain chain{{doseFactor(dose, path)}};
  if (!reckoning.addSizeFactor(chain, dose.perSize)) return std::nullopt;
  convertAbove(chain, dose.amount.unit, *reckoning.unit);
  return chain;
}

struct StepPair {
  StepId dose;
  StepId day;
};
constexpr StepPair limitSteps{StepId::limitDose, StepId::limitDay};
constexpr StepPair lowSteps{StepId::lowDose, StepId::lowDay};

/// One end of the reference range for this child: in one dose, in 24 h, in a week, as far as each is known.
struct End {
  std::optional<Found> dose;
  std::optional<Found> day;
  std::optional<Found> week;
  std::optional<Chain> weekChain;
};

End endPerDose(Reckoning& reckoning, Chain chain, StepPair steps) {
  const Unit unit = *reckoning.unit;
  End end;
  end.dose = reckoning.solveStep(Section::limits, steps.dose, std::move(chain), {{unit}, {Unit::dose}});
  const auto& own = reckoning.given.reference.schedule;
  if (steps.dose == StepId::lowDose)
    return end;  // a least dose is no least day: the schedule says how many are too few
  if (!end.dose || !own || own->isContinuous()) return end;
  Chain day{{factorOf(*end.dose),
             dosesADay(own->isOnce() ? Number(1) : own->most.ceil(), path::referenceSchedule)}};
  if (own->isOnce()) {
    end.day = reckoning.solveUnwritten(day, {{unit}, {Unit::day}}, end.dose->origin);
    return end;
  }
  end.day = reckoning.solveStep(Section::limits, steps.day, std::move(day), {{unit}, {Unit::day}});
  return end;
}

End endPerDay(Reckoning& reckoning, Chain chain, StepPair steps) {
  const Unit unit = *reckoning.unit;
  End end;
  end.day = reckoning.solveStep(Section::limits, steps.day, std::move(chain), {{unit}, {Unit::day}});
  const auto often = dividingSchedule(reckoning);
  if (!end.day || !often) return end;
  const Number count = referenceOnce(reckoning) ? Number(1) : ceilAtLeastOne(often->fewest);
  Chain dose{{factorOf(*end.day), dosesADay(count, often->path).turned()}};
  end.dose = reckoning.solveStep(Section::limits, steps.dose, std::move(dose), {{unit}, {Unit::dose}});
  return end;
}

End endPerWeek(Reckoning& reckoning, Chain chain, StepPair steps) {
  const Unit unit = *reckoning.unit;
  End end;
  // worked out by the chain that stands beside the week's comparison, unless it is the figure itself
  const bool asStated = chain.factors.size() == 1;
  end.week = reckoning.solveUnwritten(
      chain, {{unit}, {Unit::week}},
      asStated ? chain.factors.front().over.origin : Origin::step(StepId::comparePeriod));
  end.weekChain = chain;
  const auto often = dividingSchedule(reckoning);
  if (!often) return end;
  const bool ownOnce = referenceOnce(reckoning);
  const bool orderOnce =
      reckoning.once && !reckoning.given.reference.schedule;  // the week's amount in its one dose
  const Number count = ownOnce || orderOnce ? Number(1) : larger(often->fewest * Number(7), Number(1));
  chain.factors.push_back(rateFactor(count, Unit::dose, Unit::week, Origin::field(often->path)).turned());
  end.dose = reckoning.solveStep(Section::limits, steps.dose, std::move(chain), {{unit}, {Unit::dose}});
  return end;
}

End endOf(Reckoning& reckoning, const std::optional<DoseAmount>& dose, StaticText path, StepPair steps) {
  if (!dose) return {};
  std::optional<Chain> chain = sizedChain(reckoning, *dose, path);
  if (!chain) return {};
  switch (dose->perTime) {
    case PerTime::none:
    case PerTime::dose:
      return endPerDose(reckoning, std::move(*chain), steps);
    case PerTime::day:
      return endPerDay(reckoning, std::move(*chain), steps);
    case PerTime::week:
      return endPerWeek(reckoning, std::move(*chain), steps);
    case PerTime::h:
    case PerTime::min:
      return {};  // limits on the ordered rate only
  }
  return {};
}

std::optional<Found> maximumOf(Reckoning& reckoning, const std::optional<DoseAmount>& maximum,
                               StaticText path, StepId step) {
  if (!maximum) return std::nullopt;
  std::optional<Chain> chain = sizedChain(reckoning, *maximum, path);
  if (!chain) return std::nullopt;
  return reckoning.solveStep(Section::limits, step, std::move(*chain),
                             {{*reckoning.unit}, {unitOf(maximum->perTime)}});
}

void lowerTo(std::optional<Limit>& limit, const std::optional<Found>& candidate, SetBy by) {
  if (!candidate) return;
  if (!limit || candidate->value() < limit->amount.value) limit = Limit{candidate->amount, by};
}

/// The limits that count: the reference's, lowered by the maxima (R6).
void keepLimits(Reckoning& reckoning) {
  Worksheet& sheet = reckoning.sheet;
  lowerTo(sheet.limitDay, reckoning.limitDay, SetBy::reference);
  lowerTo(sheet.limitDay, reckoning.maxDay, SetBy::maxPerDay);
  lowerTo(sheet.limitDose, reckoning.limitDose, SetBy::reference);
  lowerTo(sheet.limitDose, reckoning.maxDose, SetBy::maxPerDose);
  lowerTo(sheet.limitDose, reckoning.maxDay, SetBy::maxPerDay);
  if (!reckoning.once) lowerTo(sheet.limitDose, reckoning.limitDay, SetBy::reference);
}

void noteCap(Reckoning& reckoning, const std::optional<Limit>& limit, const std::optional<Found>& uncapped,
             SetBy by, StaticText path) {
  if (!limit || limit->setBy != by || !uncapped) return;
  reckoning.tell(FindingCode::capApplied, path, {{"limit", limit->amount}, {"uncapped", uncapped->amount}});
}

void noteCaps(Reckoning& reckoning) {
  noteCap(reckoning, reckoning.sheet.limitDose, reckoning.limitDose, SetBy::maxPerDose, path::maxPerDose);
  noteCap(reckoning, reckoning.sheet.limitDay, reckoning.limitDay, SetBy::maxPerDay, path::maxPerDay);
}

}  // namespace

void findLimits(Reckoning& reckoning) {
  const Reference& reference = reckoning.given.reference;
  if (!reference.high) reckoning.need(path::high, Need::For::verdict);
  if (!reckoning.unit || reckoning.isRate) return;
  End high = endOf(reckoning, reference.high, path::high, limitSteps);
  End low = endOf(reckoning, reference.low, path::low, lowSteps);
  reckoning.limitDose = high.dose;
  reckoning.limitDay = high.day;
  reckoning.limitWeek = high.week;
  reckoning.weekChain = std::move(high.weekChain);
  reckoning.maxDose = maximumOf(reckoning, reference.maxPerDose, path::maxPerDose, StepId::maxDose);
  reckoning.maxDay = maximumOf(reckoning, reference.maxPerDay, path::maxPerDay, StepId::maxDay);
  reckoning.low = low.week                                                  ? low.week
                  : reference.low && reference.low->perTime == PerTime::day ? low.day
                                                                            : low.dose;
  reckoning.lowWeekChain = std::move(low.weekChain);
  if (low.dose) reckoning.sheet.lowDose = low.dose->amount;
  if (low.day && reference.low->perTime == PerTime::day) reckoning.sheet.lowDay = low.day->amount;
  keepLimits(reckoning);
  noteCaps(reckoning);
}

}  // namespace wardchalk::detail
