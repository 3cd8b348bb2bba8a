#pragma once

#include <string_view>

#include "core/entry/detail/amount.h"
#include "core/entry/read_strength.h"

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

/// Why an entry that could not be read as a quantity is refused: what it says instead goes before where its
/// reader stopped. "Every 6 h" is a schedule, "PO" a route. Asked for afterwards, since what is read as a
/// quantity says nothing else: a schedule names no unit that a medicine or a child is measured in.
[[nodiscard]] Refusal namedWords(Refusal refusal, std::string_view text);
/// The same for what was read of a dose up to the cursor, and that "1:1000", or a percent behind it, is a
/// strength.
template <typename T>
[[nodiscard]] Result<T> namedUnlessRead(Result<T> read, const Cursor& cursor) {
  if (read && cursor.atEnd()) return read;
  if (auto strength = refusedRatioOrPercent(cursor.text())) return *std::move(strength);
  if (read) return read;
  return namedWords(read.refusal(), cursor.text());
}

}  // namespace wardchalk::entry
