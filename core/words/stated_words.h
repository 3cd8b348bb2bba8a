#pragma once

#include <string>

#include "core/check/argument.h"
#include "core/working/stated.h"

namespace wardchalk {

/// What is stated, as it stands on screen and paper: "5 mg/mL", "0.70 m²", "≥ 2 years, < 12 years", "every 12
/// h"; empty for nothing.
[[nodiscard]] std::string statedText(const Stated& stated);

/// The same as it stands in worksheet files, without commas in thousands; a name keeps its own.
[[nodiscard]] std::string filedStated(const Stated& stated);

/// The unit of a quantity per others, as it stands behind the number: "mg/mL".
[[nodiscard]] std::string unitText(const QuantityPer& quantity);

/// A band in words: "at least 2 years, below 12 years".
[[nodiscard]] std::string bandInWords(const StatedBand& band);

/// A finding's argument as it stands in a sentence: "60 mg", "71.4", "every 12 h"; a word of ours by its id.
[[nodiscard]] std::string argumentText(const Argument& argument);

/// The same as it stands in worksheet files, without commas in thousands.
[[nodiscard]] std::string filedArgument(const Argument& argument);

}  // namespace wardchalk
