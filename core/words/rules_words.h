#pragma once

#include <string>
#include <vector>

#include "core/check/worksheet.h"

namespace wardchalk {

/// The name that a set of rules is called by. A changed set is never called by the name of one that is
/// shipped.
[[nodiscard]] std::string rulesTitle(const HouseRules& rules);

/// Who agreed the set and when, as far as it is stated; or that it is as shipped, or that nothing is stated.
[[nodiscard]] std::string rulesProvenance(const HouseRules& rules);

/// What the house rules say of the conversions, roundings and thresholds that this working uses, a whole
/// sentence each, and who agreed them.
[[nodiscard]] std::vector<std::string> rulesWords(const Worksheet& sheet);

}  // namespace wardchalk
