#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

namespace {

/// So many doses in 24 h against the most that there may be.
bool compareCounts(Comparing& comparing, const MostDoses& ordered, const MostDoses& most) {
  const auto side = [](const MostDoses& doses) {
    return Side{{doses.count, {Unit::dose}, doses.from}, std::nullopt, {}};
  };
  const bool holds = ordered.count <= most.count;
  Check& check = comparing.check(CheckId::maxDoses);
  check.value = Quantity{ordered.count, Unit::dose};
  check.limit = Quantity{most.count, Unit::dose};
  check.ratio = ordered.count / most.count;
  compare(comparing, CheckId::maxDoses, side(ordered), Relation::atMost, side(most), holds);
  return holds;
}

/// Why nobody can tell how many doses fit: nothing is stated that would say so, or it could not be worked
/// out.
WhyNot whyNoCount(const Comparing& comparing) {
  const Reference& reference = comparing.given.reference;
  const bool dayStated = reference.high && reference.high->perTime == PerTime::day && reference.schedule;
  if (!reference.maxPerDay && !dayStated) return WhyNot::noMaximum;
  const auto unknown = [&](const std::optional<DoseAmount>& amount) {
    return amount && !sizeValue(comparing.size, amount->perSize);
  };
  return unknown(reference.maxPerDay) || (dayStated && unknown(reference.high)) ? WhyNot::noSize
                                                                                : WhyNot::missing;
}

/// As needed, and the order does not say how many: as many as fit are counted, and how many are meant is
/// asked (R14).
void compareOpen(Comparing& comparing) {
  const std::optional<MostDoses>& fitting = comparing.doses.fitting;
  if (!fitting) return comparing.notChecked(CheckId::maxDoses, whyNoCount(comparing));
  if (fitting->count < Number(1)) return comparing.notChecked(CheckId::maxDoses, WhyNot::asNeeded);
  if (compareCounts(comparing, orderedCount(comparing), *fitting)) return;
  comparing.notes.tell(FindingCode::maxDosesOpen, path::maxDosesPerDay, {{"c", fitting->count}},
                       CheckId::maxDoses);
}

void compareStated(Comparing& comparing) {
  const std::optional<MostDoses>& most = comparing.limits.mostDoses;
  if (!most) return comparing.notChecked(CheckId::maxDoses, WhyNot::noMaximum);
  if (!comparing.doses.n && !comparing.given.order.maxDosesPerDay)
    return comparing.notChecked(CheckId::maxDoses, WhyNot::noOrderSchedule);
  const MostDoses ordered = orderedCount(comparing);
  if (compareCounts(comparing, ordered, *most)) return;
  comparing.notes.tell(
      FindingCode::overMaxDoses, comparing.doses.n ? comparing.doses.nFrom : path::maxDosesPerDay,
      {{"ordered", Quantity{ordered.count, Unit::dose}}, {"limit", Quantity{most->count, Unit::dose}}},
      CheckId::maxDoses);
}

}  // namespace

MostDoses orderedCount(const Comparing& comparing) {
  if (!comparing.doses.n)
    return {Number(*comparing.given.order.maxDosesPerDay), Origin::field(path::maxDosesPerDay)};
  return {ceilAtLeastOne(*comparing.doses.n), Origin::field(comparing.doses.nFrom)};
}

void compareMaxDoses(Comparing& comparing) {
  if (comparing.doses.isRate) return comparing.doesNotApply(CheckId::maxDoses);
  return comparing.doses.open ? compareOpen(comparing) : compareStated(comparing);
}

}  // namespace wardchalk::detail
