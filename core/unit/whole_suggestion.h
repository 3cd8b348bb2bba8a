#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "core/number/refusal.h"

namespace wardchalk {

/// How a field reads text: why it cannot, or nothing.
using ReadEntry = std::function<Result<Done>(std::string_view)>;

/// What to write instead of the whole of `text`, which a field refused: every piece that a refusal names
/// is put as that refusal says, until the field reads it all. Empty where it does not come to read: a
/// suggestion for a part would be taken for the whole, and "Write 28 lb" loses 13 lb of "2 st 13 lb" (H50).
/// Empty also where a spelling is one of those that nobody may put right but who wrote the order.
[[nodiscard]] std::string wholeSuggestion(std::string_view text, const Refusal& refusal,
                                          const ReadEntry& read);

}  // namespace wardchalk
