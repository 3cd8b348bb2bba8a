#pragma once

#include <optional>
#include <vector>

#include "core/number/number.h"
#include "core/unit/conversion.h"
#include "core/unit/unit.h"
#include "core/unit/unit_product.h"
#include "core/working/origin.h"

namespace wardchalk {

/// Units multiplied together, and units they are divided by; a unit used twice stands twice (m⁴ is m2, m2).
struct Units {
  UnitProduct over;
  UnitProduct under;
  friend bool operator==(const Units&, const Units&) = default;
};

/// Whether two are the same whatever the order they are written in; m by m is m².
[[nodiscard]] bool sameUnits(const Units& a, const Units& b);

/// One number with its units, above or below the bar of a factor, and where it came from.
struct Term {
  Number value{1};
  UnitProduct units;
  Origin origin;
  int fixedDecimals =
      -1;  ///< shown with exactly so many decimals (a rounded body surface area); -1: as short as it is

  [[nodiscard]] bool isPlainOne() const { return units.empty() && value == Number(1) && fixedDecimals < 0; }
  friend bool operator==(const Term&, const Term&) = default;
};

/// One term over another.
struct Factor {
  Term over;
  Term under;
  [[nodiscard]] Factor turned() const { return {under, over}; }
  friend bool operator==(const Factor&, const Factor&) = default;
};

/// Factors multiplied together; `rooted`: the square root of their product is meant.
struct Chain {
  std::vector<Factor> factors;
  bool rooted = false;
  friend bool operator==(const Chain&, const Chain&) = default;
};

/// One use of a unit in a chain: in which factor, above or below its bar, which of the term's units.
struct Place {
  int factor;
  bool over;
  int use;
  friend bool operator==(const Place&, const Place&) = default;
};

/// A unit above struck out against the same unit below.
struct Cancellation {
  Unit unit;
  Place above;
  Place below;
  friend bool operator==(const Cancellation&, const Cancellation&) = default;
};

/// What a chain comes to: its exact value, which units were struck out against which, and what is left. What
/// is left over is data and no error: a chain turned upside down shows mg²/mL.
struct Product {
  Number exact;
  std::vector<Cancellation> pairs;
  Units left;
  friend bool operator==(const Product&, const Product&) = default;
};

/// Multiplies a chain out and strikes each unit above against the first free one below, in reading order.
/// Only equal units meet: mg never cancels mcg, nor a child's gram a gram of medicine. The root, if any, is
/// not taken.
[[nodiscard]] Product cancel(const Chain& chain);

/// Units of the square root; no value if a unit is used an odd number of times.
[[nodiscard]] std::optional<Units> rootOf(const Units& units);

/// A product that came out in the units wanted. Of a rooted chain the product is the square, and the units
/// are those of its root.
struct Solution {
  Product product;
  Units units;
};
/// No value when the chain does not come out in the units wanted: then there is no number to be used.
[[nodiscard]] std::optional<Solution> solve(const Chain& chain, const Units& wanted);

/// What a chain without a root comes to in the units wanted, where nobody is shown what was struck out; no
/// value as above.
[[nodiscard]] std::optional<Number> valueIn(const Chain& chain, const Units& wanted);

/// A factor that turns `fact.from` into `fact.to`.
[[nodiscard]] Factor conversionFactor(const Conversion& fact);

/// The factors that turn one unit into another; empty if there is nothing to do. The units have one
/// dimension.
[[nodiscard]] std::vector<Factor> conversionFactors(Unit from, Unit to, Pounds pounds);

}  // namespace wardchalk
