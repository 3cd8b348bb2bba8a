#pragma once

#include <string_view>

#include "core/entry/detail/amount.h"

namespace wardchalk::entry {

/// Whether an order in mL is a dose here.
enum class Volumes : std::uint8_t { refused, taken };

/// Reads a drug amount with what it is for, from its beginning or from behind its first number.
[[nodiscard]] Result<DoseAmount> readDoseAt(Cursor& cursor, Findings& findings,
                                            Volumes volumes = Volumes::refused);
[[nodiscard]] Result<DoseAmount> readDoseFrom(TypedNumber first, Cursor& cursor, Findings& findings,
                                              Volumes volumes = Volumes::refused);

/// What stands behind a dose and is no part of it, named as what it is: a schedule, a route. Nothing if
/// nothing does.
[[nodiscard]] std::optional<Refusal> namedRest(const Cursor& cursor);

/// Why words where a quantity belongs are refused: "every 6 h" is a schedule, "PO" a route. Nothing for all
/// others.
[[nodiscard]] std::optional<Refusal> namedWords(std::string_view text);
/// The same for a dose, and that "1:1000" is a strength.
[[nodiscard]] std::optional<Refusal> namedText(const Cursor& cursor);

}  // namespace wardchalk::entry
