#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/number/refusal.h"

namespace wardchalk {

/// The whole text of a file of ours. Refuses one that cannot be opened or is larger than any of ours, without
/// reading it.
[[nodiscard]] Result<std::string> readTextFile(const std::filesystem::path& path);

/// Writes the text to a temporary file beside `path`, waits until it is on the disk, and renames it into
/// place: an interrupted save leaves the old file whole. The new file may be read by whom the old one
/// allowed. Empty when done; otherwise why not: no room, a folder that may not be written to, one that is not
/// there.
[[nodiscard]] std::optional<Refusal> writeTextFile(const std::filesystem::path& path, std::string_view text);

/// What has become of a file since its text was `known`. One that cannot be read any more counts as changed.
enum class FileNow : std::uint8_t { asKnown, changed, gone };
[[nodiscard]] FileNow compareFile(const std::filesystem::path& path, std::string_view known);

}  // namespace wardchalk
