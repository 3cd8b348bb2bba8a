#pragma once

#include <QString>
#include <set>

#include "ui/working/step_view.h"

namespace wardchalk::ui {

/// The step with these factors of its chain turned over: struck anew, without a result, and with the units
/// that are left over in its place. For a solved step only.
[[nodiscard]] StepView turnedView(const StepView& view, const std::set<int>& turned);

/// "Left over: mg²/mL — not mL.", of a view with a turned factor.
[[nodiscard]] QString leftOverSentence(const StepView& turned);
/// The same with units in words.
[[nodiscard]] QString leftOverSpoken(const StepView& turned);

/// How many factors of the step can be turned over; 0 for a step without a chain.
[[nodiscard]] int factorsOf(const StepView& view);

}  // namespace wardchalk::ui
