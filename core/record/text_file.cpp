#include "core/record/text_file.h"

#include <system_error>

#include "core/record/json_value.h"
#include "core/record/path_text.h"
#include "core/record/replace_file.h"

namespace wardchalk {

Result<std::string> readTextFile(const std::filesystem::path& path) {
  Result<InputFile> file = InputFile::open(path);
  if (!file) return file.refusal();
  InputFile opened = *std::move(file);
  return readText(opened);
}

Result<std::string> readText(InputFile& file) {
  std::string text;
  const Refusal tooLarge{RefusalCode::fileTooLarge, {}, "4 MiB", {}};
  if (file.size() > largestFile) return tooLarge;
  while (text.size() <= largestFile) {
    constexpr std::size_t piece = std::size_t{1} << 16U;  // a case is far smaller than the largest file
    const std::size_t had = text.size();
    text.resize(had + piece);
    const Result<std::size_t> read = file.read(std::span(text).subspan(had));
    if (!read) return read.refusal();
    text.resize(had + *read);
    if (*read < piece) break;
  }
  if (text.size() > largestFile) return tooLarge;
  const std::size_t nul = text.find('\0');
  if (nul != std::string::npos) return Refusal{RefusalCode::nulByte, std::to_string(nul + 1), {}, {}};
  return text;
}

KnownFile fileAt(const std::filesystem::path& path) {
  std::error_code error;
  if (std::filesystem::status(path, error).type() == std::filesystem::file_type::not_found)
    return KnownFile::nothing();
  const Result<std::string> now = readTextFile(path);
  return now ? KnownFile::of(*now) : KnownFile::anything();
}

Result<Done> writeFile(const std::filesystem::path& path, std::string_view bytes, const KnownFile& believed) {
  return replaceFile(path, bytes, believed);
}

Result<Done> writeTextFile(const std::filesystem::path& path, std::string_view text,
                           const KnownFile& believed) {
  if (text.size() > largestFile) return Refusal{RefusalCode::tooLargeToWrite, pathText(path), "4 MiB", {}};
  return writeFile(path, text, believed);
}

Result<Done> checkWritable(const std::filesystem::path& path) { return tryPlace(path); }

Result<Done> checkNotInput(const std::filesystem::path& target, const std::filesystem::path& input) {
  std::error_code error;
  if (!std::filesystem::equivalent(target, input, error) || error) return Done{};
  return Refusal{RefusalCode::targetIsInput, pathText(target), {}, {}};
}

}  // namespace wardchalk
