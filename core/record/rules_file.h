#pragma once

#include <string>
#include <string_view>

#include "core/number/refusal.h"
#include "core/record/json_value.h"
#include "core/record/json_writer.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// Reads a house-rules file whole or refuses it whole, with the path of what is wrong. Keys that are left out keep the
/// value of the *exact* set.
[[nodiscard]] Result<HouseRules> readRules(std::string_view json);

/// The rules that stand as members of an object within another file, without a head of their own.
[[nodiscard]] Result<HouseRules> readRuleMembers(const JsonValue& object);

/// The house-rules file that holds these rules, every key written.
[[nodiscard]] std::string writeRules(const HouseRules& rules);

/// Every rule as members of the object that is open.
void writeRuleMembers(JsonWriter& writer, const HouseRules& rules);

}  // namespace wardchalk
