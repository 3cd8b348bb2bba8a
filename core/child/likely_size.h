#pragma once

#include <cstdint>
#include <optional>

#include "core/child/child.h"

namespace wardchalk {

/// A child's weight in kg and height in cm, converted exactly.
struct BodySize {
  std::optional<Number> kg;
  std::optional<Number> cm;
};

[[nodiscard]] BodySize bodySizeOf(const Child& child);

/// Why the growth tables say nothing of a child: no weight or height, a newborn or a child born early, over
/// 18 years, or no age and not both weight and height.
enum class NotJudged : std::uint8_t { noSize, newborn, adult, noAge };

[[nodiscard]] std::optional<NotJudged> whyNotJudged(const Child& child);

/// What lies outside its limits.
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

/// Judges `size` for a child of this age and sex. What is not known is given every chance: an age in whole
/// years or months stands for all of that year or month, and a child whose sex is not stated may be either; a
/// size is outside only if it is so at both ends of the age and for both sexes. Equality is within. A check
/// of typing, which never enters a dose: the one place where floating point decides.
[[nodiscard]] SizeJudgement judgeSize(const Child& child, const BodySize& size);

}  // namespace wardchalk
