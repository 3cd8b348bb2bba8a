#pragma once

#include <optional>
#include <string_view>

#include "core/number/number.h"
#include "core/number/refusal.h"
#include "core/unit/unit.h"

namespace wardchalk {

/// The unit this text names. Unsafe abbreviations and other spellings of a unit of ours are refused with what
/// to write. A unit of another size (mm, dL, stone) is refused without: its number would have to change too.
[[nodiscard]] Result<Unit> readUnit(std::string_view text);

/// What one of a unit of another size comes to in ours: one dL is 100 mL.
struct OtherSize {
  Number count;
  Unit unit;
};

/// Set when `text` names a unit of another size that is an exact count of one of ours.
[[nodiscard]] std::optional<OtherSize> otherSize(std::string_view text);

/// Whether the word makes an amount a total for a whole course of treatment (H10).
[[nodiscard]] bool isCourseWord(std::string_view word);

}  // namespace wardchalk
