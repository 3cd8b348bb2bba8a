#pragma once

#include <filesystem>
#include <string>

#include "core/number/refusal.h"
#include "core/record/descriptor.h"

namespace wardchalk::detail {

/// Where a file is to stand: its folder, which is held open so that it stays the same whatever becomes of its
/// name, and the name in it, which is no link.
struct FilePlace {
  Descriptor folder;
  std::string name;
};

/// The place that a path leads to. A link at its end is followed, each only where nobody else can have put
/// it: see `isOurs`. Refuses a folder that cannot be opened, a link that is not followed, and a name under
/// which something else than a regular file stands.
[[nodiscard]] Result<FilePlace> placeOf(const std::filesystem::path& path);

}  // namespace wardchalk::detail
