#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace wardchalk {

/// The name of a file as text: in UTF-8 on Windows, where the standard library would take each byte for a
/// letter; elsewhere in the very bytes that the system knows it by.
[[nodiscard]] inline std::string pathText(const std::filesystem::path& path) {
#ifdef _WIN32
  const std::u8string text = path.u8string();
  return {text.begin(), text.end()};
#else
  return path.string();
#endif
}

/// The file that such a text names.
[[nodiscard]] inline std::filesystem::path pathNamed(std::string_view text) {
#ifdef _WIN32
  return std::u8string(text.begin(), text.end());
#else
  return text;
#endif
}

}  // namespace wardchalk
