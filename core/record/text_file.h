#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/number/refusal.h"
#include "core/record/input_file.h"

namespace wardchalk {

/// The whole text of a file of ours. Refuses what cannot be opened, is no regular file, is larger than any of
/// ours (without reading it) or holds a NUL byte.
[[nodiscard]] Result<std::string> readTextFile(const std::filesystem::path& path);
/// The same of a file that is open.
[[nodiscard]] Result<std::string> readText(InputFile& file);

/// What stands at a place, or is taken to stand there.
struct KnownFile {
  enum class Kind : std::uint8_t { anything, nothing, text };
  Kind kind = Kind::anything;
  std::string text = {};

  [[nodiscard]] static KnownFile anything() { return {}; }
  [[nodiscard]] static KnownFile nothing() { return {Kind::nothing}; }
  [[nodiscard]] static KnownFile of(std::string text) { return {Kind::text, std::move(text)}; }
  friend bool operator==(const KnownFile&, const KnownFile&) = default;
};

/// What stands there now. A file that cannot be read, as readTextFile would not, is *anything*.
[[nodiscard]] KnownFile fileAt(const std::filesystem::path& path);

/// Puts a file with these bytes at `path`, whole or not at all: they are written where nobody else finds
/// them, waited for until they are on the disk, and then take the place of what stood there. The new file may
/// be read by whom the old one allowed. A link is resolved once, and is not followed through a folder in
/// which others may put files. Refused, with what stood there untouched, where there is no room, for a
/// folder that may not be written to or is not there, where something stands that is no regular file, or
/// (`targetChanged`) not what was believed to stand there.
[[nodiscard]] Result<Done> writeFile(const std::filesystem::path& path, std::string_view bytes,
                                     const KnownFile& believed = KnownFile::anything());

/// The same for a text of ours; refuses one that could not be read again.
[[nodiscard]] Result<Done> writeTextFile(const std::filesystem::path& path, std::string_view text,
                                         const KnownFile& believed = KnownFile::anything());

/// Whether a file can be written there, as far as that can be told before long work is done for it: the
/// folder, what stands there, whether a file can be made. Nothing is left of the trial.
[[nodiscard]] Result<Done> checkWritable(const std::filesystem::path& path);

/// Refuses to write to a file that was read, by whatever name it goes.
[[nodiscard]] Result<Done> checkNotInput(const std::filesystem::path& target,
                                         const std::filesystem::path& input);

}  // namespace wardchalk
