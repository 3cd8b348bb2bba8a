#include "core/check/judgement.h"

#include <algorithm>

namespace wardchalk {

bool callsAnythingSafe(const Worksheet& sheet) {
  return sheet.verdict != VerdictKind::notCovered &&
         (sheet.verdict != VerdictKind::undecided || !sheet.deciding);
}

std::vector<const Finding*> findingsBeside(const Worksheet& sheet, bool questionsStand) {
  const bool sizeUnusable = sheet.deciding &&
                            sheet.findings[*sheet.deciding].code == FindingCode::sizeImplausible &&
                            sheet.verdict == VerdictKind::undecided;
  std::vector<const Finding*> beside;
  for (std::size_t i = 0; i < sheet.findings.size(); ++i) {
    const Finding& finding = sheet.findings[i];
    const bool ofTheSize = finding.code == FindingCode::belowLow || finding.code == FindingCode::belowUsual ||
                           finding.code == FindingCode::possibleSlip;
    if (i == sheet.deciding || (questionsStand && finding.severity == Severity::ask) ||
        (sizeUnusable && ofTheSize))
      continue;
    beside.push_back(&finding);
  }
  return beside;
}

const Finding* sizeDoubt(const Worksheet& sheet) {
  const auto doubt = std::ranges::find_if(sheet.findings, [](const Finding& finding) {
    return doubtsSize(finding.code) && finding.severity != Severity::note;
  });
  return doubt == sheet.findings.end() ? nullptr : &*doubt;
}

namespace {

/// Whether the check makes an order unsafe when it is outside.
bool forbids(const Worksheet& sheet, CheckId id) {
  if (id == CheckId::maxDoses) return sheet.finding(FindingCode::overMaxDoses) != nullptr;
  const bool graced = id == CheckId::single || id == CheckId::daily || id == CheckId::period;
  if (graced && sheet.finding(FindingCode::overWithinGrace)) return false;
  return isUpperLimit(id) || id == CheckId::concentration || id == CheckId::infusionTime ||
         id == CheckId::infusionRate;
}

/// Whether a dose below the low end would be asked about: not where it is so little below that it is noted.
bool asksWhenLow(const Worksheet& sheet) {
  return std::ranges::none_of(sheet.findings, [](const Finding& finding) {
    const bool below = finding.code == FindingCode::belowLow || finding.code == FindingCode::belowUsual;
    return below && finding.severity == Severity::note;
  });
}

}  // namespace

VerdictKind verdictWhere(const Worksheet& sheet, const Holds& holds) {
  for (const Check& check : sheet.checks)
    if (forbids(sheet, check.id) && holds(check.id) == false) return VerdictKind::unsafe;
  const auto any = [&](Severity severity) {
    return std::ranges::any_of(sheet.findings, [severity](const Finding& finding) {
      return finding.severity == severity && finding.check != CheckId::low;
    });
  };
  if (any(Severity::notCovered)) return VerdictKind::notCovered;
  return (holds(CheckId::low) == false && asksWhenLow(sheet)) || any(Severity::ask) ? VerdictKind::ask
                                                                                    : VerdictKind::safe;
}

}  // namespace wardchalk
