#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/working/step.h"

namespace wardchalk {

/// Units of a term beside its number: one that is struck out, or those between struck ones together.
struct UnitMark {
  std::string text;                 ///< "m²", "mg·dose"
  std::optional<std::size_t> pair;  ///< which cancelling pair it belongs to, from 0; none: it is not struck
  friend bool operator==(const UnitMark&, const UnitMark&) = default;
};

/// The units of a term of this product in the order they are written.
[[nodiscard]] std::vector<UnitMark> unitMarks(const Term& term, const Product& product, int factor,
                                              bool over);

/// The letter that the two of a pair carry: "a" for the first.
[[nodiscard]] std::string letterOf(std::size_t pair);

/// Stands before a number that is not shown exactly.
inline constexpr std::string_view aboutSign = "≈";

/// One thing that is said after a chain: "= √0.4921 m⁴", "≈ 0.7015 m²", "→ 0.70 m²".
struct ChainOutcome {
  enum class Sign : std::uint8_t { equals, about, rounded };
  Sign sign;
  std::string text;
  bool rooted = false;
  friend bool operator==(const ChainOutcome&, const ChainOutcome&) = default;
};

/// What a chain or a formula comes to, up to what later steps use; empty for a comparison and a measurement.
[[nodiscard]] std::vector<ChainOutcome> outcomesOf(const Step& step);

}  // namespace wardchalk
