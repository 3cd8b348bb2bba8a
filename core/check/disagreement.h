#pragma once

#include <string>

#include "core/check/worksheet.h"

namespace wardchalk {

/// What two people came to differently, in words; nothing may be prepared until they have settled it.
struct Disagreement {
  std::string first;
  std::string second;

  friend bool operator==(const Disagreement&, const Disagreement&) = default;
};

/// A worksheet as it stands while two people disagree about its case: asked about before anything else, and
/// without an amount or the steps that come to it. A verdict that is graver stays.
[[nodiscard]] Worksheet unsettled(Worksheet sheet, const Disagreement& disagreement);

}  // namespace wardchalk
