#include "core/unit/read_quantity.h"

#include <initializer_list>
#include <optional>

#include "core/number/decimal_text.h"
#include "core/unit/conversion.h"
#include "core/unit/written.h"

namespace wardchalk {

namespace {

bool contains(std::initializer_list<Unit> units, Unit unit) {
  for (const Unit one : units)
    if (one == unit) return true;
  return false;
}

std::string listOf(std::initializer_list<Unit> units) {
  std::string list;
  for (const Unit unit : units) list.append(list.empty() ? "" : ", ").append(idOf(unit));
  return list;
}

/// A part after the first: smaller, of the same kind, and less than one of the unit before it.
std::optional<Refusal> badPart(const Quantity& before, const Quantity& part, std::string_view text) {
  if (dimensionOf(before.unit) != dimensionOf(part.unit)) return refusalOf(RefusalCode::unitUnfit, text);
  const auto onePartOfBefore = converted(Number(1), before.unit, part.unit);
  if (!onePartOfBefore || *onePartOfBefore <= Number(1)) return refusalOf(RefusalCode::partsOutOfOrder, text);
  if (!before.value.isWhole()) return refusalOf(RefusalCode::partNotWhole, text);
  if (part.value >= *onePartOfBefore)
    return hintedRefusal(RefusalCode::partTooLarge, text, std::string(idOf(before.unit)));
  return std::nullopt;
}

/// The system a unit belongs to; parts of one quantity never mix them ("5 kg 3 oz").
bool isHousehold(Unit unit) { return contains({Unit::lb, Unit::oz, Unit::in, Unit::ft}, unit); }

Result<MixedQuantity> readMixed(std::string_view text, std::initializer_list<Unit> allowed) {
  Result<Written> written = readWritten(text);
  if (!written) return written.refusal();
  if (!written->per.empty()) return hintedRefusal(RefusalCode::unitUnfit, text, listOf(allowed));
  MixedQuantity mixed{{written->first}};
  mixed.parts.insert(mixed.parts.end(), written->more.begin(), written->more.end());
  for (Quantity& part : mixed.parts) {
    if (part.unit == Unit::g && contains(allowed, Unit::bodyG)) part.unit = Unit::bodyG;
    if (!contains(allowed, part.unit)) return hintedRefusal(RefusalCode::unitUnfit, text, listOf(allowed));
  }
  for (std::size_t i = 1; i < mixed.parts.size(); ++i) {
    if (isHousehold(mixed.parts[i].unit) != isHousehold(mixed.parts[i - 1].unit))
      return refusalOf(RefusalCode::partsOutOfOrder, text);
    if (auto refusal = badPart(mixed.parts[i - 1], mixed.parts[i], text)) return *refusal;
  }
  return mixed;
}

Result<MixedQuantity> nonZero(Result<MixedQuantity> mixed, std::string_view text) {
  if (!mixed) return mixed;
  for (const Quantity& part : mixed->parts)
    if (!part.value.isZero()) return mixed;
  return refusalOf(RefusalCode::zero, text);
}

/// The parts put together in the smallest unit: "90 min" for "1 h 30 min".
std::string totalText(const MixedQuantity& mixed) {
  const Unit unit = mixed.smallestUnit();
  Number total;
  for (const Quantity& part : mixed.parts) total = total + *converted(part.value, part.unit, unit);
  return exactText(total).append(" ").append(idOf(unit));
}

/// A single positive quantity in one of the units, nothing per anything.
Result<Quantity> readSingle(std::string_view text, std::initializer_list<Unit> allowed) {
  Result<MixedQuantity> mixed = nonZero(readMixed(text, allowed), text);
  if (!mixed) return mixed.refusal();
  if (mixed->parts.size() > 1) return refusalOf(RefusalCode::trailingText, text, totalText(*mixed));
  return mixed->parts.front();
}

constexpr std::initializer_list<Unit> drugUnits = {Unit::mcg,   Unit::mg,   Unit::g,
                                                   Unit::units, Unit::mmol, Unit::mEq};

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

/// Adds one "/unit" to the dose; refuses a second size or time and whatever is neither.
Result<Done> addPer(DoseAmount& dose, const Written::Per& per, std::string_view text) {
  const bool isDay = per.value && *per.value == Number(24) && per.unit == Unit::h;
  if (per.value) return hintedRefusal(RefusalCode::unitUnfit, text, isDay ? "per day" : "");
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

Result<DoseAmount> readDose(std::string_view text, bool volumeToo) {
  Result<Written> written = readWrittenDrug(text);
  if (!written) return written.refusal();
  if (!written->more.empty()) return refusalOf(RefusalCode::trailingText, text);
  const Unit unit = written->first.unit;
  if (!contains(drugUnits, unit) && !(volumeToo && unit == Unit::mL))
    return hintedRefusal(RefusalCode::unitUnfit, text, listOf(drugUnits) + (volumeToo ? ", mL" : ""));
  if (written->first.value.isZero()) return refusalOf(RefusalCode::zero, text);
  DoseAmount dose{written->first, PerSize::none, PerTime::none};
  for (const Written::Per& per : written->per)
    if (auto added = addPer(dose, per, text); !added) return added.refusal();
  return dose;
}

/// "5 mL/120 mg" turned the right way up: "120 mg/5 mL".
std::string turnedStrength(const Written& written) {
  const Written::Per& per = written.per.front();
  if (!per.value || !contains(drugUnits, per.unit)) return {};
  const std::string in = written.first.value == Number(1) ? "" : exactText(written.first.value) + " ";
  return exactText(*per.value)
      .append(" ")
      .append(idOf(per.unit))
      .append("/")
      .append(in)
      .append(idOf(written.first.unit));
}

Result<Strength> readStrengthIn(std::string_view text, std::initializer_list<Unit> containers) {
  Result<Written> written = readWrittenDrug(text);
  if (!written) return written.refusal();
  if (written->per.size() != 1 || !written->more.empty()) return refusalOf(RefusalCode::strengthShape, text);
  const Written::Per& per = written->per.front();
  if (contains(containers, written->first.unit))
    return refusalOf(RefusalCode::strengthShape, text, turnedStrength(*written));
  if (!contains(drugUnits, written->first.unit) || !contains(containers, per.unit))
    return refusalOf(RefusalCode::strengthShape, text);
  if (written->first.value.isZero()) return refusalOf(RefusalCode::zero, text);
  return Strength{written->first, {per.value.value_or(Number(1)), per.unit}};
}

}  // namespace

Result<MixedQuantity> readWeight(std::string_view text) {
  return nonZero(readMixed(text, {Unit::kg, Unit::bodyG, Unit::lb, Unit::oz}), text);
}

Result<MixedQuantity> readHeight(std::string_view text) {
  return nonZero(readMixed(text, {Unit::cm, Unit::m, Unit::ft, Unit::in}), text);
}

Result<MixedQuantity> readAge(std::string_view text) {
  return readMixed(text, {Unit::year, Unit::month, Unit::week, Unit::day});
}

Result<Quantity> readArea(std::string_view text) { return readSingle(text, {Unit::m2}); }

Result<DoseAmount> readOrderedDose(std::string_view text) {
  Result<DoseAmount> dose = readDose(text, /*volumeToo=*/true);
  if (dose && dose->perTime == PerTime::week) return hintedRefusal(RefusalCode::unitUnfit, text, "each dose");
  if (dose && dose->amount.unit == Unit::mL && dose->isRate()) return refusalOf(RefusalCode::rateHere, text);
  return dose;
}

Result<DoseAmount> readReferenceDose(std::string_view text) {
  Result<DoseAmount> dose = readDose(text, /*volumeToo=*/false);
  if (dose && dose->perTime == PerTime::none) return refusalOf(RefusalCode::perMissing, text);
  return dose;
}

Result<DoseAmount> readMaximum(std::string_view text, PerTime time) {
  Result<DoseAmount> dose = readDose(text, /*volumeToo=*/false);
  if (!dose) return dose;
  if (dose->perTime != PerTime::none && dose->perTime != time)
    return hintedRefusal(RefusalCode::unitUnfit, text, std::string("per ").append(idOf(unitOf(time))));
  return DoseAmount{dose->amount, dose->perSize, time};
}

Result<Strength> readStrength(std::string_view text) {
  return readStrengthIn(text, {Unit::mL, Unit::L, Unit::tablet, Unit::capsule});
}

Result<Strength> readConcentration(std::string_view text) {
  return readStrengthIn(text, {Unit::mL, Unit::L});
}

Result<Quantity> readContent(std::string_view text) { return readSingle(text, drugUnits); }

Result<Quantity> readVolume(std::string_view text) { return readSingle(text, {Unit::mL, Unit::L}); }

Result<Quantity> readTime(std::string_view text) { return readSingle(text, {Unit::h, Unit::min}); }

Result<DoseAmount> readRate(std::string_view text) {
  Result<DoseAmount> dose = readDose(text, /*volumeToo=*/false);
  if (dose && (!dose->isRate() || dose->perSize == PerSize::m2))
    return hintedRefusal(RefusalCode::unitUnfit, text, "mg/min, mg/kg/min, mg/h or mg/kg/h");
  return dose;
}

Result<Quantity> readDropFactor(std::string_view text) {
  Result<Written> written = readWritten(text);
  if (!written) return written.refusal();
  const bool fits = written->first.unit == Unit::drop && written->per.size() == 1 && written->more.empty() &&
                    written->per.front().unit == Unit::mL && !written->per.front().value;
  if (!fits) return hintedRefusal(RefusalCode::unitUnfit, text, "drop/mL");
  if (written->first.value.isZero()) return refusalOf(RefusalCode::zero, text);
  return written->first;
}

}  // namespace wardchalk
