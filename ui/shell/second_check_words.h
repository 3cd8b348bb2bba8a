#pragma once

#include <QString>
#include <optional>

#include "core/session/second_check_record.h"

namespace wardchalk::ui {

/// "Second check: done independently, same result (2026-11-25 13:40)."; "… not done." without a record.
[[nodiscard]] QString secondCheckWords(const std::optional<SecondCheckRecord>& record);

}  // namespace wardchalk::ui
