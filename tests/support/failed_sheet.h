#pragma once

#include <utility>

#include "core/check/worksheet.h"

namespace wardchalk::test {

/// What workOut makes where a chain does not come out in the units wanted: the papers, no check made, and
/// nothing found. No case leads there while the program is right; that one which is not right does is shown
/// by tests/mutation.
inline Worksheet failedSheet(Case given) {
  Worksheet sheet;
  sheet.given = std::move(given);
  sheet.rules = exactRules();
  for (std::size_t i = 0; i < checkCount; ++i) {
    sheet.checks[i].id = static_cast<CheckId>(i);
    sheet.checks[i].why = WhyNot::notWorkedOut;
  }
  sheet.findings.push_back({FindingCode::notWorkedOut, usualSeverity(FindingCode::notWorkedOut), {}, {}, {}});
  sheet.deciding = 0;
  return sheet;
}

}  // namespace wardchalk::test
