#pragma once

#include <string>
#include <vector>

#include "core/check/worksheet.h"

namespace wardchalk::ui::test {

/// A whole problem with a name, as a row of the tests of views.
struct SampleCase {
  std::string name;
  Case given;
  HouseRules rules;
};

/// One case for each thing that a view must be able to show. Medicines are invented.
[[nodiscard]] const std::vector<SampleCase>& sampleCases();

/// The samples and every golden case: all that geometry is held against.
[[nodiscard]] const std::vector<SampleCase>& samplesAndGoldens();

/// The worksheet of the sample or the golden case ("golden safe-rate") with this name.
[[nodiscard]] Worksheet sample(const std::string& name);

}  // namespace wardchalk::ui::test
