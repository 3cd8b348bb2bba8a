#pragma once

#include <optional>
#include <string_view>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"
#include "core/unit/quantity.h"

namespace wardchalk {

/// A strength: a drug amount in a volume, a tablet or a capsule. A percent or a ratio is refused with its
/// mg/mL (H17), which is offered only where order and reference are in grams.
[[nodiscard]] EntryResult<Strength> readStrength(std::string_view text, const EntrySetting& setting = {});
/// A concentration: a drug amount in a volume.
[[nodiscard]] EntryResult<Strength> readConcentration(std::string_view text,
                                                      const EntrySetting& setting = {});
/// A drug amount alone: what a vial holds.
[[nodiscard]] EntryResult<Quantity> readContent(std::string_view text, const EntrySetting& setting = {});
/// A volume in mL or L.
[[nodiscard]] EntryResult<Quantity> readVolume(std::string_view text, const EntrySetting& setting = {});
/// A running time in h or min.
[[nodiscard]] EntryResult<Quantity> readTime(std::string_view text, const EntrySetting& setting = {});
/// A drop factor: drops in one mL.
[[nodiscard]] EntryResult<Quantity> readDropFactor(std::string_view text, const EntrySetting& setting = {});

/// The refusal of a text that is a ratio or a percent, "1:1000", "1 in 1000", "1 %", told with its mg/mL
/// where it is certain; nothing for every other text.
[[nodiscard]] std::optional<Refusal> refusedRatioOrPercent(std::string_view text);

}  // namespace wardchalk
