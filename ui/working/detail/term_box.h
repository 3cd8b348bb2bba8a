#pragma once

#include <vector>

#include "core/working/chain.h"
#include "ui/working/box.h"

namespace wardchalk::ui::detail {

/// One term: its number, then its units. `pairs` says for each unit which struck pair it belongs to, or -1;
/// its stroke and letter appear at stage `firstStage` + pair.
[[nodiscard]] Box termBox(const Term& term, const std::vector<int>& pairs, const Metrics& metrics,
                          int firstStage);

/// The number of a term as it is printed.
[[nodiscard]] QString numberText(const Term& term);

/// The number with its units, held together by no-break spaces.
[[nodiscard]] QString termText(const Term& term);

}  // namespace wardchalk::ui::detail
