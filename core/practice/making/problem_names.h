#pragma once

#include <span>
#include <string_view>

namespace wardchalk {

/// Names for the invented medicines of practice: birds. None is the name of a medicine, nor near one, as far
/// as is known (from memory; to be read again against a national register before names are added).
[[nodiscard]] std::span<const std::string_view> inventedMedicines();

}  // namespace wardchalk
