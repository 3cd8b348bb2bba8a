#pragma once

#include "core/number/number.h"
#include "core/unit/quantity.h"

namespace wardchalk {

/// An age, or the edge of an age band, on one exact scale of days: 7 days = 1 week, 30.4375 days = 1 month,
/// 12 months = 1 year (R7).
struct Age {
  MixedQuantity written;

  /// The age in days.
  [[nodiscard]] Number days() const;
  /// Whether it was stated in whole years and nothing finer, so that it stands for the whole of that year.
  [[nodiscard]] bool isInWholeYears() const;
  /// The days at which an age band "up to" this ends: the end of the year or month it names, which is
  /// included whole; weeks and days end where they stand.
  [[nodiscard]] Number endDays() const;
  /// Whether "up to" includes a whole year or month, so that its end is not itself within.
  [[nodiscard]] bool endIsOpen() const;

  friend bool operator==(const Age&, const Age&) = default;
};

}  // namespace wardchalk
