#include "core/child/growth.h"

#include <algorithm>
#include <cmath>

namespace wardchalk {

namespace {

/// Below this a power counts as zero, where the formula of the curve changes to its limit.
constexpr double smallestPower = 1e-6;

double between(double a, double b, double share) { return a + (b - a) * share; }

GrowthCurve between(const GrowthCurve& a, const GrowthCurve& b, double share) {
  return {between(a.power, b.power, share), between(a.median, b.median, share),
          between(a.variation, b.variation, share)};
}

GrowthCurve curveAt(std::span<const GrowthRow> rows, double months) {
  const auto next = std::upper_bound(rows.begin(), rows.end(), months,
                                     [](double age, const GrowthRow& row) { return age < row.ageMonths; });
  if (next == rows.begin()) return rows.front().curve;
  if (next == rows.end()) return rows.back().curve;
  const GrowthRow& last = *(next - 1);
  return between(last.curve, next->curve, (months - last.ageMonths) / (next->ageMonths - last.ageMonths));
}

/// The age at which the median is `value`. Medians rise with age; `value` is not below the first.
double ageAtMedian(std::span<const GrowthRow> rows, double value) {
  const auto next =
      std::upper_bound(rows.begin(), rows.end(), value,
                       [](double median, const GrowthRow& row) { return median < row.curve.median; });
  if (next == rows.end()) return rows.back().ageMonths;
  const GrowthRow& last = *(next - 1);
  const double share = (value - last.curve.median) / (next->curve.median - last.curve.median);
  return between(last.ageMonths, next->ageMonths, share);
}

}  // namespace

double valueAt(const GrowthCurve& curve, double z) {
  if (std::abs(curve.power) < smallestPower) return curve.median * std::exp(curve.variation * z);
  return curve.median * std::pow(1 + curve.power * curve.variation * z, 1 / curve.power);
}

double modifiedZ(const GrowthCurve& curve, double value) {
  const double distance = value - curve.median;
  const double twoAway = std::abs(valueAt(curve, distance < 0 ? -2 : 2) - curve.median);
  return distance / (twoAway / 2);
}

GrowthCurve weightCurve(Sex sex, GrowthAge age) {
  return curveAt(growthRows(age.infant ? GrowthTable::infantWeight : GrowthTable::weight, sex), age.months);
}

GrowthCurve statureCurve(Sex sex, GrowthAge age) {
  return curveAt(growthRows(age.infant ? GrowthTable::infantLength : GrowthTable::stature, sex), age.months);
}

GrowthAge heightAge(Sex sex, double cm) {
  const auto infants = growthRows(GrowthTable::infantLength, sex);
  if (cm <= infants.front().curve.median) return {0, true};
  const double asInfant = ageAtMedian(infants, cm);
  if (asInfant < infantMonths) return {asInfant, true};
  // Lying length at 24 months is above standing height: what is taller than the one is taller than the other.
  return {ageAtMedian(growthRows(GrowthTable::stature, sex), cm), false};
}

}  // namespace wardchalk
