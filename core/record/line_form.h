#pragma once

#include <string>
#include <string_view>

namespace wardchalk {

/// An entry in the safe form of files as a line of the form shows it: "4 years 2 months", "120 mg/m²/dose",
/// "20 drops/mL". It is read as the same.
[[nodiscard]] std::string lineForm(std::string_view entry);

}  // namespace wardchalk
