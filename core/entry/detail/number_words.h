#pragma once

#include <optional>

#include "core/entry/detail/scan.h"
#include "core/number/number.h"

namespace wardchalk::entry {

/// Reads a whole number in words that begins here ("six", "eighty-four", "two hundred"), in any capitals, and
/// goes behind it; nothing, and no step, where there is none.
[[nodiscard]] std::optional<Number> takeNumberWords(Cursor& cursor);

}  // namespace wardchalk::entry
