#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace wardchalk::practice {

/// How a word or a few join two parts of what is said.
enum class Joint : std::uint8_t {
  result,  ///< "comes to", "gives", "rounds to": what stands before comes to what stands behind
  cause,   ///< "because", "from": what stands behind is the working of what stands before
  next,    ///< "so", "then": another statement begins
  divide,  ///< "shared over"
  root,    ///< "the root of"
  check,   ///< "check": what stands behind tries the answer and is none
};

struct Joining {
  std::string_view words;  ///< in small letters
  Joint joint;
};

/// The longest joining words that begin here, in small letters and ending where a word ends; none if none do.
[[nodiscard]] std::optional<Joining> joiningAt(std::string_view small);

/// Whether a word, in small letters, counts: "two". It may belong to the sum.
[[nodiscard]] bool counts(std::string_view word);

}  // namespace wardchalk::practice
