#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/check/worksheet.h"
#include "core/medicine/case.h"
#include "core/rules/house_rules.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

/// The entry at `path` as paper states it, with all its digits and as it was understood: "37 lb 4 oz (≈ 16.9
/// kg)", "120 mg for each m², each dose", "every 12 h (2 doses in 24 h, one every 12 h)". A choice is its id,
/// a flag "yes". Empty where the entry is absent.
[[nodiscard]] std::string factWords(std::string_view path, const Case& inputs, const HouseRules& rules,
                                    const Phrasebook& book);

/// What the house rules say of the conversions, roundings and thresholds that this working uses, a whole
/// sentence each, and who agreed them.
[[nodiscard]] std::vector<std::string> rulesWords(const Worksheet& sheet, const Phrasebook& book);

}  // namespace wardchalk
