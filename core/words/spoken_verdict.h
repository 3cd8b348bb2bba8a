#pragma once

#include <span>
#include <string>

#include "core/check/shown.h"
#include "core/number/refusal.h"

namespace wardchalk {

/// What is said of a working when it changes: the verdict first, the dose that was judged, why, and the
/// amount as far as it may be seen: "SAFE by this reference. Ordered 80 mg is not more than the safe 84 mg in
/// one dose. Measure 3.2 mL (80 mg) for one dose." Empty while an entry is being changed: nothing is judged
/// then.
[[nodiscard]] std::string spokenVerdict(const Shown& shown);

/// The same with the checks that were not made and everything that stands beside the amount.
[[nodiscard]] std::string spokenWhole(const Shown& shown);

/// What is said when an entry cannot be read: that there is no verdict, which entry, why, and the keys that
/// lead to it and write what could stand there instead. `writes`: what could.
[[nodiscard]] std::string spokenRefusal(const Refusal& refusal, std::string_view path,
                                        std::span<const std::string> writes);

}  // namespace wardchalk
