#pragma once

#include <optional>
#include <string_view>

#include "core/number/refusal.h"
#include "core/record/json_value.h"
#include "core/record/json_writer.h"

namespace wardchalk {

/// What every file of ours begins with.
struct FileHead {
  std::string_view format;
  int version;
};

/// Whether the file is of this format and of a version that can be read; else why not.
[[nodiscard]] Result<Done> checkHead(const JsonValue& file, const FileHead& head);

/// Whether the key belongs to the head.
[[nodiscard]] bool isHeadKey(std::string_view key);

void writeHead(JsonWriter& writer, const FileHead& head);

}  // namespace wardchalk
