#include <algorithm>
#include <optional>

#include "core/practice/marking/detail/wrong.h"
#include "core/unit/conversion.h"

// Mistakes with the schedule, the ends of a range, units of medicine and the decimal point.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

void addOtherCount(const Number& doses, bool shared, WrongList& list) {
  for (const int other : {1, 2, 3, 4, 6}) {
    const Number wrong(other);
    if (wrong == doses || (shared && other == 1)) continue;  // not shared at all has a name of its own
    list.times(M::otherNumberOfDoses, shared ? doses / wrong : wrong / doses);
  }
}

/// The day's amount shared among its doses: not at all, twice, by the hours between them, among too many or
/// too few.
void addWrongShare(const Number& doses, bool byTheHour, WrongList& list) {
  if (doses == Number(1)) return;
  list.times(M::dayNotShared, doses);
  list.times(M::sharedOnceTooOften, Number(1) / doses);
  if (byTheHour) list.times(M::dividedByInterval, doses * doses / Number(24));
  addOtherCount(doses, true, list);
}

bool isDose(StepId step) {
  return step == StepId::limitDose || step == StepId::lowDose || step == StepId::orderedDose;
}
bool isDay(StepId step) {
  return step == StepId::limitDay || step == StepId::lowDay || step == StepId::orderedDay;
}

/// The schedule that a dose line goes by.
const std::optional<Schedule>& scheduleOf(const WrongGround& ground) {
  const Case& given = ground.key.given;
  return ground.step == StepId::orderedDose || !given.reference.schedule ? given.order.schedule
                                                                         : given.reference.schedule;
}

/// "every 8 h", where the hours could be taken for the doses.
bool isByTheHour(const std::optional<Schedule>& schedule) {
  return schedule && schedule->byInterval && schedule->in == Unit::h;
}

/// A dose that is stated as each dose, divided all the same.
void addNeedlessShare(const WrongGround& ground, WrongList& list) {
  const auto& schedule = scheduleOf(ground);
  if (!schedule || !schedule->isRepeated()) return;
  const Number doses = larger(schedule->most.ceil(), Number(1));
  if (doses != Number(1)) list.times(M::sharedOnceTooOften, Number(1) / doses);
}

/// The unit that a constant of one unit over another turns an amount into.
std::optional<Unit> convertedInto(const Factor& factor) {
  const bool converts = factor.over.origin.kind == Origin::Kind::constant && factor.over.units.size() == 1;
  return converts ? std::optional(factor.over.units.front()) : std::nullopt;
}

bool joinsDrugUnits(const Factor& factor) {
  const auto unit = convertedInto(factor);
  return unit && measuresDrug(*unit);
}

bool joinsTimesOrVolumes(const Factor& factor) {
  const auto unit = convertedInto(factor);
  return unit && (dimensionOf(*unit) == Dimension::time || dimensionOf(*unit) == Dimension::volume);
}

bool isSize(const Factor& factor) {
  return factor.over.units == UnitProduct{Unit::kg} && factor.under.isPlainOne();
}

/// A line that does nothing but turn one unit of medicine into another: "1 mg/dose × 1,000 mcg/mg".
bool isConversionLine(const Chain& chain) {
  return chain.factors.size() == 2 && std::ranges::any_of(chain.factors, joinsDrugUnits);
}

/// Every factor of a rate order's chain that can be forgotten.
void addForgottenFactors(const Chain& chain, WrongList& list) {
  for (const Factor& factor : chain.factors)
    if (joinsDrugUnits(factor) || joinsTimesOrVolumes(factor) || isSize(factor))
      list.times(M::factorMissing, factor.under.value / factor.over.value);
}

}  // namespace

void addWrongSharing(const WrongGround& ground, WrongList& list) {
  const Chain* chain = ground.chain();
  if (!chain) return;
  if (isDose(ground.step)) {
    if (const auto doses = dosesSharing(*chain))
      addWrongShare(*doses, isByTheHour(scheduleOf(ground)), list);
    else
      addNeedlessShare(ground, list);
  } else if (isDay(ground.step)) {
    if (const auto doses = dosesCounted(*chain)) addOtherCount(*doses, false, list);
  }
}

void addWrongEnd(const WrongGround& ground, WrongList& list) {
  static constexpr std::array<std::pair<StepId, StepId>, 2> ends = {
      {{StepId::lowDose, StepId::limitDose}, {StepId::lowDay, StepId::limitDay}}};
  for (const auto& [low, high] : ends) {
    const Number* other = ground.step == low    ? ground.right.exact(high)
                          : ground.step == high ? ground.right.exact(low)
                                                : nullptr;
    if (other) list.add(M::otherEndOfRange, *other);
  }
}

void addWrongConversion(const WrongGround& ground, WrongList& list) {
  const Chain* chain = ground.chain();
  if (!chain) return;
  if (isRateOrder(ground.key)) {
    if (ground.step == StepId::rate) addForgottenFactors(*chain, list);
    return;
  }
  for (const Factor& factor : chain->factors) {
    if (!joinsDrugUnits(factor)) continue;
    const Number used = factor.over.value / factor.under.value;
    list.times(M::metricStepLeftOut, Number(1) / used);
    list.times(M::convertedBackwards, Number(1) / (used * used));
  }
}

void addWrongPoint(const WrongGround& ground, WrongList& list) {
  // ten or a hundred on a conversion is a wrong step between units; anywhere else the point was moved
  const Chain* chain = ground.chain();
  const M moved = chain && isConversionLine(*chain) ? M::tenOrHundredForThousand : M::pointMoved;
  for (const int power : {1, 2, -1, -2}) list.times(moved, Number::powerOfTen(power));
  const UnitProduct& over = ground.key.step(ground.step)->lookingFor.over;
  const bool ofMedicine = over.size() == 1 && (measuresDrug(over.front()) || over.front() == Unit::mL ||
                                               over.front() == Unit::tablet || over.front() == Unit::capsule);
  if (!ofMedicine || isRateOrder(ground.key)) return;
  for (const int power : {3, -3}) list.times(M::metricStepLeftOut, Number::powerOfTen(power));
}

}  // namespace wardchalk::detail
