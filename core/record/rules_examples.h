#pragma once

#include <string>
#include <string_view>

#include "core/rules/house_rules.h"

namespace wardchalk {

/// What the rule `key` comes to in an example that is worked out by these rules: "17.25 kg becomes 17.3 kg."
/// Empty for a key that reckons nothing (a name).
[[nodiscard]] std::string ruleExample(std::string_view key, const HouseRules& rules);

}  // namespace wardchalk
