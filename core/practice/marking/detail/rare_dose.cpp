#include "core/practice/marking/detail/wrong.h"
#include "core/unit/conversion.h"

// Rarer mistakes with the ends of a range and with the size: r for each kg or m², W the size.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

bool isOfHighEnd(StepId step) { return step == StepId::limitDose || step == StepId::limitDay; }
bool isOfLowEnd(StepId step) { return step == StepId::lowDose || step == StepId::lowDay; }

/// The number of a reference's end in the unit of medicine that the line asks for.
std::optional<Number> endIn(const std::optional<DoseAmount>& end, const Units& wanted) {
  if (!end || wanted.over.empty()) return std::nullopt;
  const auto value = converted(end->amount.value, end->amount.unit, wanted.over.front());
  return value ? std::optional(*value) : std::nullopt;
}

/// Both ends taken together. The line follows from one of them.
void addBothEnds(const Number& own, const Number& other, WrongList& list) {
  list.times(M::endsAdded, (own + other) / own);
  list.times(M::middleOfRange, (own + other) / (own * Number(2)));
}

/// The size in place of what it should multiply, and what stands in its place.
void addRareBasis(const WrongGround& ground, const Number& size, const Number& stated, bool perKg,
                  WrongList& list) {
  const Number shared = list.right() / (stated * size);
  list.add(M::sizeOverReference, size / stated);
  list.add(M::sizeOverReference, size / stated * shared);
  list.add(M::factorMissing, stated);
  list.add(M::factorMissing, stated * shared);
  if (perKg && ground.papers.years) list.times(M::ageForWeight, *ground.papers.years / size);
  const Number tens = (size / Number(10)).rounded(0) * Number(10);
  if (!tens.isZero()) list.times(M::sizeRoundedEarly, tens / size);
}

}  // namespace

void addRareDose(const WrongGround& ground, WrongList& list) {
  if (!isOfHighEnd(ground.step) && !isOfLowEnd(ground.step)) return;
  const Reference& reference = ground.key.given.reference;
  const Units& wanted = ground.key.step(ground.step)->lookingFor;
  const auto low = endIn(reference.low, wanted);
  const auto high = endIn(reference.high, wanted);
  const auto& own = isOfLowEnd(ground.step) ? low : high;
  if (!own || own->isZero()) return;
  if (low && high) addBothEnds(*own, isOfLowEnd(ground.step) ? *high : *low, list);
  const PerSize per = reference.high ? reference.high->perSize : PerSize::none;
  const auto& size = per == PerSize::kg ? ground.papers.kg : ground.papers.m2;
  if (per != PerSize::none && size) addRareBasis(ground, *size, *own, per == PerSize::kg, list);
}

}  // namespace wardchalk::detail
