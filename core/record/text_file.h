#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/number/refusal.h"

namespace wardchalk {

/// The whole text of a file of ours. Refuses one that cannot be opened or is larger than any of ours, without reading it.
[[nodiscard]] Result<std::string> readTextFile(const std::filesystem::path& path);

/// Writes the text to a temporary file beside `path` and renames it into place, so that an interrupted save leaves the
/// old file whole. Empty when done; otherwise why not.
[[nodiscard]] std::optional<Refusal> writeTextFile(const std::filesystem::path& path, std::string_view text);

}  // namespace wardchalk
