#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/child/child.h"
#include "core/child/growth.h"

namespace wardchalk {

/// A child's weight in kg and height in cm, converted exactly.
struct BodySize {
  std::optional<Number> kg;
  std::optional<Number> cm;
};

[[nodiscard]] BodySize bodySizeOf(const Child& child);

/// Why a child's size cannot be judged by the growth tables: there is no weight or height, the child is a
/// newborn or was born early, is over 18 years old, or has no age and not both weight and height.
enum class NotJudged : std::uint8_t { noSize, newborn, adult, noAge };

[[nodiscard]] std::optional<NotJudged> whyNotJudged(const Child& child);

/// Which figures lie outside their limits.
struct SizeFaults {
  bool weight = false;
  bool height = false;
  bool weightForHeight = false;

  [[nodiscard]] bool any() const { return weight || height || weightForHeight; }
};

/// How a size compares with those of other children. `implausible` is a part of `unlikely`.
struct SizeJudgement {
  SizeFaults unlikely;     ///< outside the limits at which to ask (rules A to D)
  SizeFaults implausible;  ///< outside the limits at which to stop (rule E)
  double oddness = 0;      ///< the greatest distance from a median, in modified z
};

/// Judges sizes for a child of this age and sex. What is not known counts in favour of the size: an age in
/// whole years or months may be any day of that year or month, and a child whose sex is not stated may be
/// either. A size is outside only if it is outside at both ends of the age and for both sexes; exactly on a
/// limit is within. It is judged in floating point, which no dose or limit is: all that follows from it is a
/// question about what was typed, or a stop.
class SizeJudge {
 public:
  /// One reading of what is known: a sex, and an age if any.
  struct Reading {
    Sex sex;
    std::optional<GrowthAge> age;
  };

  explicit SizeJudge(const Child& child);
  [[nodiscard]] SizeJudgement judge(const BodySize& size) const;

 private:
  std::vector<Reading> readings_;  ///< one at least
};

/// One size, judged by SizeJudge.
[[nodiscard]] SizeJudgement judgeSize(const Child& child, const BodySize& size);

/// Judges only whether `size` is too large, for a child that no table serves (NotJudged::newborn): a newborn
/// is held against children of one month, who are larger, and a child born early against others of the same
/// age since birth, who are larger too. So what is outside is outside all the more, and nothing is said of
/// what is small. Nothing is outside where the age is not known.
[[nodiscard]] SizeJudgement judgeTooLarge(const Child& child, const BodySize& size);

}  // namespace wardchalk
