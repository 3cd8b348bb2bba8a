#pragma once

#include <string>
#include <vector>

#include "core/check/worksheet.h"
#include "ui/working/step_view.h"

namespace wardchalk::ui::detail {

/// What the number line of a comparison marks: always its two sides, and of the other checks on the same
/// basis (one dose, or 24 h) the low end, the limit and the maximum. Empty for comparisons of words.
[[nodiscard]] std::vector<Landmark> landmarksOf(const Step& step, const Worksheet& sheet);

/// The unit of that line: "mg", "mcg/min". Empty for comparisons of words.
[[nodiscard]] std::string unitOfLine(const Comparison& comparison);

}  // namespace wardchalk::ui::detail
