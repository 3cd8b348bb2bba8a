#include "core/working/step.h"

namespace wardchalk {

Measuring restOf(const Measuring& pair) {
  const Number& drawn = pair.full->holdsMl;
  Measuring rest = pair;
  rest.full.reset();
  rest.exact.value = pair.exact.value - drawn;
  if (pair.measured) rest.measured = *pair.measured - drawn;
  if (pair.passedOver) rest.passedOver = *pair.passedOver - drawn;
  rest.below = pair.below - drawn;
  rest.above = pair.above - drawn;
  return rest;
}

}  // namespace wardchalk
