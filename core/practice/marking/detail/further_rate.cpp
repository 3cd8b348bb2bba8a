#include <array>

#include "core/practice/marking/detail/wrong.h"
#include "core/unit/conversion.h"

// Further mistakes with infusions: their rate, their drops, the least volume, and doses for each minute or
// hour.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

const Number sixtyMinutes(60);

/// Sets that are in use: 10, 15, 20 and 60 drops in 1 mL (common practice, no source).
constexpr std::array giversOfDrops = {10, 15, 20, 60};

void addVolumeAlone(const WrongGround& ground, const Number& hours, WrongList& list) {
  if (!ground.key.give) return;
  std::vector<Number> amounts = {ground.key.give->exact.value};
  if (ground.key.give->measured) amounts.push_back(*ground.key.give->measured);
  if (const Number* own = ground.right.result(StepId::give)) amounts.push_back(*own);
  for (const Number& amount : amounts) list.add(M::medicineVolumeAlone, amount / hours);
}

void addRunning(const WrongGround& ground, const Number& volume, const Number& hours, WrongList& list) {
  const Number minutes = hours * sixtyMinutes;
  list.add(M::volumeAsRate, volume);
  list.add(M::minutesAsHundredths, volume * Number(100) / minutes);
  addVolumeAlone(ground, hours, list);
  if (ground.key.orderedDose) list.add(M::medicineAsVolume, ground.key.orderedDose->value / hours);
  const auto& factor = ground.key.given.infusion.dropFactor;
  if (!factor) return;
  list.add(M::dropsAsRate, volume * factor->value / minutes);
  list.times(M::dropFactorInRate, factor->value);
}

void addDropMistakes(const Number& factor, const Number& volume, const Number& hours, WrongList& list) {
  const Number minutes = hours * sixtyMinutes;
  for (const int other : giversOfDrops)
    if (Number(other) != factor) list.times(M::otherDropFactor, Number(other) / factor);
  list.add(M::timeLeftOut, volume * factor);
  list.times(M::sixtyTooMany, Number(1) / sixtyMinutes);
  list.add(M::dropFactorDivided, volume / minutes / factor);
  list.add(M::rateAsDrops, volume / hours);
  for (const Number& time : {minutes, hours, minutes * sixtyMinutes})
    list.add(M::timesTime, volume * factor * time);
}

/// The reference's figure in place of the order's, where both stand in one unit.
void addReferenceRate(const Case& given, WrongList& list) {
  const DoseAmount& ordered = *given.order.dose;
  for (const auto* end : {&given.reference.high, &given.reference.low}) {
    if (!*end) continue;
    const auto value = converted((*end)->amount.value, (*end)->amount.unit, ordered.amount.unit);
    if (value) list.times(M::referenceMeasured, *value / ordered.amount.value);
  }
}

/// S in v is the bag: Q = R × v ÷ S.
void addBagMistakes(const Papers& papers, WrongList& list) {
  const Number& amount = *papers.labelAmount;
  const Number& volume = *papers.labelIn;
  list.times(M::bagUpsideDown, amount * amount / (volume * volume));
  list.times(M::labelVolumeLeftOut, Number(1) / volume);
  list.times(M::dividedByLabelVolume, Number(1) / (volume * volume));
  list.times(M::medicineAsVolume, amount / volume);
}

/// The medicine of a minute or an hour, in its own unit or a thousandth of it, written as mL.
void addMedicineOfTime(const WrongGround& ground, WrongList& list) {
  const DoseAmount& ordered = *ground.key.given.order.dose;
  Number medicine = ordered.amount.value;
  if (ordered.perSize == PerSize::kg && ground.papers.kg) medicine = medicine * *ground.papers.kg;
  for (const Number& times : {Number(1), sixtyMinutes})
    for (const int power : {0, -3})
      list.add(M::medicineAsVolume, medicine * times * Number::powerOfTen(power));
}

void addDoseRate(const WrongGround& ground, WrongList& list) {
  const Papers& papers = ground.papers;
  if (papers.labelAmount && papers.labelIn && papers.labelStatesVolume) addBagMistakes(papers, list);
  addMedicineOfTime(ground, list);
  list.times(M::sixtyTooMany, sixtyMinutes);
  if (ground.key.given.order.dose->perTime != PerTime::min)
    list.times(M::sixtyTooMany, Number(1) / sixtyMinutes);
  addReferenceRate(ground.key.given, list);
  for (const int thousands : {6, -6}) list.times(M::convertedBackwards, Number::powerOfTen(thousands));
  if (!papers.kg) return;
  const Number trade = Number::ratio(22, 10);
  list.times(M::sizeCountedTwice, *papers.kg);
  list.times(M::factorMissing, Number(1) / *papers.kg);
  list.times(M::kilogramsDivided, Number(1) / trade);
  if (papers.pounds && ground.weightAnswered)
    list.times(M::doseInPounds, *papers.pounds / *papers.kg);
  else if (!papers.pounds)
    list.times(M::kilogramsToPounds, trade);
}

void addLeastVolume(const WrongGround& ground, WrongList& list) {
  const Papers& papers = ground.papers;
  const auto& greatest = ground.key.given.reference.maxConcentration;
  if (papers.orderDoses != Number(1)) list.times(M::dayAtOnce, papers.orderDoses);
  if (papers.kg) list.times(M::sizeCountedTwice, *papers.kg);
  if (papers.volume) list.add(M::infusionVolumeCopied, *papers.volume);
  const auto& ordered = ground.key.orderedDose;
  if (!greatest || !ordered) return;
  const Chain* chain = ground.chain();
  const Number concentration = chain->factors.back().under.value / chain->factors.back().over.value;
  const Number dose = list.right() * concentration;
  const Number* worked = ground.right.exact(StepId::orderedDose);
  for (const StepId end : {StepId::limitDose, StepId::lowDose})
    if (const Number* found = ground.right.exact(end))
      list.times(M::referenceMeasured, *found / (worked ? *worked : ordered->value));
  if (papers.labelAmount && papers.labelIn)
    list.add(M::labelForMaximum, dose * *papers.labelIn / *papers.labelAmount);
  if (const Number* strength = ground.right.exact(StepId::strength))
    list.add(M::labelForMaximum, dose / *strength);
}

}  // namespace

void addFurtherRate(const WrongGround& ground, WrongList& list) {
  const Papers& papers = ground.papers;
  if (ground.step == StepId::volume && ground.chain()) addLeastVolume(ground, list);
  if (ground.step == StepId::rate && isRateOrder(ground.key)) addDoseRate(ground, list);
  if (!papers.hours || !papers.volume) return;
  const auto& factor = ground.key.given.infusion.dropFactor;
  if (ground.step == StepId::rate && !isRateOrder(ground.key))
    addRunning(ground, *papers.volume, *papers.hours, list);
  if (ground.step == StepId::drops && factor)
    addDropMistakes(factor->value, *papers.volume, *papers.hours, list);
}

}  // namespace wardchalk::detail
