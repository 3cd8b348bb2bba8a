#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/practice/problem/problem.h"

namespace wardchalk {

/// How what stands in a line is read, told before anything is marked. It says nothing of right or wrong, and
/// to be told costs nothing.
struct LineReading {
  enum class Kind : std::uint8_t {
    nothing,  ///< nothing is written, or there is nothing to read: a verdict is chosen
    read,     ///< `said` is the line as it was understood: "400 mg/5 mL = 80 mg/mL"
    unread,   ///< `said` is why it cannot be read and what to write, in a sentence
  };
  Kind kind = Kind::nothing;
  std::string said;  ///< empty for nothing
  friend bool operator==(const LineReading&, const LineReading&) = default;
};

/// Reads the text as the marker of this line will. What is unread here is no try there.
[[nodiscard]] LineReading readingOf(const Problem& problem, std::size_t ask, std::string_view text);

}  // namespace wardchalk
