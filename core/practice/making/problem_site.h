#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace wardchalk {

/// The most that problems give in one place into a muscle or under the skin of a child of this age, in
/// thousandths of a mL; none for a route without such a limit. Textbooks differ here: this is the least that
/// any of them allows, and no rule for a bedside.
[[nodiscard]] std::optional<std::int64_t> mostInOnePlace(std::string_view route, int months);

}  // namespace wardchalk
