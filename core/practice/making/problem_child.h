#pragma once

#include <cstdint>
#include <string>

#include "core/child/child.h"
#include "core/practice/making/problem_draw.h"

namespace wardchalk {

/// A child for a problem, in whole numbers: an ordinary size for age and sex by the growth tables.
struct ProblemChild {
  Sex sex = Sex::female;
  int months = 0;
  std::int64_t kgTenths = 0;
  std::int64_t cm = 0;

  [[nodiscard]] std::string ageText() const;  ///< "9 month", "4 year 2 month"
};

/// Draws a child from `fewest` to `most` months of age (1 to 215): height within 4 % of the median and weight
/// within 9 % of what goes with that height, which keeps both inside about the 10th to the 90th centile.
[[nodiscard]] ProblemChild drawProblemChild(ProblemDraw& draw, int fewest, int most);

}  // namespace wardchalk
