#pragma once

#include "core/child/growth_table.h"

namespace wardchalk {

/// The age at which a growth curve is read. Below 24.0 months the infant tables serve, from 24.0 on the
/// others.
struct GrowthAge {
  double months;
  bool infant;
};

inline constexpr double infantMonths = 24;

/// The value that lies `z` standard deviations from the median. Source: Cole and Green, as for GrowthCurve.
[[nodiscard]] double valueAt(const GrowthCurve& curve, double z);

/// Distance from the median in halves of the distance between the median and two standard deviations on that
/// side. It has no ceiling, however large the value. Source: CDC, "Modified z-scores in the CDC growth
/// charts".
[[nodiscard]] double modifiedZ(const GrowthCurve& curve, double value);

/// The curve at an age, interpolated between rows; at the ends of the tables, their first and last row.
[[nodiscard]] GrowthCurve weightCurve(Sex sex, GrowthAge age);
[[nodiscard]] GrowthCurve statureCurve(Sex sex, GrowthAge age);

/// The youngest age at which the median length or stature equals `cm`: 0 below the median at birth, 240
/// months above the last.
[[nodiscard]] GrowthAge heightAge(Sex sex, double cm);

}  // namespace wardchalk
