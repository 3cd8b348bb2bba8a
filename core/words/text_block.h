#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace wardchalk {

/// A small rectangle of text in lines of equal width, with one line that stands on the common base line (a
/// fraction's bar). Blocks are set side by side on their base lines.
class TextBlock {
 public:
  explicit TextBlock(std::string line) : lines_{std::move(line)} {}

  /// One text over another with a bar between.
  [[nodiscard]] static TextBlock fraction(const std::string& over, const std::string& under);

  [[nodiscard]] std::size_t width() const;
  [[nodiscard]] const std::vector<std::string>& lines() const { return lines_; }

  /// Sets `other` to the right of this one, base line on base line.
  void append(const TextBlock& other);

 private:
  std::vector<std::string> lines_;
  std::size_t base_ = 0;
};

/// Characters on screen in UTF-8 text; the marks of isolates are none.
[[nodiscard]] std::size_t columns(std::string_view text);

/// The text broken at spaces into lines of at most `width` columns, the first after `first` and the others
/// after `rest`.
[[nodiscard]] std::string wrapped(std::string_view text, std::size_t width, std::string_view first,
                                  std::string_view rest);
/// The same with one indent for every line.
[[nodiscard]] std::string wrapped(std::string_view text, std::size_t width, std::string_view indent);

}  // namespace wardchalk
