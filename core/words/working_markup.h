#pragma once

#include <string>

#include "core/words/step_markup.h"

namespace wardchalk {

/// The whole worksheet as a document that stands for itself: XHTML with MathML, or LaTeX. It says what the
/// text of a worksheet says, in the same words.
[[nodiscard]] std::string workingMarkup(const Worksheet& sheet, Markup markup);

}  // namespace wardchalk
