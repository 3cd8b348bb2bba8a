#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/second_check.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// What two people have to look at: the entries that are not alike, and whether the verdicts are. The figures
/// between follow from the entries.
struct Apart {
  std::vector<std::string_view> paths;
  bool verdict = false;

  [[nodiscard]] bool isNothing() const { return paths.empty() && !verdict; }
};

[[nodiscard]] Apart apartIn(const SecondCheck& check);

/// What the first comparison of a second check showed; a later one, after both looked at the papers together,
/// is another thing.
struct FirstLook {
  Apart apart;
  bool alone;  ///< the second person was through before seeing the first one's entries
};

/// What was recorded of a second check, and of what.
struct SecondCheckRecord {
  std::vector<WrittenEntry> entries;  ///< the first person's, which stand in the form
  HouseRules rules;
  FirstLook firstLook;
  Apart apart;                          ///< by the last comparison
  std::optional<Disagreement> differs;  ///< what they did not settle
  std::string time;                     ///< as it is told
};

}  // namespace wardchalk
