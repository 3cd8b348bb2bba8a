#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>

#include "core/practice/making/problem_draw.h"

namespace wardchalk {

// Teachable numbers in whole thousandths of their unit, so that nothing is drawn in floating point. They are
// close enough to choose by; the key is worked exactly.

inline constexpr std::int64_t one = 1000;

/// "12.5" of 12500.
[[nodiscard]] std::string decimalText(std::int64_t thousandths);

/// A round number between the two, both included: a multiple of one of the coarsest usual
/// steps that have one there; none when there is not even a hundredth. `least` is above zero.
[[nodiscard]] std::optional<std::int64_t> roundNumberIn(ProblemDraw& draw, std::int64_t least,
                                                        std::int64_t most);

/// An amount of medicine in a volume: 120 mg in 5 mL.
struct ProblemLabel {
  std::int64_t amount = 0;
  std::int64_t mL = 0;
};

/// Whether an amount in mL falls on a mark of the usual syringes and within the usual decimals alike.
[[nodiscard]] bool isOnEveryMark(std::int64_t mL);

/// What a label has to serve, in thousandths.
struct LabelWanted {
  std::int64_t dose;
  std::int64_t leastMl, mostMl;  ///< of the dose
  std::int64_t labelMl;          ///< that the label's amount stands in
  std::int64_t mostInMl;         ///< the strongest that is sold, of the dose's unit in 1 mL
};

/// A label from which the dose is a measurable volume within the bounds; none when no usual label serves.
/// The amount on the label is never the dose: a label upside down would look the same.
[[nodiscard]] std::optional<ProblemLabel> labelFor(ProblemDraw& draw, const LabelWanted& wanted);

/// The volume that a label states its amount in, as labels have it: of oral liquids mostly 5 mL, then 1 mL,
/// of ampoules 1, 2 or 5 mL (common practice, no source). Never 10: its volume left out and a moved point
/// would look alike.
[[nodiscard]] std::int64_t drawLabelMl(ProblemDraw& draw, bool swallowed);

/// Whole pounds nearest to tenths of a kg, and whole inches nearest to cm.
[[nodiscard]] std::int64_t poundsFor(std::int64_t kgTenths);
[[nodiscard]] std::int64_t ouncesFor(std::int64_t kgTenths);
[[nodiscard]] std::int64_t inchesFor(std::int64_t cm);

/// Body surface in thousandths of a square metre, by Mosteller, cut.
[[nodiscard]] std::int64_t surfaceFor(std::int64_t cm, std::int64_t kgTenths);

}  // namespace wardchalk
