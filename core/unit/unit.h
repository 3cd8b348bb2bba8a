#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace wardchalk {

/// What a unit measures. Only units of one dimension can be converted into each other.
enum class Dimension : std::uint8_t {
  drugMass,
  drugUnits,
  drugMoles,
  drugEquivalents,
  bodyMass,
  length,
  bodySurface,
  volume,
  time,
  doses,
  tablets,
  capsules,
  drops,
};

/// The units that Wardchalk knows; the list with spellings is in units.def. `g` is a gram of medicine and
/// `bodyG` a gram of the child.
enum class Unit : std::uint8_t {
#define WARDCHALK_UNIT(name, ...) name,
#include "core/unit/units.def"
#undef WARDCHALK_UNIT
};

/// How a unit is written and said.
struct UnitInfo {
  std::string_view id;     ///< in files: "m2"
  std::string_view one;    ///< printed after 1: "m²", "drop"
  std::string_view many;   ///< printed after any other number: "m²", "drops"
  std::string_view word;   ///< spoken: "square metre"
  std::string_view words;  ///< spoken after any other number: "square metres"
  Dimension dimension;
};

inline constexpr std::array unitTable = {
#define WARDCHALK_UNIT(name, id, one, many, word, words, dimension) \
  UnitInfo{id, one, many, word, words, Dimension::dimension},
#include "core/unit/units.def"
#undef WARDCHALK_UNIT
};

[[nodiscard]] constexpr const UnitInfo& infoOf(Unit unit) {
  return unitTable[static_cast<std::size_t>(unit)];
}
[[nodiscard]] constexpr std::string_view idOf(Unit unit) { return infoOf(unit).id; }
[[nodiscard]] constexpr Dimension dimensionOf(Unit unit) { return infoOf(unit).dimension; }

/// Whether the unit measures a medicine: mass, units, millimoles or milliequivalents.
[[nodiscard]] constexpr bool measuresDrug(Unit unit) {
  return dimensionOf(unit) <= Dimension::drugEquivalents;
}

/// The unit with this file spelling; "g" is a gram of medicine. Empty if there is none.
[[nodiscard]] std::optional<Unit> unitWithId(std::string_view id);

}  // namespace wardchalk
