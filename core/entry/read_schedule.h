#pragma once

#include <string_view>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"
#include "core/medicine/schedule.h"

namespace wardchalk {

/// The schedule of an order: "every 4 to 6 h", "q6h", "6 hourly", "three times daily", "BID", "once". "As
/// needed" or PRN behind it fills `order.as_needed` besides. What has been misread (QD, QOD, OD, q6, HS …) is
/// refused, and nothing is offered for it.
[[nodiscard]] EntryResult<Schedule> readOrderSchedule(std::string_view text,
                                                      const EntrySetting& setting = {});
/// The schedule of a reference: the same, and never as needed.
[[nodiscard]] EntryResult<Schedule> readReferenceSchedule(std::string_view text,
                                                          const EntrySetting& setting = {});

}  // namespace wardchalk
