#pragma once

#include "core/number/number.h"

namespace wardchalk {

/// A least volume in mL as it can be made up to: to 0.1 mL below 10 mL, else in whole mL, never less (R19).
/// It is told so wherever it is told.
[[nodiscard]] Number roundedUpVolume(const Number& mL);

/// A greatest volume likewise, never more.
[[nodiscard]] Number roundedDownVolume(const Number& mL);

}  // namespace wardchalk
