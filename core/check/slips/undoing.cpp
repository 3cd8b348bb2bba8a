#include "core/check/slips/undoing.h"

namespace wardchalk::undoing {

namespace {

constexpr std::monostate impossible;

Undoing times(const std::optional<Number>& factor) {
  if (!factor || *factor == Number(1)) return impossible;
  return *factor;
}

/// Doses in a day, at least 1; none while the schedule is not known.
std::optional<Number> dosesIn(const SlipGround& ground) {
  if (!ground.dosesADay) return std::nullopt;
  return larger(ground.dosesADay->ceil(), Number(1));
}

bool isPerDay(const SlipGround& ground) {
  return ground.given.order.dose && ground.given.order.dose->perTime == PerTime::day;
}

PerSize orderSize(const SlipGround& ground) {
  return ground.given.order.dose ? ground.given.order.dose->perSize : PerSize::none;
}

PerSize referenceSize(const SlipGround& ground) {
  return ground.given.reference.high ? ground.given.reference.high->perSize : PerSize::none;
}

std::optional<Number> sizeOf(const SlipGround& ground, PerSize size) {
  if (size == PerSize::none) return std::nullopt;
  return size == PerSize::kg ? ground.kg : ground.m2;
}

/// `meant` over `taken`, where an order or a reference takes the one for the other; two papers that agree on
/// it do not.
Undoing sizeInstead(const SlipGround& ground, PerSize meant, PerSize taken) {
  const bool ordered = orderSize(ground) == taken && referenceSize(ground) != taken;
  const bool stated = orderSize(ground) == PerSize::none && referenceSize(ground) == meant;
  if ((!ordered && !stated) || !ground.kg || !ground.m2) return impossible;
  return times(*sizeOf(ground, meant) / *sizeOf(ground, taken));
}

/// The weight in one part, which is what can be typed ten times too much, or in another unit.
const Quantity* plainWeight(const SlipGround& ground) {
  const auto& weight = ground.given.child.weight;
  return weight && weight->parts.size() == 1 ? &weight->parts.front() : nullptr;
}

Undoing weightOf(const SlipGround& ground, Quantity weight) {
  Case meant = ground.given;
  meant.child.weight = MixedQuantity{{std::move(weight)}};
  return meant;
}

/// The label by which an order in mL becomes an amount; none for any other order.
const Strength* labelOf(const SlipGround& ground) {
  const Case& given = ground.given;
  if (!given.order.dose || given.order.dose->amount.unit != Unit::mL) return nullptr;
  return given.stock.strength && given.stock.strength->in.unit == Unit::mL ? &*given.stock.strength : nullptr;
}

}  // namespace

Undoing dividedOnce(const SlipGround& ground) {
  const std::optional<Number> doses = dosesIn(ground);
  if (!doses || isPerDay(ground)) return impossible;
  return times(Number(1) / *doses);
}

Undoing notPerDay(const SlipGround& ground) { return isPerDay(ground) ? times(dosesIn(ground)) : impossible; }

Undoing notDividedAgain(const SlipGround& ground) {
  return isPerDay(ground) ? impossible : times(dosesIn(ground));
}

Undoing byM2(const SlipGround& ground) { return sizeInstead(ground, PerSize::m2, PerSize::kg); }

Undoing byKg(const SlipGround& ground) { return sizeInstead(ground, PerSize::kg, PerSize::m2); }

Undoing notForSize(const SlipGround& ground) {
  const PerSize size = orderSize(ground) != PerSize::none ? orderSize(ground) : referenceSize(ground);
  const std::optional<Number> value = sizeOf(ground, size);
  return value ? times(Number(1) / *value) : impossible;
}

Undoing forSize(const SlipGround& ground) {
  if (orderSize(ground) != PerSize::none) return impossible;
  return times(sizeOf(ground, referenceSize(ground)));
}

Undoing withKilograms(const SlipGround& ground) {
  if (orderSize(ground) != PerSize::none || referenceSize(ground) != PerSize::kg) return impossible;
  return times(converted(Number(1), Unit::lb, Unit::kg, ground.pounds));
}

Undoing onReferenceSchedule(const SlipGround& ground) {
  const auto& ordered = ground.given.order.schedule;
  const auto& stated = ground.given.reference.schedule;
  if (!ordered || !stated || ordered->isContinuous() || stated->isContinuous()) return impossible;
  if (ordered->kind == stated->kind && ordered->fewest == stated->fewest && ordered->most == stated->most)
    return impossible;
  Case meant = ground.given;
  meant.order.schedule = stated;
  return meant;
}

Undoing weightInPounds(const SlipGround& ground) {
  const Quantity* weight = plainWeight(ground);
  if (!weight || weight->unit != Unit::kg) return impossible;
  return weightOf(ground, {weight->value, Unit::lb});
}

Undoing weightTimes(const SlipGround& ground, const Number& factor) {
  const Quantity* weight = plainWeight(ground);
  if (!weight) return impossible;
  return weightOf(ground, {weight->value * factor, weight->unit});
}

Undoing surfaceTimes(const SlipGround& ground, const Number& factor) {
  if (!ground.given.child.bsa) return impossible;
  Case meant = ground.given;
  meant.child.bsa->value = meant.child.bsa->value * factor;
  return meant;
}

Undoing labelInFive(const SlipGround& ground) {
  const Strength* label = labelOf(ground);
  return label && label->in.value == Number(1) ? times(Number::ratio(1, 5)) : impossible;
}

Undoing labelInOne(const SlipGround& ground) {
  const Strength* label = labelOf(ground);
  return label ? times(label->in.value) : impossible;
}

}  // namespace wardchalk::undoing
