#include "core/check/sizes_used.h"

#include <algorithm>
#include <array>

namespace wardchalk {

SizesUsed sizesUsed(const Case& given) {
  const Reference& reference = given.reference;
  const auto isPer = [&](PerSize size) {
    return std::ranges::any_of(
        std::array{given.order.dose, reference.high, reference.low, reference.maxPerDose, reference.maxPerDay,
                   reference.maxInfusionRate},
        [size](const auto& dose) { return dose && dose->perSize == size; });
  };
  SizesUsed used;
  used.surface = isPer(PerSize::m2) || reference.bsa.isStated();
  used.height = used.surface && !given.child.bsa;
  used.weight = used.height || isPer(PerSize::kg) || reference.weight.isStated();
  return used;
}

}  // namespace wardchalk
