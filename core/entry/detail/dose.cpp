#include "core/entry/detail/dose.h"

#include <array>

#include "core/entry/detail/parts.h"
#include "core/entry/detail/schedule_phrase.h"
#include "core/entry/read_strength.h"
#include "core/entry/read_words.h"

namespace wardchalk::entry {

namespace {

constexpr std::array orderUnits = {Unit::mcg,  Unit::mg,  Unit::g, Unit::units,
                                   Unit::mmol, Unit::mEq, Unit::mL};

std::optional<PerSize> sizeOf(Unit unit) {
  if (unit == Unit::kg) return PerSize::kg;
  if (unit == Unit::m2) return PerSize::m2;
  return std::nullopt;
}

std::optional<PerTime> timeOf(Unit unit) {
  switch (unit) {
    case Unit::dose:
      return PerTime::dose;
    case Unit::day:
      return PerTime::day;
    case Unit::week:
      return PerTime::week;
    case Unit::h:
      return PerTime::h;
    case Unit::min:
      return PerTime::min;
    default:
      return std::nullopt;  // every other unit is no time to give a dose in
  }
}

bool holdsMedicine(Unit unit) {
  return dimensionOf(unit) == Dimension::volume || unit == Unit::tablet || unit == Unit::capsule;
}

/// Adds one "/unit" to the dose; refuses a second size or time and whatever is neither.
Result<Done> addPer(DoseAmount& dose, const TypedPer& per, std::string_view text) {
  if (holdsMedicine(per.unit)) return refusalOf(RefusalCode::strengthHere, text);
  if (per.number) return hintedRefusal(RefusalCode::unitUnfit, text, {});
  if (const auto size = sizeOf(per.unit)) {
    if (dose.perSize != PerSize::none) return refusalOf(RefusalCode::perDoubled, text);
    dose.perSize = *size;
    return Done{};
  }
  const auto time = timeOf(per.unit);
  if (!time) return hintedRefusal(RefusalCode::unitUnfit, text, "per kg, m2, dose or day");
  if (dose.perTime != PerTime::none) return refusalOf(RefusalCode::perDoubled, text);
  dose.perTime = *time;
  return Done{};
}

}  // namespace

Result<DoseAmount> readDoseFrom(TypedNumber first, Cursor& cursor, Findings& findings, Volumes volumes) {
  Result<TypedAmount> amount = readTypedAmountFrom(std::move(first), cursor, findings, SpelledIn::elsewhere);
  if (!amount) return amount.refusal();
  const std::string_view text = cursor.text();
  if (amount->parts.size() > 1) return refusalOf(RefusalCode::trailingText, text);
  const Quantity& quantity = amount->parts.front().quantity;
  const UnitList fitting = volumes == Volumes::taken ? UnitList(orderUnits) : UnitList(drugUnits);
  if (!contains(fitting, quantity.unit)) return unfit(quantity.unit, text, fitting);
  if (quantity.value.isZero()) return refusalOf(RefusalCode::zero, text);
  DoseAmount dose{quantity, PerSize::none, PerTime::none};
  for (const TypedPer& per : amount->per)
    if (const auto added = addPer(dose, per, text); !added) return added.refusal();
  return dose;
}

Result<DoseAmount> readDoseAt(Cursor& cursor, Findings& findings, Volumes volumes) {
  Result<TypedNumber> first = readTypedNumber(cursor, findings);
  if (!first) return first.refusal();
  return readDoseFrom(*std::move(first), cursor, findings, volumes);
}

std::optional<Refusal> namedRest(const Cursor& cursor) {
  if (cursor.atEnd()) return std::nullopt;
  Cursor further = cursor;
  while (!further.atEnd()) {
    if (saysHowOften(further.rest())) return refusalOf(RefusalCode::scheduleHere, cursor.rest());
    further.take();
  }
  if (saysRoute(cursor.rest())) return refusalOf(RefusalCode::routeHere, cursor.rest());
  return std::nullopt;
}

Refusal namedWords(Refusal refusal, std::string_view text) {
  if (saysHowOften(text)) return refusalOf(RefusalCode::scheduleHere, text);
  if (saysRoute(text)) return refusalOf(RefusalCode::routeHere, text);
  return refusal;
}

}  // namespace wardchalk::entry
