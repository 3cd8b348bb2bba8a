#pragma once

#include <string_view>

#include "core/entry/detail/findings.h"
#include "core/entry/detail/scan.h"
#include "core/medicine/schedule.h"

namespace wardchalk::entry {

/// A schedule as it is said, and whether "as needed" is said with it.
struct SchedulePhrase {
  Schedule schedule;
  bool asNeeded = false;
};

/// Reads a whole phrase as a schedule: what stands before the cursor and behind it.
[[nodiscard]] Result<SchedulePhrase> readSchedulePhrase(const Cursor& whole, Findings& findings);
[[nodiscard]] Result<SchedulePhrase> readSchedulePhrase(std::string_view text, Findings& findings);

/// Whether a person who writes all this wrote a schedule as we read it.
[[nodiscard]] bool isSchedule(const Cursor& whole);

/// Whether a person who writes this speaks of how often: to name what was typed into another field.
[[nodiscard]] bool saysHowOften(std::string_view text);

}  // namespace wardchalk::entry
