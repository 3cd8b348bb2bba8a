#pragma once

#include <vector>

#include "tests/ui/working/sample_cases.h"

namespace wardchalk::ui::test {

/// Every case of tests/golden/cases with its house rules.
[[nodiscard]] const std::vector<SampleCase>& goldenCases();

}  // namespace wardchalk::ui::test
