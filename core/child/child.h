#pragma once

#include <optional>

#include "core/child/age.h"
#include "core/unit/quantity.h"

namespace wardchalk {

enum class Sex : std::uint8_t { female, male };
enum class WeightMethod : std::uint8_t { measured, estimated, charted };

/// The child's size and age: never a name or a number that identifies.
struct Child {
  std::optional<Age> age;
  std::optional<Sex> sex;  ///< used for growth plausibility alone
  std::optional<MixedQuantity> height;
  std::optional<MixedQuantity> weight;
  std::optional<Quantity> bsa;  ///< charted, m2
  std::optional<WeightMethod> weightMethod;
  std::optional<Age> weighed;  ///< how long ago; none at all is today
  bool bornEarly = false;
  bool sizeConfirmed = false;  ///< the user has confirmed an implausible size

  friend bool operator==(const Child&, const Child&) = default;
};

}  // namespace wardchalk
