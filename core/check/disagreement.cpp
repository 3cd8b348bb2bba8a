#include "core/check/disagreement.h"

#include <algorithm>

#include "core/check/preparing.h"

namespace wardchalk {

Worksheet unsettled(Worksheet sheet, const Disagreement& disagreement) {
  const bool decides = sheet.verdict == VerdictKind::safe || sheet.verdict == VerdictKind::ask;
  const auto place = std::ranges::find_if(
      sheet.findings, [](const Finding& finding) { return finding.severity >= Severity::ask; });
  const auto at = static_cast<std::size_t>(place - sheet.findings.begin());
  sheet.findings.insert(place,
                        {FindingCode::secondDiffers,
                         Severity::ask,
                         std::nullopt,
                         {},
                         {{"first", Told{disagreement.first}}, {"second", Told{disagreement.second}}}});
  if (decides) {
    sheet.verdict = VerdictKind::ask;
    sheet.deciding = at;
  }
  return withoutPreparation(std::move(sheet));
}

}  // namespace wardchalk
