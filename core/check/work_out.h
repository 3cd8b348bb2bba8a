#pragma once

#include <optional>
#include <string_view>

#include "core/check/worksheet.h"

namespace wardchalk {

/// A field that withholds every comparison.
struct Withheld {
  // NOLINTNEXTLINE(google-explicit-constructor): a field by its path alone is being changed
  Withheld(std::string_view at, bool typedToItsEnd = false) : path(at), cannotBeRead(typedToItsEnd) {}

  std::string_view path;
  bool cannotBeRead;  ///< it was typed to its end
};

/// Works the whole problem: sizes, limits, the ordered dose, every comparison, the verdict, and only where
/// the rules allow it the amount. A pure function of its arguments: no clock, no locale, no state.
///
/// `withheld` names a field that is being changed or cannot be read. Then the working stops before every
/// comparison with the finding `finish-typing`, so that no half-typed number is ever judged.
[[nodiscard]] Worksheet workOut(const Case& given, const HouseRules& rules,
                                std::optional<Withheld> withheld = std::nullopt);

}  // namespace wardchalk
