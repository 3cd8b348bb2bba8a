#pragma once

#include <optional>
#include <string>

#include "core/record/input_file.h"

namespace wardchalk {

/// Reads a file line by line, in memory that does not grow with it. Lines end with LF or CRLF; a last one
/// without an end counts.
class LineReader {
 public:
  /// The file must outlive its reader.
  explicit LineReader(InputFile& file) : file_(file) {}

  /// The next line without its end, or why it cannot be had: longer than a line of a batch may be. None at
  /// the end.
  [[nodiscard]] std::optional<Result<std::string>> next();

  /// Why the file could not be read to its end, if so.
  [[nodiscard]] const std::optional<Refusal>& brokeOff() const { return brokeOff_; }

 private:
  bool fill();

  InputFile& file_;
  std::string piece_;
  std::size_t at_ = 0;
  std::optional<Refusal> brokeOff_;
};

}  // namespace wardchalk
