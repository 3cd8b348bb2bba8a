#pragma once

#include <string_view>

#include "core/entry/detail/findings.h"
#include "core/medicine/schedule.h"

namespace wardchalk::entry {

/// A schedule as it is said, and whether "as needed" is said with it.
struct SchedulePhrase {
  Schedule schedule;
  bool asNeeded = false;
};

/// Reads a whole phrase as a schedule.
[[nodiscard]] Result<SchedulePhrase> readSchedulePhrase(std::string_view text, Findings& findings);

/// Whether a person who writes this speaks of how often: to name what was typed into another field.
[[nodiscard]] bool saysHowOften(std::string_view text);

}  // namespace wardchalk::entry
