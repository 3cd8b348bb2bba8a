#pragma once

#include <optional>
#include <string_view>

#include "core/number/number.h"

namespace wardchalk {

/// What a student says of measuring: which syringe, and what is drawn up in it, each in mL. Absent where it
/// is not said.
struct SyringeAnswer {
  std::optional<Number> holds;
  std::optional<Number> drawnUp;
  int decimals = 0;        ///< typed, of what is drawn up
  bool fillsMore = false;  ///< it is filled more than once: "filled twice"
};

/// Reads "10 mL syringe, draw up 8.4 mL", "8.4 mL in a 10-mL oral syringe", "10ml syringe: 8.4ml". None where
/// no syringe is named: what is drawn up alone is read like any other amount.
[[nodiscard]] std::optional<SyringeAnswer> readSyringeAnswer(std::string_view text);

}  // namespace wardchalk
