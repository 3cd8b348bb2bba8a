#pragma once

#include <span>
#include <string>
#include <string_view>

namespace wardchalk {

/// The units and spellings that fit a field, for the menu at the end of its line; never chosen by what other
/// fields hold. Empty where there is nothing to offer.
[[nodiscard]] std::span<const std::string_view> lineChoices(std::string_view path);

/// The line after one of them was chosen: a unit takes its place behind the number that stands there, and in
/// the place of another unit; a whole spelling ("every 6 h") is the line.
[[nodiscard]] std::string lineWith(std::string_view path, std::string_view line, std::string_view choice);

}  // namespace wardchalk
