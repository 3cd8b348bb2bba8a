#pragma once

#include <string>

#include "core/check/worksheet.h"

namespace wardchalk {

/// A notation in which other programs read and set mathematics.
enum class Markup { mathml, latex };

/// One step as a displayed formula: its sums, its chain with struck units and what it comes to, or its
/// inequality with its truth. MathML: one math element (MathML 3, W3C) that carries the step's sentence as
/// its alternative text; struck units stand in menclose. LaTeX: wants the packages amsmath and cancel.
[[nodiscard]] std::string stepMarkup(const Step& step, const Worksheet& sheet, Markup markup);

}  // namespace wardchalk
