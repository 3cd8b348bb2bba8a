#pragma once

#include <string_view>

#include "core/number/refusal.h"
#include "core/unit/quantity.h"

namespace wardchalk {

// One reader for each kind of field. Each takes the text exactly as typed ("80 mg", "8 lb 3 oz") and gives
// the quantity or the reason why it cannot be read. Zero is refused everywhere but in an age.

/// A child's weight: kg, g, lb, oz, or lb and oz.
[[nodiscard]] Result<MixedQuantity> readWeight(std::string_view text);
/// A child's height: cm, m, in, ft, or ft and in.
[[nodiscard]] Result<MixedQuantity> readHeight(std::string_view text);
/// An age: year, month, week, day, or parts of falling size ("4 year 2 month"). Zero is an age.
[[nodiscard]] Result<MixedQuantity> readAge(std::string_view text);
/// A body surface area in m2.
[[nodiscard]] Result<Quantity> readArea(std::string_view text);
/// An ordered dose: a drug amount or mL, for the child or per kg or m2, each dose or per day, hour or minute.
[[nodiscard]] Result<DoseAmount> readOrderedDose(std::string_view text);
/// A reference dose: a drug amount, flat or per kg or m2; per dose, day, week, hour or minute must be said.
[[nodiscard]] Result<DoseAmount> readReferenceDose(std::string_view text);
/// A maximum: a drug amount, flat or per kg or m2. `time` is dose or day and may be written out.
[[nodiscard]] Result<DoseAmount> readMaximum(std::string_view text, PerTime time);
/// A strength: a drug amount in a volume, a tablet or a capsule.
[[nodiscard]] Result<Strength> readStrength(std::string_view text);
/// A concentration: a drug amount in a volume.
[[nodiscard]] Result<Strength> readConcentration(std::string_view text);
/// A drug amount alone: what a vial holds.
[[nodiscard]] Result<Quantity> readContent(std::string_view text);
/// A volume in mL or L.
[[nodiscard]] Result<Quantity> readVolume(std::string_view text);
/// A running time in h or min.
[[nodiscard]] Result<Quantity> readTime(std::string_view text);
/// A drug rate, flat or per kg: "1 mg/kg/min".
[[nodiscard]] Result<DoseAmount> readRate(std::string_view text);
/// A drop factor: drops in one mL.
[[nodiscard]] Result<Quantity> readDropFactor(std::string_view text);

}  // namespace wardchalk
