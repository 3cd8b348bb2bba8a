#include "core/practice/lines/detail/mixed_parts.h"

#include <optional>

#include "core/unit/conversion.h"

namespace wardchalk::practice {

namespace {

const Term& termOf(const Part& part) { return part.chain.factors.front().over; }

/// The unit of a part, when it has one alone.
std::optional<Unit> unitOf(const Part& part) {
  const bool alone = termOf(part).units.size() == 1 && part.chain.factors.front().under.units.empty();
  return alone ? std::optional(termOf(part).units.front()) : std::nullopt;
}

/// What is wrong with a part after a larger one.
std::optional<LineFaultCode> faultAfter(const Quantity& larger, const Quantity& part) {
  if (!larger.value.isWhole()) return LineFaultCode::partNotWhole;
  const auto whole = converted(Number(1), larger.unit, part.unit);
  if (!whole || *whole <= Number(1)) return LineFaultCode::partsOutOfOrder;
  if (part.value >= *whole) return LineFaultCode::partTooLarge;
  return std::nullopt;
}

}  // namespace

bool areAlike(const Part& one, const Part& other) {
  const auto a = unitOf(one);
  const auto b = unitOf(other);
  return a && b && dimensionOf(*a) == dimensionOf(*b);
}

std::variant<Part, PartsFault> putTogether(const std::vector<Part>& parts) {
  const Span at{parts.front().at.begin, parts.back().at.end};
  MixedQuantity mixed;
  for (const Part& part : parts) {
    const Quantity next{termOf(part).value, termOf(part).units.front()};
    if (!mixed.parts.empty())
      if (const auto code = faultAfter(mixed.parts.back(), next)) return PartsFault{*code, at};
    mixed.parts.push_back(next);
  }
  // Pounds end in sixteenths and twelfths of a foot do not: so are the totals of a working.
  const Unit unit = mixed.smallestUnit() == Unit::oz ? Unit::lb : mixed.smallestUnit();
  const auto total = totalIn(mixed, unit);
  if (!total) return PartsFault{LineFaultCode::operatorMissing, parts.back().at};
  Part together = amountPart(*total, Units{{unit}, {}}, at);
  together.isAmount = false;
  together.isParts = true;
  return together;
}

}  // namespace wardchalk::practice
