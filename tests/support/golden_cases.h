#pragma once

#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

#include "core/medicine/case.h"
#include "core/rules/house_rules.h"

namespace wardchalk::test {

/// A case of tests/golden/cases, with the house rules that stand beside it, or the exact ones.
struct GoldenCase {
  std::string name;  ///< file name without its ending
  Case given;
  HouseRules rules;
};
inline void PrintTo(const GoldenCase& golden, std::ostream* out) { *out << golden.name; }

[[nodiscard]] std::filesystem::path goldenFolder();

/// Every golden case, by name. Ends the program when one cannot be read: no test may pass by reading nothing.
[[nodiscard]] const std::vector<GoldenCase>& goldenCases();

}  // namespace wardchalk::test
