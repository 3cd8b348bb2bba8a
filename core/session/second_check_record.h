#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/case_draft.h"
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

/// What was recorded of a second check, and of what. One that differs is recorded once it has been looked at,
/// whether or not anybody asked for that.
struct SecondCheckRecord {
  std::vector<WrittenEntry> entries;  ///< the first person's, which stand in the form
  HouseRules rules;
  FirstLook firstLook;
  Apart apart;                          ///< by the last comparison
  std::optional<Disagreement> differs;  ///< what they did not settle
  std::string time;                     ///< as it is told
  bool changedSince = false;            ///< one that differs: an entry that differed was changed since
};

/// Whether an entry that differed has another value by now: 17.2 kg and 17200 g are one. Where no entry
/// differed, any other value counts.
[[nodiscard]] bool isChangedSince(const SecondCheckRecord& record, const CaseDraft& now);

/// Whether these may be the papers of the child whose entries these are: what both have of the child.
[[nodiscard]] bool isSameChild(const std::vector<WrittenEntry>& one, const std::vector<WrittenEntry>& other,
                               Pounds pounds);

}  // namespace wardchalk
