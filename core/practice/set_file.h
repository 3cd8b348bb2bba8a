#pragma once

#include <string>
#include <string_view>

#include "core/number/refusal.h"
#include "core/practice/practice_plan.h"

namespace wardchalk {

// A set of problems as a file: {"format": "wardchalk.set", "version": 1, "title": "Week 3", "topics":
// ["bsa"], "level": 2, "count": 10, "seed": 7, "rules": "classroom"}. Title and rules may be left out: no
// title, *exact*. The problems themselves are not in it; they follow from these few words.

/// Reads a set whole or refuses it whole, with the path of what is wrong.
[[nodiscard]] Result<PracticePlan> readSet(std::string_view json);

/// The set file that holds this plan.
[[nodiscard]] std::string writeSet(const PracticePlan& plan);

}  // namespace wardchalk
