#pragma once

#include <optional>
#include <string_view>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"

namespace wardchalk {

/// Reads what was written in the field with this path of a case: what a line of a form shows for it. Free
/// text, flags and counts are no quantities and are not read here: for them there is no answer.
[[nodiscard]] std::optional<EntryAnswer> readEntry(std::string_view path, std::string_view text,
                                                   const EntrySetting& setting = {});

}  // namespace wardchalk
