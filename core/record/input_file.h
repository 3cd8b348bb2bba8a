#pragma once

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>

#include "core/number/refusal.h"
#include "core/record/descriptor.h"

namespace wardchalk {

/// A file that is read piece by piece.
class InputFile {
 public:
  /// Opens a regular file. Refuses anything else at once: a pipe or a device might never come to its end, and
  /// a program that waits for one answers nobody.
  [[nodiscard]] static Result<InputFile> open(const std::filesystem::path& path);
  /// What is handed to the program, of whatever kind it is.
  [[nodiscard]] static InputFile standardInput();

  /// Fills `into` from its beginning as far as the file goes on; how many bytes, 0 at the end. Refuses when
  /// the file cannot be read any further.
  [[nodiscard]] Result<std::size_t> read(std::span<char> into);

  /// Bytes of the file when it was opened; 0 where nobody can know.
  [[nodiscard]] std::uint64_t size() const { return size_; }

 private:
  InputFile(std::string name, Descriptor file, std::uint64_t size)
      : name_(std::move(name)), file_(std::move(file)), size_(size) {}

  std::string name_;
  Descriptor file_;
  std::uint64_t size_;
};

}  // namespace wardchalk
