#pragma once

#include <string_view>

namespace wardchalk {

/// Whether the text says that nothing is to be measured: "do not measure", "none", "hold", "I would ring the
/// prescriber first". Words around it are passed over; what names a figure, or takes the refusal back
/// ("nothing wrong", "do not hold"), says no such thing.
[[nodiscard]] bool saysNothingMeasured(std::string_view text);

}  // namespace wardchalk
