#pragma once

#include <optional>
#include <variant>

#include "core/medicine/case.h"
#include "core/unit/conversion.h"

namespace wardchalk {

/// What the undoing of slips starts from.
struct SlipGround {
  const Case& given;
  Pounds pounds = Pounds::exact;
  std::optional<Number> kg;         ///< the child's weight as it is used
  std::optional<Number> m2;         ///< the child's surface as it is used
  std::optional<Number> dosesADay;  ///< the most that the order gives
};

/// Had the slip not been made, the dose would be so many times the ordered one, or the case another. Empty
/// when the slip cannot have been made in this case, or would have changed nothing.
using Undoing = std::variant<std::monostate, Number, Case>;

/// What was meant, for each known slip: the rows of `slipTable` name them.
namespace undoing {

/// The dose, and below the weight and the entered surface, times a power of ten.
template <int power>
[[nodiscard]] Undoing timesTenTo(const SlipGround&) {
  return Number::powerOfTen(power);
}
[[nodiscard]] Undoing weightTimes(const SlipGround& ground, const Number& factor);
template <int power>
[[nodiscard]] Undoing weightTimesTenTo(const SlipGround& ground) {
  return weightTimes(ground, Number::powerOfTen(power));
}
[[nodiscard]] Undoing surfaceTimes(const SlipGround& ground, const Number& factor);
template <int power>
[[nodiscard]] Undoing surfaceTimesTenTo(const SlipGround& ground) {
  return surfaceTimes(ground, Number::powerOfTen(power));
}

/// The day's amount, ordered as each dose.
[[nodiscard]] Undoing dividedOnce(const SlipGround& ground);
/// Each dose, ordered as the day's amount.
[[nodiscard]] Undoing notPerDay(const SlipGround& ground);
/// A dose divided once more among the doses of the day.
[[nodiscard]] Undoing notDividedAgain(const SlipGround& ground);
/// kg in place of m²: a dose that is ordered for each kg, or was worked out with them under a reference for
/// each m². A reference that was itself read so comes to the same.
[[nodiscard]] Undoing byM2(const SlipGround& ground);
/// m² in place of kg, the other way round.
[[nodiscard]] Undoing byKg(const SlipGround& ground);
/// The whole dose, ordered for each kg or m² or multiplied by them once too often.
[[nodiscard]] Undoing notForSize(const SlipGround& ground);
/// The figure for each kg or m², ordered as the whole dose.
[[nodiscard]] Undoing forSize(const SlipGround& ground);
/// A whole dose worked out with the child's pounds under a reference for each kg.
[[nodiscard]] Undoing withKilograms(const SlipGround& ground);
/// The order given as often as the reference says.
[[nodiscard]] Undoing onReferenceSchedule(const SlipGround& ground);
/// Pounds, entered as kg.
[[nodiscard]] Undoing weightInPounds(const SlipGround& ground);
/// So much in 5 mL, entered as in 1 mL.
[[nodiscard]] Undoing labelInFive(const SlipGround& ground);
/// So much in 1 mL, entered as in more.
[[nodiscard]] Undoing labelInOne(const SlipGround& ground);

}  // namespace undoing

}  // namespace wardchalk
