#include "core/check/detail/factors.h"
#include "core/check/detail/limits.h"

namespace wardchalk::detail {

namespace {

/// How often the reference gives the dose, and where that is written.
struct Often {
  Number fewest;
  Number most;
  StaticText path;
};

/// By the reference's own schedule; without one by the order's (the taught method), if that is known.
std::optional<Often> dividingSchedule(const Notebook& notes, const Doses& doses) {
  const auto& own = notes.given.reference.schedule;
  if (own && !own->isContinuous()) return Often{own->fewest, own->most, path::referenceSchedule};
  if (!own && doses.n) return Often{*doses.n, *doses.n, path::schedule};
  return std::nullopt;
}

/// How many doses the reference allows in 24 h: once is one, whatever is stated beside it (R14).
std::optional<MostDoses> mostDoses(const Notebook& notes) {
  const Reference& reference = notes.given.reference;
  const std::optional<int> most = mostDosesOf(reference);
  if (!most) return std::nullopt;
  const bool once = reference.schedule && reference.schedule->isOnce();
  return MostDoses{Number(*most), Origin::field(once ? path::referenceSchedule : path::referenceMaxDoses)};
}

/// How many doses of a reference per dose make its day's limit; none where it says neither how often nor how
/// many at most.
std::optional<MostDoses> dosesOfDay(const Notebook& notes) {
  const auto& own = notes.given.reference.schedule;
  std::optional<MostDoses> most = mostDoses(notes);
  if (!own) return most;
  if (own->isContinuous()) return std::nullopt;
  const Number count = own->most.ceil();
  if (most && most->count < count) return most;
  return MostDoses{count, Origin::field(path::referenceSchedule)};
}

bool referenceOnce(const Notebook& notes) {
  const auto& own = notes.given.reference.schedule;
  return own && own->isOnce();
}

/// The dose for this child in the order's drug unit; none while a size it wants is not known or the units do
/// not meet.
std::optional<Chain> sizedChain(Notebook& notes, const Size& size, const Doses& doses, const DoseAmount& dose,
                                StaticText path) {
  if (!doses.inOrderUnit(dose.amount)) return std::nullopt;
  Chain chain{{doseFactor(dose, path)}};
  if (!addSizeFactor(notes, size, chain, dose.perSize)) return std::nullopt;
  convertAbove(chain, dose.amount.unit, *doses.unit);
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

End endPerDose(Notebook& notes, const Doses& doses, Chain chain, StepPair steps) {
  const Unit unit = *doses.unit;
  End end;
  end.dose = notes.solveStep(Section::limits, steps.dose, std::move(chain), {{unit}, {Unit::dose}});
  if (steps.dose == StepId::lowDose)
    return end;  // a least dose is no least day: the schedule says how many are too few
  const std::optional<MostDoses> doses24h = dosesOfDay(notes);
  if (!end.dose || !doses24h) return end;
  Chain day{{factorOf(*end.dose), rateFactor(doses24h->count, Unit::dose, Unit::day, doses24h->from)}};
  if (referenceOnce(notes)) {
    end.day = notes.solveUnwritten(day, {{unit}, {Unit::day}}, end.dose->origin);
    return end;
  }
  end.day = notes.solveStep(Section::limits, steps.day, std::move(day), {{unit}, {Unit::day}});
  return end;
}

End endPerDay(Notebook& notes, const Doses& doses, Chain chain, StepPair steps) {
  const Unit unit = *doses.unit;
  End end;
  end.day = notes.solveStep(Section::limits, steps.day, std::move(chain), {{unit}, {Unit::day}});
  const auto often = dividingSchedule(notes, doses);
  if (!end.day || !often) return end;
  const Number count = referenceOnce(notes) ? Number(1) : ceilAtLeastOne(often->fewest);
  Chain dose{{factorOf(*end.day), dosesADay(count, often->path).turned()}};
  end.dose = notes.solveStep(Section::limits, steps.dose, std::move(dose), {{unit}, {Unit::dose}});
  return end;
}

End endPerWeek(Notebook& notes, const Doses& doses, Chain chain, StepPair steps) {
  const Unit unit = *doses.unit;
  End end;
  // worked out by the chain that stands beside the week's comparison, unless it is the figure itself
  const bool asStated = chain.factors.size() == 1;
  end.week = notes.solveUnwritten(
      chain, {{unit}, {Unit::week}},
      asStated ? chain.factors.front().over.origin : Origin::step(StepId::comparePeriod));
  end.weekChain = chain;
  const auto often = dividingSchedule(notes, doses);
  if (!often) return end;
  const bool ownOnce = referenceOnce(notes);
  const bool orderOnce = doses.once && !notes.given.reference.schedule;  // the week's amount in its one dose
  const Number count = ownOnce || orderOnce ? Number(1) : larger(often->fewest * Number(7), Number(1));
  chain.factors.push_back(rateFactor(count, Unit::dose, Unit::week, Origin::field(often->path)).turned());
  end.dose = notes.solveStep(Section::limits, steps.dose, std::move(chain), {{unit}, {Unit::dose}});
  return end;
}

End endOf(Notebook& notes, const Size& size, const Doses& doses, const std::optional<DoseAmount>& dose,
          StaticText path, StepPair steps) {
  if (!dose) return {};
  std::optional<Chain> chain = sizedChain(notes, size, doses, *dose, path);
  if (!chain) return {};
  switch (dose->perTime) {
    case PerTime::none:
    case PerTime::dose:
      return endPerDose(notes, doses, std::move(*chain), steps);
    case PerTime::day:
      return endPerDay(notes, doses, std::move(*chain), steps);
    case PerTime::week:
      return endPerWeek(notes, doses, std::move(*chain), steps);
    case PerTime::h:
    case PerTime::min:
      return {};  // limits on the ordered rate only
  }
  return {};
}

std::optional<Found> maximumOf(Notebook& notes, const Size& size, const Doses& doses,
                               const std::optional<DoseAmount>& maximum, StaticText path, StepId step) {
  if (!maximum) return std::nullopt;
  std::optional<Chain> chain = sizedChain(notes, size, doses, *maximum, path);
  if (!chain) return std::nullopt;
  return notes.solveStep(Section::limits, step, std::move(*chain),
                         {{*doses.unit}, {unitOf(maximum->perTime)}});
}

void lowerTo(std::optional<Limit>& limit, const std::optional<Found>& candidate, SetBy by) {
  if (!candidate) return;
  if (!limit || candidate->value() < limit->amount.value) limit = Limit{candidate->amount, by};
}

/// The limits that count: the reference's, lowered by the maxima (R6).
void keepLowest(Limits& limits, bool once) {
  lowerTo(limits.lowestDay, limits.day, SetBy::reference);
  lowerTo(limits.lowestDay, limits.maxDay, SetBy::maxPerDay);
  lowerTo(limits.lowestDose, limits.dose, SetBy::reference);
  lowerTo(limits.lowestDose, limits.maxDose, SetBy::maxPerDose);
  lowerTo(limits.lowestDose, limits.maxDay, SetBy::maxPerDay);
  if (!once) lowerTo(limits.lowestDose, limits.day, SetBy::reference);
}

void noteCap(Notebook& notes, const std::optional<Limit>& limit, const std::optional<Found>& uncapped,
             SetBy by, StaticText path) {
  if (!limit || limit->setBy != by || !uncapped) return;
  notes.tell(FindingCode::capApplied, path, {{"limit", limit->amount}, {"uncapped", uncapped->amount}});
}

void noteCaps(Notebook& notes, const Limits& limits) {
  noteCap(notes, limits.lowestDose, limits.dose, SetBy::maxPerDose, path::maxPerDose);
  noteCap(notes, limits.lowestDay, limits.day, SetBy::maxPerDay, path::maxPerDay);
}

/// The high end of the reference on each basis.
void keepHigh(Limits& limits, End high) {
  limits.dose = std::move(high.dose);
  limits.day = std::move(high.day);
  limits.week = std::move(high.week);
  limits.weekChain = std::move(high.weekChain);
}

/// The low end on the basis that it is stated on.
void keepLow(Limits& limits, End low, bool perDay) {
  limits.lowDose = low.dose;
  if (perDay) limits.lowDay = low.day;
  limits.low = low.week ? std::move(low.week) : perDay ? std::move(low.day) : std::move(low.dose);
  limits.lowWeekChain = std::move(low.weekChain);
}

}  // namespace

Limits findLimits(Notebook& notes, const Size& size, const Doses& doses) {
  const Reference& reference = notes.given.reference;
  Limits limits;
  limits.mostDoses = mostDoses(notes);
  if (!reference.high) notes.need(path::high, Need::For::verdict);
  if (!doses.unit) return limits;
  if (doses.isRate) {
    limits.maxDay = maximumOf(notes, size, doses, reference.maxPerDay, path::maxPerDay, StepId::maxDay);
    lowerTo(limits.lowestDay, limits.maxDay, SetBy::maxPerDay);
    return limits;
  }
  keepHigh(limits, endOf(notes, size, doses, reference.high, path::high, limitSteps));
  keepLow(limits, endOf(notes, size, doses, reference.low, path::low, lowSteps),
          reference.low && reference.low->perTime == PerTime::day);
  limits.maxDose = maximumOf(notes, size, doses, reference.maxPerDose, path::maxPerDose, StepId::maxDose);
  limits.maxDay = maximumOf(notes, size, doses, reference.maxPerDay, path::maxPerDay, StepId::maxDay);
  keepLowest(limits, doses.once || doses.oneDose);
  noteCaps(notes, limits);
  return limits;
}

}  // namespace wardchalk::detail
