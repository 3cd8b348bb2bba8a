#pragma once

#include <string_view>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"
#include "core/unit/quantity.h"

namespace wardchalk {

/// An ordered dose: a drug amount or mL, for the child or per kg or m2, each dose or per day, hour or minute.
/// Without "per" it is each dose. A range leaves the order open and is refused.
[[nodiscard]] EntryResult<DoseAmount> readOrderedDose(std::string_view text,
                                                      const EntrySetting& setting = {});

/// An end of what the reference allows: per dose, day, week, hour or minute must be said, and is asked about
/// where it is not. A range fills the other end besides, and its division ("divided every 8 h") the schedule
/// of the reference.
[[nodiscard]] EntryResult<DoseAmount> readReferenceLow(std::string_view text,
                                                       const EntrySetting& setting = {});
[[nodiscard]] EntryResult<DoseAmount> readReferenceHigh(std::string_view text,
                                                        const EntrySetting& setting = {});

/// A maximum: a drug amount, flat or per kg or m2. `time` is dose or day and may be written out.
[[nodiscard]] EntryResult<DoseAmount> readMaximum(std::string_view text, PerTime time,
                                                  const EntrySetting& setting = {});

/// A drug rate, flat or per kg: "1 mg/kg/min".
[[nodiscard]] EntryResult<DoseAmount> readRate(std::string_view text, const EntrySetting& setting = {});

}  // namespace wardchalk
