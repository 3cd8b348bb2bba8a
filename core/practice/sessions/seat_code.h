#pragma once

#include <cstddef>
#include <string_view>

namespace wardchalk {

/// Most signs of a seat's code.
inline constexpr std::size_t longestSeat = 8;

/// Whether the text may stand for a seat in a table of results: 1 to 8 letters of ASCII, digits and hyphens,
/// a digit among them. A name has no digit, so that none comes into a table by habit.
[[nodiscard]] bool isSeatCode(std::string_view text);

}  // namespace wardchalk
