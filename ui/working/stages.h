#pragma once

#include <vector>

#include "ui/working/step_view.h"

namespace wardchalk::ui {

/// What a board uncovers at one press.
enum class StageKind : std::uint8_t {
  question,
  sum,        ///< parts put together before the chain
  factor,     ///< one more factor; under a root, or in a published formula, all of them
  strike,     ///< one more pair of units
  underRoot,  ///< what the root is taken of
  product,    ///< what the chain comes to
  rounded,    ///< that, rounded by a house rule
  sides,      ///< the two sides of a comparison
  claim,      ///< the sign between them
  truth,      ///< whether it is true, and the number line
  amount,     ///< what is to be measured
  scale,      ///< the empty scale of the syringe
  reading,    ///< where it is read, and the sentence that says so
};

struct Stage {
  StageKind kind = StageKind::question;
  int index = 0;  ///< which sum, factor or pair, from 0
  friend bool operator==(const Stage&, const Stage&) = default;
};

/// The stages of a step in their order: as many as its layout has, and each at the same place.
[[nodiscard]] std::vector<Stage> stagesOf(const StepView& view);

}  // namespace wardchalk::ui
