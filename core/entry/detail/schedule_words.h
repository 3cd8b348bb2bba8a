#pragma once

#include <optional>
#include <string_view>

#include "core/entry/detail/findings.h"
#include "core/entry/detail/scan.h"
#include "core/medicine/schedule.h"

namespace wardchalk::entry {

/// Reads a schedule that is said word by word, from where the cursor stands to the end: "every 4 to 6 h",
/// "q6h", "6 hourly", "three times daily", "3x/day", "twice a week".
[[nodiscard]] Result<Schedule> readScheduleWords(Cursor& cursor, Findings& findings);

/// "In 3 divided doses": the whole phrase, or nothing.
[[nodiscard]] std::optional<Schedule> readDividedDoses(std::string_view text, Findings& findings);

}  // namespace wardchalk::entry
