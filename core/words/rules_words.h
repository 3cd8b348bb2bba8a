#pragma once

#include <string>
#include <vector>

#include "core/check/worksheet.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

/// What the house rules say of the conversions, roundings and thresholds that this working uses, a whole
/// sentence each, and who agreed them.
[[nodiscard]] std::vector<std::string> rulesWords(const Worksheet& sheet, const Phrasebook& book);

}  // namespace wardchalk
