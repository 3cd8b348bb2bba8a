#pragma once

#include <vector>

#include "core/check/worksheet.h"
#include "ui/working/step_view.h"

namespace wardchalk::ui {

/// Every step of the worksheet with its words, in the order of the working.
[[nodiscard]] std::vector<StepView> stepViews(const Worksheet& sheet);

}  // namespace wardchalk::ui
