#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace wardchalk {

/// What kind of skill a mistake belongs to: setting up, working it out, drawing it up, or writing it down.
enum class MistakeKind : std::uint8_t { conceptual, arithmetic, measuring, writing };

/// Where on a line a mistake is to be looked for: what the first rung of the hints says.
enum class Spot : std::uint8_t {
  weight,
  height,
  surface,
  conversion,
  rounding,
  basis,
  schedule,
  reference,
  comparison,
  order,
  label,
  mixing,
  point,
  sum,
  syringe,
  writing,
  unit,
  time,
  volume,
  drops,
};

/// A known mistake in a student's working; the list is in mistakes.def.
enum class MistakeId : std::uint8_t {
#define WARDCHALK_MISTAKE(name, number, kind, spot) name,
#include "core/practice/marking/mistakes.def"
#undef WARDCHALK_MISTAKE
};

struct MistakeInfo {
  std::string_view number;  ///< the stable id in files: "E20"
  MistakeKind kind;
  Spot spot;
};

inline constexpr std::array mistakeTable = {
#define WARDCHALK_MISTAKE(name, number, kind, spot) MistakeInfo{#number, MistakeKind::kind, Spot::spot},
#include "core/practice/marking/mistakes.def"
#undef WARDCHALK_MISTAKE
};

[[nodiscard]] constexpr const MistakeInfo& infoOf(MistakeId id) {
  return mistakeTable[static_cast<std::size_t>(id)];
}
[[nodiscard]] constexpr std::string_view idOf(MistakeId id) { return infoOf(id).number; }

/// The mistake with this number; none if there is none.
[[nodiscard]] constexpr std::optional<MistakeId> mistakeWithId(std::string_view number) {
  for (std::size_t i = 0; i < mistakeTable.size(); ++i)
    if (mistakeTable[i].number == number) return static_cast<MistakeId>(i);
  return std::nullopt;
}

}  // namespace wardchalk
