#include "tests/support/drawn_child.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/child/growth.h"

namespace wardchalk::test {

namespace {

double correlationAt(double months) {
  if (months < 12) return 0.69;
  if (months < 24) return 0.70;
  if (months < 60) return 0.73;
  return months < 144 ? 0.71 : 0.50;
}

}  // namespace

double Draw::normal() {
  const double radius = std::sqrt(-2 * std::log(uniform()));
  return radius * std::cos(2 * std::numbers::pi * uniform());
}

DrawnChild drawChild(Draw& draw) {
  const Sex sex = draw.uniform() < 0.5 ? Sex::female : Sex::male;
  const double months = 1 + draw.uniform() * (18 * 12 - 1);
  const double common = correlationAt(months);
  const double weight = draw.normal();
  const double stature = common * weight + std::sqrt(1 - common * common) * draw.normal();
  const GrowthAge age{months, months < infantMonths};
  return {sex, months, valueAt(weightCurve(sex, age), std::min(weight, 2.9)),
          valueAt(statureCurve(sex, age), stature)};
}

}  // namespace wardchalk::test
