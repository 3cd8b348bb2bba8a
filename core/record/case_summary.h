#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/worksheet.h"
#include "core/number/refusal.h"

namespace wardchalk {

/// What is told of a case in one row, in this order; empty where it does not apply.
inline constexpr std::array<std::string_view, 15> summaryColumns = {
    "verdict", "reason", "bsa",  "weight_kg", "ordered_dose", "ordered_day", "limit_dose", "limit_day",
    "give",    "device", "rate", "drops",     "findings",     "needs",       "error"};

/// A worksheet in the cells of summaryColumns. An amount never stands without its dose, and while a question
/// is open "ask first" stands in its place.
[[nodiscard]] std::vector<std::string> summaryOf(const Worksheet& sheet);

/// The same cells for a case that could not be read: nothing but why.
[[nodiscard]] std::vector<std::string> summaryOf(const Refusal& refusal);

}  // namespace wardchalk
