#pragma once

#include <optional>
#include <string_view>

#include "core/check/worksheet.h"

namespace wardchalk {

/// Works the whole problem: sizes, limits, the ordered dose, every comparison, the verdict, and only where
/// the rules allow it the amount. A pure function of its arguments: no clock, no locale, no state.
///
/// `pending` names a field that is being changed. Then the working stops before every comparison with the
/// finding `finish-typing`, so that no half-typed number is ever judged.
[[nodiscard]] Worksheet workOut(const Case& given, const HouseRules& rules,
                                std::optional<std::string_view> pending = std::nullopt);

}  // namespace wardchalk
