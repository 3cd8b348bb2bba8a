#pragma once

#include <string>
#include <string_view>

namespace wardchalk {

/// The name of a field inside a sentence: "dose ordered". Empty for a path that no case has.
[[nodiscard]] std::string fieldName(std::string_view path);

}  // namespace wardchalk
