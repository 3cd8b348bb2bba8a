#pragma once

#include <string>

#include "core/check/finding.h"
#include "core/working/stated.h"

namespace wardchalk {

/// What of the child's size is in doubt, as a question about it names it: "the weight of 17.2 kg".
[[nodiscard]] std::string doubtText(const Finding& doubt);

/// A figure of a rate as it is written, with what was compared in brackets: "5 mcg/kg/min (71.5 mcg/min)".
[[nodiscard]] std::string asWritten(const Stated& written, const std::string& compared);

}  // namespace wardchalk
