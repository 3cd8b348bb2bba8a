#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/number/refusal.h"
#include "core/record/json_value.h"
#include "core/record/json_writer.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// Reads a house-rules file whole or refuses it whole, with the path of what is wrong. Keys that are left out
/// keep the value of the *exact* set.
[[nodiscard]] Result<HouseRules> readRules(std::string_view json);

/// The rules that stand as members of an object within another file, without a head of their own.
[[nodiscard]] Result<HouseRules> readRuleMembers(const JsonValue& object);

/// The house-rules file that holds these rules, every key written.
[[nodiscard]] std::string writeRules(const HouseRules& rules);

/// What stands for a rule that rounds nothing.
inline constexpr std::string_view noRule = "none";

/// Reads one rule from its text as a file has it, without quotation marks ("trade", "2", "none", "0.1 mL");
/// the refusal carries the key. Syringes have a reader of their own.
[[nodiscard]] Result<Done> setRule(HouseRules& rules, std::string_view key, std::string_view text);

/// The text that setRule would read back to the same rule; empty for syringes and for a key that is none.
[[nodiscard]] std::string ruleText(const HouseRules& rules, std::string_view key);

/// A syringe by what it holds and how far apart its marks stand ("3 mL", "0.1 mL"); the refusal's path is
/// "syringes.holds" or "syringes.marks".
[[nodiscard]] Result<Syringe> readSyringe(std::string_view holds, std::string_view marks, SyringeKind kind);

/// Every rule as members of the object that is open.
void writeRuleMembers(JsonWriter& writer, const HouseRules& rules);

}  // namespace wardchalk
