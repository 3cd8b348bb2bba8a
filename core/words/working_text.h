#pragma once

#include <string>

#include "core/check/shown.h"

namespace wardchalk {

/// The whole worksheet as text for a terminal or a letter: verdict, amount where there is one, every step
/// with stacked fractions and struck units, findings, rules and cautions. Ends with a line break.
[[nodiscard]] std::string workingText(const Shown& shown);

/// One step as text: its question, chain and result.
[[nodiscard]] std::string stepText(const Step& step, int number, const Worksheet& sheet);

}  // namespace wardchalk
