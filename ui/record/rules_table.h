#pragma once

#include <QString>
#include <cstdint>
#include <span>
#include <string_view>

#include "ui/form/field_table.h"

namespace wardchalk::ui {

/// The parts of a set of house rules, as its editor groups them.
enum class RuleGroup : std::uint8_t { set, size, amount, asking, screen };

/// All that the editor knows of a rule. What it means in figures comes from the core.
struct RuleSpec {
  std::string_view key;
  RuleGroup group;
  const char* label;                         ///< English; translated in the context "Rule"
  std::span<const ChoiceWord> choices = {};  ///< none: it is typed
};

[[nodiscard]] std::span<const RuleSpec> ruleTable();

[[nodiscard]] QString labelOf(const RuleSpec& spec);
[[nodiscard]] QString headingOf(RuleGroup group);

}  // namespace wardchalk::ui
