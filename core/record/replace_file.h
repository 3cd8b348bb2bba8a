#pragma once

#include <filesystem>
#include <optional>
#include <string_view>

#include "core/number/refusal.h"
#include "core/record/text_file.h"

namespace wardchalk {

/// How a new file waits for its place: without a name where the file system offers that (whatever ends the
/// program, nothing is left), or under a random name beside its place.
enum class Waiting : std::uint8_t { namelessIfOffered, named };

/// What writeFile promises.
[[nodiscard]] Result<Done> replaceFile(const std::filesystem::path& path, std::string_view bytes,
                                       const KnownFile& believed,
                                       Waiting waiting = Waiting::namelessIfOffered);

/// What checkWritable promises.
[[nodiscard]] Result<Done> tryPlace(const std::filesystem::path& path);

/// A name that nobody else comes upon, for a file on its way to its place.
[[nodiscard]] std::string randomName();

}  // namespace wardchalk
