#pragma once

#include <vector>

#include "core/number/number.h"
#include "core/unit/unit.h"

namespace wardchalk {

/// A number with its unit.
struct Quantity {
  Number value;
  Unit unit;
  friend bool operator==(const Quantity&, const Quantity&) = default;
};

/// A quantity written in one or more parts of falling size: "8 lb 3 oz", "4 year 2 month", or simply "17.2
/// kg". The reader guarantees at least one part, one dimension, and that only the last part is not whole.
struct MixedQuantity {
  std::vector<Quantity> parts;
  /// The smallest unit used, the one that a total of the parts can be stated in.
  [[nodiscard]] Unit smallestUnit() const { return parts.back().unit; }
  friend bool operator==(const MixedQuantity&, const MixedQuantity&) = default;
};

/// The size of the child that a dose is stated for.
enum class PerSize : std::uint8_t { none, kg, m2 };

/// The time, or the single dose, that a dose is stated for.
enum class PerTime : std::uint8_t { none, dose, day, week, h, min };

/// An amount as an order or a reference states it: "120 mg/m2/dose", "4 mg/kg", "0.1 mcg/kg/min".
struct DoseAmount {
  Quantity amount;
  PerSize perSize = PerSize::none;
  PerTime perTime = PerTime::none;
  [[nodiscard]] bool isRate() const { return perTime == PerTime::h || perTime == PerTime::min; }
  friend bool operator==(const DoseAmount&, const DoseAmount&) = default;
};

/// What a label says: an amount of medicine in a volume, a tablet or a capsule: "120 mg/5 mL".
struct Strength {
  Quantity amount;
  Quantity in;
  friend bool operator==(const Strength&, const Strength&) = default;
};

[[nodiscard]] constexpr Unit unitOf(PerSize size) { return size == PerSize::kg ? Unit::kg : Unit::m2; }
[[nodiscard]] Unit unitOf(PerTime time);

}  // namespace wardchalk
