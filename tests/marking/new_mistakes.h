#pragma once

#include <array>
#include <string_view>

namespace wardchalk::test {

/// The number that a mistake has got which the frozen set calls by a name of its own.
struct NewMistake {
  std::string_view name;
  std::string_view number;
};

inline constexpr std::array<NewMistake, 0> newMistakes = {};

}  // namespace wardchalk::test
