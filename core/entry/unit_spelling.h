#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/number/number.h"
#include "core/unit/unit.h"

namespace wardchalk {

/// How a spelling of a unit is taken; the table with its sources is unit_spellings.def.
enum class SpellingUse : std::uint8_t { read, unsafe, other, never };

/// Where a spelling is looked up: the same letters mean different units in different entries.
enum class SpelledIn : std::uint8_t { age, height, time, stroke, line, elsewhere };

/// A unit by one of its spellings.
struct SpelledUnit {
  SpellingUse how;
  Unit unit;     ///< grams are of medicine
  Number times;  ///< how many of the unit one of what was typed is
};

/// The unit that a word, a sign or two words with one blank between them name there; empty if none. A
/// student's line takes what is refused at the bedside with a safe form, and remarks on it.
[[nodiscard]] std::optional<SpelledUnit> spelledUnit(std::string_view typed, SpelledIn where);

/// Whether the word makes an amount a total for a whole course of treatment (H10).
[[nodiscard]] bool isCourseWord(std::string_view word);

}  // namespace wardchalk
