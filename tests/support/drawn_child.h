#pragma once

#include <random>

#include "core/child/child.h"

namespace wardchalk::test {

/// Numbers that are the same everywhere: mt19937 is specified to the bit; the distributions of the standard
/// library are not, so they are our own.
class Draw {
 public:
  explicit Draw(std::uint32_t seed) : engine_(seed) {}

  /// Between 0 and 1, neither of them.
  double uniform() { return (static_cast<double>(engine_()) + 0.5) / 4294967296.0; }
  double between(double least, double most) { return least + uniform() * (most - least); }
  /// A whole number from 0 to below `count`.
  int below(int count) { return static_cast<int>(uniform() * count); }
  /// Of the standard normal distribution, by Box and Muller's transform.
  double normal();

 private:
  std::mt19937 engine_;
};

/// A child of the growth tables.
struct DrawnChild {
  Sex sex;
  double months, kg, cm;
};

/// A child of the CDC 2000 tables: age uniform from 1 month to the end of 17 years, half of them girls,
/// weight and stature drawn jointly normal in z with the correlations measured in NHANES 2009-2016 (CDC/NCHS,
/// public files), weight z above 2.9 set to 2.9, where the curves run away.
[[nodiscard]] DrawnChild drawChild(Draw& draw);

}  // namespace wardchalk::test
