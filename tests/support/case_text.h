#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/medicine/case.h"
#include "core/record/case_file.h"
#include "core/rules/house_rules.h"

namespace wardchalk::test {

/// The entries of "child.weight=17.2 kg; order.dose=80 mg". Throws std::runtime_error on a part without "=".
[[nodiscard]] std::vector<WrittenEntry> entriesOf(std::string_view text);

/// The same entries as such a text, to be shown when a test fails.
[[nodiscard]] std::string textOf(std::span<const WrittenEntry> entries);

/// The case that these entries make, read one by one as a form reads them. Throws std::runtime_error when one
/// is refused or they contradict one another.
[[nodiscard]] Case caseOf(std::span<const WrittenEntry> entries);
[[nodiscard]] Case caseOf(std::string_view text);

/// House rules from "pounds=trade; kilogram_decimals=1", read as a house-rules file is; what is left out is
/// exact.
[[nodiscard]] HouseRules rulesOf(std::string_view text);

/// `entries` with the text of `path` replaced, or added.
[[nodiscard]] std::vector<WrittenEntry> with(std::vector<WrittenEntry> entries, std::string_view path,
                                             std::string text);

}  // namespace wardchalk::test
