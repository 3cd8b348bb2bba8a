#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/number/number.h"
#include "core/number/static_text.h"
#include "core/unit/quantity.h"

namespace wardchalk {

/// How pounds become kilograms (R2). `exact`: 0.45359237 kg in 1 lb. `trade`: 2.2 lb in 1 kg.
enum class Pounds : std::uint8_t { exact, trade };

/// One fact that joins two units of a dimension: so many of the one equal so many of the other.
struct Conversion {
  Unit from;
  Number fromValue;
  Unit to;
  Number toValue;
  StaticText constant;      ///< stable name: "mg-per-g"
  std::string_view source;  ///< where the figure comes from

  /// The same fact read the other way.
  [[nodiscard]] Conversion turned() const { return {to, toValue, from, fromValue, constant, source}; }
};

/// The facts that lead from one unit to another, each to be written as a factor of its own. Empty when the
/// units are the same; no value when no chain of facts joins them.
[[nodiscard]] std::optional<std::vector<Conversion>> conversionPath(Unit from, Unit to, Pounds pounds);

/// `value` taken from one unit to another of the same dimension. No value when they do not meet.
[[nodiscard]] std::optional<Number> converted(const Number& value, Unit from, Unit to,
                                              Pounds pounds = Pounds::exact);

/// The parts of a quantity ("37 lb 4 oz") added up in one unit. No value when they do not meet it.
[[nodiscard]] std::optional<Number> totalIn(const MixedQuantity& mixed, Unit unit,
                                            Pounds pounds = Pounds::exact);

/// Every fact in the table, for tests and the handbook.
[[nodiscard]] const std::vector<Conversion>& allConversions();

}  // namespace wardchalk
