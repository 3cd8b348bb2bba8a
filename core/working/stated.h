#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/medicine/medicine.h"
#include "core/medicine/schedule.h"
#include "core/unit/quantity.h"
#include "core/unit/unit_product.h"

namespace wardchalk {

/// A quantity per one of others: "5 mg/mL", "0.1 mcg/kg/min".
struct QuantityPer {
  Quantity amount;
  UnitProduct under;    ///< in the order they are written
  int significant = 4;  ///< digits when it is not shown exactly; more where two would print alike
  friend bool operator==(const QuantityPer&, const QuantityPer&) = default;
};

/// A quantity that is shown with exactly so many decimals: a rounded body surface, "0.70 m²".
struct FixedQuantity {
  Quantity amount;
  int decimals;
  friend bool operator==(const FixedQuantity&, const FixedQuantity&) = default;
};

/// One edge of a band, as the reference states it.
struct BandEdge {
  enum class Kind : std::uint8_t { from, over, below, upTo };
  Kind kind;
  MixedQuantity at;  ///< an age, a weight or a surface
  friend bool operator==(const BandEdge&, const BandEdge&) = default;
};

/// The edges of a band, lower ones first.
struct StatedBand {
  std::vector<BandEdge> edges;
  friend bool operator==(const StatedBand&, const StatedBand&) = default;
};

/// A child's weight and height as entered.
struct StatedSize {
  std::optional<MixedQuantity> weight;
  std::optional<MixedQuantity> height;
  friend bool operator==(const StatedSize&, const StatedSize&) = default;
};

/// The name of a medicine, as it was typed.
struct StatedName {
  std::string text;
  friend bool operator==(const StatedName&, const StatedName&) = default;
};

/// What is stated on a paper or compared: nothing, or one of the things that are more than a number. An age
/// is a mixed quantity. It is put into words only where it is shown or written.
using Stated = std::variant<std::monostate, Quantity, QuantityPer, FixedQuantity, MixedQuantity, StatedBand,
                            StatedSize, StatedName, Schedule, Route>;

[[nodiscard]] inline bool isStated(const Stated& stated) {
  return !std::holds_alternative<std::monostate>(stated);
}

}  // namespace wardchalk
