#pragma once

#include <CLI/CLI.hpp>
#include <cstdint>

namespace wardchalk::console {

/// Takes a whole number in plain decimal digits, from `least` to `most`; no sign, no leading zero, no 0x. The
/// library alone would read 010 as eight.
[[nodiscard]] CLI::Validator wholeNumber(std::uint64_t least, std::uint64_t most);

}  // namespace wardchalk::console
