#pragma once

#include <string>
#include <string_view>

#include "core/check/worksheet.h"
#include "core/medicine/case.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// What a dose is stated for, by its part of an entry: "/m2/dose" is "per m² per dose". Empty for
/// another text.
[[nodiscard]] std::string basisWords(std::string_view basis);
/// The same for an amount as an order or a reference states it.
[[nodiscard]] std::string basisWords(const DoseAmount& dose);

/// The entry at `path` as it was understood, for the line under its field: "≈ 16.9 kg", "2 doses in 24 h, one
/// every 12 h", "160 mg per kg per dose" (T49). Empty where the entry is absent or says all by itself.
[[nodiscard]] std::string readBack(std::string_view path, const Case& inputs, const HouseRules& rules);
/// Whether the entry at `path` is a size that is read back in another unit than it is written in.
[[nodiscard]] bool isReadBackConverted(std::string_view path, const Case& inputs);

/// What an end of the reference, at `path`, comes to for this child: "84 mg in one dose for this child".
/// Empty where it is not worked out, or is as it stands.
[[nodiscard]] std::string forThisChild(std::string_view path, const Worksheet& sheet);

}  // namespace wardchalk
