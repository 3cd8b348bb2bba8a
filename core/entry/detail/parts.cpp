#include "core/entry/detail/parts.h"

#include <algorithm>

#include "core/unit/conversion.h"

namespace wardchalk::entry {

namespace {

/// The system a unit belongs to; parts of one quantity never mix them ("5 kg 3 oz").
bool isHousehold(Unit unit) {
  return unit == Unit::lb || unit == Unit::oz || unit == Unit::in || unit == Unit::ft;
}

/// A part after the first: smaller, of the same kind and system, and less than one of the unit before it.
std::optional<Refusal> badPart(const Quantity& before, const Quantity& part, std::string_view text) {
  if (dimensionOf(before.unit) != dimensionOf(part.unit) ||
      isHousehold(before.unit) != isHousehold(part.unit))
    return refusalOf(RefusalCode::partsOutOfOrder, text);
  const auto onePartOfBefore = converted(Number(1), before.unit, part.unit);
  if (!onePartOfBefore || *onePartOfBefore <= Number(1)) return refusalOf(RefusalCode::partsOutOfOrder, text);
  if (!before.value.isWhole()) return refusalOf(RefusalCode::partNotWhole, text);
  if (part.value >= *onePartOfBefore)
    return hintedRefusal(RefusalCode::partTooLarge, text, std::string(idOf(before.unit)));
  return std::nullopt;
}

/// "2 st 13 lb": a part in a unit of another size and the rest of it in ours.
Result<Done> takeUpOtherSize(std::vector<TypedPart>& parts, std::string_view text) {
  for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
    TypedPart& part = parts[i];
    const TypedPart& rest = parts[i + 1];
    if (part.times == Number(1) || rest.quantity.unit != part.quantity.unit) continue;
    const bool whole = (part.quantity.value / part.times).isWhole();
    if (!whole || rest.quantity.value >= part.times || rest.times != Number(1))
      return refusalOf(RefusalCode::partsOutOfOrder, text);
    part.quantity.value = part.quantity.value + rest.quantity.value;
    parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(i) + 1);
  }
  return Done{};
}

}  // namespace

Result<MixedQuantity> partsOf(TypedAmount amount, UnitList fitting, std::string_view text) {
  for (TypedPart& part : amount.parts)
    if (part.quantity.unit == Unit::g && contains(fitting, Unit::bodyG)) part.quantity.unit = Unit::bodyG;
  if (!amount.per.empty()) return hintedRefusal(RefusalCode::unitUnfit, text, listOf(fitting));
  for (const TypedPart& part : amount.parts)
    if (!contains(fitting, part.quantity.unit)) return unfit(part.quantity.unit, text, fitting);
  if (const auto taken = takeUpOtherSize(amount.parts, text); !taken) return taken.refusal();
  MixedQuantity mixed;
  for (const TypedPart& part : amount.parts) mixed.parts.push_back(part.quantity);
  for (std::size_t i = 1; i < mixed.parts.size(); ++i)
    if (auto refusal = badPart(mixed.parts[i - 1], mixed.parts[i], text)) return *std::move(refusal);
  return mixed;
}

Quantity totalIn(Unit unit, const MixedQuantity& mixed) {
  Number total;
  for (const Quantity& part : mixed.parts) total = total + *converted(part.value, part.unit, unit);
  return {total, unit};
}

std::optional<Refusal> refusedRange(Cursor cursor, RefusalCode code) {
  const std::string_view text = cursor.text();
  if (!takeRangeWord(cursor) && !cursor.takeWord("or")) return std::nullopt;
  const bool another = cursor.isNumber() && !cursor.isSign("-", 1);  // and no date
  return another ? std::optional(refusalOf(code, text)) : std::nullopt;
}

}  // namespace wardchalk::entry
