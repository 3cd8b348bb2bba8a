#pragma once

#include <cstdint>

#include "core/practice/making/problem_sketch.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// Of a hundred problems that ask for a verdict, how many have which right answer. The rest is safe.
namespace aim_share {
inline constexpr int tooMuch = 15;
inline constexpr int tooLittle = 8;
inline constexpr int scheduleDiffers = 7;  ///< where the topic has schedules; else too little
inline constexpr int notCovered = 10;  ///< from level 2 on; before, an order is held against what serves it
inline constexpr int safe = 100 - tooMuch - tooLittle - scheduleDiffers - notCovered;
}  // namespace aim_share

/// Whether a problem of this topic and level asks if the order may be given; the others are sums, and all
/// safe.
[[nodiscard]] bool asksVerdict(Topic topic, int level);

/// Most times a problem is drawn again before one is taken that is merely workable. Far above what the
/// shipped house rules ever want; rules of a user's own may leave nothing measurable.
inline constexpr int mostDraws = 400;

/// A problem and how many draws it took; more than `mostDraws` when none was as good as wanted.
struct MadeProblem {
  Problem problem;
  int draws = 0;
};
[[nodiscard]] MadeProblem makeProblemCounted(Topic topic, int level, std::uint64_t seed,
                                             const HouseRules& rules);

}  // namespace wardchalk
