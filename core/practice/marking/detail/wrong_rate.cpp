#include "core/practice/marking/detail/wrong.h"

// Mistakes with the rate of an infusion, drops and the least volume.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

const Number minutesInHour(60);

/// The drug's own volume left out of the whole, or added on top of it.
void addDrugVolume(const WrongGround& ground, const Number& volume, WrongList& list) {
  if (!ground.key.give) return;
  std::vector<Number> amounts = {ground.key.give->exact.value};
  if (ground.key.give->measured) amounts.push_back(*ground.key.give->measured);
  if (const Number* own = ground.right.result(StepId::give)) amounts.push_back(*own);
  for (const Number& amount : amounts) {
    list.times(M::medicineVolumeMiscounted, (volume - amount) / volume);
    list.times(M::medicineVolumeMiscounted, (volume + amount) / volume);
  }
}

}  // namespace

void addWrongRate(const WrongGround& ground, WrongList& list) {
  const bool drops = ground.step == StepId::drops;
  if ((!drops && ground.step != StepId::rate) || !ground.papers.hours || !ground.papers.volume) return;
  const Number& volume = *ground.papers.volume;
  const Number& hours = *ground.papers.hours;
  if (drops) {
    if (ground.key.given.infusion.dropFactor)
      list.times(M::dropFactorLeftOut, Number(1) / ground.key.given.infusion.dropFactor->value);
    list.times(M::hoursForMinutes, minutesInHour);
  } else {
    list.times(M::minutesNotHours, Number(1) / minutesInHour);
    list.add(M::timesTime, volume * hours);
    list.add(M::timesTime, volume * hours * minutesInHour);
  }
  addDrugVolume(ground, volume, list);
}

void addWrongDilution(const WrongGround& ground, WrongList& list) {
  const Chain* chain = ground.chain();
  if (ground.step != StepId::volume || !chain) return;
  // right = dose ÷ greatest concentration; the chain's last factor is one over that concentration
  const Number concentration = chain->factors.back().under.value / chain->factors.back().over.value;
  const Number dose = list.right() * concentration;
  list.add(M::leastVolumeUpsideDown, concentration / dose);
  list.add(M::leastVolumeUpsideDown, dose * concentration);
}

}  // namespace wardchalk::detail
