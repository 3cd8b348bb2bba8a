#pragma once

#include <string>
#include <vector>

#include "core/check/worksheet.h"

namespace wardchalk::golden_test {

/// A worksheet that no case leads to by itself: a line that is still being typed, two people who disagree, a
/// working that failed.
struct Moment {
  std::string name;  ///< of its expected files in tests/golden/moments, without their endings
  Worksheet sheet;
};

[[nodiscard]] std::vector<Moment> moments();

}  // namespace wardchalk::golden_test
