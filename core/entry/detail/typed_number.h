#pragma once

#include <string>
#include <string_view>

#include "core/entry/detail/findings.h"
#include "core/entry/detail/scan.h"
#include "core/number/number.h"

namespace wardchalk::entry {

/// A number as it stands in an entry.
struct TypedNumber {
  Number value;
  std::string digits;  ///< as typed; a naked point with its zero, words in digits
  std::string_view typed;
};

/// Whether zeros behind the point belong to what is written: they do in a charted surface.
enum class Zeros : std::uint8_t { lost, kept };

/// Reads the number that stands here. Never repaired: only a naked point and a number in words have one
/// meaning.
[[nodiscard]] Result<TypedNumber> readTypedNumber(Cursor& cursor, Findings& findings,
                                                  Zeros zeros = Zeros::lost);

/// Why no number begins where the cursor stands.
[[nodiscard]] Refusal refusedNumber(const Cursor& cursor);

}  // namespace wardchalk::entry
