#pragma once

#include <cstdint>

namespace wardchalk {

/// What a bare number is in: nothing, centimetres and kilograms, or inches and pounds. A number that was
/// typed is never relabelled.
enum class UnitSystem : std::uint8_t { none, metric, household };

}  // namespace wardchalk
