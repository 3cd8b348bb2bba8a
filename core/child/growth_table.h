#pragma once

#include <cstdint>
#include <span>

#include "core/child/child.h"

namespace wardchalk {

/// How a measurement is spread among children of one age and sex: Box-Cox power, median and coefficient of
/// variation. Source: Cole TJ, Green PJ, Stat Med 1992;11:1305-19. Floating point is enough: the curves only
/// help to tell whether a size is likely (likely_size.h), and never enter a dose or a limit.
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
