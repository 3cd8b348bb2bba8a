#pragma once

#include <cstdint>
#include <span>

#include "core/child/child.h"

namespace wardchalk {

/// Where a measurement stands among children: Box-Cox power, median and coefficient of variation. Source:
/// Cole TJ, Green PJ, Stat Med 1992;11:1305-19. Floating point is allowed here and in growth.cpp alone:
/// growth tells an unlikely entry from a likely one and never enters a dose or a limit.
struct GrowthCurve {
  double power;
  double median;  ///< kg or cm
  double variation;
};

/// One row of a published table.
struct GrowthRow {
  double ageMonths;
  GrowthCurve curve;
};

/// The published tables: weight in kg and length (lying) in cm from 0 to 36 months, weight in kg and stature
/// (standing) in cm from 24 to 240 months.
enum class GrowthTable : std::uint8_t { infantWeight, infantLength, weight, stature };

/// The rows of a table for one sex, by rising age.
[[nodiscard]] std::span<const GrowthRow> growthRows(GrowthTable table, Sex sex);

}  // namespace wardchalk
