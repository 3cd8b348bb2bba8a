#include "core/practice/making/problem_units.h"

#include <array>
#include <span>

namespace wardchalk {

namespace {

/// So many of a hundred.
struct UnitShare {
  std::string_view unit;
  int share;
};

constexpr std::array unitsSwallowed = {UnitShare{"mg", 72}, UnitShare{"mcg", 14}, UnitShare{"mmol", 6},
                                       UnitShare{"mEq", 5}, UnitShare{"units", 3}};
constexpr std::array unitsIntoVein = {UnitShare{"mg", 58}, UnitShare{"mcg", 14}, UnitShare{"units", 16},
                                      UnitShare{"mmol", 7}, UnitShare{"mEq", 5}};
constexpr std::array unitsIntoTissue = {UnitShare{"mg", 60}, UnitShare{"mcg", 20}, UnitShare{"units", 20}};

std::string_view drawShare(ProblemDraw& draw, std::span<const UnitShare> shares) {
  std::int64_t left = draw.below(100);
  for (const UnitShare& one : shares)
    if ((left -= one.share) < 0) return one.unit;
  return shares.front().unit;
}

}  // namespace

std::string_view unitFor(ProblemDraw& draw, std::string_view route) {
  if (route == "oral" || route == "enteral") return drawShare(draw, unitsSwallowed);
  return route == "intravenous" ? drawShare(draw, unitsIntoVein) : drawShare(draw, unitsIntoTissue);
}

}  // namespace wardchalk
