#include "core/practice/making/problem_child.h"

#include <array>
#include <charconv>

#include "core/child/growth_table.h"

namespace wardchalk {

namespace {

constexpr int infantMonthsEnd = 24;

/// A figure of a table in thousandths, cut. It goes by the figure's shortest decimal text, which is the one
/// that was published: no sum in floating point, so no machine can differ.
std::int64_t thousandths(double figure) {
  std::array<char, 40> text{};
  const auto [end, error] =
      std::to_chars(text.data(), text.data() + text.size(), figure, std::chars_format::fixed);
  std::int64_t value = 0;
  int decimals = -1;
  for (const char* at = text.data(); at != end && decimals < 3; ++at) {
    if (*at == '.') {
      decimals = 0;
      continue;
    }
    value = value * 10 + (*at - '0');
    if (decimals >= 0) ++decimals;
  }
  for (decimals = decimals < 0 ? 0 : decimals; decimals < 3; ++decimals) value *= 10;
  return value;
}

/// The median for a whole month of age, in thousandths: the row in the middle of that month.
std::int64_t medianAt(GrowthTable table, Sex sex, int months) {
  const double middle = months + 0.5;  // halves are exact
  for (const GrowthRow& row : growthRows(table, sex))
    if (row.ageMonths >= middle) return thousandths(row.curve.median);
  return thousandths(growthRows(table, sex).back().curve.median);
}

std::int64_t divided(std::int64_t value, std::int64_t by) { return (value + by / 2) / by; }

}  // namespace

std::string ProblemChild::ageText() const {
  if (months < infantMonthsEnd) return std::to_string(months) + " month";
  const std::string years = std::to_string(months / 12) + " year";
  return months % 12 == 0 ? years : years + " " + std::to_string(months % 12) + " month";
}

ProblemChild drawProblemChild(ProblemDraw& draw, int fewest, int most) {
  ProblemChild child;
  child.sex = draw.below(2) == 0 ? Sex::female : Sex::male;
  child.months = static_cast<int>(draw.between(fewest, most));
  // A whole year stands for all of it: a month more says how old the child is.
  if (child.months >= infantMonthsEnd && child.months % 12 == 0) ++child.months;
  const bool infant = child.months < infantMonthsEnd;
  const std::int64_t tall = draw.between(-40, 40);   // per mille of the median
  const std::int64_t heavy = draw.between(-90, 90);  // beside what goes with the height
  const std::int64_t height =
      medianAt(infant ? GrowthTable::infantLength : GrowthTable::stature, child.sex, child.months);
  const std::int64_t weight =
      medianAt(infant ? GrowthTable::infantWeight : GrowthTable::weight, child.sex, child.months);
  child.cm = divided(height * (1000 + tall), 1000 * 1000);
  // Among children of one age weight goes about with the square of height.
  child.kgTenths = divided(weight * (1000 + 2 * tall + heavy), 100 * 1000);
  return child;
}

}  // namespace wardchalk
