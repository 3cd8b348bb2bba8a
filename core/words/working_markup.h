#pragma once

#include <string>

#include "core/check/shown.h"
#include "core/words/step_markup.h"

namespace wardchalk {

/// The whole worksheet as a document that stands for itself: XHTML with MathML, or LaTeX. It says what the
/// text of a worksheet says, in the same words.
[[nodiscard]] std::string workingMarkup(const Shown& shown, Markup markup);

}  // namespace wardchalk
