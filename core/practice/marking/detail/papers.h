#pragma once

#include <optional>

#include "core/check/worksheet.h"

namespace wardchalk::detail {

/// The figures of a problem's papers in the units that mistakes mix up. Absent where the papers do not state
/// them.
struct Papers {
  std::optional<Number> kg;           ///< as used
  std::optional<Number> pounds;       ///< of a child weighed in pounds, ounces counted in
  std::optional<Number> wholePounds;  ///< of a weight in pounds and ounces
  std::optional<Number> ounces;
  std::optional<Number> cm;           ///< as used, converted exactly where it was typed in inches
  std::optional<Number> inches;       ///< of a child measured in feet or inches
  std::optional<Number> m2;           ///< as used
  std::optional<Number> wholeFeet;    ///< of a height in feet and inches
  std::optional<Number> overFeet;     ///< its inches
  std::optional<Number> years;        ///< of the child, whole ones
  bool inGrams = false;               ///< the weight is stated in grams
  bool inMetres = false;              ///< the height is stated in metres
  Number referenceDoses{1};           ///< doses that the reference means in a day, whole, at least 1
  Number orderDoses{1};               ///< doses that the order means in a day, whole, at least 1
  std::optional<Number> labelAmount;  ///< "120" of 120 mg in 5 mL, in the label's own unit
  std::optional<Number> labelIn;      ///< "5"
  bool labelStatesVolume = false;     ///< it is a liquid's
  std::optional<Number> hours;        ///< that an infusion runs
  std::optional<Number> volume;       ///< of an infusion, mL
};

[[nodiscard]] Papers papersOf(const Worksheet& key);

/// Doses that the day's amount is shared among in this chain ("1 day over 3 doses"); none if it is not.
[[nodiscard]] std::optional<Number> dosesSharing(const Chain& chain);
/// Doses that one dose is counted as in this chain ("3 doses over 1 day"); none if it is not.
[[nodiscard]] std::optional<Number> dosesCounted(const Chain& chain);

}  // namespace wardchalk::detail
