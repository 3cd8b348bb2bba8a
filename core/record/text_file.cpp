#include "core/record/text_file.h"

#include <array>
#include <fstream>
#include <system_error>

#include "core/record/json_value.h"

namespace wardchalk {

namespace {

Refusal unreadable(const std::filesystem::path& path, std::string why) {
  return {RefusalCode::fileUnreadable, path.string() + " " + std::move(why), {}, {}};
}

}  // namespace

Result<std::string> readTextFile(const std::filesystem::path& path) {
  std::error_code error;
  if (std::filesystem::is_directory(path, error)) return unreadable(path, "is a folder");
  std::ifstream file(path, std::ios::binary);
  if (!file)
    return unreadable(path, std::filesystem::exists(path, error) ? "may not be opened" : "is not there");
  std::string text;
  std::array<char, 16384> part;
  // a case is far smaller than the largest file that is read
  while (text.size() <= largestFile && (file.read(part.data(), part.size()), file.gcount() > 0))
    text.append(part.data(), static_cast<std::size_t>(file.gcount()));
  if (file.bad()) return unreadable(path, "broke off while it was read");
  if (text.size() > largestFile) return Refusal{RefusalCode::fileTooLarge, {}, "4 MiB", {}};
  return text;
}

std::optional<Refusal> writeTextFile(const std::filesystem::path& path, std::string_view text) {
  const std::filesystem::path temporary = path.string() + ".part";
  const auto unwritable = [&] { return Refusal{RefusalCode::fileUnwritable, path.string(), {}, {}}; };
  std::ofstream file(temporary, std::ios::binary | std::ios::trunc);
  file.write(text.data(), static_cast<std::streamsize>(text.size()));
  file.close();
  std::error_code error;
  if (file) std::filesystem::rename(temporary, path, error);
  if (file && !error) return std::nullopt;
  std::error_code ignored;  // the save has failed already, and that is what is told
  std::filesystem::remove(temporary, ignored);
  return unwritable();
}

}  // namespace wardchalk
