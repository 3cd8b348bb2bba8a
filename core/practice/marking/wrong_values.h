#pragma once

#include <array>
#include <span>
#include <vector>

#include "core/practice/marking/mistake.h"
#include "core/practice/marking/replay.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// What a line comes to when one mistake is made and the rest is right, in the unit that the line asks for,
/// not rounded.
struct WrongValue {
  MistakeId mistake;
  Number value;
};

/// Whether the rare mistakes are worked out too: only a line that is marked wants them.
enum class Rare : bool { leftOut, sought };

/// Every known mistake that could be made on the way to a step.
struct WrongValues {
  Number right;
  std::vector<WrongValue> values;
  std::vector<WrongValue> further;  ///< that are named to a student, and for which no problem is refused
  std::vector<WrongValue> rare;     ///< that are thought of only where none of these fits
  std::vector<MistakeId> hidden;    ///< those that come to the right value, and so cannot be seen in it

  /// A later list is looked at only where nothing of those before it fits.
  [[nodiscard]] std::array<std::span<const WrongValue>, 3> tiers() const { return {values, further, rare}; }
};

/// The mistakes that could be made on the way to this step, with what the step comes to. `carried` are the
/// student's own earlier answers: a mistake in a step that was answered is no part of this line, unless it is
/// one of using the answer (kg for m², a size rounded before it is used). Empty for a step that has no
/// number.
[[nodiscard]] WrongValues wrongValues(const Worksheet& key, StepId line, std::span<const Instead> carried,
                                      Rare rare = Rare::leftOut);

}  // namespace wardchalk
