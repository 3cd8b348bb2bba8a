#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/check/worksheet.h"

namespace wardchalk::test {

/// A quantity that a worksheet holds, by name: weight, bsa, bsa.unrounded, ordered.dose, ordered.day,
/// limit.dose, limit.day, low.dose, low.day, strength (per one mL), give, measured, flow (mL in an hour),
/// drops (in a minute), and flow.measured and drops.measured as they can be set. None where the worksheet
/// holds none. Throws std::runtime_error for another name.
[[nodiscard]] std::optional<Quantity> figure(const Worksheet& sheet, std::string_view name);

/// One expectation of a worksheet in short text; empty when it is met, else what stands there instead.
///   limit.dose=84 mg      the figure is exactly this
///   give~10.085 mL        the figure, rounded to as many decimals as are written, is this
///   weight!=13.63 kg      the figure is there and is not this
///   give=absent           there is no such figure
///   verdict=safe, because=over-single, check.low=within, finding=many-units, finding!=interval-odd
[[nodiscard]] std::string unmet(const Worksheet& sheet, std::string_view expectation);

}  // namespace wardchalk::test
