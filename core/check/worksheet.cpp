#include "core/check/worksheet.h"

#include <algorithm>

namespace wardchalk {

const Step* Worksheet::step(StepId id) const {
  const auto found =
      std::find_if(steps.begin(), steps.end(), [id](const Step& step) { return step.id == id; });
  return found == steps.end() ? nullptr : &*found;
}

const Finding* Worksheet::finding(FindingCode code) const {
  const auto found = std::find_if(findings.begin(), findings.end(),
                                  [code](const Finding& finding) { return finding.code == code; });
  return found == findings.end() ? nullptr : &*found;
}

std::string_view Worksheet::because() const {
  if (deciding) return idOf(findings[*deciding].code);
  if (verdict == VerdictKind::undecided && !needs.empty()) return needs.front().path;
  return {};
}

}  // namespace wardchalk
