#pragma once

#include <string_view>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"
#include "core/unit/quantity.h"

namespace wardchalk {

// One reader for each kind of field; each takes the text as it came, however it came. Zero is refused
// everywhere but in an age.

/// A child's weight: kg, g, lb, oz, or lb and oz. A bare number is asked about, unless a unit stood there
/// before.
[[nodiscard]] EntryResult<MixedQuantity> readWeight(std::string_view text, const EntrySetting& setting = {});
/// A child's height: cm, m, in, ft, or ft and in.
[[nodiscard]] EntryResult<MixedQuantity> readHeight(std::string_view text, const EntrySetting& setting = {});
/// An age: year, month, week, day, or parts of falling size ("4 year 2 month"). Zero is an age.
[[nodiscard]] EntryResult<MixedQuantity> readAge(std::string_view text, const EntrySetting& setting = {});
/// How long ago a child was weighed: "today", or an age, with or without "ago".
[[nodiscard]] EntryResult<MixedQuantity> readWeighed(std::string_view text, const EntrySetting& setting = {});
/// A body surface in m2: its decimals stay as they were charted.
[[nodiscard]] EntryResult<Quantity> readSurface(std::string_view text, const EntrySetting& setting = {});

}  // namespace wardchalk
