#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/entry/detail/typed_number.h"
#include "core/entry/unit_spelling.h"
#include "core/unit/quantity.h"

namespace wardchalk::entry {

/// A number with its unit.
struct TypedPart {
  Quantity quantity;
  std::string digits;
  Number times;  ///< how many of the unit one of what was typed is: 14 of a stone
};

/// What stands behind a stroke, "per" or "in".
struct TypedPer {
  std::optional<TypedNumber> number;
  Unit unit;
  [[nodiscard]] bool isOne() const { return !number || number->value == Number(1); }
};

/// A quantity as it was written, before a field says what it may be: "120 mg/5 mL" is 120 mg per 5 mL.
struct TypedAmount {
  std::vector<TypedPart> parts;  ///< at least one: the "8 lb" and the "3 oz" of "8 lb 3 oz"
  std::vector<TypedPer> per;
};

/// Reads a number, its unit, and the smaller parts and strokes behind it, as far as they go.
[[nodiscard]] Result<TypedAmount> readTypedAmount(Cursor& cursor, Findings& findings, SpelledIn where,
                                                  Zeros zeros = Zeros::lost);
/// The same from behind its first number on.
[[nodiscard]] Result<TypedAmount> readTypedAmountFrom(TypedNumber first, Cursor& cursor, Findings& findings,
                                                      SpelledIn where);

/// What is left behind an entry that was read: a full stop has one meaning, everything else is refused.
[[nodiscard]] std::optional<Refusal> refusedRest(Cursor& cursor, Findings& findings);

/// Longer than any quantity: a stuck key, or a pasted page. Asked before the text is cut into its pieces.
[[nodiscard]] std::optional<Refusal> refusedLength(std::string_view text);

/// Why no reader can begin: the entry is empty, or holds what nobody sees, other digits or damaged bytes.
[[nodiscard]] std::optional<Refusal> refusedText(const Cursor& cursor);

}  // namespace wardchalk::entry
