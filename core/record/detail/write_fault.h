#pragma once

#include <filesystem>

#include "core/number/refusal.h"

namespace wardchalk::detail {

/// Why a file could not be written, by the system's number.
[[nodiscard]] Refusal unwritable(const std::filesystem::path& path, int error);

}  // namespace wardchalk::detail
