#include "core/words/text_block.h"

#include <algorithm>

#include "core/words/isolated.h"

namespace wardchalk {

namespace {

std::string repeated(std::string_view what, std::size_t times) {
  std::string text;
  for (std::size_t i = 0; i < times; ++i) text.append(what);
  return text;
}

std::string centred(const std::string& text, std::size_t width) {
  const std::size_t room = width - columns(text);
  return repeated(" ", room / 2) + text + repeated(" ", room - room / 2);
}

}  // namespace

std::size_t columns(std::string_view marked) {
  const std::string text = hasIsolates(marked) ? withoutIsolates(marked) : std::string(marked);
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

TextBlock TextBlock::fraction(const std::string& over, const std::string& under) {
  const std::size_t width = std::max(columns(over), columns(under)) + 2;
  TextBlock block(centred(over, width));
  block.lines_.push_back(repeated("─", width));
  block.lines_.push_back(centred(under, width));
  block.base_ = 1;
  return block;
}

std::size_t TextBlock::width() const { return columns(lines_.front()); }

void TextBlock::append(const TextBlock& other) {
  const std::size_t above = std::max(base_, other.base_);
  const std::size_t below = std::max(lines_.size() - base_, other.lines_.size() - other.base_);
  std::vector<std::string> joined;
  for (std::size_t row = 0; row < above + below; ++row) {
    const auto lineOf = [&](const TextBlock& block) {
      const std::size_t start = above - block.base_;
      const bool inside = row >= start && row - start < block.lines_.size();
      return inside ? block.lines_[row - start] : repeated(" ", block.width());
    };
    joined.push_back(lineOf(*this) + lineOf(other));
  }
  lines_ = std::move(joined);
  base_ = above;
}

std::string wrapped(std::string_view text, std::size_t width, std::string_view indent) {
  return wrapped(text, width, indent, indent);
}

std::string wrapped(std::string_view text, std::size_t width, std::string_view first, std::string_view rest) {
  std::string result;
  std::string line;
  std::size_t used = 0;
  IsolatesOfLines isolates;
  const auto finish = [&] {
    result.append(result.empty() ? std::string(first) : "\n" + std::string(rest)).append(isolates.next(line));
    line.clear();
    used = 0;
  };
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, end);
    const std::size_t room = columns(word);
    if (used > 0 && used + 1 + room > width) finish();
    line.append(used > 0 ? " " : "").append(word);
    used += room + (used > 0 ? 1 : 0);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  if (!line.empty()) finish();
  return result;
}

}  // namespace wardchalk
