#pragma once

#include "core/check/detail/notebook.h"

namespace wardchalk::detail {

/// The child's weight and surface, as far as they are known.
struct Size {
  std::optional<Found> kg;        ///< by house rule
  std::optional<Number> kgExact;  ///< lb converted exactly, never rounded
  std::optional<Number> cmExact;
  std::optional<Found> m2;                ///< charted, or computed and rounded by house rule
  std::optional<SurfaceFound> surface;    ///< how `m2` was found and is shown
  std::optional<Number> computedSquared;  ///< square of the computed surface, before rounding
  std::optional<Quantity> computedM2;     ///< the same, rounded as it would be used
  bool household = false;                 ///< the surface was worked in inches and pounds
};

[[nodiscard]] Size findSize(Notebook& notes);

/// The child's size for `size`, if it is known: kg, m² or 1.
[[nodiscard]] std::optional<Number> sizeValue(const Size& child, PerSize size);

/// The child's size that a dose per kg or per m² is multiplied by, noted as used; no factor for a flat dose.
/// False when it is wanted and not known; then it is noted as needed for the verdict.
bool addSizeFactor(Notebook& notes, const Size& child, Chain& chain, PerSize size);

}  // namespace wardchalk::detail
